import { displayUnit, type QuantityName } from '@swardsink/model'
import type { Reader } from '../../words/index.ts'
import type { TurfRow } from './kind.ts'

export const TURF_COLUMNS = ['law', 'softness', 'spread', 'rebound', 'effectiveHeight'] as const
export type TurfColumn = (typeof TURF_COLUMNS)[number]

const QUANTITY: Readonly<Partial<Record<TurfColumn, QuantityName>>> = {
  softness: 'softness',
  spread: 'spread',
  rebound: 'ratio',
  effectiveHeight: 'height',
}

export function columnUnit(column: TurfColumn, { units }: Reader): string {
  const quantity = QUANTITY[column]
  return quantity ? displayUnit(quantity, units) : ''
}

/** A law as readers call it; one this language has no word for goes by its own name. */
export const lawName = (law: string, { words }: Reader): string => words.curves.laws[law] ?? law

export function turfCell(
  { law, softness, turf, height }: TurfRow,
  column: TurfColumn,
  reader: Reader,
): string {
  const { words, format } = reader
  if (column === 'law') return lawName(law, reader)
  if (column === 'softness') return format(softness, 'softness', { unit: false })
  if (column === 'spread') return format(turf.spread ?? 0, 'spread', { unit: false })
  if (column === 'rebound') return format(turf.rebound ?? 1, 'ratio', { unit: false })
  if (height === null) return words.turfs.later
  return height === 'bottoms out' ? words.turfs.bottomsOut : format(height, 'height', { unit: false })
}
