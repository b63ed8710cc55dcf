/** How a search for a root ended. `slope` is the function's slope where it ended. */
export type Root = {
  /** 'beyond': the function is still below zero at the upper end of the search. */
  readonly outcome: 'converged' | 'beyond' | 'not converged'
  readonly at: number
  readonly slope: number
  readonly iterations: number
  readonly residual: number
}

export type Evaluation = { readonly value: number; readonly slope: number }

type Search = {
  readonly evaluate: (x: number) => Evaluation
  readonly start: number
  readonly low?: number
  readonly high?: number
  /** Largest step while a side of the bracket is still open. */
  readonly reach?: number
  /** Converged when |value| is at most this. */
  readonly tolerance: number
  readonly most?: number
}

/**
 * Where an increasing function crosses zero: Newton's method kept inside a shrinking bracket.
 *
 * Holds   one crossing between low and high; for functions near straight (logarithm against logarithm) two to four
 *         evaluations.
 */
export function increasingRoot(search: Search): Root {
  const { evaluate, tolerance, reach = 4, most = 80 } = search
  const end = search.high ?? Number.POSITIVE_INFINITY
  let low = search.low ?? Number.NEGATIVE_INFINITY
  let high = end
  let x = Math.min(Math.max(search.start, low), high)
  let value = Number.NaN
  let slope = Number.NaN
  for (let iterations = 1; iterations <= most; iterations++) {
    ;({ value, slope } = evaluate(x))
    const root = { at: x, slope, iterations, residual: value }
    if (Math.abs(value) <= tolerance) return { outcome: 'converged', ...root }
    if (value < 0 && x === end) return { outcome: 'beyond', ...root }
    if (value > 0) high = x
    else low = x
    let step = -value / slope
    // an infinite or vanishing slope says nothing of how far to go
    if (!Number.isFinite(step) || !Number.isFinite(slope)) step = value > 0 ? -reach : reach
    let next = x + Math.min(Math.max(step, -reach), reach)
    if (next >= high && high === end)
      next = end // the end itself is tried before anything is halved towards it
    else if ((next <= low || next >= high) && Number.isFinite(low) && Number.isFinite(high))
      next = (low + high) / 2
    if (next === x || high - low <= Math.abs(x) * Number.EPSILON * 2) return { outcome: 'converged', ...root }
    x = next
  }
  return { outcome: 'not converged', at: x, slope, iterations: most, residual: value }
}
