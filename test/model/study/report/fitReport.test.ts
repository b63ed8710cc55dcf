import {
  type ComplianceFit,
  type FittedParameter,
  fitCompliance,
  fitReport,
  judgeFit,
  methodsParagraph,
  parameterWord,
  type Reading,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { fitted, SETS } from './fittedExamples.ts'

const per = (name: string) => ({ name, per: 'set' as const })
const estimated = { kind: 'estimated' } as const
const plates = () =>
  fitted({
    law: { kind: 'power', softness: 0.4e-3, exponent: 0.8 },
    feet: [{ plate: 0.05 }],
    free: [per('softness'), 'exponent'],
    noise: estimated,
  })
/** Numbers of a fit changed by hand: what is told of them does not hang on how they were found. */
const withParameter = (fit: ComplianceFit, i: number, changed: Partial<FittedParameter>): ComplianceFit => ({
  ...fit,
  parameters: fit.parameters.map((one, j) => (j === i ? { ...one, ...changed } : one)),
})

describe('the paragraph of a report', () => {
  test('says what was fitted with what, the numbers with their intervals, the scatter and the range', () => {
    const fit = plates()
    const { paragraph } = fitReport({ fit, name: 'plates.csv' })
    expect(paragraph).toMatch(/^plates\.csv: 12 readings in 2 sets with plates, fitted with the power law/)
    expect(paragraph).toMatch(/with 95 % intervals: softness of first lawn 0\.\d+ mm \(0\.\d+ to 0\.\d+\)/)
    expect(paragraph).toMatch(/exponent 0\.\d+ \(0\.\d+ to \d\.\d+\)/)
    expect(paragraph).toMatch(
      /The scatter was taken from the residuals: 0\.0\d+ mm for a single reading, on 9 degrees of freedom; R² 0\.99/,
    )
    expect(paragraph).toMatch(
      /loads from 5 N to 65 N, pressures from .* kPa; outside these pressures the turf is extrapolated\./,
    )
    expect(paragraph).not.toContain('Held')
  })

  test('says whether the noise was known', () => {
    const known = fitted({
      law: { kind: 'linear', softness: 0.5e-3 },
      feet: ['smooth'],
      free: ['softness'],
      noise: { kind: 'known', standardDeviation: 0.03e-3 },
    })
    expect(fitReport({ fit: known }).paragraph).toMatch(
      /The scatter of a reading was known beforehand; the residuals are \d\.\d+ times that, on 11 degrees of freedom/,
    )
  })

  test('speaks inches where they are asked for', () => {
    const { paragraph, table } = fitReport({ fit: plates(), units: 'US' })
    expect(paragraph).toMatch(/softness of first lawn 0\.01\d+ in .*psi/)
    expect(table[0]).toContain('unit')
    expect(table[1]).toContain('in')
  })

  test('names what was held, but no spread that nobody asked for', () => {
    const fit = withParameter(plates(), 3, { name: 'spread', value: 2e-3, state: 'fixed' })
    expect(fitReport({ fit }).paragraph).toContain('Held: spread 2.000 mm.')
  })

  test('leaves numbers of many sets to the table', () => {
    const fit = plates()
    const [first] = fit.parameters
    const many = {
      ...fit,
      parameters: [...Array.from({ length: 6 }, () => first!), ...fit.parameters.slice(2)],
    }
    const { paragraph, table } = fitReport({ fit: many })
    expect(paragraph).toContain('numbers of single sets are in the table')
    expect(paragraph).not.toContain('first lawn')
    expect(table).toHaveLength(1 + 7)
  })
})

describe('the table of a report', () => {
  test('tells every number to the place that its standard error reaches', () => {
    const fit = withParameter(plates(), 0, {
      value: 0.41234e-3,
      standardError: 0.0123e-3,
      interval: { kind: 'interval', low: 0.38e-3, high: 0.44e-3, level: 0.95 },
    })
    const { table } = fitReport({ fit })
    expect(table[0]).toEqual(['parameter', 'set', 'unit', 'value', 'std error', '95\u202f% low', 'high'])
    expect(table[1]).toEqual(['softness', SETS[0], 'mm', '0.412', '0.012', '0.380', '0.440'])
  })

  test.each([
    ['undetermined', { kind: 'undetermined', why: 'the readings do not determine it' }, '', ''],
    ['at least', { kind: 'at least', low: 0.3e-3, level: 0.9, why: 'flat above' }, '0.3000', ''],
    ['at most', { kind: 'at most', high: 0.5e-3, level: 0.9, why: 'flat below' }, '', '0.5000'],
  ] as const)('says why an interval is missing or one-sided: %s', (_, interval, low, high) => {
    const fit = withParameter(plates(), 0, { value: 0.4e-3, standardError: null, interval })
    const row = fitReport({ fit }).table[1]!
    expect(row.slice(-3)).toEqual([low, high, interval.why])
    expect(row[3]).toBe('0.4000')
  })

  test('has a true minus', () => {
    const fit = withParameter(plates(), 0, { name: 'datum', value: -0.4e-3, standardError: 0.01e-3 })
    expect(fitReport({ fit }).table[1]![3]).toBe('\u22120.400')
  })
})

describe('the notes of a report', () => {
  test('tell what is left out, with rows and reasons, and what is missing', () => {
    const fit = { ...plates(), leftOut: [{ row: 9, why: 'a height' }] }
    const table = {
      leftOut: [2, 3, 4, 5, 6, 7, 8].map(row => ({ row, why: 'nothing measured' })),
      missing: [
        { column: 'load_N', count: 1 },
        { column: 'note', count: 8 },
      ],
      columns: [
        { header: 'load_N', name: 'load', unit: 'N' },
        { header: 'note', name: 'note', unit: '' },
      ],
    }
    expect(fitReport({ fit, table }).notes).toEqual([
      'Rows 2, 3, 4, 5, 6, 7 and 1 more left out: nothing measured.',
      'Row 9 left out: a height.',
      'Missing: load_N in 1 row.',
    ])
  })

  test('tell first that a search stopped', () => {
    const fit = { ...plates(), outcome: 'stopped', why: 'too many steps' } as const
    expect(fitReport({ fit }).notes[0]).toBe('The search did not end at a minimum: too many steps.')
  })

  test('tell what the readings cannot tell', () => {
    const readings: Reading[] = [10, 11, 12, 13].map((load, i) => ({
      row: i + 2,
      set: '',
      foot: { kind: 'plate', diameter: 0.05 },
      load,
      measured: { kind: 'sinkage', sinkage: 1e-3 * (0.4 + 0.03 * i + (i === 2 ? 0.01 : 0)) },
      count: 1,
    }))
    const question = { readings, law: 'power', free: ['softness', 'exponent'], noise: estimated } as const
    const fit = fitCompliance(question)
    if (fit.outcome === 'failed') return expect.fail(fit.why)
    const { notes } = fitReport({ fit, judgement: judgeFit({ question, fit }) })
    expect(notes.some(note => note.startsWith('What the readings cannot tell: '))).toBe(true)
  })
})

describe('the methods', () => {
  test('say law, model, parameters, weights and intervals', () => {
    const text = methodsParagraph({ fit: plates(), noise: estimated })
    expect(text).toMatch(/^Turf was described by the power law/)
    expect(text).toContain('Sinkage under each load followed from the pressure under a plate.')
    expect(text).toContain(
      'Exponent was estimated for all readings together and softness was estimated for each set.',
    )
    expect(text).toContain('95 % intervals from the t distribution with 9 degrees of freedom')
    expect(text).not.toContain('zero of the gauge')
  })

  test.each([
    [estimated, { standardDeviation: 0, gaugeStep: 0 }, /weighted by the number of readings/],
    [estimated, { standardDeviation: 3, gaugeStep: 3 }, /in proportion .*step²\/12/],
    [
      { kind: 'known', standardDeviation: 0.05e-3 },
      { standardDeviation: 0, gaugeStep: 0 },
      /taken to be 0\.05 mm/,
    ],
    [
      { kind: 'known', standardDeviation: 1 },
      { standardDeviation: 12, gaugeStep: 0 },
      /inverse of their known variance/,
    ],
  ] as const)('say how readings were weighted: %j %j', (noise, given, words) => {
    expect(methodsParagraph({ fit: plates(), noise, given })).toMatch(words)
  })

  test('say what else was estimated, and how', () => {
    const fit = fitted({
      law: { kind: 'linear', softness: 0.5e-3 },
      feet: ['smooth', 'ridged'],
      free: ['softness'],
      noise: estimated,
      datum: 'per set',
    })
    const text = methodsParagraph({ fit, noise: estimated, loss: { kind: 'huber', at: 1.5 } })
    expect(text).toContain('the arc of a standing roller')
    expect(text).toContain('The zero of the gauge was unknown')
    expect(text).toContain('A robust loss (huber, from 1.5 standard deviations) was used.')
  })
})

test.each([
  ['softness', 'softness'],
  ['lockingDepth', 'locking depth'],
  ['upper.lockingDepth', 'locking depth of the upper layer'],
  ['dropDatum', 'datum of the drops'],
  ['k', 'k'],
])('the parameter %s is called %s', (name, word) => {
  expect(parameterWord(name)).toBe(word)
})
