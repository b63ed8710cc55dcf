import { expect } from 'vitest'

/** How far a number may lie from what was expected, and why: the name says where the number comes from. */
export type Tolerance = { readonly name: string; readonly relative: number; readonly absolute: number }

const part = (name: string, relative: number): Tolerance => ({ name, relative, absolute: 0 })

/** Two ways of writing the same sum. */
export const identity = part('identity', 1e-12)

/** Ten times what the solver of a unit stops at: 2e-12 on the logarithm of a load. */
export const solver = part('solver', 10 * 2e-12)

/** An accuracy that is stated elsewhere: by a table's README or by the page that gives a formula. */
export const stated = (relative: number): Tolerance => part(`stated ${relative}`, relative)

/** Relative to a size that is not the expected value: for sums that should come to nothing. */
export const ofSize = (size: number, tolerance: Tolerance): Tolerance => ({
  name: `${tolerance.name} of ${size}`,
  relative: 0,
  absolute: tolerance.relative * Math.abs(size),
})

/** The last printed digit stands for half of itself either way; the sum of binary and decimal is given a whisker. */
const WHISKER = 1e-9

/** Half the last printed digit: `printed('0.1353')` is within 0.00005 of 0.1353. */
export function printed(text: string): Tolerance & { readonly value: number } {
  const found = /^[-−]?\d+(?:\.(\d+))?(?:[eE]([-+]?\d+))?$/.exec(text)
  if (!found) throw new Error(`not a printed number: ${text}`)
  const [, decimals = '', exponent = '0'] = found
  const digit = 10 ** (Number(exponent) - decimals.length)
  return {
    name: `printed ${text}`,
    value: Number(text.replace('−', '-')),
    relative: 0,
    absolute: (digit / 2) * (1 + WHISKER),
  }
}

/** The sentence that says how far off a number is; nothing when it is near enough. */
export function missOf(received: number, expected: number, tolerance: Tolerance): string | undefined {
  const miss = Math.abs(received - expected)
  if (miss <= tolerance.relative * Math.abs(expected) + tolerance.absolute) return undefined
  const share = expected === 0 ? 'of zero' : `${(miss / Math.abs(expected)).toExponential(2)} relative`
  return `received ${received}, expected ${expected}: off by ${miss.toExponential(2)}, ${share} (${tolerance.name})`
}

export function expectNear(received: number, expected: number, tolerance: Tolerance, what = ''): void {
  const miss = missOf(received, expected, tolerance)
  if (miss !== undefined) expect.fail(what ? `${what}: ${miss}` : miss)
}

/** Against a number as it stands in print, to half its last digit. */
export function expectPrinted(received: number, text: string, what = ''): void {
  const expected = printed(text)
  expectNear(received, expected.value, expected, what)
}

/** How closely an order of convergence must be met where the solution is smooth. */
const BAND = 0.1

/** Order of convergence: `rate(2).of(errors)`, the errors on meshes of which each halves the one before. */
export const rate = (order: number) => ({
  seen: (errors: readonly number[]): readonly number[] =>
    errors.slice(1).map((error, i) => Math.log2(Math.abs(errors[i]! / error))),
  of(errors: readonly number[], what = ''): void {
    const last = this.seen(errors).at(-1)
    if (last === undefined || !(Math.abs(last - order) <= BAND))
      expect.fail(`${what}: order ${last}, expected ${order} ± ${BAND}; errors ${errors.join(', ')}`)
  },
})
