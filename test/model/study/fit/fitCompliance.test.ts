import {
  type ComplianceFit,
  type ComplianceQuestion,
  fitCompliance,
  formulaLaw,
  type PressureLaw,
  press,
  pressureAt,
  type Reading,
  softnessOf,
  type Turf,
  turfOf,
} from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded } from '../../../support/arbitraries.ts'
import { expectNear, ofSize, stated } from '../../../support/tolerance.ts'
import { loadsFor, type Presser, readingsOf, rollers, scenario, standing } from './knownReadings.ts'

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

const made = await formulaLaw({ expression: 'k * z^n', values: { k: 3e6, n: 0.8 } })
if (!made.ok) throw new Error(made.problems[0]?.expected)
const written = made.law

const points: PressureLaw = {
  kind: 'measured',
  points: [
    { sinkage: 0.4 * mm, pressure: 5e3 },
    { sinkage: 1.1 * mm, pressure: 14e3 },
    { sinkage: 2.6 * mm, pressure: 60e3 },
  ],
}

describe('readings without error give back the turf they were made with, from far starts', () => {
  type Case = {
    readonly turf: Turf
    /** What is free, and what it was. */
    readonly free: Readonly<Record<string, number>>
    readonly starts: readonly Readonly<Record<string, number>>[]
    readonly pressers?: readonly Presser[]
  }
  const soft = [0.02 * mm, 0.3 * mm, 12 * mm]
  const cases: Readonly<Record<string, Case>> = {
    linear: {
      turf: { law: { kind: 'linear', softness: 0.9 * mm } },
      free: { softness: 0.9 * mm },
      starts: soft.map(softness => ({ softness })),
    },
    power: {
      turf: { law: { kind: 'power', softness: 0.9 * mm, exponent: 0.62 } },
      free: { softness: 0.9 * mm, exponent: 0.62 },
      starts: soft.flatMap(softness => [0.25, 1.9].map(exponent => ({ softness, exponent }))),
    },
    'power with spread': {
      turf: { law: { kind: 'power', softness: 0.9 * mm, exponent: 0.8 }, spread: 1.3 * mm },
      free: { softness: 0.9 * mm, exponent: 0.8, spread: 1.3 * mm },
      starts: [{ spread: 0 }, { spread: 6 * mm }, { softness: 6 * mm, exponent: 1.6, spread: 0.1 * mm }],
      pressers: ['smooth', 'grooved', 'discs'],
    },
    stiffening: {
      turf: { law: { kind: 'stiffening', softness: 0.9 * mm, lockingDepth: 5 * mm } },
      free: { softness: 0.9 * mm, lockingDepth: 5 * mm },
      starts: [
        { softness: 0.1 * mm, lockingDepth: 60 * mm },
        { softness: 3 * mm, lockingDepth: 4 * mm },
        { softness: 0.5 * mm, lockingDepth: 0.6 * mm },
      ],
    },
    logarithmic: {
      turf: { law: { kind: 'logarithmic', softness: 0.9 * mm, lockingDepth: 5 * mm } },
      free: { softness: 0.9 * mm, lockingDepth: 5 * mm },
      starts: [
        { softness: 0.1 * mm, lockingDepth: 60 * mm },
        { softness: 3 * mm, lockingDepth: 4 * mm },
      ],
    },
    layered: {
      turf: {
        law: {
          kind: 'layered',
          upper: { kind: 'stiffening', softness: 0.4 * mm, lockingDepth: 1.1 * mm },
          lower: { kind: 'linear', softness: 0.5 * mm },
        },
      },
      free: { 'upper.softness': 0.4 * mm, 'upper.lockingDepth': 1.1 * mm, 'lower.softness': 0.5 * mm },
      starts: [
        {},
        { 'upper.softness': 0.3 * mm, 'upper.lockingDepth': 1.6 * mm, 'lower.softness': 0.8 * mm },
      ],
    },
    measured: {
      turf: { law: points },
      free: { softness: softnessOf(points) },
      starts: soft.map(softness => ({ softness })),
    },
    formula: {
      turf: { law: written },
      free: { k: 3e6, n: 0.8 },
      starts: [
        { k: 8e6, n: 1 },
        { k: 4e5, n: 0.6 },
      ],
    },
  }

  const usual: readonly Presser[] = ['smooth', 'grooved', 26, 40]
  for (const [name, { turf, free, starts, pressers = usual }] of Object.entries(cases))
    test(name, () => {
      const readings = readingsOf({ turf, pressers, loads: loadsFor })
      const known = ['linear', 'power', 'stiffening', 'logarithmic'].includes(turf.law.kind)
      const law = known ? turf.law.kind : turf.law
      // nothing told, then each start
      for (const start of [{}, ...starts]) {
        const fit = solved({ readings, law, free: Object.keys(free), noise: estimated, start })
        expect(fit.outcome, JSON.stringify(start)).toBe('converged')
        for (const [one, was] of Object.entries(free))
          expectNear(numberIn(fit, one), was, fitted, `${one} from ${JSON.stringify(start)}`)
        expectNear(softnessOf(turfOf(fit).law), softnessOf(turf.law), fitted)
      }
    })
})

describe('what does not matter', () => {
  const turf: Turf = { law: { kind: 'power', softness: 0.8 * mm, exponent: 0.75 } }
  const readings = readingsOf({ turf, pressers: ['smooth', 'grooved', 30], loads: loadsFor, error: wobble })
  const question = { readings, law: 'power', free: ['softness', 'exponent'], noise: estimated } as const
  const fit = solved(question)

  test('the order of the readings', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(readings, { minLength: readings.length }), shuffled => {
        const again = solved({ ...question, readings: shuffled })
        for (const name of question.free) {
          const [one, other] = [fit, again].map(each => each.parameters.find(found => found.name === name)!)
          expectNear(other!.value, one!.value, searched)
          expectNear(other!.standardError!, one!.standardError!, stated(1e-6))
        }
        expectNear(again.sumOfSquares, fit.sumOfSquares, searched)
      }),
      bounded(10),
    )
  })

  test('the metre, the kilogram and the second', () => {
    // lengths by a, pressures by b, as test/model/contact/scaling.test.ts explains
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.constantFrom(0.5, 2), (power, b) => {
        const a = 10 ** power
        const longer = (roller: (typeof rollers)['grooved'] | (typeof rollers)['smooth']) => ({
          ...roller,
          diameter: a * roller.diameter,
          length: a * roller.length,
          surface:
            roller.surface.kind === 'smooth'
              ? roller.surface
              : {
                  ...roller.surface,
                  pitch: a * roller.surface.pitch,
                  land: a * roller.surface.land,
                  depth: a * roller.surface.depth,
                },
        })
        const scaled = readings.map((reading): Reading => {
          const { foot, measured, load } = reading
          return {
            ...reading,
            foot: 'diameter' in foot ? { ...foot, diameter: a * foot.diameter } : foot,
            load: load! * a * a * b,
            measured: { kind: 'sinkage', sinkage: a * (measured as { sinkage: number }).sinkage },
          }
        })
        const again = solved({
          ...question,
          readings: scaled,
          scenario: {
            ...scenario,
            rollers: { smooth: longer(rollers.smooth), grooved: longer(rollers.grooved) },
          },
        })
        const n = numberIn(fit, 'exponent')
        expectNear(numberIn(again, 'exponent'), n, searched)
        expectNear(numberIn(again, 'softness'), numberIn(fit, 'softness') * a * b ** (-1 / n), searched)
        expectNear(again.residualStandardDeviation!, a * fit.residualStandardDeviation!, searched)
      }),
      bounded(12),
    )
  })

  test('whether sets that share nothing are fitted together or apart', () => {
    const [one, two] = (
      [
        ['one', 0.6],
        ['two', 1.4],
      ] as const
    ).map(([set, softness]) =>
      readingsOf({
        turf: { law: { kind: 'stiffening', softness: softness * mm, lockingDepth: 5 * mm } },
        pressers: ['smooth', 26],
        loads: loadsFor,
        set,
        error: wobble,
      }),
    )
    const known = { kind: 'known', standardDeviation: 0.01 * mm } as const
    const free = ['softness', 'lockingDepth']
    const together = solved({
      readings: [...one!, ...two!],
      law: 'stiffening',
      free: free.map(name => ({ name, per: 'set' as const })),
      noise: known,
    })
    for (const [set, readings] of [
      ['one', one!],
      ['two', two!],
    ] as const) {
      const alone = solved({ readings, law: 'stiffening', free, noise: known })
      for (const name of free) {
        expectNear(numberIn(together, name, set), numberIn(alone, name), searched)
        const error = (fit: ComplianceFit, of?: string) =>
          fit.parameters.find(found => found.name === name && found.set === of)!.standardError!
        expectNear(error(together, set), error(alone), stated(1e-6))
      }
      const { law } = turfOf(together, set)
      expectNear(softnessOf(law), softnessOf(turfOf(alone).law), searched)
    }
  })

  test('whether a plate is told by its diameter, its area, its load or its pressure', () => {
    const area = (Math.PI * (30 * mm) ** 2) / 4
    const other = readings.map((reading): Reading => {
      if (reading.foot.kind !== 'plate') return reading
      const { load, ...rest } = reading
      return { ...rest, foot: { kind: 'plate', area }, pressure: load! / area }
    })
    expectNear(
      numberIn(solved({ ...question, readings: other }), 'softness'),
      numberIn(fit, 'softness'),
      searched,
    )
  })
})

describe('the fitted turf', () => {
  const turf: Turf = { law: { kind: 'power', softness: 0.8 * mm, exponent: 0.75 } }
  const readings = readingsOf({ turf, pressers: [30], loads: loadsFor, error: wobble })
  const fit = solved({ readings, law: 'power', free: ['softness', 'exponent'], noise: estimated })

  test('carries the pressures of its readings, and marks what lies outside', () => {
    const known = turfOf(fit)
    expectNear(fit.pressures!.low, 6e3, searched)
    expectNear(fit.pressures!.high, 27e3, searched)
    const kinds = (load: number) =>
      press({ roller: rollers.smooth, turf: known, load, condition: standing }).cautions.map(
        ({ kind }) => kind,
      )
    expect(kinds(90)).toEqual([])
    expect(kinds(600)).toContain('extrapolated')
    expect(kinds(8)).toContain('below the fitted pressures')
  })

  test('answers its readings as the fit says, and survives JSON', () => {
    const read = JSON.parse(JSON.stringify(fit)) as ComplianceFit
    expect(read).toEqual(fit)
    read.readings.forEach((reading, i) => {
      expectNear(reading.measured - reading.predicted!, read.residuals[i]!, ofSize(mm, stated(1e-10)))
      const area = (Math.PI * (30 * mm) ** 2) / 4
      expectNear(pressureAt(turfOf(read).law, reading.predicted!), reading.load! / area, searched)
    })
  })
})
