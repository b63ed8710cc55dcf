import {
  formulaLaw,
  levelLoads,
  type PressureLaw,
  type Reading,
  settle,
  type Turf,
  type Unit,
  withSoftness,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { setUp } from '../../../../packages/model/src/study/fit/compliance/setUp.ts'
import { expectNear, stated } from '../../../support/tolerance.ts'
import {
  footOf,
  loadsFor,
  type Presser,
  rollers,
  scenario,
  sinkageOf,
  standing,
  unit,
} from './knownReadings.ts'

const mm = 1e-3

/** A turf by the numbers that are free, as a reader would write it. */
type Family = {
  readonly free: readonly string[]
  readonly at: readonly number[]
  readonly turf: (values: readonly number[]) => Turf
}

const both = async (values: readonly number[]): Promise<PressureLaw> => {
  const made = await formulaLaw({ expression: 'a * z + b * z^2', values: { a: values[0]!, b: values[1]! } })
  if (!made.ok) throw new Error(made.problems[0]?.expected)
  return made.law
}
const written = await both([9e6, 4e9])

const points: PressureLaw = {
  kind: 'measured',
  points: [
    { sinkage: 0.4 * mm, pressure: 5e3 },
    { sinkage: 1.1 * mm, pressure: 14e3 },
    { sinkage: 2.6 * mm, pressure: 60e3 },
  ],
}

const families: Readonly<Record<string, Family>> = {
  linear: { free: ['softness'], at: [0.8 * mm], turf: ([s]) => ({ law: { kind: 'linear', softness: s! } }) },
  power: {
    free: ['softness', 'exponent'],
    at: [0.8 * mm, 0.7],
    turf: ([s, n]) => ({ law: { kind: 'power', softness: s!, exponent: n! } }),
  },
  stiffening: {
    free: ['softness', 'lockingDepth'],
    at: [0.8 * mm, 6 * mm],
    turf: ([s, H]) => ({ law: { kind: 'stiffening', softness: s!, lockingDepth: H! } }),
  },
  logarithmic: {
    free: ['softness', 'lockingDepth'],
    at: [0.8 * mm, 6 * mm],
    turf: ([s, H]) => ({ law: { kind: 'logarithmic', softness: s!, lockingDepth: H! } }),
  },
  layered: {
    free: ['upper.softness', 'upper.lockingDepth', 'lower.softness', 'lower.exponent'],
    at: [0.5 * mm, 2 * mm, 0.4 * mm, 0.8],
    turf: ([s, H, t, n]) => ({
      law: {
        kind: 'layered',
        upper: { kind: 'stiffening', softness: s!, lockingDepth: H! },
        lower: { kind: 'power', softness: t!, exponent: n! },
      },
    }),
  },
  measured: {
    free: ['softness'],
    at: [0.9 * mm],
    turf: ([s]) => withSoftness({ law: points }, s!),
  },
  formula: {
    free: ['a', 'b'],
    at: [9e6, 4e9],
    turf: ([a, b]) => ({ law: { ...written, values: { a: a!, b: b! } } as PressureLaw }),
  },
}

const withSpread = ({ free, at, turf }: Family): Family => ({
  free: [...free, 'spread'],
  at: [...at, 1.4 * mm],
  turf: values => ({ ...turf(values), spread: values.at(-1)! }),
})

const reading = (presser: Presser, load: number | undefined, measured: Reading['measured']): Reading => ({
  row: 2,
  set: 'a',
  foot: footOf(presser),
  ...(load === undefined ? {} : { load }),
  measured,
  count: 1,
})

const noise = { kind: 'estimated' } as const

/** A fit of as many readings as it takes, all of them the one that is looked at. */
const ready = (family: Family, one: Reading, unitOf: Unit) => {
  const law = family.turf(family.at).law
  const start = Object.fromEntries(family.free.map((name, j) => [name, family.at[j]!]))
  const many = Array.from({ length: family.free.length + 1 }, () => one)
  // a drop is fitted only beside another
  const company = one.measured.kind === 'drop' ? [reading('discs', undefined, one.measured)] : []
  const made = setUp({
    readings: [...many, ...company],
    law,
    free: family.free,
    start,
    noise,
    scenario: { ...scenario, unit: unitOf },
  })
  // datums stay at nothing
  const p = new Float64Array(made.start.length)
  family.at.forEach((value, j) => {
    p[j] = made.plan.planned[j]!.by === 'ln' ? Math.log(value) : value
  })
  return { made, p }
}

const STEP = 1e-3
/** d answer/d value by five full solutions. */
const slope = (family: Family, j: number, answer: (turf: Turf) => number): number => {
  const step = STEP * family.at[j]!
  const at = (by: number) =>
    answer(family.turf(family.at.map((value, k) => (k === j ? value + by * step : value))))
  return (at(-2) - 8 * at(-1) + 8 * at(1) - at(2)) / (12 * step)
}

function expectAgrees(
  family: Family,
  one: Reading,
  answer: (turf: Turf) => number,
  unitOf: Unit = unit,
): void {
  const { made, p } = ready(family, one, unitOf)
  const size = made.plan.planned.length
  const row = made.rows.findIndex(each => each.reading === one)
  const predicted = new Float64Array(made.rows.length)
  const rates = new Float64Array(made.rows.length * size)
  expect(made.model.predict(p, predicted)).toBe(true)
  expect(made.model.differentiate(p, rates)).toBe(true)
  // pressPlate stops at 1e-10 of its load
  expectNear(predicted[row]!, answer(family.turf(family.at)), stated(2e-10), 'answer')
  family.free.forEach((name, j) => {
    const { by } = made.plan.planned[j]!
    const rate = rates[row * size + j]! / (by === 'ln' ? family.at[j]! : 1)
    expectNear(rate, slope(family, j, answer), stated(1e-6), `by ${name}`)
  })
}

describe('the sinkage of a foot and its derivatives are those of full solutions', () => {
  for (const [law, plain] of Object.entries(families))
    for (const [kind, family] of [
      [law, plain],
      [`${law} with spread`, withSpread(plain)],
    ] as const)
      for (const presser of ['smooth', 'grooved', 'discs', 32] as const)
        for (const load of [loadsFor(presser)[0]!, loadsFor(presser)[2]!])
          test(`${kind}, ${presser} under ${load.toFixed(0)} N`, () => {
            expectAgrees(family, reading(presser, load, { kind: 'sinkage', sinkage: mm }), turf =>
              sinkageOf(presser, load, turf),
            )
          })
})

describe('the drop of a point of the unit and its derivatives are those of full solutions', () => {
  /** As settle tells it, the edge put where the drop is read. */
  const dropOf = (base: Unit, front: keyof typeof rollers, point: number, turf: Turf): number => {
    const larger = (rollers[front].diameter - base.frontRoller.diameter) / 2
    const fitted: Unit = {
      ...base,
      edge: point * base.wheelbase,
      frontRoller: rollers[front],
      benchHeight: base.benchHeight + larger * (1 - point),
      body: { ...base.body, height: base.body.height! + larger * (1 - base.body.at / base.wheelbase) },
    }
    const settled = settle({ unit: fitted, turf, condition: standing })
    if (settled.outcome !== 'settled') throw new Error(settled.outcome)
    return settled.drop.middle - larger * (1 - point)
  }

  for (const [kind, family] of [
    ['power', families.power!],
    ['stiffening with spread', withSpread(families.stiffening!)],
    ['layered', families.layered!],
  ] as const)
    for (const front of ['stout', 'grooved'] as const)
      for (const point of [0.1, 118 / 210, 0.9])
        test(`${kind}, ${front} in front, at ${point.toFixed(2)} of the wheelbase`, () => {
          expectAgrees(family, reading(front, undefined, { kind: 'drop', drop: mm, point }), turf =>
            dropOf(unit, front, point, turf),
          )
        })

  test('power, a unit heavier on its right side', () => {
    const leaning: Unit = { ...unit, body: { ...unit.body, offset: 25 * mm } }
    expectAgrees(
      families.power!,
      reading('stout', undefined, { kind: 'drop', drop: mm, point: 0.4 }),
      turf => dropOf(leaning, 'stout', 0.4, turf),
      leaning,
    )
  })

  test('power, something stuck to the roller in front', () => {
    const stuck = 0.6 * mm
    const dirty: Unit = { ...unit, frontRoller: { ...unit.frontRoller, buildUp: stuck } }
    const point = 0.3
    expectAgrees(
      families.power!,
      {
        ...reading('smooth', undefined, { kind: 'drop', drop: mm, point }),
        foot: { kind: 'roller', name: null },
      },
      turf => {
        const settled = settle({
          unit: { ...dirty, edge: point * dirty.wheelbase },
          turf,
          condition: standing,
        })
        if (settled.outcome !== 'settled') throw new Error(settled.outcome)
        return settled.drop.middle
      },
      dirty,
    )
  })
})

test('a roller without a load stands under that of the unit it is on', () => {
  const family = families.linear!
  const load = levelLoads({ ...unit, frontRoller: rollers.stout }).front
  expectAgrees(family, reading('stout', undefined, { kind: 'sinkage', sinkage: mm }), turf =>
    sinkageOf('stout', load, turf),
  )
})
