import { readFileSync } from 'node:fs'
import { compareRollers, type Scenario, settle, type Unit, unitsOf } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { scalesOf } from '../../../packages/explorer/src/book/index.ts'
import { sandTable } from '../../../packages/explorer/src/books/ownGaugeReadings.ts'
import type { FitResult } from '../../../packages/explorer/src/entries/fit/kind.ts'
import { demonstration } from '../../support/referencePad.ts'
import { answersOf, shipped } from './shippedBooks.ts'

const { total, light, heavy, grooved } = demonstration
/** Of a demonstration that others give: the books have their own. */
const checkMasses = [total, light.mass, light.load, heavy.mass, heavy.load, grooved.mass, grooved.load, 8]
const checkDrops = [heavy.drop, grooved.drop]

/** What a scale or a gauge can tell apart. */
const HUNDREDTH = 100
const asRead = (value: number): number => Math.round(value * HUNDREDTH)
const asReadDepth = (metres: number): number => asRead(metres * 1e3)

const unitsIn = (scenario: Scenario): readonly Unit[] =>
  scenario.units ? Object.values(unitsOf(scenario)) : [scenario.unit]

/** Every mass that a book shows: of rollers, bodies, and what scales would read. */
function massesIn(scenario: Scenario): readonly number[] {
  const units = unitsIn(scenario).flatMap(unit => {
    const { total: whole, front } = scalesOf(unit)
    return [unit.frontRoller.mass, unit.rearRoller.mass, unit.body.mass, whole, front, whole - front]
  })
  return [...units, ...Object.values(scenario.rollers).map(({ mass }) => mass)]
}

/** Every drop that a book may show with one of its rollers on one of its turfs, and how rollers differ. */
function dropsIn(scenario: Scenario): readonly number[] {
  const { rollers, turfs, condition } = scenario
  return unitsIn(scenario).flatMap(unit =>
    Object.values(turfs).flatMap(turf => {
      const settled = settle({ unit, turf, condition })
      if (settled.outcome !== 'settled') throw new Error(settled.outcome)
      const rows = compareRollers({ unit, rollers, turf, condition })
      return rows.flatMap(row => {
        if (row.outcome !== 'settled') throw new Error(row.outcome)
        const lower = row.sinkage - settled.front.sinkage
        return [settled.drop.middle, Math.abs(row.change ?? 0), Math.abs(lower), row.sinkage]
      })
    }),
  )
}

describe.each(shipped)('the values of the book “$title”', ({ book: { scenario, pages } }) => {
  it('have no mass of the demonstration that the tests check against', () => {
    const asked = pages.flatMap(({ entries }) =>
      entries.flatMap(({ settings }) =>
        'change' in settings && JSON.stringify(settings.change).includes('mass')
          ? Object.values(settings.change as object).filter(value => typeof value === 'number')
          : [],
      ),
    )
    const shown = [...massesIn(scenario), ...asked].map(asRead)
    for (const mass of checkMasses) expect(shown).not.toContain(asRead(mass))
  })

  it('lead to no drop of it either', () => {
    const shown = dropsIn(scenario).map(asReadDepth)
    expect(shown.length).toBeGreaterThan(1)
    for (const drop of checkDrops) expect(shown).not.toContain(asReadDepth(drop))
  })
})

describe('the readings of the book about gauges', () => {
  const gauge = shipped.find(({ name }) => name === 'own-gauge')
  if (!gauge) throw new Error('the book about gauges ships')

  it('on sand are those that were published', () => {
    const published = readFileSync(new URL('../../../docs/sandPlates.csv', import.meta.url), 'utf8')
    expect(sandTable).toBe(published)
  })

  it('answer to the turfs they were drawn from, once the edge is allowed to carry', {
    timeout: 60_000,
  }, () => {
    const drawn = { exponent: 0.86, spread: 2.3e-3, 'mill green': 0.52e-3, 'garden green': 0.86e-3 }
    const stateOf = answersOf(gauge.book, new Set(['plain', 'edged']))
    const scatterOf = (id: string): number => {
      const result = stateOf(id).result as FitResult
      return (result.outcome === 'fitted' && result.fit.residualStandardDeviation) || Number.NaN
    }
    const result = stateOf('edged').result as FitResult
    if (result.outcome !== 'fitted') throw new Error(result.outcome)
    for (const { name, set, interval } of result.fit.parameters) {
      const value = drawn[(set ?? name) as keyof typeof drawn]
      if (interval?.kind !== 'interval') throw new Error(`${name} has no interval`)
      expect(interval.low).toBeLessThan(value)
      expect(interval.high).toBeGreaterThan(value)
    }
    // Springs that know nothing of each other leave far more over.
    expect(scatterOf('plain')).toBeGreaterThan(2 * scatterOf('edged'))
  })
})
