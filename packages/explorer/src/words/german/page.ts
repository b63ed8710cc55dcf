import type { Values } from './speaking.ts'

export const page = {
  of: (total: number) => `von ${total}`,
  atHand: 'Immer zur Hand',
  units: 'Maße',
  unitSystems: { metric: 'mm, kg', US: 'in, lb' },
  language: 'Sprache',
  noLanguage: (name: string) =>
    `Die Wörter für ${name} konnten nicht geladen werden: Besteht eine Verbindung?`,
  theme: 'Papier',
  themes: { system: 'wie das Gerät', light: 'hell', dark: 'dunkel', projector: 'Beamer' },
  print: 'Drucken',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  offline: 'Diese Seite ist in diesem Browser aufbewahrt und öffnet sich auch ohne Netz.',
  newer:
    'Eine neuere Ausgabe dieser Seite ist da: Sie kommt, wenn alle ihre Fenster geschlossen sind und sie neu geöffnet wird.',
  noView: 'Diese Ansicht konnte nicht geladen werden: Besteht eine Verbindung?',
  changes: 'Ihre Änderungen',
  restore: 'Zurück zu den Werten dieses Buchs',
  saveFile: 'Als Datei sichern',
  openFile: 'Datei öffnen',
  kept: 'Was Sie ändern, wird in diesem Browser aufbewahrt.',
  notKept:
    'Dieser Browser bewahrt nichts auf: Sichern Sie eine Datei, wenn Sie Ihre Werte wiederhaben wollen.',
  pages: 'Seiten',
  earlierPage: 'vorige Seite',
  laterPage: 'nächste Seite',
  untitledPage: (number: number) => `Seite ${number}`,
  untitledBook: 'Ein Buch ohne Titel',
  problemAt: ({ path, expected, received }: Values<'path' | 'expected' | 'received'>) =>
    `${path}: erwartet ${expected}, gefunden ${received}.`,
  trust: 'Wie weit Sie dem trauen können',
  trustText:
    'Das sind Schätzungen aus einem Modell des Rasens, keine Messwerte. Sie sind so gut wie die Weichheit, die hineingeht, und sagen nichts über Schäden oder die Spielqualität. Prüfen Sie vor dem Mähen mit dem Messgerät auf dem Rasen nach.',
  invented:
    'Die Ellerby Hollow Turf School, ihre Einheiten, Walzen und Grüns sind erfunden; ebenso jede in diesem Buch eingestellte Zahl, außer Messwerten, die ihre Quelle nennen.',
  safety: 'Bevor Sie unter eine Einheit greifen',
  safetyText:
    'Spindel und Untermesser schneiden auch, wenn man sie von Hand dreht. Stellen Sie den Motor ab oder trennen Sie die Batterie. Tragen Sie schnittfeste Handschuhe. Heben Sie zu zweit oder mit einem Hebezeug; arbeiten Sie nie unter einer Einheit, die nur ein Wagenheber hält. Beachten Sie die Anleitung der Maschine und die örtlichen Vorschriften, und überlassen Sie Fachkundigen, was Fachkunde verlangt.',
}
