import { describe, expect, it } from 'vitest'
import { parseBook, readBook, serialiseBook } from '../../../packages/explorer/src/book/index.ts'
import { books } from '../../../packages/explorer/src/books/index.ts'
import { allKinds, firstBook } from '../entries/firstBook.ts'

const { spec } = await books['heavier-roller'].load()

describe('a book as a file', () => {
  it('comes back the same after writing and reading', async () => {
    const book = await firstBook()
    const again = await parseBook(serialiseBook(book), allKinds)
    expect(again.problems).toEqual([])
    expect(again.book).toEqual(book)
  })

  it('gives every entry an id of its own', async () => {
    const ids = (await firstBook()).pages.flatMap(page => page.entries.map(entry => entry.id))
    expect(ids.length).toBeGreaterThan(5)
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('tells every problem with its path and opens what can be opened', async () => {
    const [page] = spec.pages
    const damaged = {
      ...spec,
      swardsink: '1',
      pages: [
        {
          ...page,
          entries: [
            { kind: 'map', quantity: 'weight' },
            { kind: 'carousel' },
            'prose',
            { kind: 'rack', colour: 'red' },
            { kind: 'constructor' },
          ],
        },
      ],
    }
    const { book, problems } = await readBook(damaged, allKinds)
    expect(problems.map(problem => problem.path)).toEqual([
      'swardsink',
      'pages[0].entries[0].quantity',
      'pages[0].entries[1].kind',
      'pages[0].entries[2]',
      'pages[0].entries[3].colour',
      'pages[0].entries[4].kind',
    ])
    expect(book?.pages[0]?.entries.map(entry => entry.kind)).toEqual([
      'map',
      'carousel',
      'rack',
      'constructor',
    ])
    expect(book?.pages[0]?.entries[0]?.settings).toMatchObject({ quantity: 'sinkage' })
  })

  it('does not open without a sound scenario, and says which value is at fault', async () => {
    const { unit, ...rest } = spec.scenario
    const light = { ...rest, unit: { ...(unit as object), benchHeight_mm: -3.4 } }
    const { book, problems } = await readBook({ ...spec, scenario: light }, allKinds)
    expect(book).toBe(null)
    expect(problems.map(problem => problem.path)).toEqual(['scenario.unit.benchHeight_mm'])
  })

  it.each([
    ['{', 'JSON to its end'],
    ['[]', 'a sward book'],
    ['null', 'a sward book'],
  ])('refuses %s in words', async (text, expected) => {
    const { book, problems } = await parseBook(text, allKinds)
    expect(book).toBe(null)
    expect(problems[0]?.expected).toBe(expected)
  })
})
