import { describe, InputError, numberProblem, type QuantityName } from '../../../quantities/index.ts'
import { type LawName, laws, type PressureLaw, turfProblems } from '../../../turf/index.ts'
import { emptyLaw, isWhole, type TurfParameter, turfParameters, turfWith } from './lawParameters.ts'
import type { Moved } from './loadRates.ts'
import type { ComplianceQuestion, Free } from './question.ts'

/** A free parameter as it was asked for, with what is known of it before the data are looked at. */
export type FreeParameter = Moved & {
  readonly quantity: QuantityName | null
  readonly perSet: boolean
  /** Where it was told to start; undefined: the data tell. */
  readonly start: number | undefined
  readonly lower: number
  readonly upper: number
}

export type TurfAsked = {
  readonly law: PressureLaw
  readonly free: readonly FreeParameter[]
  readonly held: ReadonlyMap<string, number>
}

function lawAsked(law: LawName | PressureLaw): PressureLaw {
  if (typeof law !== 'string') {
    const [problem] = turfProblems({ law }, '')
    if (problem) throw new InputError({ ...problem, path: problem.path.replace(/^\./, '') })
    return law
  }
  const kinds = Object.keys(laws).filter(kind => !isWhole(kind as LawName))
  if (!Object.hasOwn(laws, law) || isWhole(law))
    throw new InputError({
      path: 'law',
      expected: `one of ${kinds.join(', ')}, or a law in full`,
      received: describe(law),
    })
  return emptyLaw(law)
}

const nameOf = (free: Free): string => (typeof free === 'string' ? free : free.name)

/** How many letters differ, at least: what was probably meant. */
function distance(one: string, other: string): number {
  let before = Array.from({ length: other.length + 1 }, (_, j) => j)
  for (let i = 1; i <= one.length; i++) {
    const row = [i]
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1
      row.push(Math.min(before[j]! + 1, row[j - 1]! + 1, before[j - 1]! + same))
    }
    before = row
  }
  return before[other.length]!
}

function unknown(path: string, name: unknown, known: readonly TurfParameter[]): InputError {
  const names = known.map(one => one.name)
  const told = typeof name === 'string' ? name : ''
  const near = [...names].sort(
    (a, b) => distance(told.toLowerCase(), a.toLowerCase()) - distance(told.toLowerCase(), b.toLowerCase()),
  )[0]
  return new InputError({
    path,
    expected: `one of ${names.join(', ')} (nearest: ${near})`,
    received: describe(name),
  })
}

/** The exponents for which the quadratures under an arc are good: those the power law accepts. */
const EXPONENTS = { lower: 0.2, upper: 2 } as const

/** Softness and depths are positive, and solved for in their logarithm; spread may be nothing. */
function limitsOf({ name, quantity }: TurfParameter): Pick<FreeParameter, 'by' | 'lower' | 'upper'> {
  if (quantity === 'exponent') return { by: 'ln', ...EXPONENTS }
  if (name === 'spread') return { by: 'plain', lower: 0, upper: Number.POSITIVE_INFINITY }
  if (quantity === null)
    return { by: 'plain', lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY }
  return { by: 'ln', lower: 0, upper: Number.POSITIVE_INFINITY }
}

function numberAt(value: number | undefined, path: string, quantity: QuantityName | null): void {
  if (value === undefined) return
  const [problem] = numberProblem(value, path, quantity ?? 'ratio')
  if (problem) throw new InputError(problem)
}

function freeParameter(known: TurfParameter, free: Free, question: ComplianceQuestion): FreeParameter {
  const { name, quantity } = known
  const limits = limitsOf(known)
  const asked = question.bounds?.[name]
  numberAt(asked?.lower, `bounds.${name}.lower`, quantity)
  numberAt(asked?.upper, `bounds.${name}.upper`, quantity)
  const lower = Math.max(limits.lower, asked?.lower ?? Number.NEGATIVE_INFINITY)
  const upper = Math.min(limits.upper, asked?.upper ?? Number.POSITIVE_INFINITY)
  if (!(lower < upper))
    throw new InputError({
      path: `bounds.${name}`,
      expected: `a lower bound below the upper one, between ${limits.lower} and ${limits.upper}`,
      received: describe(asked),
    })
  const start = question.start?.[name]
  numberAt(start, `start.${name}`, quantity)
  // a written value that must be positive is solved for in its logarithm too
  const by = quantity === null && (asked?.lower ?? -1) >= 0 ? 'ln' : limits.by
  return {
    name,
    quantity,
    by,
    perSet: typeof free !== 'string',
    start: start ?? (Number.isFinite(known.given) ? known.given : undefined),
    lower,
    upper,
  }
}

function checkNames(question: ComplianceQuestion, known: readonly TurfParameter[]): void {
  const names = known.map(({ name }) => name)
  const check = (path: string, name: unknown) => {
    if (!names.includes(name as string)) throw unknown(path, name, known)
  }
  question.free.forEach((free, i) => {
    check(`free.${i}`, nameOf(free))
    if (typeof free !== 'string' && (free.per as unknown) !== 'set')
      throw new InputError({ path: `free.${i}.per`, expected: '"set"', received: describe(free.per) })
  })
  const twice = question.free.map(nameOf).find((name, i, all) => all.indexOf(name) < i)
  if (twice) throw new InputError({ path: 'free', expected: 'every parameter once', received: twice })
  for (const name of Object.keys(question.start ?? {})) check(`start.${name}`, name)
  for (const name of Object.keys(question.bounds ?? {})) check(`bounds.${name}`, name)
}

/** The numbers that are not free, from the start or the law; those a law keeps inside itself stand in it. */
function heldNumbers(
  question: ComplianceQuestion,
  law: PressureLaw,
  known: readonly TurfParameter[],
): ReadonlyMap<string, number> {
  const names = question.free.map(nameOf)
  const held = new Map<string, number>()
  for (const { name, given, quantity } of known) {
    const start = question.start?.[name]
    if (names.includes(name)) continue
    numberAt(start, `start.${name}`, quantity)
    if (start !== undefined) held.set(name, start)
    // what a law is made of already needs no name, and stretching it by its own softness would change nothing
    else if (given === undefined)
      throw new InputError({
        path: 'free',
        expected: `${name} among them, or a value for it in start`,
        received: names.join(', ') || 'none',
      })
    else if (!isWhole(law.kind)) held.set(name, given)
  }
  return held
}

/** Which numbers of the turf are solved for and which stay, checked. */
export function turfAsked(question: ComplianceQuestion): TurfAsked {
  const law = lawAsked(question.law)
  const known = turfParameters(law)
  if (!Array.isArray(question.free))
    throw new InputError({
      path: 'free',
      expected: 'a list of parameters',
      received: describe(question.free),
    })
  checkNames(question, known)
  const held = heldNumbers(question, law, known)
  const spread = held.get('spread') ?? 0
  if (!(spread >= 0))
    throw new InputError({ path: 'start.spread', expected: 'at least 0 mm', received: describe(spread) })
  const free = question.free.map(one =>
    freeParameter(known.find(({ name }) => name === nameOf(one))!, one, question),
  )
  if (free.length === 0 && !turfWith(law, held)) {
    const [problem] = turfProblems({ law }, '')
    throw new InputError(
      problem ?? { path: 'start', expected: 'numbers that make a law', received: 'others' },
    )
  }
  return { law, free, held }
}
