import { describe, expect, it } from 'vitest'
import type { Book } from '../../../packages/explorer/src/book/index.ts'
import type { BookSpec } from '../../../packages/explorer/src/entries/kinds.ts'
import { shipped } from './shippedBooks.ts'

type Prose = { readonly where: string; readonly text: string }

const WRITTEN = ['text', 'question', 'because', 'title', 'lead', 'notes'] as const

function proseOf(owner: object, where: string): readonly Prose[] {
  const own = Object.entries(owner).flatMap(([name, value]: [string, unknown]) =>
    WRITTEN.some(written => written === name) && typeof value === 'string'
      ? [{ where: `${where}, ${name}`, text: value }]
      : [],
  )
  const options =
    'options' in owner && Array.isArray(owner.options)
      ? owner.options.flatMap((option: object) => proseOf(option, `${where}, option`))
      : []
  return [...own, ...options]
}

/** Everything a book says in words of its own. */
function allProse({ pages }: BookSpec): readonly Prose[] {
  return pages.flatMap((page, index) => [
    ...proseOf(page, `page ${index + 1}`),
    ...page.entries.flatMap(entry => proseOf(entry, `page ${index + 1}, ${entry.id ?? entry.kind}`)),
  ])
}

/** Where a citation has numbers that no sum could give: of years, papers and licences. */
const CITED = ['own-gauge page 4, source, text']

/** Names that the reader gave things, which may have a number in them. */
function withoutNames(text: string, { scenario }: Book): string {
  const names = [...Object.keys(scenario.rollers), ...Object.keys(scenario.turfs)]
  return names.reduce((left, name) => left.replaceAll(new RegExp(name, 'gi'), ''), text)
}

describe.each(shipped)('what the book “$title” says', ({ name, spec, book }) => {
  it('has no number typed into it: each is worked out when it is read', () => {
    const typed = allProse(spec)
      .filter(({ where }) => !CITED.includes(`${name} ${where}`))
      .filter(({ text }) => /\d/.test(withoutNames(text.replaceAll(/\{[^{}]*\}/g, ''), book)))
    expect(typed).toEqual([])
  })

  it('keeps to typographic marks', () => {
    for (const { where, text } of allProse(spec)) {
      expect({ where, text }).toEqual({ where, text: text.replaceAll(/["'`]| - |\.\.\.| {2,}/g, '?') })
      expect(text).toBe(text.trim())
    }
  })

  it('has sentences that can be read in one breath', () => {
    const most = 45
    const long = allProse(spec).flatMap(({ where, text }) =>
      text
        .split(/(?<=[.?!:;])\s+/)
        .filter(sentence => sentence.split(/\s+/).length > most)
        .map(sentence => `${where}: ${sentence}`),
    )
    expect(long).toEqual([])
  })
})
