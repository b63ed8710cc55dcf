import { twoSided } from '../../numerics/index.ts'
import { numberProblem, refuse } from '../../quantities/index.ts'
import type { Interval, Noise } from '../fit/fit.ts'
import { type Side, sideOf } from './profileSide.ts'

export type ProfileQuestion = {
  /** The least sum of squares with this parameter held at a value, the others free; null where there is none. */
  readonly solve: (held: number) => number | null
  /** The sum of squares of the fit, and the value there. */
  readonly best: number
  readonly value: number
  /** From the fit, as the first guess of how far to look. */
  readonly standardError: number | null
  readonly level: number
  /** Degrees of freedom of the fit. */
  readonly dof: number
  readonly noise: Noise
  readonly lower?: number
  readonly upper?: number
}

/** How far to look first where there is no standard error: this part of the value. */
const FIRST_LOOK = 0.1

const plain = (value: number): string => String(Number(value.toPrecision(4)))

const whyOpen = (side: Side & { kind: 'open' }): string =>
  side.reason === 'bound'
    ? `nothing speaks against any value as far as its bound ${plain(side.reached)}`
    : side.reason === 'no answer'
      ? `nothing speaks against any value as far as ${plain(side.reached)}, beyond which the model has no answer`
      : `nothing speaks against any value as far as ${plain(side.reached)}, where the search was given up`

/**
 * The interval of one parameter that holds all values for which the others can still make the sum of squares small
 * enough: it asks for no straight model, may be lopsided, and may be open to one side or both.
 *
 *   S(v) − S ≤ s² t²,  s² = S/(n − p), t Student's with n − p; with known noise σ² and the normal's z instead
 *
 * Throws  InputError when the level is not between 0 and 1 or a number given is not finite.
 * Source  Bates and Watts 1988, Nonlinear Regression Analysis and Its Applications, §6.1.
 */
export function profileInterval(question: ProfileQuestion): Interval {
  const { solve, best, value, standardError, level, dof, noise } = question
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = question
  refuse([
    ...numberProblem(value, 'value', 'ratio'),
    ...numberProblem(best, 'best', 'ratio', { atLeast: 0 }),
    ...numberProblem(level, 'level', 'ratio', { above: 0, below: 1 }),
  ])
  if (noise.kind === 'estimated' && !(dof > 0))
    return { kind: 'undetermined', why: 'as many parameters as readings leave no scatter to judge by' }
  const variance = noise.kind === 'known' ? noise.standardDeviation ** 2 : best / dof
  if (!(variance > 0)) return { kind: 'undetermined', why: 'the fit leaves no scatter to judge by' }
  const reach = twoSided(level, noise.kind === 'known' ? Number.POSITIVE_INFINITY : dof)
  const step =
    standardError !== null && standardError > 0
      ? reach * standardError
      : Math.abs(value) * FIRST_LOOK || Number.EPSILON ** 0.5

  /** How far the fit is from being as bad as the level allows, in standard errors: −reach at the fit itself. */
  const distance = (held: number): number | null => {
    const sum = solve(held)
    if (sum === null || !Number.isFinite(sum)) return null
    return Math.sign(sum - best) * Math.sqrt(Math.abs(sum - best) / variance) - reach
  }
  const common = { distance, value, step, reach }
  const low = sideOf({ ...common, toward: -1, bound: lower })
  const high = sideOf({ ...common, toward: 1, bound: upper })
  const found = low.kind === 'lower sum' ? low : high.kind === 'lower sum' ? high : null
  if (found)
    return {
      kind: 'undetermined',
      why: `with the parameter at ${plain(found.at)} the others come to a smaller sum of squares than the fit did: fit again from there`,
    }
  if (low.kind === 'end' && high.kind === 'end')
    return { kind: 'interval', low: low.at, high: high.at, level }
  if (low.kind === 'end' && high.kind === 'open')
    return { kind: 'at least', low: low.at, level, why: whyOpen(high) }
  if (low.kind === 'open' && high.kind === 'end')
    return { kind: 'at most', high: high.at, level, why: whyOpen(low) }
  if (low.kind === 'open' && high.kind === 'open')
    return { kind: 'undetermined', why: `downward ${whyOpen(low)}; upward ${whyOpen(high)}` }
  return { kind: 'undetermined', why: 'the search for its ends found none' }
}
