import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { sinkageMap } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { fieldsOf } from '../../../packages/explorer/src/book/fields.ts'
import {
  type Book,
  bookOf,
  enter,
  openSession,
  type Session,
} from '../../../packages/explorer/src/book/index.ts'
import { map, valueHere } from '../../../packages/explorer/src/entries/map/kind.ts'
import { sideView } from '../../../packages/explorer/src/entries/sideView/kind.ts'
import { text } from '../../../packages/explorer/src/entries/text/kind.ts'
import { formatterFor } from '../../../packages/explorer/src/words/index.ts'
import { allKinds, allViews, firstBook, everyKind as kinds } from './firstBook.ts'

const root = new URL('../../../', import.meta.url)
const book: Book = await firstBook()
const { scenario } = book
/** What the side view shows unless a book says otherwise. */
const usual = sideView.read(fieldsOf({}, 'entry', []))
const format = formatterFor('metric', 'en')

const set = (session: Session, name: string, value: number) =>
  enter(session, { name, value, text: String(value) })
const scenarioWith = (name: string, value: number) => bookOf(set(openSession(book), name, value)).scenario

function answered<Result>(answer: { outcome: string; result?: Result }): Result {
  if (answer.outcome !== 'answered' || answer.result === undefined) throw new Error(JSON.stringify(answer))
  return answer.result
}

describe('the kinds of entry', () => {
  it('are one folder each, and each has its looks in the other list', () => {
    const folders = readdirSync(new URL('packages/explorer/src/entries/', root), { withFileTypes: true })
      .filter(entry => entry.isDirectory())
      .map(entry => entry.name)
    expect(kinds.map(kind => kind.kind).sort()).toEqual(folders.sort())
    expect(Object.keys(allViews.items).sort()).toEqual(folders)
    for (const [name, item] of Object.entries({ ...allKinds.items, ...allViews.items }))
      expect(item.kind).toBe(name)
  })

  it('find nothing wrong with the book that ships', () => {
    const entries = book.pages.flatMap(page => page.entries)
    for (const entry of entries) {
      const kind = kinds.find(({ kind }) => kind === entry.kind)
      expect(kind?.problems(entry.settings, scenario, entries)).toEqual([])
    }
  })

  it('rest on sections of the physics, and on checks, that are there', () => {
    const physics = readFileSync(new URL('docs/physics.md', root), 'utf8')
    for (const { section, check } of kinds) {
      expect(physics).toContain(`\n## ${section.replace('§', '')}.`)
      expect(existsSync(new URL(check, root))).toBe(true)
    }
  })
})

describe('the side view', () => {
  it('answers with a unit in balance, cutting lower than it was set', () => {
    const settled = answered(
      sideView.compute(sideView.input({ settings: usual, scenario, answers: {}, entries: [], offered: {} })),
    )
    expect(settled.outcome).toBe('settled')
    expect(settled.effectiveHeight.middle).toBeLessThan(scenario.unit.benchHeight)
    expect(settled.drop.middle).toBeGreaterThan(0)
  })

  it('cuts lower with a heavier roller, lower on softer turf', () => {
    const cut = (changed: typeof scenario) =>
      answered(
        sideView.compute(
          sideView.input({ settings: usual, scenario: changed, answers: {}, entries: [], offered: {} }),
        ),
      ).effectiveHeight.middle
    expect(cut(scenarioWith('frontRoller.mass', 9))).toBeLessThan(cut(scenario))
    expect(cut(scenarioWith('turf.softness', 0.6e-3))).toBeLessThan(cut(scenario))
  })

  it('has no answer where the turf bottoms out, and says under which roller', () => {
    const locked = scenarioWith('turf.lockingDepth', 0.32e-3)
    const answer = sideView.compute(
      sideView.input({ settings: usual, scenario: locked, answers: {}, entries: [], offered: {} }),
    )
    expect(answer).toMatchObject({ outcome: 'no answer', why: { kind: 'bottomed out' } })
  })

  it('is worked out in lines that hold the printed numbers', () => {
    const input = sideView.input({ settings: usual, scenario, answers: {}, entries: [], offered: {} })
    const result = answered(sideView.compute(input))
    const lines = sideView.workedOut?.({ input, result, format }) ?? []
    expect(lines.at(-1)?.filled).toContain(format(result.effectiveHeight.middle, 'height'))
    expect(lines.map(line => line.what)).toContain('drop')
  })
})

describe('the map', () => {
  const input = map.input({
    settings: { quantity: 'sinkage', readings: '' },
    scenario,
    answers: {},
    entries: [],
    offered: {},
  })

  it('does not hang on the mass and softness in hand: they are its axes', () => {
    for (const moved of [scenarioWith('frontRoller.mass', 9), scenarioWith('turf.softness', 0.9e-3)])
      expect(
        map.input({
          settings: { quantity: 'sinkage', readings: '' },
          scenario: moved,
          answers: {},
          entries: [],
          offered: {},
        }),
      ).toEqual(input)
    const raised = scenarioWith('unit.benchHeight', 5e-3)
    expect(
      map.input({
        settings: { quantity: 'sinkage', readings: '' },
        scenario: raised,
        answers: {},
        entries: [],
        offered: {},
      }),
    ).not.toEqual(input)
  })

  it('has in its fine form the same cells as one map of that size', () => {
    const fine = answered(map.refine?.(input, () => {}) ?? { outcome: 'none' })
    expect(fine.values.length).toBe(200 * 200)
    const whole = sinkageMap({ ...input, masses: fine.masses, softnesses: fine.softnesses })
    // Each of the two is within 1e-6 of the cells solved one by one: the table a row starts from is another.
    const apart = fine.values.map((value, i) => Math.abs(value / (whole.values[i] ?? Number.NaN) - 1))
    expect(Math.max(...apart)).toBeLessThan(2e-6)
    expect(fine.outcomes).toEqual(whole.outcomes)
  })

  it('says how far it has come, always further, to the end', () => {
    const heard: number[] = []
    map.refine?.(input, done => heard.push(done))
    expect(heard).toEqual([...heard].sort((a, b) => a - b))
    expect(heard.at(-1)).toBe(1)
  })

  it('hands over every buffer of its result', () => {
    const draft = answered(map.compute(input))
    expect(map.buffers?.(draft)?.length).toBe(4)
  })

  it('agrees with the side view at the case in hand', () => {
    const { unit, turfs, turf, condition } = scenario
    const law = turfs[turf]?.law
    if (law?.kind !== 'stiffening') throw new Error('the first book has a stiffening turf')
    const one = sinkageMap({
      unit,
      turf: turfs[turf] ?? { law },
      condition,
      quantity: 'sinkage',
      masses: [unit.frontRoller.mass],
      softnesses: [law.softness],
    })
    const here = valueHere(scenario, 'sinkage') ?? Number.NaN
    const stated = 1e-6
    expect(Math.abs((one.values[0] ?? Number.NaN) / here - 1)).toBeLessThan(stated)
  })
})

describe('prose', () => {
  const ask = (words: string) =>
    text.compute(text.input({ settings: { text: words }, scenario, answers: {}, entries: [], offered: {} }))

  it('knows what is set and what follows from it', () => {
    const values = answered(ask('{frontRoller.mass} sinks {front.sinkage}'))
    expect(values['frontRoller.mass']).toEqual({ quantity: 'mass', value: 6.2 })
    expect(values['front.sinkage']?.value).toBe(valueHere(scenario, 'sinkage'))
  })

  it('has no answer where twice as soft would lock, and does not make one up', () => {
    const soft = scenarioWith('turf.softness', 2.5e-3)
    const values = answered(
      text.compute(
        text.input({
          settings: { text: '{twiceAsSoft.drop}' },
          scenario: soft,
          answers: {},
          entries: [],
          offered: {},
        }),
      ),
    )
    expect(values['twiceAsSoft.drop']).toEqual({ quantity: 'drop', value: null })
  })

  it('refuses a value it does not know, by name', () => {
    expect(text.problems({ text: 'so {front.colour}' }, scenario, [])).toEqual([
      { path: 'text', expected: 'the name of a value', received: 'front.colour' },
    ])
  })
})

it('an answer that cannot be asked for is told as problems, never thrown', () => {
  const broken = { ...scenario, unit: { ...scenario.unit, wheelbase: -1 } }
  const answer = sideView.compute(
    sideView.input({ settings: usual, scenario: broken, answers: {}, entries: [], offered: {} }),
  )
  expect(answer).toMatchObject({ outcome: 'no answer', why: { kind: 'problems' } })
})
