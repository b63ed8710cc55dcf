/**
 * A written law as plain data: steps of a machine with a stack of columns. It is made from the parsed expression and
 * run here, never by the parser's library.
 */
export type Program = {
  /** Pairs of step and operand. */
  readonly steps: readonly number[]
  readonly constants: readonly number[]
  /** Names of the parameters, in the order of their operands. */
  readonly names: readonly string[]
  /** Words of the functions that may have a corner, in the order of their operands. */
  readonly corners: readonly string[]
  /** Columns the stack needs. */
  readonly stack: number
}

/** Steps by name; the numbers stand in saved programs. */
export const step = {
  constant: 0,
  sinkage: 1,
  parameter: 2,
  add: 3,
  subtract: 4,
  multiply: 5,
  divide: 6,
  /** To a power that does not depend on the sinkage. */
  powerOf: 7,
  power: 8,
  negate: 9,
  min: 10,
  max: 11,
  abs: 12,
  /** Functions of one argument follow, in the order of `functions`. */
  first: 13,
} as const

type OfOne = { readonly value: (x: number) => number; readonly slope: (x: number, value: number) => number }

/** Functions of one argument that may be written, with their derivatives. */
export const functions = {
  sqrt: { value: Math.sqrt, slope: (_, y) => 0.5 / y },
  cbrt: { value: Math.cbrt, slope: (_, y) => 1 / (3 * y * y) },
  exp: { value: Math.exp, slope: (_, y) => y },
  expm1: { value: Math.expm1, slope: (_, y) => y + 1 },
  log: { value: Math.log, slope: x => 1 / x },
  log1p: { value: Math.log1p, slope: x => 1 / (1 + x) },
  log10: { value: Math.log10, slope: x => 1 / (x * Math.LN10) },
  sin: { value: Math.sin, slope: x => Math.cos(x) },
  cos: { value: Math.cos, slope: x => -Math.sin(x) },
  tan: { value: Math.tan, slope: (_, y) => 1 + y * y },
  atan: { value: Math.atan, slope: x => 1 / (1 + x * x) },
  sinh: { value: Math.sinh, slope: x => Math.cosh(x) },
  cosh: { value: Math.cosh, slope: x => Math.sinh(x) },
  tanh: { value: Math.tanh, slope: (_, y) => 1 - y * y },
} as const satisfies Record<string, OfOne>

const byNumber: readonly OfOne[] = Object.values(functions)

/** How many columns a step takes off the stack: all put one back. */
function taken(code: number): number {
  if (code <= step.parameter) return 0
  return code <= step.power || code === step.min || code === step.max ? 2 : 1
}

/** Deepest stack a program may ask for, and most steps. */
export const MOST_STACK = 64
export const MOST_STEPS = 1000

const isCount = (value: unknown, below: number) =>
  typeof value === 'number' && Number.isInteger(value) && value >= 0 && value < below

/** Whether data that came from anywhere is a program that runs within its own stack. */
export function isProgram(data: unknown): data is Program {
  if (data === null || typeof data !== 'object') return false
  const { steps, constants, names, corners, stack } = data as Record<string, unknown>
  if (![steps, constants, names, corners].every(list => Array.isArray(list))) return false
  if (!isCount(stack, MOST_STACK + 1)) return false
  const [codes, numbers] = [steps as unknown[], constants as unknown[]]
  if (codes.length % 2 !== 0 || codes.length > 2 * MOST_STEPS) return false
  if (!numbers.every(value => typeof value === 'number' && Number.isFinite(value))) return false
  if (![...(names as unknown[]), ...(corners as unknown[])].every(name => typeof name === 'string'))
    return false
  const operands: Record<number, number> = {
    [step.constant]: numbers.length,
    [step.parameter]: (names as unknown[]).length,
    [step.min]: (corners as unknown[]).length,
    [step.max]: (corners as unknown[]).length,
    [step.abs]: (corners as unknown[]).length,
  }
  let height = 0
  for (let i = 0; i < codes.length; i += 2) {
    const code = codes[i]
    if (!isCount(code, step.first + byNumber.length)) return false
    const most = operands[code as number]
    if (most !== undefined && !isCount(codes[i + 1], most)) return false
    if (height < taken(code as number)) return false
    height += 1 - taken(code as number)
    if (height > (stack as number)) return false
  }
  return height === 1
}

let values = new Float64Array(0)
let slopes = new Float64Array(0)

/** Room for one run; shared, since a run is never inside another. */
function room(size: number): void {
  if (values.length >= size) return
  values = new Float64Array(2 * size)
  slopes = new Float64Array(2 * size)
}

/** Two columns into one: the step is chosen once, not for every number. */
function combine(code: number, a: number, b: number, count: number): void {
  const v = values
  const s = slopes
  switch (code) {
    case step.add:
      for (let i = 0; i < count; i++) {
        v[a + i] = v[a + i]! + v[b + i]!
        s[a + i] = s[a + i]! + s[b + i]!
      }
      return
    case step.subtract:
      for (let i = 0; i < count; i++) {
        v[a + i] = v[a + i]! - v[b + i]!
        s[a + i] = s[a + i]! - s[b + i]!
      }
      return
    case step.multiply:
      for (let i = 0; i < count; i++) {
        const x = v[a + i]!
        const y = v[b + i]!
        v[a + i] = x * y
        s[a + i] = s[a + i]! * y + x * s[b + i]!
      }
      return
    case step.divide:
      for (let i = 0; i < count; i++) {
        const y = v[b + i]!
        const ratio = v[a + i]! / y
        v[a + i] = ratio
        s[a + i] = (s[a + i]! - ratio * s[b + i]!) / y
      }
      return
    case step.powerOf:
      for (let i = 0; i < count; i++) {
        const x = v[a + i]!
        const y = v[b + i]!
        v[a + i] = x ** y
        s[a + i] = y * x ** (y - 1) * s[a + i]!
      }
      return
    default:
      for (let i = 0; i < count; i++) {
        const x = v[a + i]!
        const y = v[b + i]!
        const power = x ** y
        v[a + i] = power
        s[a + i] = power * (s[b + i]! * Math.log(x) + (y * s[a + i]!) / x)
      }
  }
}

/** Puts a column on the stack: the sinkages, or one number throughout. By loops: columns are short, and calls are not. */
function push(top: number, count: number, column: Float64Array | undefined, constant: number): void {
  const v = values
  const s = slopes
  const slope = column ? 1 : 0
  for (let i = 0; i < count; i++) {
    v[top + i] = column ? column[i]! : constant
    s[top + i] = slope
  }
}

/** min, max or the size of a column; `gaps` takes what changes sign at a corner. */
function choose(code: number, a: number, b: number, count: number, gaps: Float64Array | undefined): void {
  for (let i = 0; i < count; i++) {
    const other = code === step.abs ? -values[a + i]! : values[b + i]!
    const gap = values[a + i]! - other
    if (gaps) gaps[i] = gap
    const takes = code === step.min ? gap > 0 : gap < 0
    if (!takes) continue
    values[a + i] = other
    slopes[a + i] = code === step.abs ? -slopes[a + i]! : slopes[b + i]!
  }
}

/**
 * Runs a program over a column of sinkages: value and slope together.
 *
 * Holds   a program that isProgram accepts; `gaps`, a column for each of its corners, is filled when given
 */
export function runProgram(
  program: Program,
  parameters: ArrayLike<number>,
  sinkages: Float64Array,
  count: number,
  outValues: Float64Array,
  outSlopes: Float64Array,
  gaps?: readonly Float64Array[],
): void {
  const { steps, constants } = program
  room(program.stack * count)
  let top = -count
  for (let at = 0; at < steps.length; at += 2) {
    const code = steps[at]!
    const operand = steps[at + 1]!
    if (code <= step.parameter) {
      top += count
      if (code === step.sinkage) push(top, count, sinkages, 0)
      else push(top, count, undefined, code === step.constant ? constants[operand]! : parameters[operand]!)
    } else if (code <= step.power) {
      top -= count
      combine(code, top, top + count, count)
    } else if (code === step.negate) {
      for (let i = top; i < top + count; i++) {
        values[i] = -values[i]!
        slopes[i] = -slopes[i]!
      }
    } else if (code < step.first) {
      if (code !== step.abs) top -= count
      choose(code, top, top + count, count, gaps?.[operand])
    } else {
      const { value, slope } = byNumber[code - step.first]!
      for (let i = top; i < top + count; i++) {
        const x = values[i]!
        const y = value(x)
        values[i] = y
        slopes[i] = slope(x, y) * slopes[i]!
      }
    }
  }
  for (let i = 0; i < count; i++) {
    outValues[i] = values[top + i]!
    outSlopes[i] = slopes[top + i]!
  }
}
