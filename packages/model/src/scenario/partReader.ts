import {
  catalogue,
  type Dimension,
  describe,
  dimensionOf,
  type Problem,
  type UnitName,
  units,
} from '../quantities/index.ts'
import type { FormulaMade } from '../turf/index.ts'
import type { Field } from './fields.ts'

/** What is found wrong on the way, and where in the file each value stood. */
export type Findings = {
  readonly problems: Problem[]
  /** Numbers without a unit that are far from usual: read, but perhaps not as they were meant. */
  readonly doubts: Problem[]
  /** From a value's place in the model to its place in the file: the same but for the unit after the name. */
  readonly places: Map<string, string>
  /** Written laws of the file, made beforehand: their parser is only fetched when there is one. */
  readonly formulas: ReadonlyMap<object, FormulaMade>
}

export const newFindings = (formulas: ReadonlyMap<object, FormulaMade> = new Map()): Findings => ({
  problems: [],
  doubts: [],
  places: new Map(),
  formulas,
})

/** A place inside a place; a name of no letters is told by its quotes. */
export const joined = (path: string, key: string): string => {
  const named = key === '' ? '""' : key
  return path === '' ? named : `${path}.${named}`
}

const unitsOf = (dimension: Dimension): string[] =>
  Object.entries(units)
    .filter(([, unit]) => unit.dimension === dimension && unit.word !== '')
    .map(([name]) => name)

export type Values = Record<string, unknown>

/** A plain object, or a problem. */
export function readObject(value: unknown, path: string, findings: Findings): Values | undefined {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Values
  findings.problems.push({ path: path || 'the file', expected: 'an object', received: describe(value) })
  return undefined
}

/** The key a field stands under: its name, or its name and a unit. */
function keysOf(object: Values, field: Field): { key: string; factor: number }[] {
  const dimension = dimensionOf(field.quantity)
  return Object.keys(object).flatMap(key => {
    if (key === field.name) return [{ key, factor: 1 }]
    if (!key.startsWith(`${field.name}_`)) return []
    const unit = units[key.slice(field.name.length + 1) as UnitName]
    return unit && unit.dimension === dimension ? [{ key, factor: unit.factor }] : []
  })
}

/** How many times beyond the usual range a number without a unit is doubted. */
const FAR = 10

function readNumber(object: Values, field: Field, path: string, findings: Findings): number | undefined {
  const { problems, places } = findings
  const found = keysOf(object, field)
  const [first, second] = found
  if (!first) {
    if (field.optional) return undefined
    const names = unitsOf(dimensionOf(field.quantity))
    const also = names.length > 0 ? `, or ${field.name}_${names[names.length > 2 ? 2 : 0]}` : ''
    problems.push({ path: joined(path, field.name), expected: `a number${also}`, received: 'nothing' })
    return undefined
  }
  if (second) {
    problems.push({
      path: joined(path, second.key),
      expected: `${field.name} to be given once`,
      received: `${first.key} as well`,
    })
    return undefined
  }
  const value = object[first.key]
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    problems.push({ path: joined(path, first.key), expected: 'a number', received: describe(value) })
    return undefined
  }
  places.set(joined(path, field.name), joined(path, first.key))
  const { high, metric } = catalogue[field.quantity]
  if (first.key === field.name && metric.factor !== 1 && Math.abs(value) > FAR * high)
    findings.doubts.push({
      path: joined(path, first.key),
      expected: `at most about ${describe(high, field.quantity)} (in another unit than SI: ${field.name}_${unitsOf(dimensionOf(field.quantity)).join(`, ${field.name}_`)})`,
      received: describe(value, field.quantity),
    })
  return value * first.factor
}

/** Names a reader would not know, with the units a name may carry. */
function unknownKeys(
  object: Values,
  numbers: readonly Field[],
  others: readonly string[],
  path: string,
): Problem[] {
  const known = new Set([...others, ...numbers.flatMap(field => keysOf(object, field).map(({ key }) => key))])
  return Object.keys(object)
    .filter(key => !known.has(key))
    .map(key => {
      const near = numbers.find(({ name }) => key.startsWith(`${name}_`))
      const expected = near
        ? `${near.name} with one of the units ${unitsOf(dimensionOf(near.quantity)).join(', ') || '(none: it has no unit)'}`
        : `one of ${[...numbers.map(({ name }) => name), ...others].join(', ')}`
      return { path: joined(path, key), expected, received: 'a name that means nothing here' }
    })
}

type Shape = {
  readonly numbers: readonly Field[]
  /** Other names that may stand here. */
  readonly others?: readonly string[]
}

/** The numbers of a part in SI; undefined when one is missing or wrong. Every problem is kept. */
export function readNumbers(
  object: Values,
  path: string,
  { numbers, others = [] }: Shape,
  findings: Findings,
): Record<string, number> | undefined {
  const before = findings.problems.length
  findings.problems.push(...unknownKeys(object, numbers, others, path))
  const read: Record<string, number> = {}
  for (const field of numbers) {
    const value = readNumber(object, field, path, findings)
    if (value !== undefined) read[field.name] = value
  }
  return findings.problems.length === before ? read : undefined
}

/** Problems of the physics, told at the place in the file. */
export function keepProblems(problems: readonly Problem[], findings: Findings): boolean {
  for (const problem of problems)
    findings.problems.push({ ...problem, path: findings.places.get(problem.path) ?? problem.path })
  return problems.length === 0
}
