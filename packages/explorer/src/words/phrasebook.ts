/** What the model says in English, with holes in braces, and the same in another language. */
export type Phrase = readonly [english: string, other: string]

/**
 * A hole: `{name}` holds anything, `{name#}` a number with its unit or one word, `{name+}` a list with commas and
 * "and", `{name;}` one with semicolons.
 */
const HOLE = /\{(\w+)([+;#]?)\}/g
// Of one sentence: what goes on after a full stop is told by itself.
const ANYTHING = '((?:(?!\\. \\p{Lu}).)+?)'
const ONE_VALUE = '(\\S+(?: \\S{1,8})?)'
const NUMBER = /^[+\u2212-]?\d+\.\d+(?:e[+-]?\d+)?(?: \S{1,8})?$/
const SENTENCES = /(?<=[.!?]) (?=\p{Lu})/u
/** Sentences are told again whenever a figure is drawn: those told last are kept. */
const KEPT = 500

type Hole = { readonly name: string; readonly parts: string }
type Pattern = { readonly whole: RegExp; readonly holes: readonly Hole[]; readonly other: string }

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
const small = (text: string) => text.replace(/^./u, first => first.toLowerCase())
const large = (text: string) => text.replace(/^./u, first => first.toUpperCase())

function patternOf([english, other]: Phrase): Pattern {
  const holes = [...english.matchAll(HOLE)].map(([, name = '', parts = '']) => ({ name, parts }))
  const fixed = english.split(HOLE).filter((_, i) => i % 3 === 0)
  const text = fixed.map((part, i) => {
    const before = holes[i - 1]
    return `${before ? (before.parts === '#' ? ONE_VALUE : ANYTHING) : ''}${escaped(part)}`
  })
  return { whole: new RegExp(`^${text.join('')}$`, 'su'), holes, other }
}

/**
 * Tells sentences of the model in another language. They come as finished English, so each is found by its pattern and
 * what fills its holes is told in the same way; numbers change their decimal mark, names stay. What no pattern fits
 * comes back as it is: a test asks for every sentence there is.
 */
export function phrasebook(q: {
  readonly phrases: readonly Phrase[]
  list(items: readonly string[]): string
  number(text: string): string
}): (text: string) => string {
  let patterns: readonly Pattern[] | null = null
  const kept = new Map<string, string>()

  function filled({ holes, other }: Pattern, found: RegExpExecArray): string {
    let told = other
    holes.forEach(({ name, parts }, i) => {
      const text = found[i + 1] ?? ''
      const value =
        parts === '+'
          ? q.list(text.split(/, | and /).map(say))
          : parts === ';'
            ? text.split('; ').map(say).join('; ')
            : say(text)
      told = told.replaceAll(`{${name}}`, () => value)
    })
    return told
  }

  function whole(text: string): string | null {
    patterns ??= q.phrases.map(patternOf)
    for (const pattern of patterns) {
      const found = pattern.whole.exec(text)
      if (found) return filled(pattern, found)
    }
    return null
  }

  function tell(text: string): string {
    if (NUMBER.test(text)) return q.number(text)
    const exact = whole(text)
    if (exact !== null) return exact
    const inside = small(text) === text ? null : whole(small(text))
    if (inside !== null) return large(inside)
    const sentences = text.split(SENTENCES)
    return sentences.length > 1 ? sentences.map(say).join(' ') : text
  }

  function say(text: string): string {
    const before = kept.get(text)
    if (before !== undefined) return before
    const told = tell(text)
    if (kept.size >= KEPT) kept.clear()
    kept.set(text, told)
    return told
  }
  return say
}
