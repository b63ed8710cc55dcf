import type { Descended } from './descend.ts'
import { descend } from './descend.ts'
import type { Descent } from './descentRoom.ts'
import type { Loss, Residuals } from './question.ts'
import { slopesAt } from './slopes.ts'

type Robust = Exclude<Loss, { kind: 'squares' }>

export type Reweighted = Descended & {
  readonly robust: Float64Array
  readonly spread: number
}

/** Half of normal residuals lie within so many standard deviations. */
const HALF_WITHIN = 0.6744897501960817
/** Reweighting comes closer by a factor of two to ten each round. */
const ROUNDS = 200
/** Where Huber's loss begins when it only prepares the way: 95 % efficient for normal residuals. */
const HUBER_AT = 1.345

function medianSize(r: Float64Array): number {
  const sizes = r.map(Math.abs).sort()
  const middle = sizes.length >> 1
  return sizes.length % 2 ? sizes[middle]! : (sizes[middle - 1]! + sizes[middle]!) / 2
}

/** ψ(u)/u at u = r/(at · spread). */
const weightOf = (kind: Robust['kind'], u: number): number =>
  kind === 'huber' ? Math.min(1, 1 / Math.abs(u)) : Math.abs(u) < 1 ? (1 - u * u) ** 2 : 0

/** Residuals and slopes times the roots of the robust weights, which change under way. */
const weighted = (residuals: Residuals, roots: Float64Array): Residuals => {
  const { count, size } = residuals
  return {
    count,
    size,
    evaluate(p, r) {
      if (!residuals.evaluate(p, r)) return false
      for (let i = 0; i < count; i++) r[i] = r[i]! * roots[i]!
      return true
    },
    ...(residuals.jacobian && {
      jacobian(p: Float64Array, jacobian: Float64Array) {
        if (!residuals.jacobian?.(p, jacobian)) return false
        for (let i = 0; i < count; i++)
          for (let k = 0; k < size; k++) jacobian[i * size + k] = jacobian[i * size + k]! * roots[i]!
        return true
      },
    }),
  }
}

/**
 * The robust fit by least squares with weights that follow the residuals.
 *
 *   ω = ψ(u)/u, u = r/(c s);  Huber ω = min(1, 1/|u|);  bisquare ω = (1 − u²)² inside |u| < 1
 *
 * s is the given standard deviation or the median of |r| over 0.6745. Bisquare may have several answers: it begins
 * from Huber's.
 *
 * Source  Huber 1964, Annals of Mathematical Statistics 35:73-101; Beaton and Tukey 1974, Technometrics 16:147-185;
 *         Holland and Welsch 1977, Communications in Statistics A6:813-827 for the reweighting.
 */
export function reweight(descent: Descent, from: Descended, loss: Robust): Reweighted {
  const begun =
    loss.kind === 'bisquare' ? reweight(descent, from, { ...loss, kind: 'huber', at: HUBER_AT }) : from
  const { residuals, least, tolerance } = descent
  const roots = new Float64Array(residuals.count).fill(1)
  const inner: Descent = { ...descent, residuals: weighted(residuals, roots) }
  const raw = Float64Array.from(begun.residuals)
  let run: Descended = begun
  let spread = 0
  let { iterations, evaluations } = begun
  let arrived = false
  for (let round = 0; round < ROUNDS && !arrived; round++) {
    spread = loss.standardDeviation ?? medianSize(raw) / HALF_WITHIN
    // more than half fit exactly: nothing to measure the others by
    if (spread === 0) break
    for (let i = 0; i < raw.length; i++)
      roots[i] = Math.sqrt(weightOf(loss.kind, raw[i]! / (loss.at * spread)))
    const next = descend(inner, run.p)
    iterations += next.iterations
    evaluations += next.evaluations + 1
    arrived = next.p.every(
      (value, k) => Math.abs(value - run.p[k]!) <= tolerance * Math.max(Math.abs(value), least[k]!),
    )
    run = next
    if (!residuals.evaluate(run.p, raw)) break
  }
  const place = { ...run, residuals: raw }
  residuals.evaluate(run.p, raw)
  evaluations += Math.abs(slopesAt(descent, place, true)) + 1
  const robust = roots.map(root => root * root)
  const sumOfSquares = raw.reduce((sum, r, i) => sum + robust[i]! * r * r, 0)
  const ending = spread === 0 ? 'half exact' : arrived ? run.ending : 'too many iterations'
  return { ...place, ending, sumOfSquares, iterations, evaluations, robust, spread }
}
