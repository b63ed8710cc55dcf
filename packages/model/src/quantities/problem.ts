import { catalogue, type QuantityName, type UnitSystem } from './catalogue.ts'

/** One thing wrong with a value: where, what was expected, what stood there. */
export type Problem = {
  readonly path: string
  readonly expected: string
  readonly received: string
}

/** A caller's mistake: a value outside what the function is defined for. */
export class InputError extends Error {
  readonly quantity: string
  readonly expected: string
  readonly received: string

  constructor({ path, expected, received }: Problem) {
    super(`${path}: expected ${expected}, received ${received}`)
    this.name = 'InputError'
    this.quantity = path
    this.expected = expected
    this.received = received
  }
}

/** Throws the first problem as an InputError: the door of every public function. */
export function refuse(problems: readonly Problem[]): void {
  const first = problems[0]
  if (first) throw new InputError(first)
}

const TYPED = 6
const COMPUTED = 3

const withUnit = (value: number, digits: number, quantity: QuantityName, system: UnitSystem): string => {
  const { factor, unit } = catalogue[quantity][system]
  const shown = String(Number((value / factor).toPrecision(digits)))
  return unit === '' ? shown : unit === '°' ? `${shown}°` : `${shown} ${unit}`
}

/** A computed value as told in a sentence: three significant digits. */
export const tell = (value: number, quantity: QuantityName, system: UnitSystem = 'metric'): string =>
  Number.isFinite(value) ? withUnit(value, COMPUTED, quantity, system) : 'not known'

/** A value as it was given, in a problem's sentence: metric display units, six significant digits, plain minus. */
export function describe(value: unknown, quantity?: QuantityName): string {
  if (typeof value === 'number' && Number.isFinite(value))
    return quantity ? withUnit(value, TYPED, quantity, 'metric') : String(Number(value.toPrecision(TYPED)))
  if (value === undefined) return 'nothing'
  if (typeof value === 'number') return String(value)
  const SHOWN = 60
  const text = JSON.stringify(value) ?? typeof value
  return text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text
}

type Range = {
  /** Strictly more than. */
  readonly above?: number
  readonly atLeast?: number
  /** Strictly less than. */
  readonly below?: number
  readonly atMost?: number
}

function words(range: Range, quantity: QuantityName): string {
  const say = (value: number) => describe(value, quantity)
  const parts: string[] = []
  if (range.above !== undefined) parts.push(`more than ${say(range.above)}`)
  if (range.atLeast !== undefined) parts.push(`at least ${say(range.atLeast)}`)
  if (range.below !== undefined) parts.push(`less than ${say(range.below)}`)
  if (range.atMost !== undefined) parts.push(`at most ${say(range.atMost)}`)
  return parts.length === 0 ? 'a finite number' : parts.join(' and ')
}

const inside = (value: number, { above, atLeast, below, atMost }: Range): boolean =>
  (above === undefined || value > above) &&
  (atLeast === undefined || value >= atLeast) &&
  (below === undefined || value < below) &&
  (atMost === undefined || value <= atMost)

/**
 * Beyond these a number is no size of anything in SI, only a slip of a program; products of a few of them would leave
 * what a double can hold and come back as infinite or as nothing.
 */
const SMALLEST = 1e-30
const GREATEST = 1e30

/** Whether a number can be calculated with. What may be nothing may also be next to nothing. */
const hasSize = (value: number, { above }: Range): boolean =>
  Math.abs(value) <= GREATEST && (above !== 0 || value >= SMALLEST)

/** The problem of one number, as a list of none or one, so that lists of problems are built by spreading. */
export function numberProblem(
  value: unknown,
  path: string,
  quantity: QuantityName,
  range: Range = {},
): Problem[] {
  if (typeof value !== 'number') return [{ path, expected: 'a number', received: describe(value) }]
  if (!Number.isFinite(value) || !inside(value, range))
    return [{ path, expected: words(range, quantity), received: describe(value, quantity) }]
  return hasSize(value, range)
    ? []
    : [
        {
          path,
          expected: 'a number of a size that can be calculated with',
          received: describe(value, quantity),
        },
      ]
}

/** The problem of a part that should be an object and is not, as a list of none or one. */
export const objectProblem = (value: unknown, path: string): Problem[] =>
  typeof value === 'object' && value !== null
    ? []
    : [{ path, expected: 'an object', received: describe(value) }]
