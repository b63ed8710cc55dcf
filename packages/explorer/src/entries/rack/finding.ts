import type { Shown } from '../view.ts'
import type { RackResult, RackSettings } from './kind.ts'
import { byHeight, fittedHeight } from './rows.ts'

/** Which roller cuts lowest with the bench left alone, and what to set to make up for it. */
export function rackFinding({ result, scenario, reader }: Shown<RackSettings, RackResult>): string | null {
  const { words, format } = reader
  const ranked = byHeight(result)
  const lowest = ranked[0]
  const highest = ranked.at(-1)
  if (!lowest || !highest) return null
  const bench = format(scenario.unit.benchHeight, 'height')
  const shown = (height: number) => format(height, 'height')
  const from = fittedHeight(result) ?? lowest.effectiveHeight
  if (shown(lowest.effectiveHeight) === shown(highest.effectiveHeight)) return words.rack.allAlike
  // The one fitted need not be one of the rack.
  if (lowest.effectiveHeight >= from)
    return words.rack.fittedLowest({ bench, name: highest.name, by: shown(highest.effectiveHeight - from) })
  if (lowest.benchHeight === null) return null
  const said = {
    bench,
    name: lowest.name,
    by: shown(from - lowest.effectiveHeight),
    wanted: shown(scenario.effectiveHeight ?? from),
  }
  if (lowest.benchHeight <= 0) return words.rack.lowestCannot(said)
  return words.rack.lowest({ ...said, set: shown(lowest.benchHeight) })
}
