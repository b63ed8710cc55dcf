import { settle } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import {
  changeRackRoller,
  copyUnit,
  fitRoller,
  presentTurf,
} from '../../../packages/explorer/src/book/index.ts'
import { rollersFinding } from '../../../packages/explorer/src/entries/rollers/finding.ts'
import { rollers } from '../../../packages/explorer/src/entries/rollers/kind.ts'
import { whereWords } from '../../../packages/explorer/src/entries/rollers/rows.ts'
import { expectNear, stated } from '../../support/tolerance.ts'
import { firstBook } from './firstBook.ts'
import { reader, shownIn } from './shownIn.ts'

const { scenario } = await firstBook()
const peg1 = scenario.rollers['peg 1']!

describe('the rack', () => {
  it('says which of its rollers is fitted where', () => {
    const { shown } = shownIn(rollers, scenario)
    expect(rollersFinding(shown)).toMatch(/^In front is peg 1; the rear/)
    const behind = shownIn(rollers, fitRoller(scenario, 'rear', 'peg 2')).shown
    expect(rollersFinding(behind)).toBe('peg 1 is fitted in front, peg 2 behind.')
    expect(behind.result.rollers.map(row => whereWords(row, behind.result, reader)).slice(0, 3)).toEqual([
      'in front',
      'behind',
      'in the rack',
    ])
  })

  it('names the units where there are several', () => {
    const two = copyUnit(scenario, { of: null, name: 'left' }).scenario
    const { result } = shownIn(rollers, two).shown
    expect(whereWords(result.rollers[0]!, result, reader)).toBe('in front on left and in front on left 2')
  })

  it('tells by how much build-up raises the cut, as the unit itself does', () => {
    const grown = changeRackRoller(scenario, 'peg 1', { ...peg1, buildUp: 0.5e-3 })
    const { shown } = shownIn(rollers, grown)
    const turf = presentTurf(scenario)
    const heights = [scenario, grown].map(({ unit, condition }) => {
      const settled = settle({ unit, turf, condition })
      return settled.outcome === 'settled' ? settled.effectiveHeight.middle : Number.NaN
    })
    // a larger roller also sinks a little less, which is no part of what the build-up itself raises
    expectNear(shown.result.rollers[0]?.raises ?? 0, (heights[1] ?? 0) - (heights[0] ?? 0), stated(0.05))
    expect(rollersFinding(shown)).toMatch(/0\.50\u202fmm of build-up, which raises the cut by 0\.22\u202fmm/)
  })

  it('tells of runout how far and how often the cut goes up and down', () => {
    const uneven = changeRackRoller(scenario, 'peg 1', { ...peg1, runout: 0.2e-3 })
    const { shown } = shownIn(rollers, uneven)
    expect(rollersFinding(shown)).toContain(
      `${reader.format(0.2e-3 * (1 - 105 / 190), 'height')} up and down every ${reader.format(Math.PI * 0.057, 'length')}`,
    )
  })
})
