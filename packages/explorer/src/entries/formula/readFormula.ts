import { create, parseDependencies } from 'mathjs/number'
import type { Failure } from '../../book/index.ts'
import { formulaUnits } from './formulaUnits.ts'

/** A formula as a tree of our own: only what is on the list below gets into it. */
export type Tree =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'unit'; readonly unit: string }
  | { readonly kind: 'negative'; readonly of: Tree }
  | { readonly kind: 'join'; readonly sign: Sign; readonly left: Tree; readonly right: Tree }
  | { readonly kind: 'call'; readonly name: string; readonly of: readonly Tree[] }

export type Sign = '+' | '−' | '×' | '÷' | '^'
export type Reason = Omit<Extract<Failure, { kind: 'reason' }>, 'kind'>
export type Read = { readonly ok: true; readonly tree: Tree } | ({ readonly ok: false } & Reason)

/** What is read of the library's nodes: names, numbers and arguments, never their methods. */
type Node = {
  readonly type: string
  readonly name?: unknown
  readonly value?: unknown
  readonly fn?: unknown
  readonly args?: readonly Node[]
  readonly content?: Node
  readonly object?: Node
  readonly index?: { readonly dimensions?: readonly Node[] }
  readonly implicit?: boolean
}

const { parse } = create(parseDependencies ?? {}, {})

const signs: Readonly<Record<string, Sign>> = {
  add: '+',
  subtract: '−',
  multiply: '×',
  divide: '÷',
  pow: '^',
}

/** Functions and how many arguments they take; Infinity: one or more. */
export const formulaFunctions: Readonly<Record<string, number>> = {
  ...{ sqrt: 1, cbrt: 1, abs: 1, exp: 1, log: 1, log10: 1 },
  ...{ sin: 1, cos: 1, tan: 1, asin: 1, acos: 1, atan: 1, sinh: 1, cosh: 1, tanh: 1 },
  ...{ min: Number.POSITIVE_INFINITY, max: Number.POSITIVE_INFINITY },
}

/** What is wrong with a formula; thrown inside this file only. */
class Refused extends Error {
  readonly reason: Reason
  constructor(reason: string, values: Reason['values'] = {}) {
    super(reason)
    this.reason = { reason, values }
  }
}

const MOST = 500
const WRITABLE = /^[A-Za-z0-9_.,+\-*/^() \t]*$/
const PLAIN_SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[×·⋅]/g, '*'],
  [/[÷∕]/g, '/'],
  [/[−–]/g, '-'],
  [/²/g, '^2'],
  [/³/g, '^3'],
  [/[\u00a0\u202f]/g, ' '],
]
const SHOWN = 40
const shorten = (text: string): string => (text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text)

/** The inch stands for an operator in the parser's own language. */
const INCH = 'inch_'
const INCH_WORD = /(?<![A-Za-z0-9_.])in(?![A-Za-z0-9_.])/g

function nameOf({ type, name, object, index }: Node): string {
  if (type === 'SymbolNode') return String(name) === INCH ? 'in' : String(name)
  const last = index?.dimensions?.[0]
  if (type === 'AccessorNode' && object && last?.type === 'ConstantNode' && typeof last.value === 'string')
    return `${nameOf(object)}.${last.value}`
  throw new Refused('formula shape', { text: 'this', why: 'names, numbers and arithmetic alone are read' })
}

function isUnitPower({ kind, ...rest }: Tree): boolean {
  if (kind === 'unit') return true
  const { sign, left } = rest as { sign?: Sign; left?: Tree }
  return kind === 'join' && sign === '^' && left?.kind === 'unit'
}

/** A tree of the library's as one of ours; throws a Refused at the first node that is not on the list. */
function grow(node: Node, isName: (name: string) => boolean): Tree {
  const { type, value, args = [], implicit, fn } = node
  switch (type) {
    case 'ParenthesisNode':
      if (node.content) return grow(node.content, isName)
      break
    case 'ConstantNode':
      if (typeof value === 'number' && Number.isFinite(value)) return { kind: 'number', value }
      break
    case 'SymbolNode':
    case 'AccessorNode': {
      const name = nameOf(node)
      if (name === 'pi') return { kind: 'number', value: Math.PI }
      return !isName(name) && formulaUnits.has(name) ? { kind: 'unit', unit: name } : { kind: 'name', name }
    }
    case 'OperatorNode': {
      const [left, right] = args.map(part => grow(part, isName))
      if (left && !right && fn === 'unaryMinus') return { kind: 'negative', of: left }
      if (left && !right && fn === 'unaryPlus') return left
      const sign = typeof fn === 'string' && Object.hasOwn(signs, fn) ? signs[fn] : undefined
      if (!left || !right || !sign) break
      if (implicit && !isUnitPower(right))
        throw new Refused('factors without a sign', { text: shorten(String(node)) })
      return { kind: 'join', sign, left, right }
    }
    case 'FunctionNode': {
      const called = fn as Node | undefined
      const name = called?.type === 'SymbolNode' ? String(called.name) : ''
      const wanted = Object.hasOwn(formulaFunctions, name) ? formulaFunctions[name] : undefined
      if (wanted === undefined)
        throw new Refused('function unknown', {
          name: shorten(name),
          known: Object.keys(formulaFunctions).join(', '),
        })
      if (args.length === 0 || args.length > wanted)
        throw new Refused('function arguments', { name, wanted: wanted === 1 ? '1' : '1+' })
      return { kind: 'call', name, of: args.map(part => grow(part, isName)) }
    }
  }
  throw new Refused('formula shape', {
    text: shorten(String(node)),
    why: 'names, numbers, units and arithmetic alone are read',
  })
}

/** A formula's text as a tree, or why it cannot be read. A word that is both a name here and a unit is the name. */
export function readFormula(text: string, isName: (name: string) => boolean = () => false): Read {
  if (text.trim() === '') return { ok: false, reason: 'formula is empty', values: {} }
  if (text.length > MOST) return { ok: false, reason: 'formula length', values: { most: String(MOST) } }
  const plain = PLAIN_SIGNS.reduce((so, [sign, by]) => so.replace(sign, by), text)
  if (!WRITABLE.test(plain)) {
    const at = [...plain].findIndex(sign => !WRITABLE.test(sign))
    const sign = [...plain][at] ?? ''
    return { ok: false, reason: 'formula sign', values: { sign, at: String(at + 1) } }
  }
  try {
    const root = parse(plain.replace(INCH_WORD, INCH)) as unknown as Node
    return { ok: true, tree: grow(root, isName) }
  } catch (error) {
    if (error instanceof Refused) return { ok: false, ...error.reason }
    const why = error instanceof Error ? shorten(error.message.replaceAll(INCH, 'in')) : String(error)
    return { ok: false, reason: 'formula shape', values: { text: shorten(text), why } }
  }
}

/** The names a formula calls, each once. */
export function namesIn(tree: Tree): readonly string[] {
  const names = new Set<string>()
  const walk = (branch: Tree): void => {
    switch (branch.kind) {
      case 'name':
        names.add(branch.name)
        break
      case 'negative':
        walk(branch.of)
        break
      case 'join':
        walk(branch.left)
        walk(branch.right)
        break
      case 'call':
        for (const part of branch.of) walk(part)
    }
  }
  walk(tree)
  return [...names]
}
