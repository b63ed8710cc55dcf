import type { Values } from './speaking.ts'

export const entry = {
  asTable: 'As a table',
  workedOut: 'How this is worked out',
  trust: 'How far to trust this',
  trustSection: 'The whole of it: docs/physics.md §5 and §6.',
  section: (section: string) => `Equations: docs/physics.md ${section}.`,
  check: (path: string) => `Checked by ${path}.`,
  working: (seconds: string) => `working, ${seconds} s`,
  stop: 'Stop',
  waitsFor: 'waits for',
  gone: (name: string) => `“${name}”, which is no longer in this book`,
  heldBack: 'held back until this is answered:',
  still: 'still for the values before',
  stillFor: ({ what, was, now }: Values<'what' | 'was' | 'now'>) => `${what}: still for ${was}; now ${now}`,
  fetching: 'being fetched',
  undrawn:
    'This could not be drawn: a fault of the program. The rest of the page is as it should be, and what you typed is kept.',
  unfetched: 'What draws this could not be fetched: is there a connection? It is kept as it is.',
  unknownKind: (kind: string) =>
    kind === ''
      ? 'An entry that does not say of what kind it is. It is kept as it came, and saved as it is.'
      : `An entry of a kind this program does not know, “${kind}”. It is kept as it came, and saved as it is.`,
  saveSvg: 'save the figure (SVG)',
  savePng: 'save the figure (PNG)',
  savePrint: 'save the figure for print (SVG)',
  saveCsv: 'save the table (CSV)',
  noFigure: 'There is no figure here to save: save the table.',
  notSaved: 'It could not be saved: is there a connection?',
  cautions: 'Cautions',
}
