import { acrossGrooves, loadAt, type Roller, type Surface, type Turf } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { rollerOnTurf } from '../../../packages/model/src/contact/index.ts'
import { gaussLegendre } from '../../../packages/model/src/numerics/index.ts'
import { metresOf, numberOf, type Row, referenceTable, tableTurf } from '../../support/referenceTables.ts'
import { expectNear, expectPrinted, stated } from '../../support/tolerance.ts'

const table = referenceTable('patch')
const free = table.filter(row => row.floor_touched === '0')
const touched = table.filter(row => row.floor_touched === '1')
const mm = 1e-3

function questionOf(row: Row) {
  const { turf, k } = tableTurf(row, 'spread_mm')
  const surface: Surface = {
    kind: 'grooved',
    pitch: metresOf(row, 'pitch_mm'),
    land: metresOf(row, 'land_mm'),
    depth: metresOf(row, 'depth_mm'),
  }
  const roller: Roller = { mass: 4.2, diameter: 2 * metresOf(row, 'radius_mm'), length: 0.5, surface }
  const sinkage = metresOf(row, 'sinkage_mm')
  return { roller, turf, sinkage, condition: { kind: 'standing' } as const, surface, k }
}

/** Line load of the model to load of one pitch over k, in mm². */
const perPitch = (row: Row, lineLoad: number, k: number) =>
  (lineLoad * metresOf(row, 'pitch_mm')) / (k * mm * mm)

function quickOf(row: Row): number {
  const { k, ...question } = questionOf(row)
  const loaded = loadAt(question)
  return loaded.outcome === 'settled' ? perPitch(row, loaded.lineLoad, k) : expect.fail(loaded.outcome)
}

function stripOf(row: Row): number {
  const { k, ...question } = questionOf(row)
  const { grooves } = rollerOnTurf(question).at(question.sinkage)
  return grooves ? perPitch(row, grooves.strip.load, k) : expect.fail('no grooves')
}

/** l_z/a: the local spread over the contact's half length without spread or gaps. */
function spreadOverContact(row: Row): number {
  const z = numberOf(row, 'sinkage_mm')
  const exponent = Number((row.law ?? '').slice(2))
  return (
    (numberOf(row, 'spread_mm') * z ** ((1 - exponent) / 2)) / Math.sqrt(2 * numberOf(row, 'radius_mm') * z)
  )
}

// Source: test/reference/data/patch.csv, scipy 1.10.1, full two-dimensional solutions with Richardson's extrapolation.
describe('published values of a grooved roller on turf that spreads load', () => {
  test('the table has rows with the floor free and touched', () => {
    expect([free.length, touched.length]).toEqual([85, 5])
  })

  test.each(free)(
    'strips, to the printed digits: $law $pitch_mm/$land_mm l $spread_mm z $sinkage_mm',
    row => {
      expectPrinted(stripOf(row), row.strip_load ?? '')
    },
  )

  test.each(free)('quick model: $law $pitch_mm/$land_mm l $spread_mm z $sinkage_mm', row => {
    const full = numberOf(row, 'load_per_pitch_over_k')
    expectNear(quickOf(row), full * (1 + numberOf(row, 'corrected_error_pct') / 100), stated(1e-5))
  })

  test('full solutions are met to 0.2 % while the spread is below 0.3 of the contact', () => {
    const narrow = free.filter(row => spreadOverContact(row) <= 0.3)
    expect(narrow.length).toBeGreaterThan(40)
    for (const row of narrow)
      expectNear(
        quickOf(row),
        numberOf(row, 'load_per_pitch_over_k'),
        stated(2e-3),
        `${spreadOverContact(row)}`,
      )
  })

  test('full solutions with a touched floor are up to 0.6 % higher', () => {
    for (const row of touched) {
      const low = 1 - quickOf(row) / numberOf(row, 'load_per_pitch_over_k')
      expect(low).toBeGreaterThan(0)
      expect(low).toBeLessThan(0.0061)
    }
  })
})

type Span = { readonly from: number; readonly to: number }

/** 2 ∫ load of a pitch dx over spans of the angle φ, x = a sin φ; `grade` maps [0, 1] onto itself. */
function stripBy(row: Row, spans: readonly Span[], points: number, grade: Grade): number {
  const { surface, turf, sinkage, roller, k } = questionOf(row)
  const radius = roller.diameter / 2
  const reach = Math.sqrt(2 * radius * sinkage)
  const { nodes, weights } = gaussLegendre(points)
  let sum = 0
  for (const { from, to } of spans)
    for (const [i, node] of nodes.entries()) {
      const { place, slope } = grade(node)
      const angle = from + (to - from) * place
      const pressure = meanPressure(surface, turf, sinkage * Math.cos(angle) ** 2, k)
      sum += weights[i]! * slope * (to - from) * reach * Math.cos(angle) * pressure
    }
  return (2 * sum * metresOf(row, 'pitch_mm')) / (mm * mm)
}

type Grade = (t: number) => { readonly place: number; readonly slope: number }
const even: Grade = t => ({ place: t, slope: 1 })
/** Crowds to both ends, where load goes as a root or a power of the distance. */
const crowded: Grade = t => ({ place: t ** 3 * (10 - 15 * t + 6 * t * t), slope: 30 * (t * (1 - t)) ** 2 })

const quarter = { from: 0, to: Math.PI / 2 }

/** The angle at which the floor is left, by halving on the answer of one period. */
function spansOfFloor(row: Row): readonly Span[] {
  const { surface, turf, sinkage } = questionOf(row)
  let { from, to } = quarter
  for (let turn = 0; turn < 50; turn++) {
    const middle = (from + to) / 2
    const { floor } = acrossGrooves({ surface, turf, sinkage: sinkage * Math.cos(middle) ** 2 })
    if (floor === 'touching') from = middle
    else to = middle
  }
  return [
    { from: 0, to: from },
    { from, to: Math.PI / 2 },
  ]
}

const meanPressure = (surface: Surface, turf: Turf, sinkage: number, k: number) =>
  acrossGrooves({ surface, turf, sinkage }).meanPressure / k

describe('strips with a touched floor', () => {
  test('the table ran 48 points across the kink: so run, the model gives its digits', () => {
    for (const row of touched) expectPrinted(stripBy(row, [quarter], 48, even), row.strip_load ?? '')
  })

  test('two spans that meet in the kink agree with the model, and differ from the table by up to 1.3e-4', () => {
    const off = touched.map(row => {
      const composite = stripBy(row, spansOfFloor(row), 200, crowded)
      expectNear(stripOf(row), composite, stated(1e-8))
      return Math.abs(numberOf(row, 'strip_load') / composite - 1)
    })
    const worst = Math.max(...off)
    expect(worst).toBeGreaterThan(1e-5)
    expect(worst).toBeLessThan(1.3e-4)
  })
})
