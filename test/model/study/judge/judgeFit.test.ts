import { describe, expect, test } from 'vitest'
import {
  acrossFittedSets,
  bands,
  compareLaws,
  judgeFit,
} from '../../../../packages/model/src/study/fit/judge/index.ts'
import { type ComplianceQuestion, fitCompliance } from '../../../../packages/model/src/study/index.ts'
import { expectNear, ofSize, stated } from '../../../support/tolerance.ts'
import { ellerbyReadings } from './ellerbyReadings.ts'

const mm = 1e-3
const kPa = 1e3
const plate = { kind: 'plate', diameter: 60 * mm } as const
const wide = [4, 7, 12, 20, 33].map(p => p * kPa)
const softnesses = [0.7, 0.9, 1.1, 0.8, 1.3, 1].map(s => s * mm)

function fitted(question: ComplianceQuestion) {
  const fit = fitCompliance(question)
  if (fit.outcome === 'failed') return expect.fail(fit.why)
  return { question, fit }
}

const power = (exponent: number) => (set: number) =>
  ({ kind: 'power', softness: softnesses[set]!, exponent }) as const
const question = (more: Partial<ComplianceQuestion> = {}): ComplianceQuestion => ({
  readings: ellerbyReadings({ law: power(0.8), pressures: wide, noise: 0.04 * mm, seed: 32 }),
  law: 'power',
  free: ['softness', 'exponent'],
  noise: { kind: 'estimated' },
  ...more,
})

describe('a sound fit', () => {
  const asked = fitted(question())
  const judged = judgeFit(asked)

  test('has nothing suspicious, follows its repeats and leaves nothing open', () => {
    expect(judged.residuals.sentences).toEqual([])
    expect(judged.lackOfFit).toMatchObject({ kind: 'tested', places: 5 })
    expect(judged.cannotTell).toEqual([])
  })

  test('survives JSON, words and all', () => {
    expect(JSON.parse(JSON.stringify(judged))).toEqual(judged)
  })
})

describe('a law that does not bend as the turf does', () => {
  const judged = judgeFit(fitted(question({ law: 'linear', free: ['softness'] })))

  test('is seen along the load, and by the repeats', () => {
    expect(judged.residuals.sentences.join(' ')).toContain('the residuals bend')
    expect(judged.lackOfFit.sentence).toContain('does not follow the readings')
  })
})

describe('sets that differ and are fitted as one', () => {
  const readings = ellerbyReadings({ law: power(0.8), sets: 3, pressures: wide, noise: 0.04 * mm })
  const pooled = judgeFit(fitted(question({ readings })))

  test('are told to differ, not to drift', () => {
    const said = pooled.residuals.sentences.join(' ')
    expect(said).toContain('The sets differ more than their readings scatter')
    expect(said).not.toContain('drift')
    expect(pooled.lackOfFit.sentence).toContain('or the sets may differ')
  })

  test('are not, when each has a softness of its own', () => {
    const own = judgeFit(fitted(question({ readings, free: [{ name: 'softness', per: 'set' }, 'exponent'] })))
    expect(own.residuals.sentences.join(' ')).not.toContain('differ')
    expect(own.lackOfFit.sentence).not.toContain('differ in what they share')
  })
})

describe('what the readings cannot tell is found through the contact model', () => {
  const firstOf = (asked: ReturnType<typeof fitted>) => judgeFit(asked).cannotTell[0]

  test('spread from one plate', () => {
    const asked = fitted(question({ law: 'linear', free: ['softness', 'spread'], start: { spread: 2 * mm } }))
    expect(firstOf(asked)!.sentence).toMatch(
      /^Spread cannot be told.*: all readings are of one foot \(a plate of 60 mm\)/,
    )
  })

  test('softness and exponent from loads that are alike', () => {
    const readings = ellerbyReadings({
      law: power(0.8),
      pressures: [20, 22, 25, 28].map(p => p * kPa),
      noise: 0.15 * mm,
    })
    const found = firstOf(fitted(question({ readings })))!
    expect(found.reason.kind).toBe('loads alike')
    expect(found.sentence).toContain('the loads differ by less than a factor of two (1.4)')
  })

  test('a locking depth far below the readings', () => {
    const readings = ellerbyReadings({
      law: () => ({ kind: 'stiffening', softness: 0.6 * mm, lockingDepth: 12 * mm }),
      pressures: wide,
      noise: 0.12 * mm,
    })
    const asked = fitted(question({ readings, law: 'stiffening', free: ['softness', 'lockingDepth'] }))
    expect(firstOf(asked)!.sentence).toMatch(
      /^Locking depth cannot be told: the greatest sinkage is [\d.]+ % of it/,
    )
  })
})

describe('bands', () => {
  const asked = fitted(question())
  const { fit } = asked

  test('hold the curve by what each reading pulls its own fitted value', () => {
    const { points, why } = bands({ ...asked, at: { foot: plate, pressures: wide } })
    expect(why).toBeNull()
    points.forEach((point, i) => {
      const row = 2 * i
      const pull = fit.residualStandardDeviation! * Math.sqrt(fit.leverage[row]! / fit.weights[row]!)
      expectNear(point.standardError!, pull, stated(1e-6))
      expectNear(point.sinkage, fit.readings[row]!.predicted!, stated(1e-12))
      expect(point.extrapolated).toBe(false)
    })
  })

  test('of one more reading add its own scatter', () => {
    const [point] = bands({ ...asked, at: { foot: plate, pressures: [10 * kPa] } }).points
    const half = (range: { low: number; high: number }) => (range.high - range.low) / 2
    const t = half(point!.curve!) / point!.standardError!
    // Student's t of eight degrees at 95 % (tables, from memory)
    expectNear(t, 2.306, stated(1e-4))
    expectNear(
      half(point!.reading!),
      t * Math.hypot(point!.standardError!, fit.residualStandardDeviation!),
      stated(1e-9),
    )
  })

  test('of a linear law are the softness’s own', () => {
    const linear = fitted(question({ law: 'linear', free: ['softness'] }))
    const [softness] = linear.fit.parameters
    const { points } = bands({ ...linear, at: { foot: plate, pressures: [5 * kPa, 40 * kPa] } })
    points.forEach(({ sinkage, standardError }) => {
      expectNear(standardError! / sinkage, softness!.standardError! / softness!.value, stated(1e-7))
    })
    expect(points[1]!.extrapolated).toBe(true)
  })

  test('with the noise known have it from the readings', () => {
    const known = fitted(question({ noise: { kind: 'known', standardDeviation: 0.05 * mm } }))
    const [point] = bands({ ...known, at: { foot: plate, pressures: [10 * kPa] }, level: 0.9 }).points
    const { curve, reading, standardError } = point!
    expectNear((curve!.high - curve!.low) / 2 / standardError!, 1.644854, stated(1e-6))
    const beside = ((reading!.high - reading!.low) / 2 / 1.644854) ** 2 - standardError! ** 2
    expectNear(Math.sqrt(beside), 0.05 * mm, stated(1e-6))
  })

  test('ask for the set where each has its own turf, and for loads or pressures', () => {
    const several = fitted(
      question({
        readings: ellerbyReadings({ law: power(0.8), sets: 3, pressures: wide, noise: 0.04 * mm }),
        free: [{ name: 'softness', per: 'set' }, 'exponent'],
      }),
    )
    const at = { foot: plate, pressures: [10 * kPa] }
    expect(() => bands({ ...several, at })).toThrow('at.set')
    expect(bands({ ...several, at: { ...at, set: 'green 2' } }).points[0]!.sinkage).toBeGreaterThan(0.8 * mm)
    expect(() => bands({ ...asked, at: { foot: plate } })).toThrow('either loads or pressures')
  })
})

describe('laws side by side', () => {
  const readings = ellerbyReadings({ law: power(0.8), pressures: wide, noise: 0.04 * mm })
  const compared = compareLaws({
    readings,
    noise: { kind: 'estimated' },
    laws: [
      { law: 'linear', free: ['softness'] },
      { law: 'power', free: ['softness', 'exponent'] },
      { law: 'logarithmic', free: ['softness', 'lockingDepth'] },
    ],
  })

  test('put the law that made the readings first, with its lead', () => {
    expect(compared.laws.map(({ name }) => name)[0]).toBe('power')
    expect(compared.laws[1]!.difference).toBeGreaterThan(10)
    expect(compared.nested.map(({ larger, atEdge }) => [larger, atEdge])).toEqual([
      ['power', false],
      ['logarithmic', true],
    ])
    expect(Object.keys(compared.fits)).toEqual(['linear', 'power', 'logarithmic'])
  })

  test('tell the same in any unit of length but for one constant', () => {
    const lengths = readings.map(reading => ({
      ...reading,
      measured: {
        kind: 'sinkage' as const,
        sinkage: 3 * (reading.measured.kind === 'sinkage' ? reading.measured.sinkage : 0),
      },
    }))
    const other = compareLaws({
      readings: lengths,
      noise: { kind: 'estimated' },
      laws: [
        { law: 'linear', free: ['softness'] },
        { law: 'power', free: ['softness', 'exponent'] },
      ],
    })
    const differenceOf = (of: typeof other, name: string) =>
      of.laws.find(law => law.name === name)!.difference!
    expectNear(differenceOf(other, 'linear'), differenceOf(compared, 'linear'), stated(1e-6))
  })

  test('refuse two laws of one name', () => {
    const law = { law: 'linear', free: ['softness'] } as const
    expect(() => compareLaws({ readings, noise: { kind: 'estimated' }, laws: [law, law] })).toThrow(
      'linear twice',
    )
  })
})

describe('sets of a fit', () => {
  const readings = ellerbyReadings({ law: power(0.8), sets: 6, pressures: wide, noise: 0.04 * mm })
  const perSet = { name: 'softness', per: 'set' } as const

  test('that share an exponent have its error in common', () => {
    const asked = fitted(question({ readings, free: [perSet, 'exponent'] }))
    const { fit } = asked
    const found = acrossFittedSets({ ...asked, of: 'softness' })
    let sum = 0
    for (let i = 0; i < 6; i++)
      for (let j = 0; j < i; j++)
        sum += fit.covariance![i]![j]! / (fit.parameters[i]!.value * fit.parameters[j]!.value)
    expectNear(found.sharedVariance, sum / 15, stated(1e-9))
    expect(found.estimates.map(({ set }) => set)).toEqual(Object.keys(fit.turfs))
  })

  test('that share nothing have nothing in common', () => {
    const asked = fitted(question({ readings, free: [perSet, { name: 'exponent', per: 'set' }] }))
    const found = acrossFittedSets({ ...asked, of: 'softness' })
    expectNear(found.sharedVariance, 0, ofSize(found.spread! ** 2, stated(1e-12)))
  })

  test('give softness by name and by asking the turf for it alike', () => {
    const asked = fitted(question({ readings, free: [perSet, 'exponent'] }))
    const byName = acrossFittedSets({ ...asked, of: 'softness' })
    const byTurf = acrossFittedSets({
      ...asked,
      of: { from: ({ law }) => (law.kind === 'power' ? law.softness : Number.NaN), scale: 'ratio' },
    })
    expectNear(byTurf.median, byName.median, stated(1e-12))
    expectNear(byTurf.sharedVariance, byName.sharedVariance, stated(1e-6))
  })

  test('are asked for what each has of its own', () => {
    const asked = fitted(question({ readings, free: [perSet, 'exponent'] }))
    expect(() => acrossFittedSets({ ...asked, of: 'exponent' })).toThrow('a value for each set (softness)')
    expect(() => acrossFittedSets({ ...asked, of: { from: () => Number.NaN, scale: 'ratio' } })).toThrow(
      'green 1',
    )
  })

  test('of another question are refused', () => {
    const asked = fitted(question({ readings, free: [perSet, 'exponent'] }))
    const other = question({ readings: readings.slice(0, 20), free: [perSet, 'exponent'] })
    expect(() => judgeFit({ question: other, fit: asked.fit })).toThrow('fit.residuals')
  })
})
