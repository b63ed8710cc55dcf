import type { Scenario } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { headlandFinding } from '../../../packages/explorer/src/entries/headland/finding.ts'
import { type HeadlandSettings, headland } from '../../../packages/explorer/src/entries/headland/kind.ts'
import { headlandTable } from '../../../packages/explorer/src/entries/headland/rows.ts'
import { settableOf } from '../../../packages/explorer/src/entries/headland/settings.ts'
import { settledOf } from '../../../packages/explorer/src/entries/settled.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { answered, asked, cautionsOf, reader, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const settled = settledOf(scenario)
if (settled.outcome !== 'settled') throw new Error(settled.outcome)

function turn(settings: Partial<HeadlandSettings>, on: Scenario = scenario) {
  const q = asked(headland, on, settings)
  const answer = headland.compute(q.input)
  return { ...q, answer, scenario: on }
}
const shown = (settings: Partial<HeadlandSettings>, on = scenario) => {
  const q = turn(settings, on)
  return shownOf(q.settings, answered(q.answer), on)
}

/** The first book with its front roller in sections. */
const inSections = (sections: number): Scenario => ({
  ...scenario,
  unit: { ...scenario.unit, frontRoller: { ...scenario.unit.frontRoller, sections } },
})

describe('a headland turn', () => {
  it('slides the ends of a roller by half its length over the radius', () => {
    const { sliding, load } = answered(turn({ radius: 4 }).answer)
    expectNear(sliding.greatest, scenario.unit.frontRoller.length / 8, identity)
    expect(load).toBe(settled.front.load)
  })

  it('looks at the rear roller when asked to', () => {
    const { load, roller } = answered(turn({ at: 'rear' }).answer)
    expect(load).toBe(settled.rear.load)
    expect(roller).toEqual(scenario.unit.rearRoller)
  })

  it('has the roller in one piece beside one in sections, and only there', () => {
    expect(answered(turn({}).answer).whole).toBe(null)
    const { sliding, whole } = answered(turn({}, inSections(3)).answer)
    expectNear(whole?.greatest ?? 0, 3 * sliding.greatest, identity)
  })

  it('takes the distance of the two axles when both turn about a place between them', () => {
    const { axleSpacing, sliding } = answered(turn({ axles: 'both', radius: 4 }).answer)
    expect(axleSpacing).toBe(scenario.unit.wheelbase)
    expectNear(sliding.greatest, Math.hypot(0.28, 0.095) / 4, identity)
  })

  it('has no answer where drag is more than friction holds, and says so of the drag', () => {
    expect(turn({ drag: 100, friction: 0.4 }).answer).toMatchObject({
      outcome: 'no answer',
      why: { kind: 'problems', problems: [{ path: 'drag' }] },
    })
  })

  it('says in words of a roller of the rack that it would slide whole', () => {
    const drag = 0.4 * settled.front.load - 0.1
    const q = shown({ drag, friction: 0.4 })
    const light = q.result.rows.filter(({ load }) => load < settled.front.load)
    expect(light.length).toBeGreaterThan(0)
    for (const { sliding } of light) expect(sliding).toBe(null)
    expect(headlandTable(q).rows.flat()).toContain(reader.words.headland.table.slides)
  })

  it('cautions about a turn with its centre under the roller', () => {
    expect(cautionsOf(turn({ radius: 0.2 }).answer).map(({ kind }) => kind)).toEqual(['turns about itself'])
  })

  it('refuses a radius that is none', () => {
    const { settings } = turn({ radius: -2 })
    expect(headland.problems(settings, scenario, [])).toMatchObject([{ path: 'radius' }])
    expect(settableOf('radius', settings).refuse(scenario, -2)).toEqual({ reason: 'more than zero' })
  })

  it('is worked out in lines that hold the printed numbers', () => {
    for (const settings of [{}, { axles: 'both', drag: 12 }] as const) {
      const { input, answer } = turn(settings)
      const result = answered(answer)
      const lines = headland.workedOut?.({ input, result, format: reader.format }) ?? []
      const filled = lines.map(line => line.filled).join(' ')
      for (const value of [result.sliding.greatest, result.sliding.mean])
        expect(filled).toContain(reader.format(value, 'sliding'))
      for (const { what } of lines) expect(reader.words.workings[what]).toMatch(/\w/)
    }
  })
})

describe('the finding of a headland turn', () => {
  it('says how far the ends slide, and what three sections would make of it', () => {
    const { result, ...q } = shown({ radius: 4 })
    const sentence = headlandFinding({ result, ...q })
    expect(sentence).toContain(reader.format(result.sliding.greatest, 'sliding'))
    expect(sentence).toContain(reader.format(result.sliding.greatest / 3, 'sliding'))
  })

  it('says what the same roller would do in one piece', () => {
    expect(headlandFinding(shown({ radius: 4 }, inSections(2)))).toContain('instead of 2 sections')
  })

  it('compares with nothing while drag moves the still line', () => {
    expect(headlandFinding(shown({ drag: 10 }))).not.toContain('sections')
  })
})
