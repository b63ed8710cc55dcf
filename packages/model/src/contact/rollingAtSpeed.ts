import { increasingRoot } from '../numerics/index.ts'
import {
  type Caution,
  type Metres,
  type MetresPerSecond,
  type Newtons,
  type NewtonsPerMetre,
  type NotConverged,
  numberProblem,
  type Problem,
  refuse,
  type Seconds,
} from '../quantities/index.ts'
import { isGrooved, type Roller, rollerProblems } from '../roller/index.ts'
import { type RelaxingStrip, relaxingStrip } from './relaxingStrip.ts'

export type RollingQuestion = {
  readonly roller: Roller
  /** Springs of stiffness k that stays and k₁ that relaxes with τ: k + k₁ e^(−t/τ), in Pa/m, Pa/m and s. */
  readonly relaxing: { readonly stiffness: number; readonly added: number; readonly time: Seconds }
  /** Per length of face. */
  readonly lineLoad: NewtonsPerMetre
  readonly speed: MetresPerSecond
}

export type RollingSettled = {
  readonly outcome: 'settled'
  readonly sinkage: Metres
  readonly lengthAhead: Metres
  readonly lengthBehind: Metres
  /** Of the whole roller. */
  readonly resistance: Newtons
  /** Resistance over load. */
  readonly coefficient: number
  readonly cautions: readonly Caution[]
}

/** A roller at one sinkage: its lands, and the floors of its grooves once they touch. */
function rolledAt({ roller, relaxing, speed }: RollingQuestion, sinkage: Metres): RelaxingStrip {
  const { surface } = roller
  const radius = roller.diameter / 2
  const strip = (depth: Metres) => relaxingStrip(relaxing, speed, radius, Math.sqrt(2 * radius * depth))
  const lands = strip(sinkage)
  if (!isGrooved(surface)) return lands
  const part = surface.land / surface.pitch
  const floors = sinkage > surface.depth ? strip(sinkage - surface.depth) : undefined
  const mean = (key: 'lineLoad' | 'resistance') => part * lands[key] + (1 - part) * (floors?.[key] ?? 0)
  // dz = a da/R is the same for both: the slope against the lands' entry takes the ratio of the entries
  const ratio = floors ? Math.sqrt(sinkage / (sinkage - surface.depth)) : 0
  return {
    lineLoad: mean('lineLoad'),
    byEntry: part * lands.byEntry + (1 - part) * (floors?.byEntry ?? 0) * ratio,
    lengthBehind: lands.lengthBehind,
    resistance: mean('resistance'),
  }
}

const rollingProblems = ({ roller, relaxing, lineLoad, speed }: RollingQuestion): Problem[] => [
  ...rollerProblems(roller, 'roller'),
  ...numberProblem(relaxing.stiffness, 'relaxing.stiffness', 'ratio', { above: 0 }),
  ...numberProblem(relaxing.added, 'relaxing.added', 'ratio', { atLeast: 0 }),
  ...numberProblem(relaxing.time, 'relaxing.time', 'time', { atLeast: 0 }),
  ...numberProblem(lineLoad, 'lineLoad', 'lineLoad', { above: 0 }),
  ...numberProblem(speed, 'speed', 'speed', { atLeast: 0 }),
]

/** On ln(line load). */
const BALANCED = 1e-13
/** Part of the radius beyond which the parabola carries noticeably more than the circle (docs/physics.md §3). */
const DEEP = 0.1

/**
 * A roller rolling steadily on springs of which a part relaxes: the standard linear solid. Fast rolling meets
 * stiffer turf; the resistance has a peak at a speed between.
 *
 *   p(t) = k w + k₁ ∫ e^(−(t−t′)/τ) ẇ dt′, w = z₀ − x²/2R;  Kelvin and Voigt's solid: k₁ → ∞ with k₁ τ kept
 *
 * Holds   without spread; parabolic arc; turf undisturbed ahead. Grooves are exact: lands, and floors once the sinkage
 *         passes the depth, are strips that each roll on their own
 * Sign    resistance positive against the motion
 * Units   stiffnesses [Pa/m], time [s], line load [N/m], speed [m/s] → lengths [m], resistance [N]
 * Throws  InputError when a number is out of its range
 * Source  May, Morris, Atack 1959, Journal of Applied Physics 30:1713; closed forms derived (docs/physics.md §3.5)
 */
export function rollingAtSpeed(question: RollingQuestion): RollingSettled | NotConverged {
  refuse(rollingProblems(question))
  const { roller, relaxing, lineLoad } = question
  const radius = roller.diameter / 2
  const sinkageOf = (entry: Metres) => entry ** 2 / (2 * radius)
  const stiff = relaxing.stiffness + relaxing.added
  const root = increasingRoot({
    evaluate: x => {
      const entry = Math.exp(x)
      const { lineLoad: carried, byEntry } = rolledAt(question, sinkageOf(entry))
      return { value: Math.log(carried / lineLoad), slope: (entry * byEntry) / carried }
    },
    // the springs at their stiffest, standing
    start: Math.log((3 * lineLoad * radius) / (2 * stiff)) / 3,
    tolerance: BALANCED,
  })
  if (root.outcome !== 'converged') {
    const { iterations, residual } = root
    return { outcome: 'not converged', where: 'roller', iterations, residual, cautions: [] }
  }
  const entry = Math.exp(root.at)
  const sinkage = sinkageOf(entry)
  const { lengthBehind, resistance } = rolledAt(question, sinkage)
  return {
    outcome: 'settled',
    sinkage,
    lengthAhead: entry,
    lengthBehind,
    resistance: resistance * roller.length,
    coefficient: resistance / lineLoad,
    cautions:
      sinkage > DEEP * radius ? [{ kind: 'deep in the arc', value: sinkage / radius, limit: DEEP }] : [],
  }
}
