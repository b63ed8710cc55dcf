import {
  type Candidate,
  type ComplianceFit,
  fitCompliance,
  InputError,
  nextReading,
  type Reading,
  settle,
  type Turf,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, identity, ofSize, stated } from '../../../support/tolerance.ts'
import { smooth, unitWith } from '../uncertainty/unitAtEllerby.ts'

const mm = 1e-3
const unit = unitWith(smooth)
const rollers = { fitted: unit.frontRoller, stout: { ...unit.frontRoller, mass: 9.4, diameter: 66 * mm } }
const scenario = { unit, rollers }

/** The number in the unit square after k, spread evenly: scatter that is the same in every run. */
const wobble = (k: number) => ((k * 0.618034) % 1) - 0.5

type Foot = Reading['foot']
const plate = (diameter: number): Foot => ({ kind: 'plate', diameter })
const roller = (name: string): Foot => ({ kind: 'roller', name })

/** Readings of plates on turf of the power law without spread, with a wobble. Invented. */
const readingsOf = (feet: readonly (readonly [Foot & { kind: 'plate' }, number])[], set = ''): Reading[] =>
  feet.map(([foot, load], k) => {
    const area = 'area' in foot ? foot.area : (Math.PI * foot.diameter ** 2) / 4
    const sinkage = 0.66 * mm * (load / area / 10e3) ** (1 / 0.82) + 0.04 * mm * wobble(k + 1)
    return { row: k + 2, set, foot, load, measured: { kind: 'sinkage', sinkage }, count: 1 }
  })

const fifty = { kind: 'plate', diameter: 50 * mm } as const
const onPlates = readingsOf([16, 24, 33, 41, 52, 60].map(load => [fifty, load] as const))

function fitOf(question: Partial<Parameters<typeof fitCompliance>[0]> = {}): ComplianceFit {
  const fit = fitCompliance({
    readings: onPlates,
    law: 'power',
    free: ['softness', 'exponent'],
    noise: { kind: 'known', standardDeviation: 0.03 * mm },
    scenario,
    ...question,
  })
  return fit.outcome === 'failed' ? expect.fail(fit.why) : fit
}

/** The reading that the fit expects of a candidate. */
const expectedReading = ({ foot, load, set = '' }: Candidate, expected: number, row: number): Reading => ({
  row,
  set,
  foot,
  ...(load === undefined ? {} : { load }),
  measured: { kind: 'sinkage', sinkage: expected },
  count: 1,
})

const candidates: Candidate[] = [
  { foot: plate(50 * mm), load: 12 },
  { foot: plate(50 * mm), load: 48 },
  { foot: plate(50 * mm), load: 95 },
  { foot: plate(80 * mm), load: 95 },
  { foot: roller('fitted'), load: 130 },
  { foot: roller('stout'), load: 240 },
]

/** cᵀ C c, c by settle on the turf with its numbers moved. */
function heightVariance(fit: ComplianceFit): number {
  const [softness, exponent] = fit.parameters.map(({ value }) => value)
  const at = (s: number, n: number): number => {
    const turf: Turf = { law: { kind: 'power', softness: s, exponent: n } }
    const settled = settle({ unit, turf, condition: { kind: 'standing' } })
    return settled.outcome === 'settled' ? settled.effectiveHeight.middle : expect.fail(settled.outcome)
  }
  const [s, n] = [softness ?? expect.fail(), exponent ?? expect.fail()]
  const [h, k] = [s * 1e-4, n * 1e-4]
  const c = [(at(s + h, n) - at(s - h, n)) / (2 * h), (at(s, n + k) - at(s, n - k)) / (2 * k)]
  const C = fit.covariance ?? expect.fail('no covariance')
  return c.reduce(
    (sum, ci, i) => sum + c.reduce((row, cj, j) => row + ci * cj * (C[i]?.[j] ?? Number.NaN), 0),
    0,
  )
}

// The covariance after one more reading: Sherman and Morrison 1950; rankings: Atkinson, Donev and Tobias 2007, Optimum
// Experimental Designs (from memory).
describe('what a reading narrows is what fitting it too would narrow', () => {
  const fit = fitOf()
  const told = nextReading({ fit, candidates, scenario, unit })
  const refitted = (candidate: Candidate, expected: number, replicates = 1) =>
    fitOf({
      readings: [
        ...onPlates,
        ...Array.from({ length: replicates }, (_, k) => expectedReading(candidate, expected, 90 + k)),
      ],
    })

  test('for the height, each number and all of them', () => {
    expect(told.ranked).toHaveLength(candidates.length)
    for (const one of told.ranked) {
      const again = refitted(one.candidate, one.expected)
      const left = heightVariance(again) / heightVariance(fit)
      expectNear(1 - (one.height?.narrowed ?? Number.NaN), left, stated(1e-5))
      one.parameters.forEach(({ standardError }, k) => {
        expectNear(standardError, again.parameters[k]?.standardError ?? Number.NaN, stated(1e-5))
      })
      const determinant = ({ covariance }: ComplianceFit) => {
        const [[a = 0, b = 0] = [], [c = 0, d = 0] = []] = covariance ?? []
        return a * d - b * c
      }
      expectNear(one.volume ** 2, determinant(again) / determinant(fit), stated(1e-5))
    }
  })

  test('best first: no other candidate leaves less of the variance of the height', () => {
    const left = told.ranked.map(one => heightVariance(refitted(one.candidate, one.expected)))
    expect(left).toEqual([...left].sort((a, b) => a - b))
    expect(told.aim).toEqual({ kind: 'height' })
    expect(told.sentence).toMatch(/^Measure .* next: the height would be known to /)
  })

  test('three readings alike narrow as three readings fitted', () => {
    const thrice = { ...(candidates[4] ?? expect.fail()), replicates: 3 }
    const [one] = nextReading({ fit, candidates: [thrice], scenario, unit }).ranked
    const again = refitted(thrice, one?.expected ?? Number.NaN, 3)
    expectNear(1 - (one?.narrowed ?? Number.NaN), heightVariance(again) / heightVariance(fit), stated(1e-5))
  })

  test('a sequence is the best reading, then the best after it', () => {
    const { sequence } = nextReading({ fit, candidates, scenario, unit, budget: 3 })
    expect(sequence.map(({ spent }) => spent)).toEqual([1, 2, 3])
    let readings = onPlates
    sequence.forEach(({ candidate, left }, k) => {
      const before = fitOf({ readings })
      const here = nextReading({ fit: before, candidates, scenario, unit })
      expect(here.ranked[0]?.candidate).toEqual(candidate)
      const expected = here.ranked[0]?.expected ?? Number.NaN
      readings = [...readings, expectedReading(candidate, expected, 90 + k)]
      expectNear(left, Math.sqrt(heightVariance(fitOf({ readings }))), stated(1e-4))
    })
  })

  test('another aim ranks by itself', () => {
    for (const name of ['softness', 'exponent']) {
      const aimed = nextReading({ fit, candidates, scenario, aim: { kind: 'parameter', name } })
      const errors = aimed.ranked.map(one => one.parameters.find(each => each.name === name)?.standardError)
      expect(errors).toEqual([...errors].sort((a = 0, b = 0) => a - b))
    }
    const all = nextReading({ fit, candidates, scenario })
    expect(all.aim).toEqual({ kind: 'all' })
    const volumes = all.ranked.map(({ volume }) => volume)
    expect(volumes).toEqual([...volumes].sort((a, b) => a - b))
  })
})

describe('closed forms', () => {
  test('one number, one foot: the variance goes as one more of the sums of squares', () => {
    const readings = onPlates.map(one => ({ ...one }))
    const fit = fitOf({ readings, law: 'linear', free: ['softness'] })
    // z = s p/p_r: every reading tells s with the variance (sd p_r/p)²
    const pressures = [16, 24, 33, 41, 52, 60].map(load => load / (Math.PI * (25 * mm) ** 2) / 10e3)
    const known = pressures.reduce((sum, p) => sum + p * p, 0)
    const [one] = nextReading({ fit, candidates: [{ foot: plate(50 * mm), pressure: 30e3 }] }).ranked
    expectNear(one?.narrowed ?? Number.NaN, 9 / (known + 9), stated(1e-9))
    expectNear(
      one?.parameters[0]?.standardError ?? Number.NaN,
      (0.03 * mm) / Math.sqrt(known + 9),
      stated(1e-9),
    )
  })

  test('readings needed: nine tenths of what endless ones give', () => {
    const fit = fitOf({ law: 'linear', free: ['softness'] })
    const aim = { kind: 'parameter', name: 'softness' } as const
    const told = nextReading({ fit, candidates: [{ foot: plate(50 * mm), pressure: 30e3 }], aim })
    const known = [16, 24, 33, 41, 52, 60].reduce(
      (sum, load) => sum + (load / (Math.PI * (25 * mm) ** 2) / 10e3) ** 2,
      0,
    )
    // 9 n/(known + 9 n) ≥ 0.9
    expect(told.enough).toBe(Math.ceil(known))
  })
})

describe('what the readings can not tell', () => {
  const onePlate = {
    law: 'linear',
    free: ['softness', 'spread'],
    start: { spread: 2 * mm },
  } as const

  test('softness and spread from one plate: another size is asked for, and what was assumed is said', () => {
    const fit = fitOf(onePlate)
    expect(fit.covariance).toBeNull()
    const offered: Candidate[] = [16, 40, 60].flatMap(load => [
      { foot: plate(50 * mm), load },
      { foot: plate(20 * mm), load: load / 6 },
      { foot: plate(120 * mm), load: 5 * load },
    ])
    const told = nextReading({ fit, candidates: offered, aim: { kind: 'parameter', name: 'spread' } })
    expect(told.assumed.map(({ name }) => name)).toEqual(['softness', 'spread'])
    expect(told.ranked[0]?.candidate.foot).not.toEqual(plate(50 * mm))
    const same = told.ranked.filter(
      ({ candidate }) => 'diameter' in candidate.foot && candidate.foot.diameter === 50 * mm,
    )
    for (const { narrowed } of same) expect(narrowed).toBeLessThan((told.ranked[0]?.narrowed ?? 0) / 4)
  })

  test('a reading at the load already read most says little of the exponent', () => {
    const fit = fitOf()
    const told = nextReading({
      fit,
      candidates: [30, 34, 38, 90].map(load => ({ foot: plate(50 * mm), load })),
      aim: { kind: 'parameter', name: 'exponent' },
    })
    expect(told.ranked[0]?.candidate.load).toBe(90)
  })
})

describe('usual candidates', () => {
  test('are a ladder of loads on every plate read and every roller of the scenario', () => {
    const told = nextReading({ fit: fitOf(), scenario })
    const all = [
      ...told.ranked.map(({ candidate }) => candidate),
      ...told.leftOut.map(({ candidate }) => candidate),
    ]
    expect(new Set(all.map(({ foot }) => JSON.stringify(foot)))).toEqual(
      new Set([plate(50 * mm), roller('fitted'), roller('stout')].map(foot => JSON.stringify(foot))),
    )
    for (const { foot, load = 0 } of all)
      if (foot.kind === 'roller') expect(load).toBeGreaterThan(rollers[foot.name as 'stout'].mass * 9.8)
  })

  test('what costs more than it tells comes later', () => {
    const fit = fitOf()
    const [best] = nextReading({ fit, candidates, scenario, unit }).ranked
    const dear = candidates.map(one => (one === best?.candidate ? { ...one, cost: 50 } : { ...one, cost: 1 }))
    expect(nextReading({ fit, candidates: dear, scenario, unit }).ranked.at(-1)?.candidate.cost).toBe(50)
  })
})

describe('sets', () => {
  const north = readingsOf(
    [16, 33, 60].map(load => [fifty, load] as const),
    'north',
  )
  const south = readingsOf(
    [16, 33, 60].map(load => [fifty, load] as const),
    'south',
  )
  const fit = fitOf({
    readings: [...north, ...south.map(one => ({ ...one, row: one.row + 10 }))],
    law: 'linear',
    free: [{ name: 'softness', per: 'set' }],
  })

  test('a reading in one set tells nothing of the other', () => {
    const told = nextReading({
      fit,
      unit,
      set: 'north',
      candidates: ['north', 'south'].map(set => ({ foot: plate(50 * mm), load: 60, set })),
    })
    expect(told.ranked.map(({ candidate }) => candidate.set)).toEqual(['north', 'south'])
    expectNear(told.ranked[1]?.narrowed ?? Number.NaN, 0, ofSize(1, identity))
  })

  test('a drop without another drop to compare it with is left out, with the reason', () => {
    const told = nextReading({
      fit,
      scenario,
      candidates: [
        { foot: roller('stout'), point: 0.5, set: 'north' },
        { foot: plate(50 * mm), load: 60, set: 'north' },
      ],
    })
    expect(told.leftOut).toHaveLength(1)
    expect(told.leftOut[0]?.why).toContain('no drop in its set')
  })

  test('refuses a fit of several sets without one named, and candidates of nothing', () => {
    expect(() => nextReading({ fit, unit })).toThrow(InputError)
    expect(() => nextReading({ fit, candidates: [] })).toThrow('candidates: expected at least one')
    expect(() =>
      nextReading({ fit, candidates: [{ foot: plate(50 * mm), load: 60, set: 'north', replicates: 0 }] }),
    ).toThrow('candidates.0.replicates')
    expect(() => nextReading({ fit, aim: { kind: 'parameter', name: 'exponent' } })).toThrow(
      'aim.name: expected one of softness',
    )
  })
})

describe('drops from an unknown zero', () => {
  const names = Object.keys(rollers) as (keyof typeof rollers)[]
  const drops = names.flatMap((name, k) =>
    [0.4, 0.6].map((point, j): Reading => {
      const settled = settle({
        unit: { ...unit, frontRoller: rollers[name] },
        turf: { law: { kind: 'linear', softness: 0.8 * mm } },
        condition: { kind: 'standing' },
      })
      const { front, rear } = settled.outcome === 'settled' ? settled : expect.fail(settled.outcome)
      const sunk = front.sinkage + (rear.sinkage - front.sinkage) * point
      // a larger roller, fitted without re-setting, lifts the unit
      const lift = ((rollers[name].diameter - unit.frontRoller.diameter) / 2) * (1 - point)
      const drop = sunk - lift + 2.2 * mm + 0.02 * mm * wobble(2 * k + j)
      return {
        row: 2 + 2 * k + j,
        set: 'orchard',
        foot: roller(name),
        measured: { kind: 'drop', drop, point },
        count: 1,
      }
    }),
  )
  const fit = fitOf({ readings: drops, law: 'linear', free: ['softness'] })

  test('a reading from the turf itself tells more than another drop', () => {
    const told = nextReading({
      fit,
      scenario,
      unit,
      candidates: [
        { foot: roller('fitted'), point: 0.5, set: 'orchard' },
        { foot: roller('fitted'), load: 130, set: 'orchard' },
      ],
    })
    expect(told.ranked[0]?.candidate.load).toBe(130)
    // the datum is in what a drop would read, and not in the sinkage
    const [sinkage = Number.NaN, drop = Number.NaN] = told.ranked.map(({ expected }) => expected)
    expect(drop - sinkage).toBeGreaterThan(1 * mm)
  })

  test('are what is offered where nothing else was read', () => {
    const told = nextReading({ fit, scenario })
    expect(told.ranked.map(({ candidate }) => candidate.foot)).toHaveLength(names.length)
    expect(told.ranked.every(({ candidate }) => candidate.point === unit.edge / unit.wheelbase)).toBe(true)
    expect(() => nextReading({ fit })).toThrow('candidates: expected candidates by name')
  })
})

test('a ranking survives JSON', () => {
  const told = nextReading({ fit: fitOf(), candidates, scenario, unit, budget: 2 })
  expect(JSON.parse(JSON.stringify(told))).toEqual(told)
})
