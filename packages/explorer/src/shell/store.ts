import type { Store } from '../book/index.ts'

/** The browser's own storage, or one that forgets where a browser refuses to give it out. */
export function openStore(): Store {
  try {
    const { localStorage } = window
    return {
      getItem: key => localStorage.getItem(key),
      setItem: (key, value) => localStorage.setItem(key, value),
      removeItem: key => localStorage.removeItem(key),
      keys: () => Object.keys(localStorage),
    }
  } catch {
    return {
      getItem: () => null,
      setItem() {
        throw new Error('no storage')
      },
      removeItem: () => {},
      keys: () => [],
    }
  }
}
