import { type Dimension, isPlain, nameOf, over, PLAIN, raised, same, times } from './dimension.ts'
import { formulaUnits } from './formulaUnits.ts'
import type { Reason, Tree } from './readFormula.ts'

/** A number of SI units, and what it is a number of. */
export type Amount = { readonly value: number; readonly dimension: Dimension }
export type WorkedOut = ({ readonly ok: true } & Amount) | ({ readonly ok: false } & Reason)

const no = (reason: string, values: Reason['values'] = {}): WorkedOut => ({ ok: false, reason, values })
const amount = (value: number, dimension: Dimension): WorkedOut => ({ ok: true, value, dimension })

/** Functions of a plain number. */
const ofPlain: Readonly<Record<string, (x: number) => number>> = {
  ...{ exp: Math.exp, log: Math.log, log10: Math.log10, sin: Math.sin, cos: Math.cos, tan: Math.tan },
  ...{ asin: Math.asin, acos: Math.acos, atan: Math.atan, sinh: Math.sinh, cosh: Math.cosh, tanh: Math.tanh },
}

function join({ sign, left: l, right: r }: Extract<Tree, { kind: 'join' }>, ask: Ask): WorkedOut {
  const left = workOut(l, ask)
  if (!left.ok) return left
  const right = workOut(r, ask)
  if (!right.ok) return right
  switch (sign) {
    case '×':
      return amount(left.value * right.value, times(left.dimension, right.dimension))
    case '÷':
      return amount(left.value / right.value, over(left.dimension, right.dimension))
    case '^':
      if (!isPlain(right.dimension))
        return no('plain number wanted', { where: '^', received: nameOf(right.dimension) })
      return amount(left.value ** right.value, raised(left.dimension, right.value))
    default:
      if (!same(left.dimension, right.dimension))
        return no('dimensions differ', {
          left: nameOf(left.dimension),
          right: nameOf(right.dimension),
          sign,
        })
      return amount(sign === '+' ? left.value + right.value : left.value - right.value, left.dimension)
  }
}

function call({ name, of }: Extract<Tree, { kind: 'call' }>, ask: Ask): WorkedOut {
  const parts: Amount[] = []
  for (const branch of of) {
    const part = workOut(branch, ask)
    if (!part.ok) return part
    parts.push(part)
  }
  const [first = { value: Number.NaN, dimension: PLAIN }] = parts
  const { value, dimension } = first
  if (name === 'sqrt') return amount(Math.sqrt(value), raised(dimension, 1 / 2))
  if (name === 'cbrt') return amount(Math.cbrt(value), raised(dimension, 1 / 3))
  if (name === 'abs') return amount(Math.abs(value), dimension)
  const other = parts.find(part => !same(part.dimension, dimension))
  if (other)
    return no('dimensions differ', { left: nameOf(dimension), right: nameOf(other.dimension), sign: name })
  if (name === 'min') return amount(Math.min(...parts.map(part => part.value)), dimension)
  if (name === 'max') return amount(Math.max(...parts.map(part => part.value)), dimension)
  if (!isPlain(dimension)) return no('plain number wanted', { where: name, received: nameOf(dimension) })
  return amount(ofPlain[name]?.(value) ?? Number.NaN, PLAIN)
}

/** What a name stands for; null when it is not known just now. */
export type Ask = (name: string) => Amount | null

/**
 * The value of a formula with its dimension, or the reason there is none. Sums, and arguments of min and max, must
 * be of one kind; powers and the other functions take plain numbers.
 */
export function workOut(tree: Tree, ask: Ask): WorkedOut {
  switch (tree.kind) {
    case 'number':
      return amount(tree.value, PLAIN)
    case 'unit': {
      const unit = formulaUnits.get(tree.unit)
      return unit ? amount(unit.factor, unit.dimension) : no('unit unknown', { unit: tree.unit, near: '' })
    }
    case 'name': {
      const known = ask(tree.name)
      return known ? { ok: true, ...known } : no('value not known', { name: tree.name })
    }
    case 'negative': {
      const of = workOut(tree.of, ask)
      return of.ok ? amount(-of.value, of.dimension) : of
    }
    case 'join':
      return join(tree, ask)
    case 'call':
      return call(tree, ask)
  }
}
