import { dirname } from 'node:path'
import { describe, expect, test } from 'vitest'
import { filesBelow } from './support/files.ts'
import { type Import, importsOf } from './support/imports.ts'

/** Room → rooms and packages it may import. Data walks the other way: from what is imported to what imports it. */
type Table = Readonly<Record<string, readonly string[]>>

const model: Table = {
  quantities: [],
  numerics: ['quantities'],
  turf: ['quantities', 'numerics', 'mathjs'],
  roller: ['quantities', 'numerics'],
  contact: ['quantities', 'numerics', 'turf', 'roller'],
  unit: ['quantities', 'numerics', 'turf', 'roller', 'contact'],
  readings: ['quantities', 'numerics', 'papaparse'],
  scenario: ['quantities', 'numerics', 'turf', 'roller', 'contact', 'unit'],
  study: ['quantities', 'numerics', 'turf', 'roller', 'contact', 'unit', 'scenario', 'readings'],
  'index.ts': [
    'quantities',
    'numerics',
    'turf',
    'roller',
    'contact',
    'unit',
    'scenario',
    'readings',
    'study',
  ],
}

const publicFace = '@swardsink/model'
const explorer: Table = {
  words: [publicFace],
  look: [publicFace, 'words', 'lit'],
  figures: [publicFace, 'words', 'look', 'lit', 'd3'],
  book: [publicFace, 'words'],
  kinds: [publicFace, 'words', 'book', 'mathjs'],
  flow: [publicFace, 'words', 'book', 'kinds'],
  worker: [publicFace, 'words', 'book', 'kinds', 'flow'],
  controls: [publicFace, 'words', 'look', 'figures', 'book', 'lit', 'd3'],
  views: [publicFace, 'words', 'look', 'figures', 'book', 'kinds', 'controls', 'lit', 'd3'],
  books: [publicFace, 'words', 'book', 'kinds'],
  shell: [
    publicFace,
    'words',
    'look',
    'figures',
    'book',
    'kinds',
    'flow',
    'worker',
    'controls',
    'views',
    'books',
    'lit',
    'uqr',
  ],
  'main.ts': ['words', 'look', 'book', 'kinds', 'flow', 'worker', 'controls', 'views', 'books', 'shell'],
}

/** Files of a room that others may name, beside its index.ts. */
const doors = [
  // The two lists of kinds of entry, and what a view is.
  'packages/explorer/src/entries/kinds.ts',
  'packages/explorer/src/entries/views.ts',
  'packages/explorer/src/entries/view.ts',
  // The unit at rest, worked out once for whoever asks.
  'packages/explorer/src/entries/settled.ts',
  // Controls that only some entries need: the first page is spared them.
  'packages/explorer/src/controls/name-field.ts',
  'packages/explorer/src/controls/quantity-field.ts',
  'packages/explorer/src/controls/readNumber.ts',
  'packages/explorer/src/controls/readTyped.ts',
  'packages/explorer/src/controls/table-editor.ts',
  // A worker is started by the address of its file.
  'packages/explorer/src/worker/entry.ts',
]

/** A kind of entry is two rooms in one folder: what the list of kinds reaches runs without a page, the rest draws. */
function reachedFrom(start: string, imports: readonly Import[]): ReadonlySet<string> {
  const reached = new Set([start])
  for (const file of reached) {
    for (const { from, to } of imports) if (from === file && dirname(to).includes('/entries')) reached.add(to)
  }
  return reached
}

type Check = { readonly table: Table; readonly root: string; readonly imports: readonly Import[] }

function wrongArrows({ table, root, imports }: Check): readonly string[] {
  const kinds = reachedFrom(`${root}entries/kinds.ts`, imports)
  const roomOf = (path: string): string => {
    if (!path.startsWith(root)) return path.startsWith('packages/') ? path : packageOf(path)
    const room = path.slice(root.length).split('/')[0] ?? path
    return room === 'entries' ? (kinds.has(path) ? 'kinds' : 'views') : room
  }
  return imports.flatMap(({ from, to }) => {
    const [here, there] = [roomOf(from), roomOf(to)]
    if (here === there) return []
    const arrow = `${from} → ${to}`
    if (!table[here]) return [`${arrow}: ${here} is no room of the table`]
    if (!table[here].includes(there)) return [`${arrow}: ${here} may not import ${there}`]
    const sameFolder = dirname(to).startsWith(`${root}entries`) && from.startsWith(`${root}entries`)
    const throughDoor = !to.startsWith(root) || to.endsWith('/index.ts') || doors.includes(to) || sameFolder
    return throughDoor ? [] : [`${arrow}: not through the door of ${there}`]
  })
}

/** `lit/directives/map.js` → `lit`; a model's inside keeps its path, because only the whole of it is allowed. */
const packageOf = (name: string) => (name.startsWith('@') ? name : (name.split('/')[0] ?? name))

describe.each([
  ['model', model, 'packages/model/src/'],
  ['explorer', explorer, 'packages/explorer/src/'],
] as const)('the rooms of the %s', (_name, table, root) => {
  const files = filesBelow(root, '.ts')

  test('are there to be looked at', () => {
    expect(files.length).toBeGreaterThan(10)
  })

  test('import only what comes before them, through its door', () => {
    const imports = files.flatMap(file => importsOf(file))
    expect(wrongArrows({ table, root, imports })).toEqual([])
  })
})

test('the command line uses the public face of the model, and Node', () => {
  const strangers = filesBelow('packages/model/bin', '.ts')
    .flatMap(file => importsOf(file))
    .filter(({ to }) => !to.startsWith('node:') && !to.startsWith('packages/model/bin/'))
    .filter(({ to }) => to !== 'packages/model/src/index.ts')
  expect(strangers).toEqual([])
})

describe('the check itself', () => {
  const root = 'packages/model/src/'
  const wrong = (from: string, code: string) =>
    wrongArrows({ table: model, root, imports: importsOf(`${root}${from}`, code) })

  test.each([
    ['an import against the arrow', "import { settle } from '../unit/index.ts'"],
    ['a type imported against the arrow', "import type { Unit } from '../unit/index.ts'"],
    ['something passed on', "export { settle } from '../unit/index.ts'"],
    ['everything passed on', "export * from '../unit/index.ts'"],
    ['an import at run time', "const unit = await import('../unit/index.ts')"],
    ['an import inside a type', "let unit: import('../unit/index.ts').Unit"],
    ['a file named by its address', "new Worker(new URL('../unit/index.ts', import.meta.url))"],
    ['a way past the door', "import { linear } from '../turf/laws/linear.ts'"],
    ['a package', "import { create } from 'mathjs'"],
    ['an address that is worked out', 'await import(name)'],
  ])('sees %s', (_what, code) => {
    expect(wrong('contact/press.ts', code)).toHaveLength(1)
  })

  test('lets an arrow pass that runs with the data', () => {
    expect(wrong('contact/press.ts', "import { pressureAt } from '../turf/index.ts'")).toEqual([])
  })
})
