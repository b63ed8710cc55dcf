import type { Unit } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { fieldsOf } from '../../../packages/explorer/src/book/index.ts'
import { map } from '../../../packages/explorer/src/entries/map/kind.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const grooved = { kind: 'grooved', pitch: 0.012, land: 0.005, depth: 0.006 } as const

/** What comes at once of a map of this unit. */
function draftOf(unit: Unit): string {
  const settings = map.read(fieldsOf({}, '', []))
  const input = map.input({
    settings,
    scenario: { ...scenario, unit },
    answers: {},
    entries: [],
    offered: {},
  })
  return map.compute(input).outcome
}

describe('the draft of a map', () => {
  const { unit } = scenario
  const onGrooves = { ...unit, frontRoller: { ...unit.frontRoller, surface: grooved } }
  const leaning = { ...unit.body, offset: 0.004 }

  it('comes at once, level or on smooth rollers', () => {
    expect([unit, onGrooves, { ...unit, body: leaning }].map(draftOf)).toEqual([
      'answered',
      'answered',
      'answered',
    ])
  })

  it('of a unit that leans sideways on grooves is left to the thread beside', () => {
    expect(draftOf({ ...onGrooves, body: leaning })).toBe('later')
    expect(draftOf({ ...onGrooves, slopeAcross: 0.05 })).toBe('later')
  })
})
