import type { Values } from './speaking.ts'

export const entry = {
  asTable: 'Als Tabelle',
  workedOut: 'So wird das berechnet',
  trust: 'Wie weit Sie dem trauen können',
  trustSection: 'Ausführlich: docs/physics.md §5 und §6.',
  section: (section: string) => `Gleichungen: docs/physics.md ${section}.`,
  check: (path: string) => `Geprüft durch ${path}.`,
  working: (seconds: string) => `rechnet seit ${seconds} s`,
  stop: 'Anhalten',
  waitsFor: 'wartet auf',
  gone: (name: string) => `„${name}“, das es in diesem Buch nicht mehr gibt`,
  heldBack: 'zurückgehalten, bis das beantwortet ist:',
  still: 'noch für die Werte von vorhin',
  stillFor: ({ what, was, now }: Values<'what' | 'was' | 'now'>) => `${what}: noch für ${was}; jetzt ${now}`,
  fetching: 'wird geladen',
  undrawn:
    'Das ließ sich nicht zeichnen: ein Fehler im Programm. Der Rest der Seite stimmt, und Ihre Eingaben bleiben erhalten.',
  unfetched:
    'Was das zeichnet, konnte nicht geladen werden: Besteht eine Verbindung? Der Eintrag bleibt, wie er ist.',
  unknownKind: (kind: string) =>
    kind === ''
      ? 'Ein Eintrag, der nicht sagt, welcher Art er ist. Er bleibt, wie er kam, und wird so gesichert.'
      : `Ein Eintrag einer Art, die dieses Programm nicht kennt: „${kind}“. Er bleibt, wie er kam, und wird so gesichert.`,
  saveSvg: 'Abbildung sichern (SVG)',
  savePng: 'Abbildung sichern (PNG)',
  savePrint: 'Abbildung für den Druck sichern (SVG)',
  saveCsv: 'Tabelle sichern (CSV)',
  noFigure: 'Hier gibt es keine Abbildung zu sichern: Sichern Sie die Tabelle.',
  notSaved: 'Das Sichern ist nicht gelungen: Besteht eine Verbindung?',
  cautions: 'Hinweise',
}
