import type { Random } from '../random.ts'

/** How many powers of ten the starts are spread over, either way; the rounds take them in turn. */
const SPREADS = [0.5, 1, 2, 3] as const
/** One in so many starts tries a parameter with the other sign. */
const TURNED = 4

type Region = {
  readonly lower: Float64Array
  readonly upper: Float64Array
  readonly least: Float64Array
}

/**
 * One start drawn around another, evenly in the logarithm of each parameter; between two bounds every other one evenly
 * over what they leave.
 */
export function spreadStart(
  random: Random,
  { lower, upper, least }: Region,
  around: Float64Array,
  round: number,
): Float64Array {
  const decades = SPREADS[round % SPREADS.length]!
  return around.map((centre, k) => {
    const low = lower[k]!
    const high = upper[k]!
    const share = random.uniform()
    const coin = random.integer(2 * TURNED)
    if (Number.isFinite(high - low) && coin % 2 === 0)
      return low > 0 ? low * (high / low) ** share : low + share * (high - low)
    // a size is told from the bound that a parameter cannot pass, or else from zero
    const from = Number.isFinite(low) ? low : Number.isFinite(high) ? high : 0
    const size = Math.max(Math.abs(centre - from), least[k]!)
    const side = Number.isFinite(low) ? 1 : Number.isFinite(high) ? -1 : centre < 0 ? -1 : 1
    const turned =
      from === 0 && low === Number.NEGATIVE_INFINITY && (coin < 2 || (centre === 0 && coin % 2 === 1))
    const drawn = from + (turned ? -side : side) * size * 10 ** (decades * (2 * share - 1))
    return Math.min(Math.max(drawn, low), high)
  })
}
