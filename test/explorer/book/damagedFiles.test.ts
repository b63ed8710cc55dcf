import { describe, expect, it } from 'vitest'
import { parseBook, readBook, serialiseBook } from '../../../packages/explorer/src/book/index.ts'
import { openFile } from '../../../packages/explorer/src/shell/openFile.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { workBook } from '../../support/workBook.ts'
import { allKinds } from '../entries/firstBook.ts'

const { problemAt: said } = readerFor({ units: 'metric', figureText: 13 }).words.files
const read = await readBook(workBook, allKinds)
if (!read.book || read.problems.length > 0) throw new Error(JSON.stringify(read.problems))
const present = read.book
const whole = serialiseBook({ ...present, title: 'Greens of Ellerby Hollow' })
const open = (text: string) => openFile(new Blob([text]), { kinds: allKinds, present })

type Parts = {
  swardsink: unknown
  title: unknown
  scenario: Record<string, unknown>
  pages: { title: unknown; lead: unknown; entries: unknown }[]
}
/** The whole file with something changed. */
function changed(change: (file: Parts) => void): string {
  const file: Parts = JSON.parse(whole)
  change(file)
  return JSON.stringify(file)
}
const entriesOf = (file: Parts) => file.pages[0]?.entries as Record<string, unknown>[]

type Damage = {
  readonly what: string
  readonly text: string
  /** Paths of what is wrong, in order; the sentence says the rest. */
  readonly paths: readonly string[]
  /** Kinds of the entries that could be opened, or null where nothing could. */
  readonly entries: readonly string[] | null
  readonly told?: readonly string[]
}

const KINDS = ['sideView', 'map', 'text', 'rack', 'setting', 'setting', 'setting']
const cut = whole.indexOf('"rack"') - 30

const damages: readonly Damage[] = [
  { what: 'an empty file', text: '', paths: ['book'], entries: null, told: ['nothing in it'] },
  {
    what: 'a picture',
    text: '\u0089PNG\r\n\u001a\n',
    paths: ['book'],
    entries: null,
    told: ['nothing in it'],
  },
  { what: 'a number', text: '42', paths: ['book'], entries: null, told: ['nothing in it'] },
  { what: 'a list', text: '[1, 2]', paths: ['book'], entries: null, told: ['nothing in it'] },
  { what: 'null', text: 'null', paths: ['book'], entries: null, told: ['nothing in it'] },
  {
    what: 'an object of something else',
    text: '{"name": "a recipe", "eggs": 3}',
    paths: ['swardsink', 'scenario', 'book.name', 'book.eggs', 'pages'],
    entries: null,
    told: ['nothing in it'],
  },
  {
    what: 'a file cut off within its entries',
    text: whole.slice(0, cut),
    paths: ['book'],
    entries: ['sideView', 'map', 'text'],
  },
  {
    what: 'a file cut off within its values',
    text: whole.slice(0, whole.indexOf('"rearRoller"')),
    paths: [
      'book',
      'scenario.rollers',
      'scenario.turfs',
      'scenario.unit.frontRoller',
      'scenario.unit.rearRoller',
      'scenario.condition',
      'scenario.turf',
      'pages',
    ],
    entries: null,
    told: ['nothing in it'],
  },
  {
    what: 'a missing comma in the middle',
    text: whole.replace('"kind": "rack",', '"kind": "rack"'),
    paths: ['book'],
    entries: ['sideView', 'map', 'text'],
  },
  {
    what: 'no scenario',
    text: changed(file => Reflect.deleteProperty(file, 'scenario')),
    paths: ['scenario'],
    entries: KINDS,
    told: ['borrowed values'],
  },
  {
    what: 'a scenario that is no record',
    text: changed(file => Object.assign(file, { scenario: 'standing' })),
    paths: ['scenario'],
    entries: KINDS,
    told: ['borrowed values'],
  },
  {
    what: 'a height below the bench',
    text: changed(({ scenario }) => Object.assign(scenario.unit as object, { benchHeight: -3e-3 })),
    paths: ['scenario.unit.benchHeight'],
    entries: KINDS,
    told: ['borrowed values'],
  },
  {
    what: 'no pages',
    text: changed(file => Reflect.deleteProperty(file, 'pages')),
    paths: ['pages'],
    entries: KINDS,
    told: ['borrowed pages'],
  },
  {
    what: 'pages that are no list',
    text: changed(file => Object.assign(file, { pages: { 1: 'first' } })),
    paths: ['pages'],
    entries: KINDS,
    told: ['borrowed pages'],
  },
  {
    what: 'a page that is no page, and one without entries',
    text: changed(file => {
      file.pages.push('the end' as never, { title: 'Empty', lead: '', entries: 7 })
    }),
    paths: ['pages[1]', 'pages[2].entries'],
    entries: KINDS,
  },
  {
    what: 'an entry of an unknown kind, one without any and one that is none',
    text: changed(file => entriesOf(file).splice(1, 1, { kind: 'carousel' }, { of: [] }, 'prose' as never)),
    paths: ['pages[0].entries[1].kind', 'pages[0].entries[2].kind', 'pages[0].entries[3]'],
    entries: ['sideView', 'carousel', '', 'text', 'rack', 'setting', 'setting', 'setting'],
  },
  {
    what: 'settings of the wrong type',
    text: changed(file => {
      Object.assign(entriesOf(file)[0] ?? {}, { exaggeration: 'ten', settings: [3] })
      Object.assign(entriesOf(file)[1] ?? {}, { quantity: null })
    }),
    paths: [
      'pages[0].entries[0].exaggeration',
      'pages[0].entries[0].settings',
      'pages[0].entries[1].quantity',
    ],
    entries: KINDS,
  },
  {
    what: 'misspelt fields of book, page and entry',
    text: changed(file => {
      Object.assign(file, { titel: 'x' })
      Object.assign(file.pages[0] ?? {}, { entrys: [] })
      Object.assign(entriesOf(file)[3] ?? {}, { sorted: 'mass' })
    }),
    paths: ['book.titel', 'pages[0].entrys', 'pages[0].entries[3].sorted'],
    entries: KINDS,
  },
  {
    what: 'titles that are no text, a version that is no number',
    text: changed(file => {
      Object.assign(file, { swardsink: 'one', title: 7 })
      Object.assign(file.pages[0] ?? {}, { lead: null })
    }),
    paths: ['swardsink', 'book.title', 'pages[0].lead'],
    entries: KINDS,
  },
  {
    what: 'two entries of one name, and names that are no text',
    text: changed(file => {
      Object.assign(entriesOf(file)[1] ?? {}, { id: 'sideView' })
      Object.assign(entriesOf(file)[3] ?? {}, { id: 4 })
    }),
    paths: ['pages[0].entries[3].id'],
    entries: KINDS,
  },
]

describe('twenty damaged files', () => {
  it('are twenty', () => {
    expect(damages).toHaveLength(20)
  })

  it.each(damages)('$what opens as far as it can, with its sentences', async q => {
    const { book, problems, notices } = await open(q.text)
    expect(problems.map(({ path }) => path)).toEqual(q.paths)
    for (const problem of problems) expect(said(problem)).toMatch(/^\S+: expected .+, but found .+\.$/)
    expect(book?.pages[0]?.entries.map(({ kind }) => kind) ?? null).toEqual(q.entries)
    const told = notices.map(notice => (notice.kind === 'borrowed' ? `borrowed ${notice.what}` : notice.kind))
    expect(told).toEqual(q.told ?? [])
    if (!book) return
    const ids = book.pages.flatMap(page => page.entries.map(({ id }) => id))
    expect(new Set(ids).size).toBe(ids.length)
    // What was opened is a book like any other: it is written and comes back.
    const again = await parseBook(serialiseBook(book), allKinds)
    expect(again.book).toEqual(book)
  })
})

describe('files of other kinds', () => {
  it('a whole one opens without a word', async () => {
    const { book, problems, notices } = await open(whole)
    expect([problems, notices]).toEqual([[], []])
    expect(book?.title).toBe('Greens of Ellerby Hollow')
  })

  it('one with the mark some editors put first opens as well', async () => {
    expect((await open(`\uFEFF${whole}`)).problems).toEqual([])
  })

  it('one of a later version is refused with its version, and nothing of it is opened', async () => {
    const later = changed(file => Object.assign(file, { swardsink: 2 }))
    expect(await open(later)).toEqual({
      book: null,
      problems: [],
      notices: [{ kind: 'newer file', version: 2 }],
    })
  })

  it('a bare scenario is shown on the pages that are there', async () => {
    const { scenario } = JSON.parse(whole)
    const { book, problems, notices } = await open(JSON.stringify(scenario))
    expect(problems).toEqual([])
    expect(book?.scenario).toEqual(present.scenario)
    expect(notices).toEqual([{ kind: 'borrowed', what: 'pages' }])
  })

  it('an entry of an unknown kind is saved as it came, wherever it was moved', async () => {
    const raw = { kind: 'carousel', turns: [1, { of: 'what' }], beside: true }
    const { book } = await open(changed(file => entriesOf(file).push(raw)))
    if (!book) throw new Error('not opened')
    const saved = JSON.parse(serialiseBook(book))
    expect(saved.pages[0].entries.at(-1)).toEqual(raw)
  })
})
