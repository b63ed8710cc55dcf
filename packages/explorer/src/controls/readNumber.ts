/** Spaces that people and formatters put between digits and unit. */
const SPACES = /[\s\u00a0\u202f]/g

const NUMBER = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/

/** Not yet a number, but on the way to one: nothing is said about it until the field is left. */
export function isUnfinished(text: string): boolean {
  return /^[+\-\u2212]?[.,]?$/.test(text.trim())
}

/**
 * A number as a person types it: decimal point or comma, a hyphen or a true minus, the unit behind it or not.
 * Anything else is null, never a guess.
 */
export function readNumber(text: string, unit = ''): number | null {
  let digits = text.replaceAll('\u2212', '-').replace(SPACES, '')
  if (unit !== '' && digits.endsWith(unit)) digits = digits.slice(0, -unit.length)
  if (!NUMBER.test(digits)) return null
  const number = Number(digits.replace(',', '.'))
  // Digits without end are more than a number can hold.
  return Number.isFinite(number) ? number : null
}
