import { create, parseDependencies } from 'mathjs/number'
import type { Problem } from '../../quantities/index.ts'
import { choosing, functionNames, plainSigns } from './formulaText.ts'
import { functions, MOST_STACK, MOST_STEPS, type Program, step } from './program.ts'

/** What is read of the library's nodes: names, numbers and arguments, never their methods. */
type Node = {
  readonly type: string
  readonly name?: unknown
  readonly value?: unknown
  readonly fn?: unknown
  readonly args?: readonly Node[]
  readonly content?: Node
  readonly implicit?: boolean
}

const { parse } = create(parseDependencies ?? {}, {})

const operators: Readonly<Record<string, number>> = {
  add: step.add,
  subtract: step.subtract,
  multiply: step.multiply,
  divide: step.divide,
}
const numbers = Object.keys(functions)

/** What is wrong with an expression; thrown inside this file only. */
class Refusal extends Error {
  readonly expected: string
  readonly received: string
  constructor(expected: string, received: string) {
    super(`expected ${expected}, received ${received}`)
    this.expected = expected
    this.received = received
  }
}

const SHOWN = 40
const shorten = (text: string) => (text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text)

type Written = Program & {
  /** Whether anything in it depends on the sinkage. */
  readonly depends: boolean
}

/** A tree of nodes as steps of the machine; throws a Refusal at the first that is not on the allow-list. */
function writeSteps(root: Node, known: readonly string[]): Written {
  const steps: number[] = []
  const constants: number[] = []
  const names: string[] = []
  const corners: string[] = []
  let height = 0
  let stack = 0

  const put = (code: number, operand: number, takes: number) => {
    steps.push(code, operand)
    if (steps.length > 2 * MOST_STEPS) throw new Refusal(`at most ${MOST_STEPS} steps`, 'more')
    height += 1 - takes
    stack = Math.max(stack, height)
    if (stack > MOST_STACK) throw new Refusal(`terms nested at most ${MOST_STACK} deep`, 'more')
  }
  const constant = (value: number) => {
    put(step.constant, constants.push(value) - 1, 0)
    return false
  }

  const symbol = (name: string): boolean => {
    if (name === 'pi') return constant(Math.PI)
    if (name === 'z') {
      put(step.sinkage, 0, 0)
      return true
    }
    if (functionNames.includes(name)) throw new Refusal(`an argument in brackets after ${name}`, 'none')
    if (!known.includes(name)) throw new Refusal('z, pi or a name that has a value', shorten(name))
    const at = names.indexOf(name)
    put(step.parameter, at < 0 ? names.push(name) - 1 : at, 0)
    return false
  }

  const operation = ({ fn, args = [], implicit }: Node): boolean => {
    const [left, right] = args
    if (implicit) throw new Refusal('a sign between two factors', 'none')
    if (left && !right && (fn === 'unaryMinus' || fn === 'unaryPlus')) {
      const depends = write(left)
      if (fn === 'unaryMinus') put(step.negate, 0, 1)
      return depends
    }
    const code = typeof fn === 'string' && Object.hasOwn(operators, fn) ? operators[fn] : undefined
    if (!left || !right || (code === undefined && fn !== 'pow'))
      throw new Refusal('+ − × ÷ ^ alone', shorten(String(fn)))
    const first = write(left)
    const second = write(right)
    put(code ?? (second ? step.power : step.powerOf), 0, 2)
    return first || second
  }

  const call = ({ fn, args = [] }: Node): boolean => {
    const called = fn as Node | undefined
    const name = called?.type === 'SymbolNode' ? String(called.name) : ''
    if (!functionNames.includes(name))
      throw new Refusal(`one of the functions ${functionNames.join(', ')}`, shorten(name) || 'something else')
    const chooses = (choosing as readonly string[]).includes(name)
    const [first, ...others] = args
    if (!first || (chooses ? others.length === 0 : others.length > 0))
      throw new Refusal(
        `${chooses ? 'two arguments or more' : 'one argument'} for ${name}`,
        String(args.length),
      )
    let depends = write(first)
    if (name === 'abs') put(step.abs, corners.push(name) - 1, 1)
    else if (!chooses) put(step.first + numbers.indexOf(name), 0, 1)
    for (const other of others) {
      depends = write(other) || depends
      put(name === 'min' ? step.min : step.max, corners.push(name) - 1, 2)
    }
    return depends
  }

  const write = (node: Node): boolean => {
    switch (node.type) {
      case 'ParenthesisNode':
        return write(node.content!)
      case 'ConstantNode':
        if (typeof node.value === 'number' && Number.isFinite(node.value)) return constant(node.value)
        throw new Refusal('finite numbers alone', shorten(String(node.value)))
      case 'SymbolNode':
        return symbol(String(node.name))
      case 'OperatorNode':
        return operation(node)
      case 'FunctionNode':
        return call(node)
      default:
        throw new Refusal('arithmetic and functions alone', node.type.replace(/Node$/, '').toLowerCase())
    }
  }

  const depends = write(root)
  return { steps, constants, names, corners, stack, depends }
}

export type Parsed =
  | { readonly ok: true; readonly program: Program }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * An expression in z and named parameters as a program. Only the allow-list above gets through: constants, names,
 * brackets, + − × ÷ ^, the functions of `functions`, abs, min and max.
 *
 * Holds   a text that textProblems lets through
 */
export function parseFormula(expression: string, names: readonly string[], path: string): Parsed {
  const refuse = (expected: string, received: string): Parsed => ({
    ok: false,
    problems: [{ path, expected, received }],
  })
  try {
    const root = parse(plainSigns(expression)) as unknown as Node
    const { depends, ...program } = writeSteps(root, names)
    return depends ? { ok: true, program } : refuse('an expression in z', 'one without it')
  } catch (error) {
    if (error instanceof Refusal) return refuse(error.expected, error.received)
    if (error instanceof RangeError) return refuse('terms nested less deep', 'more than can be read')
    if (error instanceof Error) return refuse('an expression', error.message.slice(0, 2 * SHOWN))
    throw error
  }
}
