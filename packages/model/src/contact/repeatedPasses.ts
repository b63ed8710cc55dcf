import {
  type BottomedOut,
  type Caution,
  describe,
  type Metres,
  type Newtons,
  type NotConverged,
  numberProblem,
  type Problem,
  refuse,
  type Seconds,
} from '../quantities/index.ts'
import { isGrooved, type Roller, rollerProblems } from '../roller/index.ts'
import { type Turf, turfProblems } from '../turf/index.ts'
import { type Arc, arcProblems } from './arc.ts'
import { findPressing } from './press.ts'
import { describeOnTrack, rollerOnTrack } from './rollerOnTrack.ts'
import { trackAfter } from './trackBehind.ts'
import type { Track } from './trackCurve.ts'

export type PassesQuestion = {
  readonly roller: Roller
  readonly turf: Turf
  readonly load: Newtons
  readonly passes: number
  /** From one pass to the next. */
  readonly interval: Seconds
  readonly arc?: Arc
}

export type Pass = {
  /** Depth of the turf's surface as the roller comes. */
  readonly met: Metres
  /** Below the undisturbed surface. */
  readonly sinkage: Metres
  readonly lengthAhead: Metres
  readonly lengthBehind: Metres
  readonly resistance: Newtons
  /** Depth of the surface as the roller leaves, and one interval later. */
  readonly left: Metres
  readonly later: Metres
  readonly cautions: readonly Caution[]
}

export type Passes =
  | { readonly outcome: 'settled'; readonly passes: readonly Pass[] }
  | BottomedOut
  | NotConverged

/** A day's use of one strip; a table of more would tell nobody anything. */
const MOST_PASSES = 1000

function passesProblems({ roller, turf, load, passes, interval, arc }: PassesQuestion): Problem[] {
  const sound = [
    ...rollerProblems(roller, 'roller'),
    ...turfProblems(turf, 'turf'),
    ...numberProblem(load, 'load', 'load', { above: 0 }),
    ...numberProblem(passes, 'passes', 'count', { atLeast: 1, atMost: MOST_PASSES }),
    ...numberProblem(interval, 'interval', 'time', { above: 0 }),
    ...(arc === undefined ? [] : arcProblems(arc, 'arc')),
  ]
  if (sound.length > 0) return sound
  return [
    ...(Number.isInteger(passes)
      ? []
      : [{ path: 'passes', expected: 'a whole number', received: describe(passes) }]),
    ...(isGrooved(roller.surface)
      ? [
          {
            path: 'roller.surface.kind',
            expected: 'smooth: grooves lie elsewhere at every pass',
            received: 'grooved',
          },
        ]
      : []),
  ]
}

/**
 * A smooth roller passing over the same strip again and again.
 *
 *   each pass  z = v + μ z_e  or deeper, as rollerOnTrack;  between passes what can come back does
 *
 * Holds   under one load no pass is shallower than the one before; the sinkage goes towards
 *         z_∞ = z₁ ((1 + √λ)/(√μ + √λ))^(1/(n+½)) for a power law without spread, μ then being 1 − v/z
 * Sign    depths from the undisturbed surface, positive into the turf
 * Units   load [N], interval [s] → depths [m], resistance [N]
 * Throws  InputError when roller, turf or a number make no sense, or the roller is grooved
 * Source  derived (docs/physics.md §2.3)
 */
export function repeatedPasses(question: PassesQuestion): Passes {
  refuse(passesProblems(question))
  const { roller, turf, load, interval, arc } = question
  const condition = { kind: 'mowing', speed: 1 } as const
  const shared = { roller, turf, condition, ...(arc ? { arc } : {}) }
  let track: Track = { pressedTo: 0, depression: 0 }
  const passes: Pass[] = []
  for (let pass = 0; pass < question.passes; pass++) {
    const met = track.depression
    const pressing = findPressing(shared, load, 'roller', rollerOnTrack({ ...shared, track }))
    if ('outcome' in pressing) return pressing
    const { lengthAhead, lengthBehind, resistance, cautions } = describeOnTrack(
      { ...shared, track },
      pressing,
    )
    const { sinkage, equivalent } = pressing
    track = trackAfter(turf, track, pressing, interval)
    passes.push({
      met,
      sinkage,
      lengthAhead,
      lengthBehind,
      resistance,
      left: sinkage - (turf.rebound ?? 1) * equivalent,
      later: track.depression,
      cautions,
    })
  }
  return { outcome: 'settled', passes }
}
