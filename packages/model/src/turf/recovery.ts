import type { Metres, Seconds } from '../quantities/index.ts'
import type { Turf } from './turf.ts'

/**
 * Depression left some time after turf was pressed and let go.
 *
 *   v(t) = z_m [ρ + (1 − λ − ρ) exp(−t/τ)],  τ = 0: v = ρ z_m
 *
 * Holds   t > 0, counted from the roller's axis
 * Units   z_m [m], t [s] → v [m]
 * Source  docs/physics.md §2.3
 */
export function depressionAfter(turf: Turf, pressedTo: Metres, time: Seconds): Metres {
  const { rebound = 1, lasting = 0, recoveryTime = 0 } = turf
  const slow = recoveryTime > 0 ? Math.max(0, 1 - rebound - lasting) * Math.exp(-time / recoveryTime) : 0
  return pressedTo * (lasting + slow)
}
