/** How many letters must be changed, added or left out to make one word of another. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1))
    }
    row = next
  }
  return row[b.length] ?? b.length
}

/** The known word nearest to one that is not known; empty when none is near. */
export function nearest(word: string, known: readonly string[]): string {
  const reach = Math.max(2, Math.floor(word.length / 3))
  const lower = word.toLowerCase()
  let best = ''
  let least = reach + 1
  for (const name of known) {
    const apart = distance(lower, name.toLowerCase())
    // The last part alone is what many remember: `sinkage` for `front.sinkage`.
    const inPart = name.toLowerCase().split('.').at(-1) === lower ? 1 : apart
    if (Math.min(apart, inPart) < least) {
      least = Math.min(apart, inPart)
      best = name
    }
  }
  return best
}
