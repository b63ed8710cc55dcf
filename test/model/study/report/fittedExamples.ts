import {
  type ComplianceFit,
  type Free,
  fitCompliance,
  type Noise,
  type PressureLaw,
  press,
  pressPlate,
  type Reading,
  type Roller,
  type Scenario,
  type Turf,
} from '@swardsink/model'
import fc from 'fast-check'
import { expect } from 'vitest'

// Ellerby Hollow Turf School: invented.
const smooth: Roller = { mass: 6.6, diameter: 0.058, length: 0.545, surface: { kind: 'smooth' } }
const ridged: Roller = {
  ...smooth,
  diameter: 0.06,
  surface: { kind: 'grooved', pitch: 0.011, land: 0.0045, depth: 0.005 },
}
export const scenario: Pick<Scenario, 'unit' | 'rollers'> = {
  unit: {
    wheelbase: 0.2,
    edge: 0.11,
    benchHeight: 0.0042,
    frontRoller: smooth,
    rearRoller: smooth,
    body: { mass: 19, at: 0.1, height: 0.05 },
  },
  rollers: { smooth, ridged },
}

export type Pressed = 'smooth' | 'ridged' | { readonly plate: number }

const standing = { kind: 'standing' } as const

function sinkageOf(foot: Pressed, load: number, turf: Turf): number {
  const pressed =
    typeof foot === 'string'
      ? press({ roller: scenario.rollers[foot]!, turf, load, condition: standing })
      : pressPlate({ plate: { diameter: foot.plate }, turf, load })
  return pressed.outcome === 'settled' ? pressed.sinkage : expect.fail(pressed.outcome)
}

const OFF = 0.05e-3
/** Misses that look random and are the same in every run. */
const misses = fc.sample(fc.double({ min: -OFF, max: OFF, noNaN: true }), { numRuns: 200, seed: 20_250_415 })

/** A set's name that has to be put in quotes with care. */
export const SETS = ['first lawn', 'zweiter "Rasen" \\ ü'] as const

/** Readings of two sets, a little off, means among them. */
export function readingsOf(turf: Turf, feet: readonly Pressed[]): Reading[] {
  const loads = [20, 40, 80, 120, 180, 260]
  const rows = SETS.flatMap(set => loads.flatMap(load => feet.map(foot => ({ set, load, foot }))))
  return rows.map(({ set, load: given, foot }, i): Reading => {
    const load = typeof foot === 'string' ? given : given * (foot.plate / 0.1) ** 2
    return {
      row: i + 2,
      set,
      foot:
        typeof foot === 'string' ? { kind: 'roller', name: foot } : { kind: 'plate', diameter: foot.plate },
      load,
      measured: { kind: 'sinkage', sinkage: sinkageOf(foot, load, turf) + (misses[i] ?? 0) },
      count: 1 + (i % 3),
    }
  })
}

type Wanted = {
  readonly law: PressureLaw
  readonly spread?: number
  readonly feet: readonly Pressed[]
  readonly free: readonly Free[]
  readonly noise: Noise
  readonly datum?: 'per set'
}

export function fitted({ law, spread = 0, feet, free, noise, datum }: Wanted): ComplianceFit {
  const fit = fitCompliance({
    readings: readingsOf({ law, spread }, feet),
    law: law.kind,
    free,
    noise,
    scenario,
    ...(datum ? { datum } : {}),
  })
  return fit.outcome === 'converged' ? fit : expect.fail(fit.why)
}
