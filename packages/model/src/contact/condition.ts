import type { MetresPerSecond } from '../quantities/units.ts'

/** Set down at rest, or rolling at a speed; `recovery: false` leaves the depression out of the height. */
export type Condition =
  | { readonly kind: 'standing' }
  | { readonly kind: 'mowing'; readonly speed: MetresPerSecond; readonly recovery?: boolean }

/** The arc of the roller: the parabola of the closed forms, or the true circle. */
export type Arc = 'parabola' | 'circle'
