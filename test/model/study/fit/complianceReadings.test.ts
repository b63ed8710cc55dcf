import {
  type ComplianceFit,
  type ComplianceQuestion,
  fitCompliance,
  type PressureLaw,
  type Reading,
  type Turf,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { answersOf } from '../../../../packages/model/src/study/fit/compliance/answersOf.ts'
import { expectNear, stated } from '../../../support/tolerance.ts'
import { loadsFor, readingsOf, scenario } from './knownReadings.ts'

const mm = 1e-3
/** The search stops when a step would move a number by a hundred millionth of itself. */
const searched = stated(1e-7)
const estimated = { kind: 'estimated' } as const

/** Where the sum of squares is flat to rounding: half its digits are left to the parameters. */
const fitted = stated(1e-6)

function solved(question: Omit<ComplianceQuestion, 'scenario'> & Partial<ComplianceQuestion>): ComplianceFit {
  const fit = fitCompliance({ scenario, ...question })
  if (fit.outcome === 'failed') throw new Error(fit.why)
  return fit
}

const numberIn = (fit: ComplianceFit, name: string, set?: string): number => {
  const found = fit.parameters.find(one => one.name === name && one.set === set)
  if (!found) throw new Error(`no ${name}`)
  return found.value
}

/** About a hundredth of a millimetre, another for every row. */
const wobble = (row: number) => 0.012 * mm * Math.sin(12.9898 * row)

describe('zeros that are not known', () => {
  const law: PressureLaw = { kind: 'stiffening', softness: 0.8 * mm, lockingDepth: 5 * mm }
  const shifted = (set: string, by: number) =>
    readingsOf({ turf: { law }, pressers: ['smooth', 'grooved'], loads: loadsFor, set, error: () => by })

  test('a datum a set takes up where its gauge began', () => {
    const readings = [...shifted('one', 0.4 * mm), ...shifted('two', -1.7 * mm)]
    const fit = solved({
      readings,
      law: 'stiffening',
      free: ['softness', 'lockingDepth'],
      noise: estimated,
      datum: 'per set',
    })
    expectNear(numberIn(fit, 'softness'), 0.8 * mm, fitted)
    expectNear(numberIn(fit, 'lockingDepth'), 5 * mm, fitted)
    expectNear(numberIn(fit, 'datum', 'one'), 0.4 * mm, fitted)
    expectNear(numberIn(fit, 'datum', 'two'), -1.7 * mm, fitted)
  })

  const drop = (name: string | null, read: number, set: string, row: number, point?: number): Reading => ({
    row,
    set,
    foot: { kind: 'roller', name },
    measured: { kind: 'drop', drop: read, ...(point === undefined ? {} : { point }) },
    count: 1,
  })

  test('drops of the unit under several rollers give softness, whatever the datum', () => {
    const turf: Turf = { law: { kind: 'linear', softness: 1.3 * mm }, spread: 1.2 * mm }
    const known = { parameters: [], turfs: { '': turf }, turf, perSet: [] }
    const names = ['smooth', 'stout', 'grooved', 'discs', null] as const
    const answers = answersOf(
      { ...known, parameters: [held('spread', 1.2 * mm)] },
      names.map(name => ({ foot: { kind: 'roller', name }, point: 0.4 })),
      scenario,
    )
    const readings = answers.map((answer, i) => drop(names[i]!, answer!.value + 3.3 * mm, '', 10 + i, 0.4))
    const fit = solved({
      readings,
      law: 'linear',
      free: ['softness'],
      noise: estimated,
      start: { spread: 1.2 * mm },
    })
    expectNear(numberIn(fit, 'softness'), 1.3 * mm, fitted)
    expectNear(numberIn(fit, 'datum', ''), 3.3 * mm, fitted)
    expect(fit.loads).toBeNull()
    expect(fit.pressures!.low).toBeGreaterThan(1e3)
  })

  test('drops with nothing to compare them with are left out, and alone refused', () => {
    const readings = [...shifted('one', 0), drop('stout', 2 * mm, 'alone', 99)]
    const fit = solved({ readings, law: 'stiffening', free: ['softness', 'lockingDepth'], noise: estimated })
    expect(fit.leftOut).toEqual([{ row: 99, why: expect.stringMatching(/^from an unknown zero/) }])
    expect(fit.readings).toHaveLength(readings.length - 1)
    expect(() =>
      solved({
        readings: [drop('stout', 2 * mm, 'a', 5), drop('stout', 2.1 * mm, 'a', 6)],
        law: 'linear',
        free: ['softness'],
        noise: estimated,
      }),
    ).toThrow(
      /readings: expected readings of a sinkage, or drops .* received none \(row 5: from an unknown zero/,
    )
  })

  test('a reading under no load is left out and told, whatever it says', () => {
    const readings = shifted('one', 0.02 * mm)
    const [first] = readings
    if (!first) throw new Error('no reading')
    const { load: _, ...unloaded } = first
    const question = {
      law: 'stiffening',
      free: ['softness'],
      noise: estimated,
      start: { lockingDepth: 5 * mm },
    } as const
    const zero: Reading = { ...unloaded, row: 50, load: 0, measured: { kind: 'sinkage', sinkage: 0.02 * mm } }
    const fit = solved({ ...question, readings: [...readings, zero] })
    expect(fit.leftOut).toEqual([{ row: 50, why: expect.stringMatching(/^under no load/) }])
    expectNear(numberIn(fit, 'softness'), numberIn(solved({ ...question, readings }), 'softness'), searched)
  })

  test('a set with sinkages and drops keeps two zeros apart', () => {
    const mixed = [
      ...shifted('one', 0.2 * mm),
      drop('stout', 2 * mm, 'one', 90),
      drop('smooth', 2.2 * mm, 'one', 91),
    ]
    const names = solved({
      readings: mixed,
      law: 'linear',
      free: ['softness'],
      noise: estimated,
      datum: 'per set',
    }).parameters.map(({ name }) => name)
    expect(names).toEqual(['softness', 'datum', 'dropDatum', 'spread'])
  })

  const held = (name: string, value: number) =>
    ({
      name,
      value,
      standardError: null,
      interval: { kind: 'undetermined', why: 'held' },
      state: 'fixed',
    }) as const
})

describe('how much a reading counts', () => {
  const turf: Turf = { law: { kind: 'linear', softness: 0.8 * mm } }
  const plain = readingsOf({ turf, pressers: ['smooth', 30], loads: loadsFor, error: wobble })
  const fitOf = (readings: readonly Reading[], noise: ComplianceQuestion['noise'] = estimated) =>
    solved({ readings, law: 'linear', free: ['softness'], noise })
  const known = { kind: 'known', standardDeviation: 0.02 * mm } as const

  test('n of the variance of one when it is the mean of n', () => {
    const means = plain.map((reading, i) => (i % 2 === 0 ? reading : { ...reading, count: 4 }))
    const copies = plain.flatMap((reading, i) => Array<Reading>(i % 2 === 0 ? 1 : 4).fill(reading))
    const [one, other] = [fitOf(means, known), fitOf(copies, known)]
    expectNear(numberIn(one, 'softness'), numberIn(other, 'softness'), searched)
    expectNear(one.parameters[0]!.standardError!, other.parameters[0]!.standardError!, searched)
  })

  test('a gauge that reads in steps adds a twelfth of the square of one', () => {
    const stepped = plain.map(reading => ({ ...reading, gaugeStep: 0.05 * mm }))
    const weight = 1 / ((0.02 * mm) ** 2 + (0.05 * mm) ** 2 / 12)
    for (const one of fitOf(stepped, known).weights) expectNear(one, weight, stated(1e-12))
  })

  test('its own standard deviation goes before that of the noise', () => {
    const own = plain.map((reading, i) => (i === 0 ? { ...reading, standardDeviation: 0.1 * mm } : reading))
    const { weights } = fitOf(own, known)
    expectNear(weights[0]!, 1 / (0.1 * mm) ** 2, stated(1e-12))
    expectNear(weights[1]!, 1 / (0.02 * mm) ** 2, stated(1e-12))
  })

  test('estimated scatter is of a single reading, and where some have no deviation it is said', () => {
    expect(fitOf(plain.map(reading => ({ ...reading, count: 3 }))).weights).toEqual(plain.map(() => 3))
    const some = plain.map((reading, i) => (i < 3 ? { ...reading, standardDeviation: 0.03 * mm } : reading))
    const fit = fitOf(some)
    expect(fit.notes).toEqual([`${plain.length - 3} of ${plain.length} ${missing}`])
    for (const weight of fit.weights) expectNear(weight, 1, stated(1e-12))
  })
  const missing = 'readings have no standard deviation: they are given the root mean square of the others'

  test('a robust loss is hardly moved by one reading that is far off', () => {
    const bad = plain.map((reading, i) =>
      i === 2 ? { ...reading, measured: { kind: 'sinkage' as const, sinkage: 5 * mm } } : reading,
    )
    const question = { readings: bad, law: 'linear', free: ['softness'], noise: estimated } as const
    const robust = solved({ ...question, loss: { kind: 'bisquare', at: 4.685 } })
    const truth = numberIn(fitOf(plain), 'softness')
    expectNear(numberIn(robust, 'softness'), truth, stated(0.02))
    expect(Math.abs(numberIn(solved(question), 'softness') / truth - 1)).toBeGreaterThan(0.1)
  })
})
