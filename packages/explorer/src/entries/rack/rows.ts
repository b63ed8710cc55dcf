import type { ComparedRoller, Position, QuantityName } from '@swardsink/model'
import type { Reader } from '../../words/index.ts'
import { type ComparedSettled, isSettled, type RackColumn, type RackSettings } from './kind.ts'

/** What each column is in the catalogue. */
export const COLUMN_QUANTITY: Readonly<Record<RackColumn, QuantityName>> = {
  mass: 'mass',
  load: 'load',
  sinkage: 'sinkage',
  pressure: 'pressure',
  relief: 'relief',
  benchHeight: 'height',
  change: 'height',
  effectiveHeight: 'height',
  sliding: 'sliding',
}

/** One number of a row; null where there is none. */
function cellValue(row: ComparedRoller, column: RackColumn, position: Position): number | null {
  if (column === 'mass') return row.roller.mass
  if (!isSettled(row)) return null
  const values: Record<Exclude<RackColumn, 'mass'>, number | null> = {
    load: position === 'front' ? row.frontLoad : row.rearLoad,
    sinkage: row.sinkage,
    pressure: row.peakPressure,
    relief: row.roller.surface.kind === 'grooved' && row.grooveFloor === 'free' ? row.relief : null,
    // No edge can be set below the line that the rollers stand on.
    benchHeight: (row.benchHeight ?? 0) > 0 ? row.benchHeight : null,
    change: row.change,
    effectiveHeight: row.effectiveHeight,
    sliding: row.sliding?.greatest ?? null,
  }
  return values[column]
}

/** Rows in the order asked for; those without a number last, whichever way it runs. */
export function sorted(
  rows: readonly ComparedRoller[],
  { sort, order, position }: RackSettings,
): readonly ComparedRoller[] {
  const sign = order === 'up' ? 1 : -1
  return [...rows].sort((a, b) => {
    const [x, y] = [cellValue(a, sort, position), cellValue(b, sort, position)]
    if (x === null || y === null) return Number(x === null) - Number(y === null)
    return sign * (x - y)
  })
}

/** What a roller's face is, in words. */
export function surfaceWords({ roller }: ComparedRoller, { words, format }: Reader): string {
  const { surface } = roller
  if (surface.kind === 'smooth') return words.surfaces.smooth
  return words.surfaces.grooved({
    land: format(surface.land, 'land', { unit: false }),
    pitch: format(surface.pitch, 'pitch'),
  })
}

export function byHeight(rows: readonly ComparedRoller[]): readonly ComparedSettled[] {
  return rows.filter(isSettled).toSorted((a, b) => a.effectiveHeight - b.effectiveHeight)
}

/** The height of the fitted roller, which need not be one of the rack; null where it has no answer. */
export function fittedHeight(rows: readonly ComparedRoller[]): number | null {
  const settled = rows.filter(isSettled)
  const fitted = settled.find(row => row.fitted)
  if (fitted) return fitted.effectiveHeight
  const [any] = settled
  return any && any.change !== null ? any.effectiveHeight - any.change : null
}

/** A cell as it is read: a number, or the reason there is none. */
export function cellText(
  row: ComparedRoller,
  column: RackColumn,
  { reader: { words, format }, position }: { readonly reader: Reader; readonly position: Position },
): string {
  const value = cellValue(row, column, position)
  if (value !== null)
    return format(value, COLUMN_QUANTITY[column], { unit: false, signed: column === 'change' })
  if (!isSettled(row)) return words.rack.bottomsOut
  if (column === 'benchHeight' && row.benchHeight !== null) return words.rack.cannotHold
  if (column !== 'relief') return words.rack.notKnown
  return row.grooveFloor === 'touching' ? words.rack.touching : words.rack.noGrooves
}
