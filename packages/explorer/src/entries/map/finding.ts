import { type SinkageMap, softnessOf } from '@swardsink/model'
import { presentTurf } from '../../book/index.ts'
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

/** Where a value lies among those of an axis: the place before it, and how far on it is to the next, 0 to 1. */
function placeOn(axis: Float64Array, value: number): { readonly at: number; readonly on: number } {
  const last = axis.length - 1
  const next = axis.findIndex(other => other > value)
  const at = Math.min(last - 1, next < 0 ? last : Math.max(0, next - 1))
  const [low = 0, high = 1] = [axis[at], axis[at + 1]]
  return { at, on: Math.min(1, Math.max(0, (value - low) / (high - low))) }
}

/** How far the shown quantity reaches over the map, along both lines through the case in hand, read off the map. */
export function spanOf(map: SinkageMap, here: { readonly mass: number; readonly softness: number }): Span {
  const { masses, softnesses, values } = map
  const width = masses.length
  const column = placeOn(masses, here.mass)
  const row = placeOn(softnesses, here.softness)
  const between = (first: number, step: number, on: number): number => {
    const [from = Number.NaN, to = Number.NaN] = [values[first], values[first + step]]
    return on === 0 ? from : from + on * (to - from)
  }
  const atMass = (r: number): number => between(r * width + column.at, 1, column.on)
  const atSoftness = (c: number): number => between(row.at * width + c, width, row.on)
  let last = softnesses.length - 1
  while (last > 0 && !Number.isFinite(atMass(last))) last--
  const ends = (low: number, high: number): Ends | null =>
    Number.isFinite(low) && Number.isFinite(high) ? { low, high } : null
  return {
    byMass: ends(atSoftness(0), atSoftness(width - 1)),
    bySoftness: ends(atMass(0), atMass(last)),
    bottomsFrom: last < softnesses.length - 1 ? (softnesses[last + 1] ?? null) : null,
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
  const { byMass, bySoftness, bottomsFrom } = spanOf(result, {
    mass: scenario.unit.frontRoller.mass,
    softness: softnessOf(presentTurf(scenario).law),
  })
  if (!byMass || !bySoftness) return null
  const low = format(result.masses[0] ?? 0, 'mass')
  const high = format(result.masses.at(-1) ?? 0, 'mass')
  const end = bottomsFrom === null ? '' : ` ${words.map.bottoms(format(bottomsFrom, 'softness'))}`
  if (quantity === 'effectiveHeight') {
    const moves = ({ low, high }: Ends) => format(Math.abs(high - low), shown)
    return words.map.heights({ low, high, byMass: moves(byMass), bySoftness: moves(bySoftness) }) + end
  }
  if (quantity === 'peakPressure') {
    // it may fall with softness, or turn: the ends are told, and no ratio of them
    const at = (value: number) => format(value, shown)
    const ends = {
      low,
      high,
      lightest: at(byMass.low),
      heaviest: at(byMass.high),
      firmest: at(bySoftness.low),
      softest: at(bySoftness.high),
    }
    return words.map.ends(ends) + end
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
