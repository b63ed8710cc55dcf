import { refuse } from '../quantities/index.ts'

/** A stream of random numbers that its seed determines. */
export type Random = {
  /** At least 0 and below 1, in steps of 2⁻⁵³. */
  uniform(): number
  /** Mean 0, standard deviation 1. */
  normal(): number
  /** A whole number at least 0 and below the given one, each as likely. */
  integer(below: number): number
}

const WORD = 2 ** 32
/** The low 26 of 53 bits come from a second word. */
const LOW_BITS = 26

const turnLeft = (x: number, by: number): number => (x << by) | (x >>> (32 - by))

/** SplitMix's stream of words, by which one number fills a whole state without making neighbours alike. */
function* splitWords(seed: number): Generator<number, never> {
  let state = seed | 0
  for (;;) {
    state = (state + 0x9e3779b9) | 0
    let z = state
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b)
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35)
    yield z ^ (z >>> 16)
  }
}

/** The generator itself, from a state of four words that are not all zero: whole words of 32 bits. */
export function xoshiro(state: Int32Array): () => number {
  let [a = 0, b = 0, c = 0, d = 0] = state
  return () => {
    const word = Math.imul(turnLeft(Math.imul(b, 5), 7), 9) >>> 0
    const shifted = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= shifted
    d = turnLeft(d, 11)
    return word
  }
}

/**
 * Random numbers, the same from one seed on every machine: xoshiro128**, its state filled by SplitMix32 from the two
 * halves of the seed. Words, uniforms and integers are equal bit for bit, normals to the rounding of a logarithm.
 *
 * Throws  InputError when the seed is not a whole number from 0 to 2⁵³ − 1, or a range not one from 1 to 2³².
 * Source  Blackman and Vigna 2021, ACM Transactions on Mathematical Software 47:36; Steele, Lea and Flood 2014 with
 *         MurmurHash3's mixing of 32 bits; normals by Marsaglia's polar method (Marsaglia and Bray 1964, SIAM Review
 *         6:260-264).
 */
export function randomFrom(seed: number): Random {
  if (!Number.isSafeInteger(seed) || seed < 0)
    refuse([{ path: 'seed', expected: 'a whole number of at least 0', received: String(seed) }])
  const low = splitWords(seed % WORD)
  const high = splitWords(Math.floor(seed / WORD))
  const state = Int32Array.from(
    { length: 4 },
    (_, i) => low.next().value ^ turnLeft(high.next().value, i + 1),
  )
  if (state.every(word => word === 0)) state[0] = 1
  const word = xoshiro(state)
  let kept: number | null = null

  const uniform = (): number => {
    const top = word() >>> (32 - (53 - LOW_BITS))
    const bottom = word() >>> (32 - LOW_BITS)
    return (top * 2 ** LOW_BITS + bottom) / 2 ** 53
  }
  const normal = (): number => {
    if (kept !== null) {
      const value = kept
      kept = null
      return value
    }
    for (;;) {
      const x = 2 * uniform() - 1
      const y = 2 * uniform() - 1
      const s = x * x + y * y
      if (s >= 1 || s === 0) continue
      const factor = Math.sqrt((-2 * Math.log(s)) / s)
      kept = y * factor
      return x * factor
    }
  }
  const integer = (below: number): number => {
    if (!Number.isInteger(below) || below < 1 || below > WORD)
      refuse([{ path: 'below', expected: 'a whole number from 1 to 4294967296', received: String(below) }])
    if (below === WORD) return word()
    // remainders of whole words, which a processor has; 2³² itself is none: 2³² − below leaves the same
    const parts = below >>> 0
    const rest = (-below >>> 0) % parts
    // words past the last whole multiple would make the first numbers likelier
    for (;;) {
      const drawn = word() >>> 0
      if (drawn < WORD - rest) return drawn % parts
    }
  }
  return { uniform, normal, integer }
}
