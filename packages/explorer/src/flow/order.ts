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
