import type { Caution, Metres } from '../quantities/index.ts'
import { isGrooved, type Roller } from '../roller/index.ts'
import { curveOf, shearOf, type Turf } from '../turf/index.ts'
import { type Arc, arcOf } from './arc.ts'
import { type ContactQuestion, describePressing, type PressedSettled, workSpent } from './press.ts'
import { quickGroove } from './quickGroove.ts'
import { type RollerOnTurf, rollerOnTurf } from './rollerOnTurf.ts'
import { type Side, smoothSide, trailingOnParabola } from './smoothSide.ts'
import { type GrooveKinks, grooveKinks } from './stripIntegral.ts'
import { backOf, type Track, trackCurve } from './trackCurve.ts'
import { freeEnd, type Pressing, wholeRoller } from './wholeRoller.ts'

/** A roller pressed into a track; sinkage, and the mat under its grooves, below the undisturbed surface. */
export type TrackPressing = Pressing & {
  /** Sinkage z_e at which fresh turf carries the same pressure. */
  readonly equivalent: Metres
  /** Work of pressing again under the lowest line, J/m², and what part of it does not come back. */
  readonly work: number
  readonly lost: number
}

/** A roller in a track; `from` is the depression. */
export type RollerOnTrack = RollerOnTurf<TrackPressing> & { readonly from: Metres }

type Question = {
  readonly roller: Roller
  readonly turf: Turf
  readonly track: Track
  readonly arc?: Arc
}

const NO_SIDE: Side = { load: 0, slope: 0, reach: 0, edgeForce: 0 }
const clear = (sinkage: Metres): TrackPressing => ({
  sinkage,
  equivalent: 0,
  lineLoad: 0,
  load: 0,
  stiffness: 0,
  leading: NO_SIDE,
  trailing: NO_SIDE,
  smoothLineLoad: 0,
  beyondEnd: 0,
  work: 0,
  lost: 0,
})

/** A side at the equivalent sinkage, told by the sinkage itself. */
const scaled = (side: Side, part: number, byDepth: number): Side => ({
  load: part * side.load,
  slope: part * byDepth * side.slope,
  reach: part * side.reach,
  edgeForce: part * side.edgeForce,
})

/** Where the floor of a groove passes the bottom of the track the load of a pitch has a kink more. */
const kinksOnTrack = (kinks: GrooveKinks, floor: Metres): GrooveKinks =>
  floor > kinks.touchFrom ? { ...kinks, at: [...kinks.at, floor].sort((a, b) => a - b) } : kinks

/**
 * Load of a roller that rolls in a track, against its sinkage below the undisturbed surface.
 *
 *   z ≤ z_m   z = v + μ z_e,  q = (√μ + √λ) E(z_e),  resistance (μ − λ) Φ(z_e)
 *   z > z_m   z_e = z,  leading side on the track's curve,  q = E_re + √λ E(z);  resistance Φ_re − λ Φ(z)
 *   spread    the mat ahead rests at the depression: ½ G u′² = Φ_re
 *
 * Holds   for v ≤ (1 − λ) z_m. Exact for a smooth roller in two dimensions, with spread and on the circle too, and for
 *         a grooved one without spread that stays above z_m or off its floor. Estimates: the free ends (as on fresh turf
 *         at z_e, exact from z_m on), grooves on turf that spreads load (the quick model on the track's curve), and
 *         all of it where the track itself was pressed by grooves
 * Sign    sinkage positive into the turf, from its undisturbed surface
 * Source  derived (docs/physics.md §2.3)
 */
export function rollerOnTrack({ roller, turf, track, arc: arcName = 'parabola' }: Question): RollerOnTrack {
  const arc = arcName
  const shape = arcOf(arc)
  const fresh = rollerOnTurf({ roller, turf, condition: { kind: 'mowing', speed: 1 }, arc })
  const { pressedTo } = track
  const curve = curveOf(turf.law)
  if (!(pressedTo > 0))
    return {
      ...fresh,
      from: 0,
      at: sinkage => ({
        ...fresh.at(sinkage),
        equivalent: sinkage,
        work: curve.work(sinkage),
        lost: 1 - (turf.rebound ?? 1),
      }),
    }
  const back = backOf(track)
  const rise = back * pressedTo
  const from = pressedTo - rise
  const again = trackCurve(curve, track)
  const shear = shearOf(turf)
  const radius = roller.diameter / 2
  const rebound = Math.min(turf.rebound ?? 1, back)
  const { surface } = roller
  const kinks = isGrooved(surface)
    ? kinksOnTrack(grooveKinks(again, shear, surface), rise + surface.depth)
    : undefined

  /** The leading side with shear G, and the same for the turf at z_e where it is in reach. */
  const leadingSide = (depth: Metres, G: number): Side =>
    arc === 'parabola' && depth <= rise
      ? scaled(smoothSide(curve, G, radius, shape, 1, depth / back), Math.sqrt(back), 1 / back)
      : smoothSide(again, G, radius, shape, 1, depth)
  const trailingSide = (equivalent: Metres): Side =>
    arc === 'parabola'
      ? trailingOnParabola(smoothSide(curve, shear, radius, shape, 1, equivalent), rebound)
      : smoothSide(curve, shear, radius, shape, rebound, equivalent)

  const at = (sinkage: Metres): TrackPressing => {
    const depth = sinkage - from
    if (!(depth > 0)) return clear(sinkage)
    const onTrack = depth <= rise
    const equivalent = onTrack ? depth / back : sinkage
    const byDepth = onTrack ? 1 / back : 1
    const leading = leadingSide(depth, shear)
    const unloading = trailingSide(equivalent)
    const trailing = { ...unloading, slope: byDepth * unloading.slope }
    const freshWork = curve.work(equivalent)
    const work = again.work(depth)
    // the free ends as on fresh turf at z_e
    const fromFresh = freeEnd(curve, shear, equivalent)
    const end = { reach: fromFresh.reach, slope: byDepth * fromFresh.slope }
    const told = { equivalent, work, lost: Math.max(0, 1 - (rebound * freshWork) / work) }
    if (!isGrooved(surface) || !kinks)
      return { ...wholeRoller({ sinkage, roller, leading, trailing, end }), ...told }
    const springs = shear > 0 ? leadingSide(depth, 0) : leading
    const grooves = quickGroove(again, shear, radius, shape, surface, kinks, depth, {
      spreading: leading,
      springs,
    })
    return {
      ...wholeRoller({ sinkage, roller, leading, trailing, end, grooves }),
      ...told,
      grooves: { ...grooves, lowest: { ...grooves.lowest, lowest: grooves.lowest.lowest + from } },
    }
  }
  return {
    from,
    limit: Math.min(curve.limit, fresh.limit + from),
    touchFrom: (kinks?.touchFrom ?? Number.POSITIVE_INFINITY) + from,
    at,
  }
}

/** Work of pressing the track again under the whole roller, per length of travel. */
function spentAgain(
  { roller, turf, track }: ContactQuestion & { readonly track: Track },
  pressing: TrackPressing,
) {
  const curve = curveOf(turf.law)
  const fresh = !(track.pressedTo > 0)
  const from = fresh ? 0 : track.pressedTo * (1 - backOf(track))
  const again = fresh ? curve : trackCurve(curve, track)
  return workSpent(again, shearOf(turf), roller, pressing.sinkage - from, pressing.beyondEnd)
}

/** What a pressing into a track tells, as describePressing does on fresh turf. */
export function describeOnTrack(
  question: ContactQuestion & { readonly track: Track },
  pressing: TrackPressing,
): PressedSettled {
  const { track } = question
  const { equivalent, grooves, lost, beyondEnd, sinkage, smoothLineLoad } = pressing
  const told = describePressing(question, { ...pressing, sinkage: equivalent })
  const estimated = beyondEnd > 0 || grooves !== undefined || track.uneven === true
  const caution: Caution = { kind: 'in a track' }
  const carries = smoothLineLoad > 0
  return {
    ...told,
    sinkage,
    relief: grooves ? sinkage - grooves.lowest.lowest : 0,
    resistance: carries ? lost * spentAgain(question, pressing) : 0,
    cautions: track.pressedTo > 0 && estimated ? [...told.cautions, caution] : told.cautions,
  }
}
