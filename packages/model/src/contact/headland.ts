import {
  type Caution,
  type Metres,
  type Newtons,
  numberProblem,
  type Problem,
  refuse,
} from '../quantities/index.ts'
import { type Roller, rollerProblems } from '../roller/index.ts'

export type HeadlandQuestion = {
  readonly roller: Roller
  /** On the roller. */
  readonly load: Newtons
  /** Of the turn, to the middle of the roller. */
  readonly radius: Metres
  /** Friction of the face sliding on turf over its load. */
  readonly friction?: number
  /** Distance of two axles that turn about a centre between them: twice the offset e; 0 unless given. */
  readonly axleSpacing?: Metres
  /** What holds the roller back from rolling; negative when it is driven. */
  readonly drag?: Newtons
}

/** Sliding while turning, per metre travelled by the middle of the roller. */
export type Headland = {
  readonly greatest: number
  readonly mean: number
  readonly rootMeanSquare: number
  /** Work of friction per metre travelled, J/m; null when the friction is not given. */
  readonly frictionWork: Newtons | null
  /** The lines that slide least, one a section, from the middle of the roller, positive away from the centre. */
  readonly still: readonly Metres[]
  /** How far drag has moved each of them, towards the centre of turning. */
  readonly shift: Metres
  /** Path of the outer end over that of the inner; null when the centre lies under the roller. */
  readonly outerOverInner: number | null
  readonly cautions: readonly Caution[]
}

/** Drag beyond this part of the grip is told. */
const NEAR_SLIPPING = 0.9

/** ∫₀ᵗ √(y² + e²) dy; an offset whose square is nothing is none. */
const areaTo = (t: number, e: number): number =>
  e * e === 0 ? (t * Math.abs(t)) / 2 : (t * Math.hypot(t, e) + e * e * Math.asinh(t / e)) / 2

function headlandProblems(question: HeadlandQuestion): Problem[] {
  const { roller, load, radius, friction, axleSpacing, drag } = question
  const sound = [
    ...rollerProblems(roller, 'roller'),
    ...numberProblem(load, 'load', 'load', { above: 0 }),
    ...numberProblem(radius, 'radius', 'turnRadius', { above: 0 }),
    ...(friction === undefined ? [] : numberProblem(friction, 'friction', 'ratio', { atLeast: 0 })),
    ...(axleSpacing === undefined ? [] : numberProblem(axleSpacing, 'axleSpacing', 'place', { atLeast: 0 })),
    ...(drag === undefined ? [] : numberProblem(drag, 'drag', 'load')),
  ]
  if (sound.length > 0 || drag === undefined || drag === 0) return sound
  const grip = { above: -(friction ?? 0) * load, below: (friction ?? 0) * load }
  return friction === undefined
    ? numberProblem(friction, 'friction', 'ratio')
    : numberProblem(drag, 'drag', 'load', grip).map(problem => ({
        ...problem,
        expected: `${problem.expected}: beyond what friction holds the roller slides without turning`,
      }))
}

/**
 * Sliding of a roller on a headland turn. Each section rolls about its own middle, its ends slide.
 *
 *   at y from the still line  √(y² + e²)/r,  |y − shift| up to b/2N;  e = 0: greatest b/2Nr, mean b/4Nr, rms b/Nr√12
 *   shift = φ (b/2N) √(1 + e²/((b/2N)² (1 − φ²))),  φ = F/μ_f W;  friction work = μ_f W × mean
 *
 * Holds   a rigid roller, Coulomb friction, load even along the face, drag even among the sections. Two axles e before
 *         and behind the centre of turning slide crossways too, which sections cannot take away. Sections never change
 *         the sinkage
 * Sign    shift positive towards the centre of turning: drag slows the face, and the slower path lies there
 * Units   load, drag [N], lengths [m] → sliding [m/m], work [J/m]
 * Throws  InputError when a number is out of its range, or drag comes without a friction that can hold it
 * Source  derived; the shift is the hyperbola on which √((h + y)² + e²) − √((h − y)² + e²) is constant
 *         (docs/physics.md §3.6)
 */
export function headland(question: HeadlandQuestion): Headland {
  refuse(headlandProblems(question))
  const { roller, load, radius, friction, axleSpacing = 0, drag = 0 } = question
  const { length, sections = 1 } = roller
  const width = length / sections
  const half = width / 2
  const e = axleSpacing / 2
  const held = drag === 0 ? 0 : drag / ((friction ?? 0) * load)
  const shift = held * Math.hypot(half, e / Math.sqrt(1 - held * held))
  const mean = (areaTo(half - shift, e) + areaTo(half + shift, e)) / (width * radius)
  return {
    greatest: Math.hypot(half + Math.abs(shift), e) / radius,
    mean,
    rootMeanSquare: Math.hypot(half / Math.sqrt(3), shift, e) / radius,
    frictionWork: friction === undefined ? null : friction * load * mean,
    still: Array.from({ length: sections }, (_, i) => (i + 0.5) * width - length / 2 - shift),
    shift,
    outerOverInner: radius > length / 2 ? (radius + length / 2) / (radius - length / 2) : null,
    cautions: [
      ...(radius > length / 2
        ? []
        : [{ kind: 'turns about itself', value: radius, limit: length / 2 } as const]),
      ...(Math.abs(held) > NEAR_SLIPPING
        ? [{ kind: 'near slipping', value: Math.abs(held), limit: NEAR_SLIPPING } as const]
        : []),
    ],
  }
}
