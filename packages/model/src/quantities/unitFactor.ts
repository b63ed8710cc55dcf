import { catalogue, type QuantityName } from './catalogue.ts'
import { type Dimension, type UnitName, units } from './units.ts'

/** Other ways in which people write a unit. */
const alsoWritten: Readonly<Record<string, UnitName>> = {
  '"': 'in',
  '″': 'in',
  inch: 'in',
  inches: 'in',
  lbs: 'lb',
  deg: 'deg',
  'km/h': 'kmh',
  kph: 'kmh',
  'm/s': 'mps',
  '1/s': 'rps',
}

/** The dimension of a quantity: that of the unit it is shown in. */
export function dimensionOf(quantity: QuantityName): Dimension {
  const { factor, unit } = catalogue[quantity].metric
  const found = Object.values(units).find(({ word, factor: one }) => word === unit && one === factor)
  return found?.dimension ?? 'none'
}

/**
 * How many of its SI unit a unit is, by its word or its name in files; null when it is no unit of the quantity.
 *
 * Units  'mm' → 0.001 for a height; 'kg' → null
 */
export function unitFactor(written: string, quantity: QuantityName): number | null {
  const dimension = dimensionOf(quantity)
  const named = Object.hasOwn(alsoWritten, written) ? alsoWritten[written] : undefined
  const found = Object.entries(units).find(
    ([name, { word }]) => name === named || ((name === written || word === written) && word !== ''),
  )
  return found && found[1].dimension === dimension && dimension !== 'none' ? found[1].factor : null
}

/** Every way a unit of the quantity may be written. */
export function unitWords(quantity: QuantityName): readonly string[] {
  const dimension = dimensionOf(quantity)
  if (dimension === 'none') return []
  const own = Object.entries(units).filter(([, unit]) => unit.dimension === dimension)
  const also = Object.entries(alsoWritten).filter(([, name]) => units[name].dimension === dimension)
  return [...new Set([...own.flatMap(([name, { word }]) => [word, name]), ...also.map(([word]) => word)])]
}
