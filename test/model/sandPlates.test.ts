import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { LawComparison } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { repository } from '../support/files.ts'
import { compareOnSand, sandReadings } from '../support/sandPlates.ts'
import { expectPrinted } from '../support/tolerance.ts'

// Readings: Kruger 2026, doi 10.5281/zenodo.17584462 (CC BY 4.0), plates on bare sand; docs/sandPlates.csv.
const document = readFileSync(join(repository, 'docs/sandPlates.md'), 'utf8')
/** Rows of the tables of a document, without their headings. */
const rowsOf = (text: string): readonly (readonly string[])[] =>
  [...text.matchAll(/^\| (.*) \|$/gm)]
    .map(([, row = '']) => row.split('|').map(cell => cell.trim()))
    .filter(row => !/^-+$/.test(row[0] ?? '') && !/^(?:law|set)$/.test(row[0] ?? ''))
const [constant = [], growing = [], sets = []] = [
  document.slice(document.indexOf('## With one'), document.indexOf('## With a')),
  document.slice(document.indexOf('## With a'), document.indexOf('AICc of the two')),
  document.slice(document.indexOf('AICc of the two'), document.indexOf('## What it shows')),
].map(rowsOf)

/** Scatter as the table tells it: in mm, or as a part of the reading (weights are relative to the mean square). */
function partOf({ fits }: LawComparison, name: string): number {
  const fit = fits[name]
  if (!fit || fit.outcome === 'failed') return expect.fail(name)
  const squares = fit.readings.map(({ measured }, i) => ((fit.residuals[i] ?? Number.NaN) / measured) ** 2)
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / fit.degreesOfFreedom)
}

describe.each([
  ['one scatter for all readings', constant, compareOnSand('constant'), 'mm'],
  ['a scatter that grows with the sinkage', growing, compareOnSand('in proportion'), 'part'],
] as const)('the laws compared with %s', (_, told, made, scatter) => {
  test('all stand in the document, the least AICc first', () => {
    expect(told.map(([name]) => name).sort()).toEqual(made.laws.map(({ name }) => name).sort())
    const above = told.map(row => Number(row.at(-1)))
    expect(above).toEqual([...above].sort((a, b) => a - b))
    expect(above[0]).toBe(0)
  })

  test.each(told.map(row => ({ name: row[0] ?? '', row })))('$name', ({ name, row }) => {
    const law = made.laws.find(one => one.name === name) ?? expect.fail(name)
    const [, free, size = '', aicc = '', above = ''] = row
    expect(law.outcome).toBe('converged')
    expect(String(law.free)).toBe(free)
    const deviation = law.standardDeviation ?? Number.NaN
    expectPrinted(scatter === 'mm' ? deviation * 1e3 : partOf(made, name), size)
    expectPrinted(law.aicc ?? Number.NaN, aicc)
    expectPrinted(law.difference ?? Number.NaN, above)
  })

  test('do not tell the two locking laws apart', () => {
    expect(made.alike).toEqual([expect.arrayContaining(['stiffening', 'logarithmic'])])
  })
})

describe('the power law on each test', () => {
  const { power } = compareOnSand('in proportion').fits
  const parameters = power && power.outcome !== 'failed' ? power.parameters : expect.fail('no fit')
  const numberOf = (name: string, set: string | undefined) =>
    parameters.find(one => one.name === name && one.set === set) ?? expect.fail(`${name} of ${set}`)

  test('stands in the document, every set', () => {
    expect(sets.map(([set]) => set)).toEqual([...new Set(sandReadings().map(({ set }) => set))])
  })

  test.each(sets.map(row => ({ set: row[0] ?? '', row })))('$set', ({ set, row }) => {
    for (const [name, at, factor] of [
      ['softness', 1, 1e3],
      ['exponent', 3, 1],
    ] as const) {
      const { value, interval } = numberOf(name, set)
      const ends = interval.kind === 'interval' ? interval : expect.fail(interval.why)
      const [low = '', high = ''] = row[at + 1]?.split(' to ') ?? []
      expectPrinted(value * factor, row[at] ?? '')
      expectPrinted(ends.low * factor, low)
      expectPrinted(ends.high * factor, high)
    }
  })
})

test('the exponents that the text sets against each other', () => {
  const [, told = ''] = /The exponent of M2-1 is (.*?) with one that grows/.exec(document) ?? []
  const numbers = told.match(/\d\.\d+/g) ?? []
  const made = (['constant', 'in proportion'] as const).flatMap(scatter => {
    const { power } = compareOnSand(scatter).fits
    const found = power?.parameters.find(({ name, set }) => name === 'exponent' && set === 'M2-1')
    if (found?.interval.kind !== 'interval') return expect.fail(scatter)
    return [found.value, found.interval.low, found.interval.high]
  })
  expect(numbers).toHaveLength(6)
  made.forEach((value, i) => {
    expectPrinted(value, numbers[i] ?? '')
  })
})

test('four of the five tests soften, and the locking laws find no depth to lock at there', () => {
  const { fits } = compareOnSand('in proportion')
  const exponents = fits.power?.parameters.filter(({ name }) => name === 'exponent').map(({ value }) => value)
  expect(exponents?.filter(value => value < 1)).toHaveLength(4)
  for (const law of ['stiffening', 'logarithmic']) {
    const depths = fits[law]?.parameters.filter(({ name }) => name === 'lockingDepth')
    expect(depths?.map(({ state }) => state)).toEqual(['free', ...Array(4).fill('at bound')])
  }
})
