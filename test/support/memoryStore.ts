import type { Store } from '../../packages/explorer/src/book/index.ts'

/** A browser's storage that lives as long as a test. */
export function memory(): Store {
  const entries = new Map<string, string>()
  return {
    getItem: key => entries.get(key) ?? null,
    setItem: (key, value) => void entries.set(key, value),
    removeItem: key => void entries.delete(key),
    keys: () => [...entries.keys()],
  }
}
