/**
 * Moves places on a line apart until neighbours keep a gap, each by as little as the group allows; order is kept and
 * nothing leaves the ends unless there is no room at all.
 */
export function spreadOut(
  places: readonly number[],
  q: { gap: number; low: number; high: number },
): readonly number[] {
  const order = places.map((place, index) => ({ place, index })).sort((a, b) => a.place - b.place)
  type Group = { count: number; sum: number }
  // Neighbours that would touch share a group, whose first member stands at the mean of what its members want.
  const groups: Group[] = []
  const start = ({ sum, count }: Group) =>
    Math.max(q.low, Math.min(sum / count, q.high - (count - 1) * q.gap))
  for (const { place } of order) {
    groups.push({ count: 1, sum: place })
    while (groups.length > 1) {
      const last = groups.at(-1) as Group
      const before = groups.at(-2) as Group
      if (start(before) + before.count * q.gap <= start(last)) break
      groups.splice(-2, 2, {
        count: before.count + last.count,
        sum: before.sum + last.sum - last.count * before.count * q.gap,
      })
    }
  }
  const spread: number[] = new Array(places.length)
  let next = 0
  for (const group of groups) {
    for (let i = 0; i < group.count; i++) {
      const index = order[next++]?.index ?? 0
      spread[index] = start(group) + i * q.gap
    }
  }
  return spread
}
