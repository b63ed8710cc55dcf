import type { Residuals } from '../../../numerics/index.ts'

/** Residuals with one of their parameters held at a value that may be changed from search to search. */
export function heldResiduals(residuals: Residuals, place: number) {
  const { count, size } = residuals
  const whole = new Float64Array(size)
  const all = new Float64Array(count * size)
  const fill = (others: Float64Array): Float64Array => {
    for (let k = 0, j = 0; k < size; k++) if (k !== place) whole[k] = others[j++]!
    return whole
  }
  const jacobian = residuals.jacobian?.bind(residuals)
  const held: Residuals = {
    count,
    size: size - 1,
    evaluate: (others, out) => residuals.evaluate(fill(others), out),
    ...(jacobian && {
      jacobian: (others: Float64Array, out: Float64Array) => {
        if (!jacobian(fill(others), all)) return false
        for (let i = 0, to = 0; i < count; i++)
          for (let k = 0; k < size; k++) if (k !== place) out[to++] = all[i * size + k]!
        return true
      },
    }),
  }
  return {
    residuals: held,
    hold: (value: number) => {
      whole[place] = value
    },
    /** What is left of a list of all parameters. */
    others: (list: Float64Array) => list.filter((_, k) => k !== place),
  }
}
