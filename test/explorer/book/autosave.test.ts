import { describe, expect, it } from 'vitest'
import { forget, keep, kept, type Store } from '../../../packages/explorer/src/book/index.ts'
import { allKinds, firstBook } from '../entries/firstBook.ts'

const book = await firstBook()
const changed = { ...book, scenario: { ...book.scenario, effectiveHeight: 3e-3 } }
const named = { name: 'first', edition: '1' }

function memory(): Store & { readonly entries: Map<string, string> } {
  const entries = new Map<string, string>()
  return {
    entries,
    getItem: key => entries.get(key) ?? null,
    setItem: (key, value) => void entries.set(key, value),
    removeItem: key => void entries.delete(key),
  }
}

const full: Store = {
  getItem: () => null,
  setItem() {
    throw new Error('full')
  },
  removeItem() {
    throw new Error('refused')
  },
}

describe('changes kept in the browser', () => {
  it('are there the next time', async () => {
    const store = memory()
    expect(keep({ store, ...named, book: changed })).toBe(true)
    expect(await kept({ store, ...named, kinds: allKinds })).toEqual({ book: changed, problems: [] })
  })

  it('are not poured into another edition or another book', async () => {
    const store = memory()
    keep({ store, ...named, book: changed })
    expect(await kept({ store, name: 'first', edition: '2', kinds: allKinds })).toBe(null)
    expect(await kept({ store, name: 'second', edition: '1', kinds: allKinds })).toBe(null)
  })

  it('are gone once forgotten', async () => {
    const store = memory()
    keep({ store, ...named, book: changed })
    forget({ store, name: 'first' })
    expect(store.entries.size).toBe(0)
  })

  it('are nothing when what is kept was damaged', async () => {
    const store = memory()
    keep({ store, ...named, book: changed })
    for (const key of store.entries.keys()) store.entries.set(key, '{"version":1')
    expect(await kept({ store, ...named, kinds: allKinds })).toBe(null)
  })

  it('say so when the browser keeps nothing, and do not fail', () => {
    expect(keep({ store: full, ...named, book })).toBe(false)
    expect(() => forget({ store: full, name: 'first' })).not.toThrow()
  })
})
