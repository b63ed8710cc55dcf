import { acrossGrooves, type Scenario, sinkageAt } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import {
  bookOf,
  choose,
  enter,
  openSession,
  presentTurf,
  type Session,
} from '../../../packages/explorer/src/book/index.ts'
import { sectionFinding } from '../../../packages/explorer/src/entries/section/finding.ts'
import {
  belowLands,
  groovesOf,
  type SectionSettings,
  section,
} from '../../../packages/explorer/src/entries/section/kind.ts'
import { settledOf } from '../../../packages/explorer/src/entries/settled.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { answered, asked, cautionsOf, reader, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const open = openSession(await firstBook())
const grooved = choose(open, { name: 'frontRoller', option: 'peg 3' })
const set = (session: Session, name: string, value: number) =>
  enter(session, { name, value, text: String(value) })

function cut(session: Session, settings: Partial<SectionSettings> = {}) {
  const { scenario } = bookOf(session)
  const q = asked(section, scenario, settings)
  const answer = section.compute(q.input)
  return { ...q, scenario, result: answered(answer), cautions: cautionsOf(answer) }
}

const find = (session: Session, settings: Partial<SectionSettings> = {}): string => {
  const { settings: complete, result, scenario } = cut(session, settings)
  return sectionFinding(shownOf(complete, result, scenario))
}

const settled = (scenario: Scenario) => {
  const found = settledOf(scenario)
  if (found.outcome !== 'settled') throw new Error(found.outcome)
  return found
}

describe('a section across the grooves', () => {
  it('is cut at the sinkage and pressure that the unit settles at', () => {
    const { result, scenario } = cut(grooved)
    const { front } = settled(scenario)
    expect(result.sinkage).toBe(front.sinkage)
    expect(result.pressure).toBe(front.peakPressure)
    expect(result.grooves?.relief).toBeGreaterThan(0)
  })

  it('shares the load of a pitch between the turf below the land and the two edges', () => {
    const { result } = cut(grooved)
    const surface = groovesOf(result.roller)
    const { grooves, pressure } = result
    if (!surface || !grooves) throw new Error('no grooves')
    const perPitch = grooves.meanPressure * surface.pitch
    expectNear(pressure * surface.land + 2 * grooves.edgeForce, perPitch, identity)
    expectNear(belowLands(result) ?? 0, 1 - (2 * grooves.edgeForce) / perPitch, identity)
  })

  it('says how much of the face is land, and what turf below that carries', () => {
    const below = belowLands(cut(grooved).result) ?? Number.NaN
    const sentence = find(grooved)
    for (const share of [5 / 12, below, 1 - below]) expect(sentence).toContain(reader.words.percent(share))
  })

  it('says so when the floor is touched, and when the turf spreads nothing', () => {
    const full = set(set(grooved, 'frontRoller.depth', 1e-3), 'turf.softness', 1e-3)
    expect(find(full)).toContain('reached the floor')
    const springs = set(grooved, 'turf.spread', 0)
    expect(find(springs)).toContain('does not spread load')
    expect(belowLands(cut(springs).result)).toBe(1)
  })

  it('says of a smooth face that it presses evenly', () => {
    const { result } = cut(open)
    expect(result.grooves).toBe(null)
    expect(find(open)).toContain(`evenly: ${reader.format(result.pressure, 'pressure')}`)
  })

  it('works the pitch out with the numbers that are shown', () => {
    const { input, result } = cut(grooved)
    const { format } = reader
    const lines = section.workedOut?.({ input, result, format }) ?? []
    const bearing = lines.find(({ what }) => what === 'sectionBearing')
    expect(bearing?.filled).toContain(format(result.grooves?.bearingFraction ?? 0, 'ratio'))
    for (const { what } of lines) expect(reader.words.workings[what]).toMatch(/\w/)
  })

  it('offers its numbers to formulas, and none where there are no grooves', () => {
    expect(section.offers?.(cut(grooved).result).relief?.value).toBeGreaterThan(0)
    expect(section.offers?.(cut(open).result).relief?.value).toBe(null)
  })
})

describe('a section across the rear roller', () => {
  const rear = choose(open, { name: 'rearRoller', option: 'peg 3' })

  it('is that of fresh turf while the unit stands', () => {
    const { result, scenario } = cut(rear, { at: 'rear' })
    expect(result.track).toBe(0)
    expect(result.sinkage).toBe(settled(scenario).rear.sinkage)
  })

  it('in the track of the front roller, is pressed as hard as fresh turf less far down', () => {
    const mowing = choose(choose(rear, { name: 'frontRoller', option: 'peg 2' }), {
      name: 'condition',
      option: 'mowing',
    })
    const { result, scenario } = cut(set(mowing, 'rearRoller.mass', 2), { at: 'rear' })
    const { law } = presentTurf(scenario)
    const fresh = Math.min(result.sinkage, sinkageAt(law, result.pressure))
    expectNear(result.track, result.sinkage - fresh, identity)
    const surface = groovesOf(result.roller)
    if (!surface) throw new Error('no grooves')
    const alike = acrossGrooves({ surface, turf: presentTurf(scenario), sinkage: fresh })
    expect(result.grooves?.bearingFraction).toBe(alike.bearingFraction)
  })

  it('leaves cautions of the front roller to the front', () => {
    const { cautions } = cut(choose(open, { name: 'frontRoller', option: 'peg 5' }), { at: 'rear' })
    expect(cautions.filter(({ where }) => where === 'front roller')).toEqual([])
  })
})
