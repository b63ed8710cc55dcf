import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseBook, readBook, serialiseBook } from '../../../packages/explorer/src/book/index.ts'
import { books as shipped } from '../../../packages/explorer/src/books/index.ts'
import { books } from '../../support/arbitraryBook.ts'
import { allKinds } from '../entries/firstBook.ts'

const GENERATED = 1000

describe('a book written to a file and read again', () => {
  it.each(Object.entries(shipped))('is the same: %s, which ships', async (_, { load }) => {
    const { spec } = await load()
    const { book, problems } = await readBook(spec, allKinds)
    if (!book) throw new Error(JSON.stringify(problems))
    expect(problems).toEqual([])
    expect(await parseBook(serialiseBook(book), allKinds)).toEqual({ book, problems: [] })
  })

  it(`is the same: ${GENERATED} generated ones, entries of unknown kinds in them`, async () => {
    let foreign = 0
    await fc.assert(
      fc.asyncProperty(books(allKinds.items), async book => {
        const text = serialiseBook(book)
        const again = await parseBook(text, allKinds)
        expect(again.book).toEqual(book)
        expect(again.book && serialiseBook(again.book)).toBe(text)
        const unknown = book.pages.flatMap(page => page.entries.filter(entry => entry.asWritten))
        foreign += unknown.length
        expect(again.problems).toHaveLength(unknown.length)
      }),
      { numRuns: GENERATED },
    )
    expect(foreign).toBeGreaterThan(GENERATED / 10)
  }, 60_000)
})
