import type { Random } from '../../numerics/index.ts'
import { drawSample, type HeightSample } from './heightSample.ts'
import { evaluatePolynomial, fitPolynomial, type Term, termsOfDegree } from './polynomial.ts'
import type { Posed } from './posed.ts'
import { solvedHeight } from './solvedHeight.ts'

/** Solved draws a term, and some more, so that none is fitted to its own rounding. */
const DRAWS_A_TERM = 2
const SPARE = 20
/** Inputs that move the height by this part of what the strongest does are followed beyond the second degree. */
const MOVER = 0.03
const MOST_MOVERS = 6
const MOST_STRONG = 3

const columnsOf = ({ sources }: HeightSample) => sources.flatMap(({ columns }) => columns)

/** Solves draws of their own to learn from; undefined when one of them has no answer. */
function learn(
  posed: Posed,
  count: number,
  random: Random,
  each: () => void,
): { points: Float64Array[]; heights: Float64Array; benches: Float64Array } | undefined {
  const sample = drawSample(posed.varied, { blocks: 1, size: count }, random)
  const heights = new Float64Array(count).fill(Number.NaN)
  for (let i = 0; i < count; i++) {
    const height = solvedHeight(posed, sample, i)
    if (typeof height === 'number') heights[i] = height
    // what makes no unit or turf is marked as such among all draws
    else if (height.why !== 'not possible') return undefined
    each()
  }
  const kept = (column: Float64Array) => column.filter((_value, i) => !Number.isNaN(heights[i]!))
  return {
    points: columnsOf(sample).map(kept),
    heights: kept(heights),
    benches: kept(benchesOf(posed, sample)),
  }
}

/** Bench heights as drawn: they are left out of what the polynomial has to learn. */
function benchesOf({ varied }: Posed, sample: HeightSample): Float64Array {
  const place = varied.inputs.findIndex(({ input }) => input.name === 'benchHeight')
  const { blocks, size } = sample.layout
  return sample.values[place] ?? new Float64Array(blocks * size).fill(varied.parts.unit.benchHeight)
}

/** Inputs by how strongly the first-degree terms move the answer. */
function movers(terms: readonly Term[], coefficients: Float64Array): number[] {
  const linear = terms.flatMap((term, t) =>
    term.length === 1 ? [{ input: term[0]!, by: Math.abs(coefficients[t]!) }] : [],
  )
  const most = Math.max(...linear.map(({ by }) => by))
  return linear
    .filter(({ by }) => by > MOVER * most)
    .sort((a, b) => b.by - a.by)
    .slice(0, MOST_MOVERS)
    .map(({ input }) => input)
}

/**
 * Heights of all draws by a polynomial in the standard variates, learnt from draws solved one by one: all products of
 * two inputs, and of three and four of those that move the height most. Where every drop is positive its logarithm is
 * learnt, which is nearly straight in the logarithms of softness and load.
 *
 * Undefined when one of the solved draws has no answer: then the rest can not be trusted to have one.
 */
export function surrogateHeights(
  posed: Posed,
  sample: HeightSample,
  random: Random,
  each: (part: number) => void,
): { readonly heights: Float64Array; readonly solved: number } | undefined {
  const points = columnsOf(sample)
  const all = points.map((_, k) => k)
  const low = [0, 1, 2].flatMap(degree => termsOfDegree(all, degree))
  const first = DRAWS_A_TERM * low.length + SPARE
  const most = first + DRAWS_A_TERM * (termsOfDegree(all.slice(0, MOST_MOVERS), 3).length + 15)
  let solved = 0
  const step = () => each(++solved / most)
  const learnt = learn(posed, first, random, step)
  if (!learnt) return undefined
  const inLog = learnt.heights.every((height, i) => height < learnt.benches[i]!)
  const told = (heights: Float64Array, benches: Float64Array) =>
    heights.map((height, i) => (inLog ? Math.log(benches[i]! - height) : benches[i]! - height))
  const rough = fitPolynomial(low, learnt.points, told(learnt.heights, learnt.benches))
  const moving = movers(low, rough.coefficients)
  const high = [...termsOfDegree(moving, 3), ...termsOfDegree(moving.slice(0, MOST_STRONG), 4)]
  const further = learn(posed, DRAWS_A_TERM * high.length, random, step)
  if (!further || (inLog && further.heights.some((height, i) => height >= further.benches[i]!)))
    return undefined
  const joined = (a: Float64Array, b: Float64Array) => Float64Array.of(...a, ...b)
  const polynomial = fitPolynomial(
    [...low, ...high],
    learnt.points.map((column, k) => joined(column, further.points[k]!)),
    joined(told(learnt.heights, learnt.benches), told(further.heights, further.benches)),
  )
  const benches = benchesOf(posed, sample)
  const drops = evaluatePolynomial(polynomial, points, benches.length)
  return { heights: drops.map((drop, i) => benches[i]! - (inLog ? Math.exp(drop) : drop)), solved }
}
