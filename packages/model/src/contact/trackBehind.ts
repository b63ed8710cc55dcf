import type { Metres, Seconds } from '../quantities/index.ts'
import { isGrooved, type Surface } from '../roller/index.ts'
import { depressionAfter, type Turf } from '../turf/index.ts'
import { meanMatDepth } from './hangingMat.ts'
import type { TrackPressing } from './rollerOnTrack.ts'
import type { Track } from './trackCurve.ts'

/**
 * The track that a roller leaves on fresh turf, some time after its axis has passed.
 *
 *   z_m its sinkage, behind grooves the mean depth of the mat over a pitch;  v as depressionAfter
 *
 * Units   sinkage [m], time [s]
 * Source  docs/physics.md §2.3
 */
export function trackBehind(turf: Turf, surface: Surface, sinkage: Metres, time: Seconds): Track {
  const pressedTo = meanMatDepth(surface, turf, sinkage)
  return {
    pressedTo,
    depression: depressionAfter(turf, pressedTo, time),
    ...(isGrooved(surface) ? { uneven: true } : {}),
  }
}

/**
 * The track that a smooth roller leaves in a track.
 *
 *   z ≥ z_m  as on fresh turf;  short of it  v(t) = ρ z_m + (z − λ z_e − ρ z_m) e^(−t/τ), z_m kept
 *
 * Holds   short of z_m turf pressed once more takes the straightest way to z_m: the bend where this pass ended is not
 *         remembered
 * Source  derived: unloading leaves z − λ z_e, and what is left goes on coming back (docs/physics.md §2.3)
 */
export function trackAfter(turf: Turf, track: Track, pressing: TrackPressing, time: Seconds): Track {
  const { sinkage, equivalent } = pressing
  if (sinkage >= track.pressedTo) return trackBehind(turf, { kind: 'smooth' }, sinkage, time)
  const { rebound = 1, lasting = 0, recoveryTime = 0 } = turf
  const stays = lasting * track.pressedTo
  const left = Math.max(0, sinkage - rebound * equivalent - stays)
  return { ...track, depression: stays + (recoveryTime > 0 ? left * Math.exp(-time / recoveryTime) : 0) }
}
