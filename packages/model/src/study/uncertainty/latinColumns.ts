import { normal, type Random } from '../../numerics/index.ts'
import { UNIFORM_REACH } from './scatter.ts'

/** How draws are laid out: blocks, each a Latin hypercube of its own. */
export type Layout = { readonly blocks: number; readonly size: number }

/** Columns of standard variates (mean 0, variance 1), one a dimension, block after block. */
export type LatinColumns = { readonly normal: Float64Array[]; readonly uniform: Float64Array[] }

/** Knots of the normal quantile between 0 and ½; below the first few its own series is asked. */
const KNOTS = 1000
const OWN_BELOW = 0.01
let knots: Float64Array | undefined

/** Quantile of the normal distribution to 1e-7: a cubic through knots whose slope is one over the density. */
function normalQuantile(probability: number): number {
  if (probability > 0.5) return -normalQuantile(1 - probability)
  if (probability < OWN_BELOW) return normal.quantile(probability)
  knots ??= Float64Array.from({ length: KNOTS + 2 }, (_, k) =>
    // the first is at minus infinity, and never read
    normal.quantile(Math.max(k, 1) / (2 * KNOTS)),
  )
  const k = Math.floor(2 * KNOTS * probability)
  const t = 2 * KNOTS * probability - k
  const [x, y] = [knots[k]!, knots[k + 1]!]
  const width = Math.sqrt(2 * Math.PI) / (2 * KNOTS)
  const left = width * Math.exp((x * x) / 2)
  const right = width * Math.exp((y * y) / 2)
  const rise = y - x
  return x + t * (left + t * (3 * rise - 2 * left - right + t * (left + right - 2 * rise)))
}

/** Fills `order` with the numbers below its length in random order (Fisher and Yates), `back` with where each stands. */
function shuffle(order: Int32Array, back: Int32Array, random: Random): void {
  for (let i = 0; i < order.length; i++) {
    const j = random.integer(i + 1)
    order[i] = order[j]!
    order[j] = i
  }
  for (let i = 0; i < order.length; i++) back[order[i]!] = i
}

function arrange(column: Float64Array, from: number, slices: Float64Array, order: Int32Array): void {
  for (let i = 0; i < order.length; i++) column[from + i] = slices[order[i]!]!
}

/**
 * Replicated Latin hypercubes: in each block every input takes every one of `size` equal slices of its distribution
 * once, in an order of its own. Each draw by itself is distributed as it should be; blocks are independent, so that
 * what they differ by tells the error of their mean.
 *
 * Source  McKay, Beckman and Conover 1979, Technometrics 21:239-245; replicates for the error: Iman 1981 (from memory)
 */
export function latinColumns(
  random: Random,
  { blocks, size }: Layout,
  dimensions: { readonly normal: number; readonly uniform: number },
): LatinColumns {
  const columnsOf = (count: number) => Array.from({ length: count }, () => new Float64Array(blocks * size))
  const columns = { normal: columnsOf(dimensions.normal), uniform: columnsOf(dimensions.uniform) }
  const normalSlices = new Float64Array(size)
  const uniformSlices = new Float64Array(size)
  const order = new Int32Array(size)
  const back = new Int32Array(size)
  const all = [
    ...columns.normal.map(column => ({ column, slices: normalSlices })),
    ...columns.uniform.map(column => ({ column, slices: uniformSlices })),
  ]
  for (let block = 0; block < blocks; block++) {
    // one place within the slice for the whole block: each draw's own place is then even over its slice; never at its end
    const place = random.uniform() || 1 / 2
    for (let k = 0; k < size; k++) {
      const probability = (k + place) / size
      if (columns.normal.length > 0) normalSlices[k] = normalQuantile(probability)
      uniformSlices[k] = UNIFORM_REACH * (2 * probability - 1)
    }
    all.forEach(({ column, slices }, k) => {
      // an order and its inverse are both random, and two slices meet in them as they would in two orders
      if (k % 2 === 0) shuffle(order, back, random)
      arrange(column, block * size, slices, k % 2 === 0 ? order : back)
    })
  }
  return columns
}
