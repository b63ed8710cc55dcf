import { settable } from '../../book/index.ts'
import { type Reader, settableWords } from '../../words/index.ts'

/** What a name stands for, in words; empty for a formula's own, which says it itself. */
export function calledBy(name: string, { words }: Reader): string {
  const own = words.question.values[name]
  if (own !== undefined) return own
  if (!settable(name)) return ''
  const said = settableWords(name, words)
  return said.note ? `${said.name}, ${said.note}` : said.name
}
