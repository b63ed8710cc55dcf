import {
  type Condition,
  cellOf,
  type MapQuantity,
  type Surface,
  settle,
  sinkageMap,
  slopeAt,
  type Turf,
  type Unit,
  withSoftness,
} from '@swardsink/model'
import { expect } from 'vitest'
import { expectNear, ofSize, stated } from '../../support/tolerance.ts'

const mm = 1e-3

export const surfaces: Record<string, Surface> = {
  smooth: { kind: 'smooth' },
  grooved: { kind: 'grooved', pitch: 12 * mm, land: 4.6 * mm, depth: 5.4 * mm },
  'grooved, shallow': { kind: 'grooved', pitch: 16 * mm, land: 5 * mm, depth: 0.9 * mm },
  'spaced discs': { kind: 'grooved', pitch: 34 * mm, land: 3.2 * mm, depth: 2.2 * mm },
}
export const unitOn = (surface: Surface): Unit => ({
  wheelbase: 196 * mm,
  edge: 108 * mm,
  benchHeight: 4.6 * mm,
  frontRoller: { mass: 5.4, diameter: 57 * mm, length: 540 * mm, surface },
  rearRoller: { mass: 4.1, diameter: 51 * mm, length: 540 * mm, surface: { kind: 'smooth' } },
  body: { mass: 18.6, at: 96 * mm, height: 92 * mm },
  loads: [{ name: 'grass box', mass: 1.7, at: -60 * mm, height: 130 * mm }],
})
export const soils: Record<string, Turf> = {
  'linear, springs': { law: { kind: 'linear', softness: 0.6 * mm } },
  'power, spread': {
    law: { kind: 'power', softness: 0.6 * mm, exponent: 0.6 },
    spread: 2.2 * mm,
    rebound: 0.5,
    lasting: 0.1,
    recoveryTime: 0.2,
  },
  'stiffening, spread': {
    law: { kind: 'stiffening', softness: 0.6 * mm, lockingDepth: 6 * mm },
    spread: 1.4 * mm,
    rebound: 0.7,
    recoveryTime: 0.5,
  },
  'logarithmic, springs': {
    law: { kind: 'logarithmic', softness: 0.6 * mm, lockingDepth: 7 * mm },
    rebound: 0.4,
    lasting: 0.2,
  },
}
export const usages: Record<string, Condition> = {
  standing: { kind: 'standing' },
  mowing: { kind: 'mowing', speed: 1.4 },
}

export type Asked = { unit: Unit; turf: Turf; condition: Condition; arc?: 'parabola' | 'circle' }

/** A rear roller that rolls in the front roller's track: the map is then read between anchors over both axes. */
const rollsInTrack = ({ turf, condition }: Asked) => condition.kind === 'mowing' && (turf.rebound ?? 1) < 1
/** Grooves on a law that rises almost upright where a floor is touched: the stiffness is less sure there. */
const isSteep = ({ turf, unit }: Asked) =>
  turf.law.kind === 'power' && turf.law.exponent < 0.5 && unit.frontRoller.surface.kind === 'grooved'
/** What the map promises where it is so, in metres. */
const IN_TRACK = 2e-5

/** What settle says of one cell, and how near the map promises to be. */
function cellBySettle(asked: Asked, mass: number, softness: number, quantity: MapQuantity) {
  const { unit, turf, ...how } = asked
  const here = withSoftness(turf, softness)
  const settled = settle({
    ...how,
    turf: here,
    unit: { ...unit, frontRoller: { ...unit.frontRoller, mass } },
  })
  if (settled.outcome !== 'settled') return { outcome: settled.outcome }
  const { front, rear, drop, effectiveHeight } = settled
  const value: Record<MapQuantity, number> = {
    sinkage: front.sinkage,
    peakPressure: front.peakPressure,
    drop: drop.middle,
    effectiveHeight: effectiveHeight.middle,
  }
  const deepest = Math.max(front.sinkage, rear.sinkage)
  const size = { ...value, drop: deepest, effectiveHeight: unit.benchHeight + deepest }[quantity]
  const length = { name: 'in a track', relative: 0, absolute: IN_TRACK }
  const slope = slopeAt(here.law, front.sinkage)
  const tracked = quantity === 'peakPressure' ? { ...length, absolute: IN_TRACK * slope } : length
  const near = rollsInTrack(asked) ? tracked : ofSize(size, stated(isSteep(asked) ? 2e-6 : 1e-6))
  return { outcome: settled.outcome, value: value[quantity], near }
}

/** Compares a map with settle, cell by cell; how many cells had an answer. */
export function compareCells(asked: Asked, masses: number[], softnesses: number[], quantity: MapQuantity) {
  const map = sinkageMap({ ...asked, masses, softnesses, quantity })
  let settled = 0
  softnesses.forEach((softness, row) => {
    masses.forEach((mass, column) => {
      const cell = cellOf(map, row, column)
      const single = cellBySettle(asked, mass, softness, quantity)
      const what = `${quantity} at ${mass} kg, ${softness} m, ${JSON.stringify(asked)}`
      expect(cell.outcome, what).toBe(single.outcome)
      if (cell.outcome !== 'settled' || single.value === undefined) return
      settled++
      expectNear(cell.value, single.value, single.near, what)
    })
  })
  return settled
}

export const masses = [0.8, 2.9, 4.4, 6.1, 9.7, 14]
/** Shallow against the locking depths of the laws that lock. */
export const softnesses = [0.08, 0.16, 0.25, 0.38, 0.5].map(softness => softness * mm)
