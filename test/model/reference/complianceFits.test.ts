import {
  type ComplianceFit,
  type ComplianceQuestion,
  type FittedParameter,
  fitCompliance,
  type Reading,
  type Roller,
  type Scenario,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { metresOf, numberOf, type Row, referenceTable } from '../../support/referenceTables.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

/**
 * Invented readings fitted by scipy.optimize.least_squares, test/reference/generate/compliance_fits.py: the turf is
 * answered there by scipy's quadrature, root finder, Bessel functions and fsolve.
 */
const table = referenceTable('compliance_readings')
const answers = referenceTable('compliance_fits')
const mm = 1e-3
const close = stated(1e-5)
const LENGTH = 520 * mm

function rollerOf(row: Row): Roller {
  const plain = row.pitch === ''
  return {
    mass: numberOf(row, 'mass'),
    diameter: metresOf(row, 'diameter'),
    length: LENGTH,
    surface: plain
      ? { kind: 'smooth' }
      : {
          kind: 'grooved',
          pitch: metresOf(row, 'pitch'),
          land: metresOf(row, 'land'),
          depth: metresOf(row, 'depth'),
        },
  }
}

const rollers = Object.fromEntries(
  table.filter(row => row.foot !== 'plate').map(row => [row.foot ?? '', rollerOf(row)]),
)

const scenario: Pick<Scenario, 'unit' | 'rollers'> = {
  rollers,
  unit: {
    wheelbase: 210 * mm,
    edge: 118 * mm,
    benchHeight: 4.4 * mm,
    frontRoller: rollers.smooth!,
    rearRoller: { mass: 4.1, diameter: 52 * mm, length: LENGTH, surface: { kind: 'smooth' } },
    body: { mass: 19.3, at: 96 * mm, height: 92 * mm },
  },
}

const readingOf = (row: Row, index: number): Reading => ({
  row: index + 2,
  set: row.set ?? '',
  foot:
    row.foot === 'plate'
      ? { kind: 'plate', diameter: metresOf(row, 'diameter') }
      : { kind: 'roller', name: row.foot ?? '' },
  ...(row.load === '' ? {} : { load: numberOf(row, 'load') }),
  measured:
    row.point === ''
      ? { kind: 'sinkage', sinkage: metresOf(row, 'sinkage') }
      : { kind: 'drop', drop: metresOf(row, 'sinkage'), point: numberOf(row, 'point') },
  count: numberOf(row, 'n'),
})

function fitOf(name: string, asked: Omit<ComplianceQuestion, 'readings' | 'scenario'>): ComplianceFit {
  const readings = table.filter(row => row.case === name).map(readingOf)
  const fit = fitCompliance({ ...asked, readings, scenario })
  if (fit.outcome === 'failed') throw new Error(fit.why)
  return fit
}

/** In mm, but for an exponent. */
function expectParameter(found: FittedParameter, row: Row): void {
  const unit = row.parameter === 'exponent' ? 1 : mm
  const what = `${row.parameter} ${row.set}`
  expectNear(found.value, numberOf(row, 'value') * unit, close, what)
  expectNear(
    found.standardError ?? Number.NaN,
    numberOf(row, 'standard_error') * unit,
    close,
    `${what}: error`,
  )
  if (found.interval.kind !== 'interval') throw new Error(found.interval.why)
  expectNear(found.interval.low, numberOf(row, 'low') * unit, close, `${what}: low`)
  expectNear(found.interval.high, numberOf(row, 'high') * unit, close, `${what}: high`)
}

function expectAgrees(name: string, fit: ComplianceFit, known: boolean): void {
  const rows = answers.filter(row => row.case === name)
  expect(rows.length).toBeGreaterThan(0)
  for (const row of rows) {
    const found = fit.parameters.find(
      one => one.name === row.parameter && (one.set ?? '') === row.set && one.state === 'free',
    )
    if (!found) throw new Error(`no ${row.parameter} ${row.set}`)
    expectParameter(found, row)
    expectNear(
      fit.sumOfSquares,
      numberOf(row, 'sum_of_squares') * (known ? 1 : mm * mm),
      close,
      'sum of squares',
    )
  }
}

const estimated = { kind: 'estimated' } as const

describe('fits of turf agree with scipy: values, standard errors, intervals', () => {
  test('smooth rollers on a power law, softness a set and one exponent', () => {
    const name = 'power in two sets'
    const fit = fitOf(name, {
      law: 'power',
      free: [{ name: 'softness', per: 'set' }, 'exponent'],
      noise: estimated,
    })
    expectAgrees(name, fit, false)
  })

  test('plates of two sizes on linear turf that spreads load, the noise known and means among them', () => {
    const name = 'plates with spread'
    const fit = fitOf(name, {
      law: 'linear',
      free: ['softness', 'spread'],
      noise: { kind: 'known', standardDeviation: 0.02 * mm },
    })
    expectAgrees(name, fit, true)
  })

  test('smooth and grooved rollers on stiffening turf, each set from a zero of its own', () => {
    const name = 'stiffening from a datum'
    const fit = fitOf(name, {
      law: 'stiffening',
      free: [{ name: 'softness', per: 'set' }, 'lockingDepth'],
      noise: estimated,
      datum: 'per set',
    })
    expectAgrees(name, fit, false)
  })

  test('drops of the whole unit at two points under two rollers', () => {
    const name = 'drops of the unit'
    const fit = fitOf(name, { law: 'linear', free: ['softness'], noise: estimated })
    expectAgrees(name, fit, false)
  })
})
