import {
  type ComplianceQuestion,
  fitCompliance,
  InputError,
  type PressureLaw,
  type Reading,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { loadsFor, readingsOf, scenario } from './knownReadings.ts'

const mm = 1e-3
const readings = readingsOf({
  turf: { law: { kind: 'linear', softness: mm } },
  pressers: ['smooth', 30],
  loads: loadsFor,
  error: row => 0.01 * mm * Math.sin(7 * row),
})
const question: ComplianceQuestion = {
  readings,
  law: 'power',
  free: ['softness', 'exponent'],
  noise: { kind: 'estimated' },
  scenario,
}
const one = (changed: { readonly [Key in keyof Reading]?: Reading[Key] | undefined }): Reading[] => [
  { ...readings[0]!, row: 7, ...changed } as Reading,
  ...readings,
]

/** A question with a mistake in it, as the compiler would not let it through. */
const wrong = (changed: Record<string, unknown>) => () =>
  fitCompliance({ ...question, ...changed } as unknown as ComplianceQuestion)

describe('refuses, and says what would do', () => {
  const refusals: readonly (readonly [string, () => unknown, string | RegExp])[] = [
    [
      'a parameter that the law has not, naming the nearest',
      wrong({ free: ['softnes'] }),
      'free.0: expected one of softness, exponent, spread (nearest: softness), received "softnes"',
    ],
    [
      'a start or a bound of one',
      wrong({ start: { exponet: 1 } }),
      /start\.exponet: .*\(nearest: exponent\)/,
    ],
    [
      'a bound of one',
      wrong({ bounds: { lockingDepth: { lower: 1 } } }),
      /bounds\.lockingDepth: expected one of/,
    ],
    [
      'a parameter twice',
      wrong({ free: ['softness', 'softness', 'exponent'] }),
      'free: expected every parameter once',
    ],
    [
      'a number that is neither free nor told',
      wrong({ free: ['softness'] }),
      'free: expected exponent among them, or a value for it in start, received softness',
    ],
    [
      'a law of no kind',
      wrong({ law: 'cubic' }),
      /law: expected one of linear, power, stiffening, logarithmic, or a law/,
    ],
    [
      'a law that is more than its kind, by its kind',
      wrong({ law: 'layered', free: [] }),
      /or a law in full, received "layered"/,
    ],
    [
      'a law that makes no sense',
      wrong({ law: { kind: 'power', softness: -1, exponent: 1 } }),
      'law.softness: expected more than 0 mm, received -1000 mm',
    ],
    [
      'no noise',
      wrong({ noise: undefined }),
      'noise.kind: expected one of known, estimated, received nothing',
    ],
    [
      'a known noise of nothing',
      wrong({ noise: { kind: 'known', standardDeviation: 0 } }),
      'noise.standardDeviation: expected more than 0 mm, received 0 mm',
    ],
    ['no readings', wrong({ readings: [] }), 'readings: expected at least one reading, received none'],
    [
      'fewer readings than free numbers',
      wrong({ readings: readings.slice(0, 1) }),
      'readings: expected at least 2 readings for 2 free numbers, datums included, received 1',
    ],
    [
      'heights alone',
      wrong({ readings: one({ measured: { kind: 'height', height: 4 * mm } }).slice(0, 1) }),
      /received none \(row 7: a height after mowing is compared with the fit, never fitted\)/,
    ],
    [
      'a roller that the scenario has not',
      wrong({ readings: one({ foot: { kind: 'roller', name: 'smoth' } }) }),
      'row 7, roller: expected one of "smooth", "stout", "grooved", "discs", received "smoth"',
    ],
    [
      'rollers without a scenario',
      wrong({ scenario: undefined }),
      'scenario: expected the rollers by name, received none',
    ],
    [
      'a plate without a load',
      wrong({ readings: one({ foot: { kind: 'plate', diameter: 30 * mm }, load: undefined }) }),
      'row 7, load: expected a load or a pressure on the plate, received nothing',
    ],
    [
      'a roller without a load or a unit',
      wrong({
        readings: one({ load: undefined }),
        scenario: { rollers: scenario.rollers },
      }),
      'row 7, load: expected a load, or a scenario with the unit that loads the roller, received nothing',
    ],
    [
      'a load that lifts',
      wrong({ readings: one({ load: -4 }) }),
      'row 7, load: expected more than 0 N, received -4 N',
    ],
    [
      'a sinkage that is no number',
      wrong({ readings: one({ measured: { kind: 'sinkage', sinkage: Number.NaN } }) }),
      'row 7, sinkage: expected a finite number, received NaN',
    ],
    ['a datum for anything but a set', wrong({ datum: 'per reading' }), 'datum: expected "per set"'],
    [
      'a parameter for anything but a set',
      wrong({ free: [{ name: 'softness', per: 'row' }, 'exponent'] }),
      /free\.0\.per/,
    ],
    [
      'bounds the wrong way round',
      wrong({ bounds: { exponent: { lower: 1.5, upper: 1 } } }),
      /bounds\.exponent: expected a lower bound below the upper one, between 0\.2 and 2/,
    ],
    [
      'a start that is not positive',
      wrong({ start: { softness: 0 } }),
      'start.softness: expected more than 0, received 0',
    ],
    ['a level of one', wrong({ level: 1 }), 'level: expected more than 0 and less than 1, received 1'],
  ]

  for (const [what, ask, message] of refusals)
    test(what, () => {
      expect(ask).toThrow(InputError)
      expect(ask).toThrow(message)
    })
})

describe('goes on, and says so', () => {
  const fitWith = (changed: Partial<ComplianceQuestion>) => {
    const found = fitCompliance({ ...question, ...changed })
    if (found.outcome === 'failed') throw new Error(found.why)
    return found
  }

  test('heights and later passes are left out with their reasons', () => {
    const found = fitWith({
      readings: [
        ...readings,
        { ...readings[0]!, row: 40, measured: { kind: 'height', height: 4 * mm } },
        { ...readings[0]!, row: 41, pass: 2 },
      ],
    })
    expect(found.leftOut.map(({ row, why }) => [row, why.slice(0, 12)])).toEqual([
      [40, 'a height aft'],
      [41, 'pressed befo'],
    ])
  })

  test('spread beside softness under one foot and a linear law is not determined', () => {
    const found = fitWith({
      readings: readingsOf({
        turf: { law: { kind: 'linear', softness: mm }, spread: mm },
        pressers: [30],
        loads: loadsFor,
        error: row => 0.01 * mm * Math.sin(7 * row),
      }),
      law: 'linear',
      free: ['softness', 'spread'],
    })
    expect(found.covariance).toBeNull()
    for (const { interval, state } of found.parameters) {
      if (state === 'free') expect(interval.kind).toBe('undetermined')
    }
    expect(found.parameters.filter(({ state }) => state === 'free').length).toBeGreaterThan(0)
  })

  test('an exponent the data drive to its end is at its bound', () => {
    // pressure as the cube of the sinkage
    const points = [0.5, 1, 1.5, 2, 2.5].map(z => ({ sinkage: z * mm, pressure: 2e3 * z ** 3 }))
    const cubic: PressureLaw = { kind: 'measured', points }
    const found = fitWith({
      readings: readingsOf({ turf: { law: cubic }, pressers: [30], loads: loadsFor }),
    })
    const exponent = found.parameters.find(({ name }) => name === 'exponent')!
    expect(exponent).toMatchObject({ value: 2, state: 'at bound', standardError: null })
  })

  test('a turf that cannot bear the readings comes as near as it can, and nothing is said of how sure', () => {
    const found = fitWith({
      law: { kind: 'stiffening', softness: 0.1 * mm, lockingDepth: 0.2 * mm },
      free: ['softness'],
    })
    expect(found.outcome).toBe('stopped')
    expect(found.why).toMatch(
      /^stopped: the turf that comes nearest bottoms out under \d of 8 readings, row \d+ first/,
    )
    expect(found.covariance).toBeNull()
    expect(found.parameters[0]!.interval.kind).toBe('undetermined')
    expect(found.readings.some(({ pressure }) => pressure === null)).toBe(true)
    expect(JSON.parse(JSON.stringify(found))).toEqual(found)
  })

  test('a turf that makes no law wherever it is looked for fails with a sentence', () => {
    const found = fitCompliance({
      ...question,
      law: { kind: 'stiffening', softness: 0.1 * mm, lockingDepth: 0.2 * mm },
      free: ['softness'],
      bounds: { softness: { lower: 0.3 * mm } },
    })
    expect(found.outcome).toBe('failed')
    expect(found.why).toMatch(/^failed: /)
    expect(JSON.parse(JSON.stringify(found))).toEqual(found)
  })
})
