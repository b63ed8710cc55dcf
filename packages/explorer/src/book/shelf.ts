/** Things by name, some at hand, the others fetched when they are first asked for. */
export type Shelf<Item> = {
  /** Every name there is, fetched or not. */
  readonly names: readonly string[]
  /** Those fetched so far. */
  readonly items: Readonly<Record<string, Item>>
  /** Fetches those of these names that are not here yet; answers the names that could not be had. */
  fetch(names: Iterable<string>): Promise<readonly string[]>
}

/** A shelf: `atHand` comes with the page, `onDemand` with the first book that names it. */
export function openShelf<Item extends { readonly kind: string }>(q: {
  readonly atHand: readonly Item[]
  readonly onDemand: Readonly<Record<string, () => Promise<Item>>>
}): Shelf<Item> {
  // Without a prototype: a file may name a kind "constructor".
  const items: Record<string, Item> = Object.create(null)
  for (const item of q.atHand) items[item.kind] = item
  const names = [...Object.keys(items), ...Object.keys(q.onDemand)]
  return {
    names,
    items,
    async fetch(wanted) {
      const missing = [...new Set(wanted)].filter(name => !Object.hasOwn(items, name))
      const failed = await Promise.all(
        missing.map(async name => {
          const load = Object.hasOwn(q.onDemand, name) ? q.onDemand[name] : undefined
          if (!load) return [name]
          try {
            items[name] = await load()
            return []
          } catch {
            // Offline, and not kept by the browser: a fact for the reader, not a fault of the book.
            return [name]
          }
        }),
      )
      return failed.flat()
    },
  }
}
