import { describe, expect, test } from 'vitest'
import { cannotTell } from '../../../../packages/model/src/study/fit/judge/cannotTell.ts'
import type { JudgedRow } from '../../../../packages/model/src/study/fit/judge/judged.ts'
import { expectNear, stated } from '../../../support/tolerance.ts'
import { judgedAt } from './judgedAt.ts'

const mm = 1e-3
const kPa = 1e3
const REFERENCE = 10 * kPa
const plate = (pressure: number, more: Partial<JudgedRow> = {}) => ({ along: pressure, pressure, ...more })
const ladder = (low: number, high: number, count = 8) =>
  Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)))

const power = ([s, n]: readonly number[], { along }: JudgedRow) => s! * (along / REFERENCE) ** (1 / n!)
const softness = { name: 'softness', value: 0.8 * mm }
const exponent = { name: 'exponent', value: 0.8 }
const readAt = (pressures: readonly number[], scatter: number) =>
  judgedAt({
    parameters: [softness, exponent],
    rows: pressures.map(p => plate(p)),
    predict: power,
    scatter,
  })

// Condition index of columns of unit length: Belsley, Kuh and Welsch 1980 (from memory).
describe('exponent and softness', () => {
  test('are told by loads over a wide range', () => {
    expect(cannotTell(readAt(ladder(3 * kPa, 30 * kPa), 0.03 * mm))).toEqual([])
  })

  test('move together where the loads are alike', () => {
    const [told, ...more] = cannotTell(readAt(ladder(20 * kPa, 28 * kPa), 0.1 * mm))
    expect(more).toEqual([])
    expect(told!.moves.map(({ name }) => name)).toEqual(['softness', 'exponent'])
    expect(told!.reason.kind).toBe('loads alike')
    expectNear(told!.reason.value!, 1.4, stated(1e-9))
    expect(told!.sentence).toMatch(
      /^Softness and exponent move together: the loads differ by less than a factor of two \(1\.4\)/,
    )
  })

  test('are told by loads that are alike too, if the gauge is fine enough', () => {
    expect(cannotTell(readAt(ladder(20 * kPa, 28 * kPa), 0.03 * mm))).toEqual([])
  })

  test('move together where softness is told far from the readings', () => {
    const [told] = cannotTell(readAt(ladder(60 * kPa, 160 * kPa), 0.8 * mm))
    expect(told!.reason.kind).toBe('far from the reference pressure')
    expect(told!.sentence).toContain(
      'softness is told at 10 kPa, and the readings reach from 60 kPa to 160 kPa',
    )
  })

  test('cannot both be had from one load', () => {
    const [told] = cannotTell(readAt(Array(6).fill(12 * kPa), 0.03 * mm))
    expect(told!.relativeError).toBeNull()
    expect(told!.reason.kind).toBe('few places')
    expect(told!.sentence).toContain('one place cannot fix 2 unknowns')
  })

  test('drown in scatter, and that is said', () => {
    const [told] = cannotTell(readAt(ladder(3 * kPa, 30 * kPa), 1.2 * mm))
    expect(told!.reason.kind).toBe('scatter')
  })
})

describe('spread', () => {
  // What a foot of this size carries beside itself, near enough for a question of who moves with whom.
  const size: Readonly<Record<string, number>> = { small: 25 * mm, large: 80 * mm }
  const spreading = ([s, l]: readonly number[], { along, foot }: JudgedRow) =>
    (s! * along) / REFERENCE / (1 + (4 * l!) / size[foot]!)
  const withFeet = (feet: readonly string[]) =>
    judgedAt({
      parameters: [softness, { name: 'spread', value: 2 * mm }],
      rows: feet.flatMap(foot => ladder(5 * kPa, 30 * kPa).map(p => plate(p, { foot }))),
      predict: spreading,
      scatter: 0.02 * mm,
    })

  test('cannot be told from softness by one foot', () => {
    const [told] = cannotTell(withFeet(['small']))
    expect(told!.sentence).toBe('Spread cannot be told from softness: all readings are of one foot (small).')
    expect(told!.reason.kind).toBe('one foot')
  })

  test('is told by two feet of different size', () => {
    expect(cannotTell(withFeet(['small', 'large']))).toEqual([])
  })
})

describe('locking depth', () => {
  const stiffening = ([s, H]: readonly number[], { along }: JudgedRow) => {
    const k = (REFERENCE * (1 - s! / H!)) / s!
    return along / (k + along / H!)
  }
  const locked = (lockingDepth: number, scatter: number) =>
    judgedAt({
      parameters: [softness, { name: 'lockingDepth', value: lockingDepth }],
      rows: ladder(3 * kPa, 30 * kPa).map(p => plate(p)),
      predict: stiffening,
      scatter,
    })

  test('far below every reading is not told, and how far is said', () => {
    const [told] = cannotTell(locked(25 * mm, 0.1 * mm))
    expect(told!.moves.map(({ name }) => name)).toContain('lockingDepth')
    expect(told!.reason.kind).toBe('far from locking')
    expect(told!.sentence).toMatch(/^Locking depth cannot be told: the greatest sinkage is [\d.]+ % of it/)
  })

  test('near the readings is told', () => {
    expect(cannotTell(locked(3 * mm, 0.01 * mm))).toEqual([])
  })
})

describe('sets', () => {
  const ofSets = (sets: readonly string[], pressures: (set: string) => readonly number[], datums = false) =>
    judgedAt({
      parameters: [
        ...sets.map(set => ({ ...softness, set })),
        ...(datums ? sets.map(set => ({ name: 'datum', set, value: 0 })) : []),
        exponent,
      ],
      rows: sets.flatMap(set =>
        pressures(set).map(p => plate(p, { set, kind: datums ? 'drop' : 'sinkage' })),
      ),
      predict: (values, row) => {
        const at = sets.indexOf(row.set)
        const datum = datums ? values[sets.length + at]! : 0
        return power([values[at]!, values.at(-1)!], row) + datum
      },
      scatter: 0.03 * mm,
    })

  test('are all named at once when one exponent moves with all of them', () => {
    const found = cannotTell(ofSets(['A', 'B', 'C'], () => ladder(22 * kPa, 26 * kPa)))
    expect(found[0]!.sentence).toMatch(/^Softness of every set and exponent move together/)
  })

  test('of drops under one load leave datum and softness open', () => {
    const found = cannotTell(
      ofSets(['A', 'B'], set => (set === 'A' ? ladder(4 * kPa, 30 * kPa) : [9 * kPa, 9 * kPa]), true),
    )
    const told = found.find(({ reason }) => reason.kind === 'one load in a set')
    expect(told!.sentence).toMatch(/datum of set B/i)
    expect(told!.sentence).toContain('all drops in its set are read under one load')
  })
})

test('what no reading moves with stands alone', () => {
  const judged = judgedAt({
    parameters: [softness, { name: 'a', value: 3 }],
    rows: ladder(3 * kPa, 30 * kPa).map(p => plate(p)),
    predict: ([s], { along }) => (s! * along) / REFERENCE,
    scatter: 0.03 * mm,
  })
  expect(cannotTell(judged)).toMatchObject([
    { kind: 'unmoved', sentence: 'A cannot be told: no reading moves with it.' },
  ])
})

test('layers are called by what they are', () => {
  const judged = judgedAt({
    parameters: [
      { name: 'upper.softness', value: 0.5 * mm },
      { name: 'lower.softness', value: 0.3 * mm },
    ],
    rows: ladder(3 * kPa, 30 * kPa).map(p => plate(p)),
    predict: ([a, b], { along }) => ((a! + b!) * along) / REFERENCE,
    scatter: 0.03 * mm,
  })
  const [told] = cannotTell(judged)
  expect(told!.sentence).toMatch(/^Softness of the upper layer and softness of the lower layer move together/)
})

describe('what is not flat and yet not told', () => {
  const base = readAt(ladder(3 * kPa, 30 * kPa), 0.03 * mm)
  const ended = (name: string, value: number) => ({
    ...base,
    fit: {
      ...base.fit,
      parameters: [
        ...base.fit.parameters,
        { ...base.fit.parameters[0]!, name, value, state: 'at bound' as const },
      ],
    },
  })

  test('is a number whose search ended at a bound', () => {
    expect(cannotTell(ended('lockingDepth', 300)).map(({ sentence }) => sentence)).toEqual([
      'Locking depth cannot be told: the readings show no bend towards locking, and the search went to the end of its range.',
    ])
    expect(cannotTell(ended('spread', 0))[0]!.sentence).toContain('ended at none of it')
  })

  test('is everything where the model has no slopes', () => {
    const found = cannotTell({ ...base, derivatives: null })
    expect(found).toHaveLength(1)
    expect(found[0]!.sentence).toContain('not known')
  })
})

test('another unit of length changes nothing', () => {
  const inMetres = cannotTell(readAt(ladder(20 * kPa, 28 * kPa), 0.1 * mm))[0]!
  const judged = judgedAt({
    parameters: [{ name: 'softness', value: 0.8 }, exponent],
    rows: ladder(20 * kPa, 28 * kPa).map(p => plate(p)),
    predict: power,
    scatter: 0.1,
  })
  expectNear(cannotTell(judged)[0]!.relativeError!, inMetres.relativeError!, stated(1e-6))
})
