import { scenarioProblems } from '@swardsink/model'
import fc from 'fast-check'
import {
  type Book,
  type Entry,
  fieldsOf,
  type Kinds,
  type Page,
  settables,
} from '../../packages/explorer/src/book/index.ts'
import { SHOWS } from '../../packages/explorer/src/entries/curves/kind.ts'
import { OVERS } from '../../packages/explorer/src/entries/curves/questions.ts'
import { LAWS, ROLES } from '../../packages/explorer/src/entries/fit/settings.ts'
import { AXLES } from '../../packages/explorer/src/entries/headland/kind.ts'
import { MAP_QUANTITIES } from '../../packages/explorer/src/entries/map/kind.ts'
import { POSITIONS, RACK_COLUMNS } from '../../packages/explorer/src/entries/rack/kind.ts'
import { PITCHES } from '../../packages/explorer/src/entries/section/kind.ts'
import { EXAGGERATIONS } from '../../packages/explorer/src/entries/sideView/kind.ts'
import { SOURCES } from '../../packages/explorer/src/entries/unitFromScales/kind.ts'
import { scenarios } from './arbitraries.ts'

const settingNames = fc.uniqueArray(fc.constantFrom(...Object.keys(settables)), { maxLength: 5 })

const tenths = fc.integer({ min: 0, max: 200 }).map(count => count / 10)

/** Cells of a table hold no line ends: that is how they are told apart. */
const cells = fc.string({ unit: 'grapheme', maxLength: 8 }).map(text => text.replace(/[\r\n]/g, ' '))
const tables = fc.array(
  fc.record({
    head: cells,
    cells: fc.array(cells, { maxLength: 4 }).map(list => list.map(cell => `${cell}\n`).join('')),
  }),
  { maxLength: 4 },
)

/** Settings of each kind, one line a kind. A kind that is not listed has its usual ones. */
const settingsOf: Readonly<Record<string, fc.Arbitrary<object>>> = {
  text: fc.record({ text: fc.string({ unit: 'grapheme', maxLength: 60 }) }),
  setting: fc.record({ of: settingNames }),
  sideView: fc.record({ exaggeration: fc.constantFrom(...EXAGGERATIONS), settings: settingNames }),
  map: fc.record({ quantity: fc.constantFrom(...MAP_QUANTITIES) }),
  rack: fc.record({
    sort: fc.constantFrom(...RACK_COLUMNS),
    order: fc.constantFrom('up', 'down'),
    position: fc.constantFrom(...POSITIONS),
    headlandRadius: tenths,
  }),
  section: fc.record({ at: fc.constantFrom(...POSITIONS), pitches: fc.constantFrom(...PITCHES) }),
  curves: fc.record({ show: fc.constantFrom(...SHOWS), over: fc.constantFrom(...OVERS) }),
  readings: fc.record({ columns: tables, remark: cells }),
  fit: fc.record({
    law: fc.constantFrom(...LAWS),
    roles: fc.dictionary(fc.constantFrom('softness', 'exponent', 'spread'), fc.constantFrom(...ROLES)),
    held: fc.dictionary(fc.constantFrom('exponent', 'spread'), tenths),
    compare: fc.boolean(),
  }),
  check: fc.record({ bench: tenths, gauge: tenths }),
  headland: fc.record({
    at: fc.constantFrom(...POSITIONS),
    radius: tenths,
    friction: tenths,
    drag: tenths,
    axles: fc.constantFrom(...AXLES),
  }),
  units: fc.record({ tolerance: tenths }),
  unitFromScales: fc.record(
    { from: fc.constantFrom(...SOURCES), total: tenths, front: tenths, boxAt: tenths },
    { requiredKeys: ['from'] },
  ),
}

const titles = fc.oneof(fc.constant(''), fc.string({ unit: 'grapheme', maxLength: 30 }))

/** What a later program, or another one, might write of an entry. */
const foreign = fc
  .dictionary(fc.stringMatching(/^x[a-z]{1,8}$/), fc.jsonValue({ maxDepth: 2 }), { maxKeys: 4 })
  .map(own => ({ ...own, kind: 'carousel' }))

type Draft = Omit<Entry, 'id'>

/** What a lecture knows of a page or an entry: most say nothing. */
const lecture = fc
  .record(
    {
      notes: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
      minutes: fc.integer({ min: 1, max: 30 }),
    },
    { requiredKeys: [] },
  )
  .filter(({ notes }) => notes !== '')

function entryOf(kinds: Kinds): fc.Arbitrary<Draft> {
  const known = fc.constantFrom(...Object.keys(kinds)).chain(kind =>
    fc.record({
      kind: fc.constant(kind),
      beside: fc.boolean(),
      title: titles,
      after: fc.constantFrom('', 'question', 'nowhere'),
      lecture,
      settings: (settingsOf[kind] ?? fc.constant({})).map(settings => ({
        ...kinds[kind]?.read(fieldsOf({}, '', [])),
        ...settings,
      })),
    }),
  )
  const titled = known.map(({ title, after, lecture: said, ...entry }) => ({
    ...entry,
    ...(title === '' ? {} : { title }),
    ...(after === '' ? {} : { after }),
    ...said,
  }))
  const unknown = foreign.map(raw => ({ kind: raw.kind, beside: false, settings: {}, asWritten: raw }))
  return fc.oneof({ arbitrary: titled, weight: 9 }, { arbitrary: unknown, weight: 1 })
}

/** Ids as reading gives them: the kind's name, or with the first number that is free. */
function withIds(
  pages: readonly (Omit<Page, 'entries'> & { readonly entries: readonly Draft[] })[],
): readonly Page[] {
  const taken = new Set<string>()
  return pages.map(page => ({
    ...page,
    entries: page.entries.map(entry => {
      let id = entry.kind
      for (let again = 2; taken.has(id); again++) id = `${entry.kind}-${again}`
      taken.add(id)
      return { ...entry, id, ...(entry.asWritten ? { asWritten: { ...entry.asWritten, id } } : {}) }
    }),
  }))
}

/** Without the prototypes and missing members a generator leaves behind. */
const plain = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value))

/** Any book that these kinds can make, with sound values. */
export function books(kinds: Kinds): fc.Arbitrary<Book> {
  const page = fc
    .record({ title: titles, lead: titles, lecture, entries: fc.array(entryOf(kinds), { maxLength: 6 }) })
    .map(({ lecture: said, ...rest }) => ({ ...rest, ...said }))
  return fc
    .record({
      title: titles,
      scenario: scenarios.filter(scenario => scenarioProblems(plain(scenario)).length === 0),
      // written in hundredths of a millimetre
      adjuster: fc.constantFrom(
        {},
        ...[10, 125, 150, 400].map(hundredths => ({ adjuster: hundredths / 100 / 1000 })),
      ),
      pages: fc.array(page, { minLength: 1, maxLength: 4 }),
    })
    .map(({ pages, adjuster, ...book }) =>
      plain({ swardsink: 1 as const, ...book, ...adjuster, pages: withIds(pages) }),
    )
}
