import { catalogue, type QuantityName } from '@swardsink/model'
import type { Line } from './settable.ts'

/** A range that spans this much is divided evenly by its logarithm. */
const WIDE = 25

/** The line of a quantity that has none of its own: the catalogue's plausible range. */
export function lineOf(quantity: QuantityName): Line {
  const { low, high } = catalogue[quantity]
  return { low, high, usual: [low, high], scale: low > 0 && high / low > WIDE ? 'logarithmic' : 'linear' }
}
