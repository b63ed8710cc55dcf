import { describe, expect, it } from 'vitest'
import { heldBackBy } from '../../../packages/explorer/src/book/heldBack.ts'
import {
  type Book,
  bookOf,
  changeEntry,
  entryOf,
  openSession,
  parseBook,
  serialiseBook,
} from '../../../packages/explorer/src/book/index.ts'
import { allKinds, firstBook } from '../entries/firstBook.ts'

const book = await firstBook()
const heldIn = (of: Book): readonly string[] =>
  of.pages
    .flatMap(({ entries }) => entries)
    .filter(entry => heldBackBy(of, entry, allKinds.items))
    .map(({ id }) => id)

const answered = (id: string, state: string): Book =>
  bookOf(changeEntry(openSession(book), { id, settings: { prediction: 1, state } }))

describe('what comes after a question', () => {
  it('is held back until the question is answered, not only locked', () => {
    expect(heldIn(book)).toEqual(expect.arrayContaining(['load', 'seat-why', 'heights']))
    expect(heldIn(answered('loaded', 'locked'))).toContain('load')
    const after = heldIn(answered('loaded', 'revealed'))
    expect(after).not.toContain('load')
    expect(after).toContain('heights')
  })

  it('is shown when its question is gone, and when it names something that asks nothing', () => {
    const curve = entryOf(book, 'load')
    if (!curve) throw new Error('the first book has a curve')
    for (const after of ['gone', 'map'])
      expect(heldBackBy(book, { ...curve, after }, allKinds.items)).toBeNull()
  })

  it('comes back from a file', async () => {
    const again = await parseBook(serialiseBook(book), allKinds)
    expect(again.book && heldIn(again.book)).toEqual(heldIn(book))
  })
})
