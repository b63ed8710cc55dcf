import { type MapQuantity, type Scenario, sinkageMap } from '@swardsink/model'
import { settledInput } from '../settled.ts'
import type { Shown } from '../view.ts'
import type { MapResult, MapSettings } from './kind.ts'
import { SHOWN_AS, valueHere } from './kind.ts'

type Ends = { readonly low: number; readonly high: number }
export type Span = {
  /** Along the masses, at the softness in hand; null where an end has no answer. */
  readonly byMass: Ends | null
  /** From the firmest turf to the softest that still answers, at the mass in hand. */
  readonly bySoftness: Ends | null
  /** The softness above which the turf bottoms out, if it does on this map. */
  readonly bottomsFrom: number | null
}

/** How far the shown quantity reaches over the map, along both lines through the case in hand. */
export function spanOf(map: MapResult, scenario: Scenario, quantity: MapQuantity): Span {
  const asked = settledInput(scenario)
  const { masses, softnesses } = map
  const along = (masses: ArrayLike<number>, softnesses: ArrayLike<number>) =>
    sinkageMap({ ...asked, masses, softnesses, quantity }).values
  const here = scenario.turfs[scenario.turf]
  const [light = Number.NaN, heavy = Number.NaN] = along(
    [masses[0] ?? 0, masses.at(-1) ?? 0],
    [here?.law && 'softness' in here.law ? here.law.softness : (softnesses[0] ?? 0)],
  )
  const column = along([scenario.unit.frontRoller.mass], softnesses)
  const firm = column[0] ?? Number.NaN
  const last = column.findLastIndex(value => Number.isFinite(value))
  const soft = column[last] ?? Number.NaN
  const ends = (low: number, high: number): Ends | null =>
    Number.isFinite(low) && Number.isFinite(high) ? { low, high } : null
  return {
    byMass: ends(light, heavy),
    bySoftness: ends(firm, soft),
    bottomsFrom: last < column.length - 1 ? (softnesses[last + 1] ?? null) : null,
  }
}

/** Which of the two moves the shown quantity further, and by how much. */
export function mapFinding({
  settings,
  result,
  scenario,
  reader,
}: Shown<MapSettings, MapResult>): string | null {
  const { words, format } = reader
  const { quantity } = settings
  const shown = SHOWN_AS[quantity]
  if (valueHere(scenario, quantity) === null) return words.map.noneHere
  const { byMass, bySoftness, bottomsFrom } = spanOf(result, scenario, quantity)
  if (!byMass || !bySoftness) return null
  const low = format(result.masses[0] ?? 0, 'mass')
  const high = format(result.masses.at(-1) ?? 0, 'mass')
  const end = bottomsFrom === null ? '' : ` ${words.map.bottoms(format(bottomsFrom, 'softness'))}`
  if (quantity === 'effectiveHeight') {
    const moves = ({ low, high }: Ends) => format(Math.abs(high - low), shown)
    return words.map.heights({ low, high, byMass: moves(byMass), bySoftness: moves(bySoftness) }) + end
  }
  const times = ({ low, high }: Ends) => Math.max(high / low, low / high)
  const said = {
    low,
    high,
    byMass: words.map.times(times(byMass)),
    bySoftness: words.map.times(times(bySoftness)),
  }
  const wins = times(bySoftness) >= times(byMass) ? words.map.softnessWins : words.map.massWins
  return wins(said) + end
}
