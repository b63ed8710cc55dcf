import { loadAt, type Roller, softnessOf, withSoftness } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { presentTurf } from '../../../packages/explorer/src/book/index.ts'
import { map } from '../../../packages/explorer/src/entries/map/kind.ts'
import { FITTED, readingPlaces } from '../../../packages/explorer/src/entries/map/readingPlaces.ts'
import { mapView } from '../../../packages/explorer/src/entries/map/view.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { expectNear, stated } from '../../support/tolerance.ts'
import { answered, asked, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const turf = presentTurf(scenario)
const heavy = scenario.rollers['peg 2']
if (!heavy) throw new Error('no peg 2')
const rollers: Record<string, Roller> = { ...scenario.rollers, [FITTED]: scenario.unit.frontRoller }
const softnesses = [0.05e-3, 2e-3] as const

/** A reading as the model would have it on turf of a softness. */
function readingOf(roller: string | null, softness: number, sinkage = 0.4e-3) {
  const on = rollers[roller ?? FITTED]
  if (!on) throw new Error(`no roller ${roller}`)
  const condition = { kind: 'standing' } as const
  const loaded = loadAt({ roller: on, turf: withSoftness(turf, softness), condition, sinkage })
  if (loaded.outcome !== 'settled') throw new Error(loaded.outcome)
  return { sinkage, set: 'A', load: loaded.load, pressure: null, roller }
}

describe('readings on the map', () => {
  it('stand at the softness that they say, and the mass of their roller', () => {
    for (const softness of [0.08e-3, 0.3e-3, 1.4e-3]) {
      const rows = [readingOf('peg 2', softness), readingOf('peg 3', softness), readingOf(null, softness)]
      const places = readingPlaces({ rows, rollers }, { turf, softnesses })
      expect(places.map(({ mass }) => mass)).toEqual([9.4, 5.1, 6.2])
      for (const place of places) expectNear(place.softness, softness, stated(2e-4))
    }
  })

  it('are left out where the map has no place for them', () => {
    const beyond = readingOf('peg 2', 3e-3)
    const unknown = { ...readingOf('peg 2', 0.3e-3), roller: 'gone' }
    const plate = { ...readingOf('peg 2', 0.3e-3), load: null }
    expect(readingPlaces({ rows: [beyond, unknown, plate], rollers }, { turf, softnesses })).toEqual([])
  })

  it('come with the fine map, and are counted in its note', () => {
    const rows = [readingOf('peg 2', 0.3e-3), readingOf(null, 0.5e-3)]
    const { settings, input } = asked(map, scenario, { readings: 'ours' }, { ours: { rows } })
    const result = answered(map.refine?.(input, () => {}))
    expect(result.places.length).toBe(2)
    expect(answered(map.compute(input)).places).toEqual([])
    expect(mapView.note(shownOf(settings, result, scenario))).toContain('2 readings')
  })

  it('do not make the map hang on mass and softness while there are none', () => {
    const softer = withSoftness(turf, softnessOf(turf.law) * 1.5)
    const moved = { ...scenario, turfs: { ...scenario.turfs, [scenario.turf]: softer } }
    expect(asked(map, moved).input).toEqual(asked(map, scenario).input)
  })
})

describe('the map as a table', () => {
  const { settings, input } = asked(map, scenario)
  const shown = shownOf(settings, answered(map.compute(input)), scenario)

  it.each([
    ['metric', /^\d+$/],
    ['US', /^\d+$/],
  ] as const)('is read off at round masses in %s units', (units, round) => {
    const table = mapView.table?.({ ...shown, reader: readerFor({ units, figureText: 13 }) })
    const heads = table?.columns.slice(1).map(({ head }) => head) ?? []
    expect(heads.length).toBeGreaterThan(3)
    for (const head of heads) expect(head).toMatch(round)
    for (const [softness] of table?.rows ?? []) expect(softness).toMatch(/^(0\.0*[125]|[125])$/)
  })
})
