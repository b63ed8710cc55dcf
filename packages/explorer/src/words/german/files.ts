import type { Values } from './speaking.ts'

/** What is said of files, links, kept books and other tabs. */
export const files = {
  link: 'Ein Link zu diesen Werten',
  linkAsText: 'Diese Werte als Text',
  linkLabel: 'Der Link',
  textLabel: 'Die Werte, wie eine Szenariodatei sie enthält',
  copy: 'kopieren',
  copied: 'Kopiert.',
  notCopied: 'Von hier aus ging das Kopieren nicht: Markieren Sie den Text und kopieren Sie ihn selbst.',
  linkNote: 'Wer ihn öffnet, sieht diese Seite mit Ihren Werten. Für Messwerte braucht es eine Datei.',
  textNote:
    'Diese Seite hat keine Adresse, die andere öffnen könnten. Als Datei gesichert, lässt sich der Text hier öffnen, und die Befehlszeile liest ihn.',
  code: 'Der Link als Code für eine Kamera',
  codeUnfetched: 'Was den Code zeichnet, konnte nicht geladen werden: Besteht eine Verbindung?',
  tooLong: 'Für einen Code sind das zu viele Werte: Geben Sie den Link oder eine Datei weiter.',
  unopened: 'Das ließ sich nicht öffnen; hier hat sich nichts geändert.',
  damaged: 'Nicht alles davon war lesbar. Was ging, wird gezeigt; der Rest vollständig:',
  problemAt: ({ path, expected, received }: Values<'path' | 'expected' | 'received'>) =>
    `${path}: erwartet ${expected}, gefunden ${received}.`,
  newer: (version: string) =>
    `Diese Datei stammt von einem späteren Swardsink: Sie hat Version ${version}, dieses Programm liest Version 1. Nichts wurde geöffnet, Ihr Buch ist unverändert und die Datei unberührt: Öffnen Sie sie mit dem späteren.`,
  borrowedValues:
    'Die Datei enthält keine brauchbaren Werte einer Einheit und ihres Rasens: Ihre Seiten erscheinen mit den Werten, die Sie hatten.',
  borrowedPages: 'Die Datei enthält keine Seiten: Ihre Werte erscheinen auf den Seiten, die Sie hatten.',
  nothingInIt: 'In dieser Datei ist nichts, was sich zeigen ließe.',
  opened: (title: string) => `Geöffnet: ${title}.`,
  openedInPart: (title: string) => `Das ist „${title}“, soweit es lesbar war.`,
  backTo: (title: string) => `zurück zu „${title}“`,
  dismiss: 'in Ordnung',
  otherTab:
    'Dieses Buch wurde in einem anderen Tab oder Fenster geändert. Was Sie hier ändern, wird daneben unter eigenem Namen behalten.',
  keptApart: (name: string) =>
    `Inzwischen hat ein anderer Tab dieses Buch geändert. Beide bleiben erhalten: Ihres heißt jetzt „${name}“ unter den Büchern dieses Browsers.`,
  openOther: 'das andere öffnen',
  storeFull:
    'Dieser Browser hat keinen Platz mehr: Was Sie von jetzt an ändern, wird nicht behalten. Sichern Sie eine Datei, oder löschen Sie ein Buch, das Sie nicht mehr brauchen.',
  foreignAddress: (text: string) => `Die Adresse endet auf „${text}“; das bedeutet hier nichts.`,
  noSuchBook: (name: string) =>
    `Ein Buch „${name}“ liegt nicht bei und ist in diesem Browser nicht aufbewahrt. Das hier ist das erste.`,
  earlierEdition:
    'Von diesem Buch gibt es eine neuere Ausgabe. Was Sie in der älteren geändert hatten, bleibt als eigenes Buch erhalten:',
  linkedOver: 'Das sind die Werte des Links, den Sie geöffnet haben. „Rückgängig“ bringt die vorigen zurück.',
  books: 'Bücher',
  booksLead: 'Die Bücher, die beiliegen, und die, die Sie hier aufbewahren.',
  yourBooks: 'In diesem Browser aufbewahrt',
  changedOn: (date: string) => `geändert ${date}`,
  forget: 'löschen',
  forgetWhat: (title: string) => `: ${title}`,
  forgotten: (title: string) => `Gelöscht: ${title}.`,
}
