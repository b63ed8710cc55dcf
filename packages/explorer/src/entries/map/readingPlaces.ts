import { loadAt, type Roller, type Turf, withSoftness } from '@swardsink/model'
import type { ReadingRow } from '../readingRows.ts'

/** Where a reading stands on the map: the mass of its roller, and the softness it says. */
export type ReadingPlace = { readonly mass: number; readonly softness: number }
export type ReadingQuestion = {
  readonly rows: readonly ReadingRow[]
  /** By name; a reading that names none was made with the fitted one. */
  readonly rollers: Readonly<Record<string, Roller>>
}

/** No roller of a rack is called by an empty name. */
export const FITTED = ''

/** Halvings of the softness axis: a ten-thousandth of its length is less than a pixel. */
const HALVINGS = 14

/** The softness at which a roller under a load sinks as far as was read; null beyond the ends of the axis. */
function softnessOf(
  q: { readonly roller: Roller; readonly turf: Turf; readonly load: number; readonly sinkage: number },
  [firmest, softest]: readonly [number, number],
): number | null {
  const condition = { kind: 'standing' } as const
  // The load that the sinkage takes falls as turf gets softer.
  const takes = (softness: number): number => {
    const turf = withSoftness(q.turf, softness)
    const loaded = loadAt({ roller: q.roller, turf, condition, sinkage: q.sinkage })
    return loaded.outcome === 'settled' ? loaded.load : Number.POSITIVE_INFINITY
  }
  if (takes(firmest) < q.load || takes(softest) > q.load) return null
  let [low, high] = [firmest, softest]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = Math.sqrt(low * high)
    if (takes(middle) > q.load) low = middle
    else high = middle
  }
  return Math.sqrt(low * high)
}

/** Readings as places on the map; one whose roller, load or softness is not known or not on it has none. */
export function readingPlaces(
  { rows, rollers }: ReadingQuestion,
  q: { readonly turf: Turf; readonly softnesses: readonly [number, number] },
): readonly ReadingPlace[] {
  const { law } = q.turf
  const [firmest, softest] = q.softnesses
  const most = 'lockingDepth' in law ? Math.min(softest, 0.98 * law.lockingDepth) : softest
  return rows.flatMap(({ load, sinkage, roller: name }) => {
    const roller = rollers[name ?? FITTED]
    if (load === null || !roller || !(load > 0) || !(sinkage > 0)) return []
    const softness = softnessOf({ roller, turf: q.turf, load, sinkage }, [firmest, most])
    return softness === null ? [] : [{ mass: roller.mass, softness }]
  })
}
