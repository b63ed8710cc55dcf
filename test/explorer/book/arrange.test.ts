import { describe, expect, it } from 'vitest'
import {
  addEntry,
  addPage,
  type Book,
  canMoveEntry,
  copyEntry,
  copyPage,
  type Entry,
  moveEntry,
  movePage,
  putBeside,
  rowsOf,
  takeOutEntry,
  takeOutPage,
  type Way,
} from '../../../packages/explorer/src/book/index.ts'
import { firstBook } from '../entries/firstBook.ts'

const { scenario } = await firstBook()

/** A page is written as its rows: `a b, c` is an entry with another beside it, and one below. */
function bookOf(...pages: readonly string[]): Book {
  return {
    swardsink: 1,
    title: 'Ellerby Hollow (invented)',
    scenario,
    pages: pages.map((rows, at) => ({
      title: `page ${at + 1}`,
      lead: '',
      entries: rows
        .split(',')
        .flatMap(row => row.trim().split(' '))
        .filter(id => id !== '')
        .map((id): Entry => ({ id, kind: id.split('-')[0] ?? id, beside: isBeside(rows, id), settings: {} })),
    })),
  }
}

const isBeside = (rows: string, id: string) =>
  rows.split(',').some(row => row.trim().split(' ').indexOf(id) > 0)

const shown = (book: Book): readonly string[] =>
  book.pages.map(({ entries }) =>
    rowsOf(entries)
      .map(row => row.map(({ id }) => id).join(' '))
      .join(', '),
  )

describe('an entry moved', () => {
  const moves: readonly [string, Way, readonly string[], readonly string[]][] = [
    ['b', 'earlier', ['a, b, c'], ['b, a, c']],
    ['b', 'later', ['a, b, c'], ['a, c, b']],
    ['c', 'earlier', ['a b, c d'], ['c d, a b']],
    ['b', 'earlier', ['a b, c'], ['b, a, c']],
    ['b', 'later', ['a b, c'], ['a, b, c']],
    ['b', 'later', ['a b d, c'], ['a d b, c']],
    ['d', 'later', ['a b d, c'], ['a b, d, c']],
    ['a', 'earlier', ['x', 'a b, c'], ['x, a b', 'c']],
    ['c', 'later', ['a, c', 'x'], ['a', 'c, x']],
    ['a', 'later', ['a', ''], ['', 'a']],
  ]
  it.each(moves)('%s goes %s in %j', (id, way, before, after) => {
    expect(shown(moveEntry(bookOf(...before), { id, way }))).toEqual(after)
  })

  it.each([
    ['a', 'earlier', true],
    ['a', 'later', false],
    ['x', 'earlier', false],
    ['x', 'later', true],
  ] as const)('%s goes %s from the edge of a page only where there is another: %s', (id, way, can) => {
    const book = bookOf('x', 'a')
    expect(canMoveEntry(book, { id, way })).toBe(can)
  })

  it('comes to the same place when it goes there and back, row by row', () => {
    const book = bookOf('a, b c, d')
    const there = moveEntry(book, { id: 'b', way: 'later' })
    expect(moveEntry(there, { id: 'b', way: 'earlier' })).toEqual(book)
  })
})

describe('an entry copied, taken out or put elsewhere', () => {
  it('is copied below its row, under a name of its own', () => {
    const copied = copyEntry(bookOf('map text, rack'), 'map')
    expect(copied?.id).toBe('map-2')
    expect(shown(copied?.book as Book)).toEqual(['map text, map-2, rack'])
  })

  it('is copied beside itself when it stands beside another', () => {
    expect(shown(copyEntry(bookOf('map text, rack'), 'text')?.book as Book)).toEqual([
      'map text text-2, rack',
    ])
  })

  it('leaves what stood beside it in its place', () => {
    expect(shown(takeOutEntry(bookOf('x, a b c, d'), 'a'))).toEqual(['x, b c, d'])
    expect(shown(takeOutEntry(bookOf('a b'), 'b'))).toEqual(['a'])
    expect(shown(takeOutEntry(bookOf('a'), 'a'))).toEqual([''])
  })

  it('goes beside the one before it and out again', () => {
    const beside = putBeside(bookOf('a, b, c'), { id: 'b', beside: true })
    expect(shown(beside)).toEqual(['a b, c'])
    expect(shown(putBeside(beside, { id: 'b', beside: false }))).toEqual(['a, b, c'])
  })

  it('is added as the last of its page', () => {
    const entry: Entry = { id: 'new', kind: 'new', beside: false, settings: {} }
    expect(shown(addEntry(bookOf('a b', 'c'), { page: 0, entry }))).toEqual(['a b, new', 'c'])
  })

  it('leaves every other page as it is, the very same', () => {
    const book = bookOf('a, b', 'c')
    expect(moveEntry(book, { id: 'a', way: 'later' }).pages[1]).toBe(book.pages[1])
    expect(moveEntry(book, { id: 'nobody', way: 'later' })).toBe(book)
  })
})

describe('pages', () => {
  it('are added behind another, moved and taken out', () => {
    const book = bookOf('a', 'b')
    const page = { title: 'new', lead: '', entries: [] }
    expect(addPage(book, { after: 0, page }).pages.map(({ title }) => title)).toEqual([
      'page 1',
      'new',
      'page 2',
    ])
    expect(shown(movePage(book, { index: 1, way: 'earlier' }))).toEqual(['b', 'a'])
    expect(shown(takeOutPage(book, 0))).toEqual(['b'])
  })

  it('are never all taken out, and stay where they are at the ends', () => {
    const book = bookOf('a')
    expect(takeOutPage(book, 0)).toBe(book)
    expect(movePage(book, { index: 0, way: 'earlier' })).toBe(book)
    expect(movePage(book, { index: 0, way: 'later' })).toBe(book)
  })

  it('are copied with entries that have names of their own', () => {
    expect(shown(copyPage(bookOf('map text, map-2', 'rack'), 0))).toEqual([
      'map text, map-2',
      'map-3 text-2, map-4',
      'rack',
    ])
  })
})
