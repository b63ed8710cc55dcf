/**
 * The order in which entries can be worked out, each after those it needs, and those that never can because
 * they need each other in a ring.
 */
export function workingOrder(needs: ReadonlyMap<string, readonly string[]>): {
  readonly order: readonly string[]
  readonly rings: readonly string[]
} {
  const order: string[] = []
  const placed = new Set<string>()
  let left = [...needs.keys()]
  while (left.length > 0) {
    const ready = left.filter(id =>
      (needs.get(id) ?? []).every(needed => placed.has(needed) || !needs.has(needed)),
    )
    if (ready.length === 0) return { order, rings: left }
    for (const id of ready) placed.add(id)
    order.push(...ready)
    left = left.filter(id => !placed.has(id))
  }
  return { order, rings: [] }
}

/** Those of the entries that are seen, and those they need, however far back. */
export function neededBy(
  seen: ReadonlySet<string>,
  needs: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, readonly string[]> {
  const wanted = new Set([...seen].filter(id => needs.has(id)))
  for (const id of wanted) for (const needed of needs.get(id) ?? []) if (needs.has(needed)) wanted.add(needed)
  return new Map([...needs].filter(([id]) => wanted.has(id)))
}
