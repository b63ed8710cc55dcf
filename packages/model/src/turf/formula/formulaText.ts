import { describe, type Problem } from '../../quantities/index.ts'
import { functions } from './program.ts'

const MOST_CHARACTERS = 2000
const MOST_BRACKETS = 40

/** Functions of two or more arguments, told apart because they bend. */
export const choosing = ['min', 'max'] as const
/** Every function that may be written. */
export const functionNames: readonly string[] = [...Object.keys(functions), 'abs', ...choosing]
/** Names with a meaning of their own. */
const RESERVED = ['z', 'pi', ...functionNames]

/** Letters, digits and the signs of arithmetic; whatever assigns, indexes, quotes or compares is turned away here. */
const WRITABLE = /^[A-Za-z0-9_.,+\-*/^() \t]*$/
const NAME = /^[A-Za-z][A-Za-z0-9_]*$/

/** Signs as a reader may type them, and as they are parsed. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[×·⋅]/g, '*'],
  [/÷/g, '/'],
  [/[−–]/g, '-'],
]

export const plainSigns = (expression: string): string =>
  SIGNS.reduce((text, [sign, plain]) => text.replace(sign, plain), expression)

function deepestBracket(text: string): number {
  let deep = 0
  let deepest = 0
  for (const sign of text) {
    if (sign === '(') deepest = Math.max(deepest, ++deep)
    else if (sign === ')') deep--
  }
  return deepest
}

/** What can be told of an expression before it is parsed: at once, however long it is. */
export function textProblems(expression: unknown, path: string): Problem[] {
  if (typeof expression !== 'string' || expression.trim() === '')
    return [{ path, expected: 'an expression in z', received: describe(expression) }]
  const wrong = (expected: string, received: string): Problem[] => [{ path, expected, received }]
  if (expression.length > MOST_CHARACTERS)
    return wrong(`at most ${MOST_CHARACTERS} characters`, `${expression.length}`)
  const text = plainSigns(expression)
  if (!WRITABLE.test(text)) {
    const at = [...text].findIndex(sign => !WRITABLE.test(sign))
    return wrong(
      'names, numbers, brackets and + − × ÷ ^ alone',
      `${describe([...text][at])} at character ${at + 1}`,
    )
  }
  const brackets = deepestBracket(text)
  return brackets > MOST_BRACKETS ? wrong(`brackets at most ${MOST_BRACKETS} deep`, `${brackets} deep`) : []
}

/** Names and numbers of the parameters. */
export function valueProblems(values: unknown, path: string): Problem[] {
  if (typeof values !== 'object' || values === null || Array.isArray(values))
    return [{ path, expected: 'numbers by name', received: describe(values) }]
  return Object.entries(values).flatMap(([name, value]) => {
    const at = `${path}.${name}`
    if (!NAME.test(name) || RESERVED.includes(name))
      return [{ path: at, expected: 'a name of letters and digits with no meaning yet', received: name }]
    if (typeof value !== 'number' || !Number.isFinite(value))
      return [{ path: at, expected: 'a number', received: describe(value) }]
    return []
  })
}
