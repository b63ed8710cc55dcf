import type { Shown } from '../view.ts'
import type { TurfsResult, TurfsSettings } from './kind.ts'

/** How soft the green in hand is and what is cut on it, beside the greens it is cut lowest and highest on. */
export function turfsFinding({ result, reader }: Shown<TurfsSettings, TurfsResult>): string | null {
  const { words, format } = reader
  const said = words.turfs
  const here = result.rows.find(({ present }) => present)
  if (!here) return null
  if (typeof here.height !== 'number') return said.bottomsOutHere(here.name)
  const own = {
    name: here.name,
    softness: format(here.softness, 'softness'),
    height: format(here.height, 'height'),
  }
  const ranked = result.rows
    .flatMap(({ name, height }) => (typeof height === 'number' ? [{ name, height }] : []))
    .toSorted((a, b) => a.height - b.height)
  const [low, high] = [ranked[0], ranked.at(-1)]
  if (!low || !high || low === high) return said.alone(own)
  return said.range({
    ...own,
    low: format(low.height, 'height'),
    lowName: low.name,
    high: format(high.height, 'height'),
    highName: high.name,
  })
}
