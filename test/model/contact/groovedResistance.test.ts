import { loadAt, type PressedSettled, press, type Roller, type Turf, workTo } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const [pitch, land, depth] = [13 * mm, 5.5 * mm, 7 * mm]
const gap = pitch - land
const length = 40 * pitch + land
const roller: Roller = {
  mass: 5,
  diameter: 0.06,
  length,
  surface: { kind: 'grooved', pitch, land, depth },
}
const rebound = 0.45
const mowing = { kind: 'mowing', speed: 1.2 } as const

const pressedTo = (turf: Turf, sinkage: number): PressedSettled => {
  const loaded = loadAt({ roller, turf, sinkage, condition: mowing })
  if (loaded.outcome !== 'settled') throw new Error(loaded.outcome)
  const pressed = press({ roller, turf, load: loaded.load, condition: mowing })
  if (pressed.outcome !== 'settled') throw new Error(pressed.outcome)
  return pressed
}

describe('rolling resistance of a grooved roller', () => {
  test('without spread is what the springs under the lands keep', () => {
    const turf: Turf = { law: { kind: 'power', softness: 0.8 * mm, exponent: 0.8 }, rebound }
    const z = 1.4 * mm
    const kept = (1 - rebound) * workTo(turf.law, z) * (40 * land + land)
    expectNear(pressedTo(turf, z).resistance, kept, stated(1e-9))
  })

  test('without spread, on the floor, is what lands and floor keep', () => {
    const turf: Turf = { law: { kind: 'linear', softness: 9 * mm }, rebound }
    const z = 9 * mm
    const perPitch = land * workTo(turf.law, z) + gap * workTo(turf.law, z - depth)
    const kept = (1 - rebound) * (40 * perPitch + land * workTo(turf.law, z))
    expectNear(pressedTo(turf, z).resistance, kept, stated(1e-9))
  })

  test('with spread leaves out what the mat’s shear gives back: closed form of the linear law', () => {
    // derived: u = z cosh(y/l)/cosh(g/2l) in the gap, so ∫ u² dy = z² [g/2 + (l/2) sinh(g/l)]/cosh²(g/2l)
    const spread = 2.1 * mm
    const softness = 0.9 * mm
    const turf: Turf = { law: { kind: 'linear', softness }, spread, rebound }
    const z = 1.3 * mm
    const k = 10e3 / softness
    const squares =
      (z * z * (gap / 2 + (spread / 2) * Math.sinh(gap / spread))) / Math.cosh(gap / (2 * spread)) ** 2
    const perPitch = 0.5 * k * (land * z * z + squares)
    // the free ends carry as far as the spread on either side
    const ends = 0.5 * k * z * z * (land + 2 * spread)
    const pressed = pressedTo(turf, z)
    expectNear(pressed.resistance, (1 - rebound) * (40 * perPitch + ends), stated(1e-8))
    // the work of the mean pressure counts the shear as if it were lost: 0.69 to 0.90 of it was found in full solutions
    const meanWork = 0.5 * k * z * z * (land + 2 * spread * Math.tanh(gap / (2 * spread)))
    const part = perPitch / meanWork
    expect(part).toBeGreaterThan(0.69)
    expect(part).toBeLessThan(0.9)
  })
})
