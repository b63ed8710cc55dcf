import { leverageOf, type Residuals, randomFrom, type Solved } from '../../../numerics/index.ts'
import { describe, numberProblem, type Problem, refuse } from '../../../quantities/index.ts'
import { normalStep, type Step, stepRoom } from './normalStep.ts'

export type BootstrapFitsQuestion = {
  readonly residuals: Residuals
  /** The fit of the readings as they are. */
  readonly solved: Solved
  /** What is drawn again: residuals about the curve, single readings, or whole groups of readings such as sets. */
  readonly resample: 'residuals' | 'readings' | { readonly groups: Int32Array }
  readonly draws: number
  readonly seed: number
  readonly onStep?: (done: number) => void
}

export type BootstrapFits = {
  /** Parameters as they are solved for, a row a draw that was fitted. */
  readonly values: Float64Array
  readonly fitted: number
  /** Never left out in silence. */
  readonly failed: {
    readonly 'no answer': number
    readonly 'not converged': number
    readonly 'not determined': number
  }
  readonly evaluations: number
}

/** A step this small beside a standard error is the last: what is left is its square. */
const LAST = 1e-3
/** A step shorter than this, in standard errors, need not look at the derivatives again. */
const SHORT = 0.1
const MOST_STEPS = 25
/** A step that makes the squares more is halved, this often at most. */
const MOST_HALVES = 8
const EVERY = 100

function questionProblems({ residuals, resample, draws, solved }: BootstrapFitsQuestion): Problem[] {
  const groups = typeof resample === 'object' ? resample.groups : null
  return [
    ...numberProblem(draws, 'draws', 'count', { atLeast: 1 }),
    ...(residuals.jacobian
      ? []
      : [{ path: 'residuals.jacobian', expected: 'derivatives', received: describe(undefined) }]),
    ...(solved.outcome === 'failed'
      ? [{ path: 'solved', expected: 'a fit', received: 'one that failed' }]
      : []),
    ...(solved.loss === null
      ? []
      : [{ path: 'solved.loss', expected: 'plain squares', received: `a ${solved.loss.kind} loss` }]),
    ...(groups !== null && groups.length !== residuals.count
      ? [{ path: 'resample.groups', expected: `${residuals.count} numbers`, received: String(groups.length) }]
      : []),
  ]
}

/** Fills how often each residual counts and what is added to it, for one draw. */
type Draw = (counts: Float64Array, added: Float64Array) => void

function drawsOf({ residuals, solved, resample, seed }: BootstrapFitsQuestion): Draw {
  const n = residuals.count
  const random = randomFrom(seed)
  if (resample === 'residuals') {
    const leverage = leverageOf(solved)
    const raised = solved.residuals.map((r, i) => r / Math.sqrt(Math.max(Number.EPSILON, 1 - leverage[i]!)))
    const mean = raised.reduce((sum, r) => sum + r, 0) / n
    return (counts, added) => {
      counts.fill(1)
      for (let i = 0; i < n; i++) added[i] = raised[random.integer(n)]! - mean - solved.residuals[i]!
    }
  }
  const groups = resample === 'readings' ? Int32Array.from({ length: n }, (_, i) => i) : resample.groups
  const names = [...new Set(groups)]
  const place = new Map(names.map((name, at) => [name, at]))
  const times = new Float64Array(names.length)
  const placed = Int32Array.from(groups, group => place.get(group)!)
  return counts => {
    times.fill(0)
    for (let j = 0; j < names.length; j++) times[random.integer(names.length)]!++
    for (let i = 0; i < n; i++) counts[i] = times[placed[i]!]!
  }
}

/**
 * The fit made again many times of readings drawn from the readings.
 *
 *   first step of every draw: (J₀ᵀMJ₀) δ = −J₀ᵀM(r₀ + Δ), J₀ and r₀ those of the fit; then Gauss and Newton's own
 *   steps, halved where they do not lead down, until the last is a thousandth of a standard error
 *
 * The first step costs no look at the model, and the second is usually the last but for its check.
 *
 * Throws  InputError without derivatives, or with a fit that failed
 * Source  Efron 1979, Annals of Statistics 7:1-26 (from memory)
 */
export function bootstrapFits(question: BootstrapFitsQuestion): BootstrapFits {
  refuse(questionProblems(question))
  const { residuals, solved, draws, onStep } = question
  const { count: n, size: p } = residuals
  const draw = drawsOf(question)
  const values = new Float64Array(draws * p)
  const refit = refitterOf(residuals, solved)
  const counts = new Float64Array(n).fill(1)
  const added = new Float64Array(n)
  const failed = { 'no answer': 0, 'not converged': 0, 'not determined': 0 }
  let fitted = 0
  for (let k = 0; k < draws; k++) {
    draw(counts, added)
    const ending = refit.from(counts, added)
    if (ending === 'converged') values.set(refit.at, p * fitted++)
    else failed[ending]++
    if (onStep && (k + 1) % EVERY === 0) onStep(k + 1)
  }
  return { values: values.slice(0, p * fitted), fitted, failed, evaluations: refit.evaluations() }
}

type Ending = 'converged' | keyof BootstrapFits['failed']

function refitterOf(residuals: Residuals, solved: Solved) {
  const { count: n, size: p } = residuals
  const room = stepRoom(p)
  const at = new Float64Array(p)
  const next = new Float64Array(p)
  const r = new Float64Array(n)
  const J = new Float64Array(n * p)
  const jacobian = residuals.jacobian!.bind(residuals)
  let evaluations = 0

  const squares = (counts: Float64Array) => {
    let sum = 0
    for (let i = 0; i < n; i++) sum += counts[i]! * r[i]! * r[i]!
    return sum
  }
  /** Residuals of the drawn readings at `next`. */
  const look = (added: Float64Array): boolean => {
    evaluations++
    if (!residuals.evaluate(next, r)) return false
    for (let i = 0; i < n; i++) r[i]! += added[i]!
    return true
  }

  const from = (counts: Float64Array, added: Float64Array): Ending => {
    at.set(solved.p)
    for (let i = 0; i < n; i++) r[i] = solved.residuals[i]! + added[i]!
    let derivatives = solved.jacobian
    for (let steps = 0; steps < MOST_STEPS; steps++) {
      const step: Step = normalStep(room, {
        jacobian: derivatives,
        residuals: r,
        counts,
        held: solved.atBound,
      })
      if (!step.determined) return 'not determined'
      if (step.size < LAST) {
        for (let j = 0; j < p; j++) at[j]! += room.step[j]!
        return 'converged'
      }
      const before = squares(counts)
      let share = 1
      let down = false
      let answered = false
      for (let halves = 0; !down && halves <= MOST_HALVES; halves++, share /= 2) {
        for (let j = 0; j < p; j++) next[j] = at[j]! + share * room.step[j]!
        const answer = look(added)
        answered ||= answer
        down = answer && squares(counts) <= before
      }
      if (!down) return answered ? 'not converged' : 'no answer'
      at.set(next)
      // after a short step the derivatives are those of before it, but for less than the last step leaves
      if (share === 1 && step.size < SHORT && derivatives === J) continue
      if (!jacobian(at, J)) return 'no answer'
      derivatives = J
    }
    return 'not converged'
  }
  return { at, from, evaluations: () => evaluations }
}
