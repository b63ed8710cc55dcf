import { scenarioProblems } from '@swardsink/model'
import fc from 'fast-check'
import {
  type Book,
  bookOf,
  canUndo,
  choose,
  type Entry,
  enter,
  fieldsOf,
  openSession,
  settable,
  settableNames,
  stepBack,
} from '../../packages/explorer/src/book/index.ts'
import { books } from '../support/arbitraryBook.ts'
import { edited, edits, oddValues } from './damage.ts'
import { door } from './door.ts'
import { must, mustBeSame } from './expectations.ts'
import { kinds, workOutBook } from './workedBook.ts'

/** Kinds whose work in the thread beside is short; a fine map of odd turf takes half a minute there, with a Stop. */
const QUICK = ['readings', 'fit', 'check']

const written = fc.oneof(
  fc.constant('the load is {front.load}, {nothing}, {{, }, {front.load'),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
)

/** Some words that settings of one kind or another look for. */
const more = fc.dictionary(
  fc.constantFrom(
    ...[
      'text',
      'from',
      'name',
      'in',
      'of',
      'at',
      'readings',
      'columns',
      'law',
      'asks',
      'change',
      'options',
      'scale',
    ],
    ...[
      'quantity',
      'show',
      'over',
      'softnesses',
      'masses',
      'scatter',
      'wanted',
      'free',
      'cells',
      'roller',
      'settings',
    ],
  ),
  fc.oneof(oddValues, written),
  { maxKeys: 4 },
)

/** Settings of entries: any kind told anything is complete, and works out or says why not. */
export const settingsDoor = door({
  name: 'settings of entries',
  arbitrary: fc.record({
    book: books(kinds),
    kind: fc.constantFrom(...Object.keys(kinds)),
    changes: edits(4),
    more,
    refine: fc.boolean(),
  }),
  within: 3,
  check({ book, kind: name, changes, more: added, refine }) {
    const kind = kinds[name]
    must(kind !== undefined, `no kind ${name}`)
    const usual = kind.read(fieldsOf({}, '', []))
    const raw = edited({ ...usual, ...added }, changes) as Record<string, unknown>
    const settings = kind.read(fieldsOf(raw, 'entry', []))
    mustBeSame(
      kind.read(fieldsOf(JSON.parse(JSON.stringify(settings)), 'entry', [])),
      settings,
      `settings of ${name}`,
    )
    const entry: Entry = { id: 'odd', kind: name, beside: false, settings }
    const pages = [{ title: '', lead: '', entries: [entry] }, ...book.pages]
    workOutBook({ ...book, pages } as Book, { refined: refine ? QUICK : [] })
  },
})

type Move = { readonly at: number; readonly value: number; readonly option: number }
const moves: fc.Arbitrary<Move> = fc.record({
  at: fc.nat(2000),
  value: fc.oneof(
    fc.double({ min: 1e-4, max: 60, noNaN: true }),
    fc.double({ min: 1e-5, max: 0.05, noNaN: true }),
    fc.double(),
    fc.constantFrom(0, -1, 1e308, 1e-320, Number.NaN, Number.POSITIVE_INFINITY),
  ),
  option: fc.nat(20),
})

/** What a reader sets, by number fields and choices: taken whole or refused, and undone to the very book. */
export const sessionDoor = door({
  name: 'what is set and undone',
  arbitrary: fc.record({ book: books(kinds), moves: fc.array(moves, { maxLength: 12 }) }),
  within: 3,
  check({ book, moves: list }) {
    let session = openSession(book)
    for (const { at, value, option } of list) {
      const { scenario } = bookOf(session)
      const names = settableNames(scenario)
      const name = names[at % Math.max(1, names.length)] ?? ''
      const of = settable(name)
      if (of?.kind === 'choice') {
        const options = of.options(scenario)
        session = choose(session, { name, option: options[option % Math.max(1, options.length)] ?? '' })
      } else
        session = enter(session, { name, value: Number.isFinite(value) ? value : null, text: String(value) })
      const problems = scenarioProblems(bookOf(session).scenario)
      must(problems.length === 0, `${name} = ${value} is taken: ${JSON.stringify(problems)}`)
    }
    workOutBook({ ...bookOf(session), pages: bookOf(session).pages.slice(0, 1) }, { refined: [] })
    while (canUndo(session.history)) session = stepBack(session)
    must(bookOf(session) === book, 'undone to another book')
  },
})
