import { describe, expect, it } from 'vitest'
import {
  forget,
  freeName,
  keep,
  keepOpened,
  kept,
  keptBooks,
  keptOpened,
  keptUnder,
  type Store,
} from '../../../packages/explorer/src/book/index.ts'
import { memory } from '../../support/memoryStore.ts'
import { allKinds, firstBook } from '../entries/firstBook.ts'

const book = await firstBook()
const changed = { ...book, scenario: { ...book.scenario, effectiveHeight: 3e-3 } }
const when = '2025-03-11T09:30:00.000Z'
const named = { name: 'first', edition: '1', when }
const kinds = allKinds

const full: Store = {
  getItem: () => null,
  setItem() {
    throw new Error('full')
  },
  removeItem() {
    throw new Error('refused')
  },
  keys() {
    throw new Error('refused')
  },
}

describe('changes kept in the browser', () => {
  it('are there the next time, with the edition they belong to', async () => {
    const store = memory()
    expect(keep({ store, ...named, book: changed })).toBe(store.getItem(keptUnder('first')))
    const again = await kept({ store, name: 'first', kinds })
    expect(again).toEqual({ edition: '1', read: { book: changed, problems: [] } })
  })

  it('are not those of another book', async () => {
    const store = memory()
    keep({ store, ...named, book: changed })
    expect(await kept({ store, name: 'second', kinds })).toBe(null)
  })

  it('are gone once forgotten', () => {
    const store = memory()
    keep({ store, ...named, book: changed })
    keepOpened({ store, name: 'first', when, book })
    forget({ store, name: 'first' })
    expect(store.keys()).toHaveLength(1)
    forget({ store, name: 'first', whole: true })
    expect(store.keys()).toEqual([])
  })

  it('are nothing when what is kept was damaged', async () => {
    const store = memory()
    keep({ store, ...named, book: changed })
    for (const key of store.keys()) store.setItem(key, '{"version":1')
    expect(await kept({ store, name: 'first', kinds })).toBe(null)
    expect(keptBooks(store)).toEqual([])
  })

  it('say so when the browser keeps nothing, and do not fail', () => {
    expect(keep({ store: full, ...named, book })).toBe(null)
    expect(() => forget({ store: full, name: 'first' })).not.toThrow()
    expect(keptBooks(full)).toEqual([])
  })
})

describe('several books kept by name', () => {
  it('are listed with their titles and when they were changed', () => {
    const store = memory()
    keepOpened({
      store,
      name: 'mine',
      when: '2025-03-10T08:00:00.000Z',
      book: { ...book, title: 'My greens' },
    })
    keep({ store, ...named, book: changed })
    expect(keptBooks(store)).toEqual([
      { name: 'first', title: book.title, when },
      { name: 'mine', title: 'My greens', when: '2025-03-10T08:00:00.000Z' },
    ])
  })

  it('keep what was opened apart from what was changed since', async () => {
    const store = memory()
    keepOpened({ store, name: 'mine', when, book })
    keep({ store, ...named, name: 'mine', book: changed })
    expect((await keptOpened({ store, name: 'mine', kinds }))?.book).toEqual(book)
    expect((await kept({ store, name: 'mine', kinds }))?.read.book).toEqual(changed)
  })

  it.each([
    ['My greens', [], 'my-greens'],
    ['My greens', ['my-greens', 'my-greens-2'], 'my-greens-3'],
    ['Grün & 芝', [], 'grun-芝'],
    ['  ', [], 'book'],
  ])('get a name from the title %j that is free beside %j', (title, taken, name) => {
    expect(freeName(title, taken)).toBe(name)
  })
})
