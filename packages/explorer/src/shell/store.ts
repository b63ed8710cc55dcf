import type { Store } from '../book/index.ts'

/** The browser's own storage, or one that forgets where a browser refuses to give it out. */
export function openStore(): Store {
  try {
    return window.localStorage
  } catch {
    return { getItem: () => null, setItem: () => {}, removeItem: () => {} }
  }
}
