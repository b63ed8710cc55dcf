import type { Entry } from '../../book/index.ts'
import { nameGivenBy } from '../given.ts'

const fromOf = ({ settings }: Entry): string =>
  'from' in settings && typeof settings.from === 'string' ? settings.from : ''

/**
 * The names of the formulas that need each other in a ring with this one, itself first; none when it is on no ring.
 * A formula that only leans on a ring is not part of it.
 */
export function ringOf(
  name: string,
  q: { readonly entries: readonly Entry[]; calledBy(from: string): readonly string[] },
): readonly string[] {
  const formulas = new Map(
    q.entries.flatMap(entry => {
      const given = nameGivenBy(entry)
      return given === '' ? [] : [[given, entry] as const]
    }),
  )
  const tried = new Set<string>()
  const search = (at: string, way: readonly string[]): readonly string[] => {
    const entry = formulas.get(at)
    if (!entry) return []
    for (const next of q.calledBy(fromOf(entry))) {
      if (next === name) return way
      if (tried.has(next) || !formulas.has(next)) continue
      tried.add(next)
      const ring = search(next, [...way, next])
      if (ring.length > 0) return ring
    }
    return []
  }
  return search(name, [name])
}
