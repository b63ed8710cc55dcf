import { median } from 'd3'
import { MOST_GUESSES } from './settings.ts'

/** A number, and how often it was said: 0.5, 0.5 ×4, 0,5: 4. */
const GUESS = /([+\-\u2212]?(?:\d+(?:[.,]\d+)?|[.,]\d+))(?:\s*[×x*:]\s*(\d+))?/g
/** What may stand between two guesses. */
const BETWEEN = /^(?:[\s;/|]|,(?=\s|$))*$/

export type ReadGuesses = {
  readonly values: readonly number[]
  /** The first thing that is no guess; null when all was read. */
  readonly unread: string | null
  /** More were said than are taken. */
  readonly more: boolean
}

/** Guesses of a room as they are pasted or tallied. A comma between digits is a decimal comma. */
export function readGuesses(text: string): ReadGuesses {
  const values: number[] = []
  let unread: string | null = null
  let from = 0
  const between = (until: number) => {
    const rest = text.slice(from, until)
    if (unread === null && !BETWEEN.test(rest)) unread = rest.trim()
  }
  for (const found of text.matchAll(GUESS)) {
    between(found.index)
    from = found.index + found[0].length
    const value = Number((found[1] ?? '').replace('\u2212', '-').replace(',', '.'))
    const times = found[2] === undefined ? 1 : Number(found[2])
    for (let i = 0; i < times && values.length <= MOST_GUESSES; i++) values.push(value)
  }
  between(text.length)
  return { values: values.slice(0, MOST_GUESSES), unread, more: values.length > MOST_GUESSES }
}

/** The same guesses as they are read back: each once, with how often it was said. */
export function tallied(guesses: readonly number[], text: (value: number) => string): string {
  const counts = new Map<string, number>()
  for (const guess of [...guesses].sort((a, b) => a - b))
    counts.set(text(guess), (counts.get(text(guess)) ?? 0) + 1)
  return [...counts].map(([said, times]) => (times > 1 ? `${said} ×${times}` : said)).join('  ')
}

export type Summary = {
  readonly count: number
  readonly low: number
  readonly high: number
  readonly middle: number
  /** How many were more than the answer. */
  readonly above: number
  readonly below: number
}

export function summaryOf(guesses: readonly number[], answer: number): Summary | null {
  const middle = median(guesses)
  if (middle === undefined) return null
  return {
    count: guesses.length,
    low: Math.min(...guesses),
    high: Math.max(...guesses),
    middle,
    above: guesses.filter(guess => guess > answer).length,
    below: guesses.filter(guess => guess < answer).length,
  }
}
