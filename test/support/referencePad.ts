import { press, type Roller, type Surface, type Turf } from '@swardsink/model'

const GRAVITY = 9.80665
const mm = 1e-3

/** Sizes of a roller over its lands, metres. */
export type Size = { readonly diameter: number; readonly length: number }

/**
 * A demonstration of the trade: one unit, three front rollers of equal diameter, one foam pad, the bench untouched.
 * The light smooth roller leaves 15 kg on the front; each other adds what it weighs more.
 *
 * Source  common practice, no source
 */
export const demonstration = {
  total: 31.3,
  light: { mass: 3, load: 15 },
  heavy: { mass: 7, load: 19, drop: 1.5 * mm },
  grooved: { mass: 3.5, load: 15.5, drop: 1.4 * mm },
} as const

/** Sinkage under a number of kilograms, on the true circle; infinite where the pad carries no such load. */
export function sinksUnder(
  kilograms: number,
  size: Size,
  turf: Turf,
  surface: Surface = { kind: 'smooth' },
): number {
  const roller: Roller = { mass: 0, ...size, surface }
  const load = kilograms * GRAVITY
  const pressed = press({ roller, turf, load, condition: { kind: 'standing' }, arc: 'circle' })
  return pressed.outcome === 'settled' ? pressed.sinkage : Number.POSITIVE_INFINITY
}

/** Where a function that grows along x crosses zero, evenly halved in the logarithm; NaN when it does not. */
export function crossing(value: (x: number) => number, low: number, high: number): number {
  if (!(value(low) < 0 && value(high) > 0)) return Number.NaN
  let [from, to] = [low, high]
  for (let turn = 0; turn < 40; turn++) {
    const middle = Math.sqrt(from * to)
    if (value(middle) > 0) to = middle
    else from = middle
  }
  return Math.sqrt(from * to)
}

/** The pad on which the heavy smooth roller lies the told drop below the light one. */
export function padFor(exponent: number, size: Size, spread = 0): Turf {
  const pad = (softness: number): Turf => ({ law: { kind: 'power', softness, exponent }, spread })
  const { light, heavy } = demonstration
  const softness = crossing(
    s => {
      const deep = sinksUnder(heavy.load, size, pad(s))
      return deep === Number.POSITIVE_INFINITY
        ? deep
        : deep - sinksUnder(light.load, size, pad(s)) - heavy.drop
    },
    0.02 * mm,
    60 * mm,
  )
  return pad(softness)
}

/** How much deeper than the light smooth roller a grooved one lies. */
export const groovedDrop = (size: Size, pad: Turf, surface: Surface): number =>
  sinksUnder(demonstration.grooved.load, size, pad, surface) - sinksUnder(demonstration.light.load, size, pad)
