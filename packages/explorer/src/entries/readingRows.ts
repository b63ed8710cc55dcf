import { isRecord } from '../book/index.ts'

/** One reading of a gauge, as figures use it: SI. */
export type ReadingRow = {
  readonly sinkage: number
  readonly set: string
  /** On a roller; null where it is not known. */
  readonly load: number | null
  /** Under a plate; null where there was none. */
  readonly pressure: number | null
  /** The roller by its name in the rack; null where none is named. */
  readonly roller: string | null
}

const numberOr = (value: unknown): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null
const textOr = (value: unknown): string | null => (typeof value === 'string' && value !== '' ? value : null)

/** Sinkage of a row that says it outright or as what was measured; a drop from a datum says none. */
function sinkageOf(row: Readonly<Record<string, unknown>>): number | null {
  const { measured } = row
  if (isRecord(measured)) return measured.kind === 'sinkage' ? numberOr(measured.sinkage) : null
  return numberOr(row.sinkage)
}

/** Area of a plate, m²; null where the foot is none. */
function plateArea(foot: unknown): number | null {
  if (!isRecord(foot) || foot.kind !== 'plate') return null
  const diameter = numberOr(foot.diameter)
  return diameter === null ? numberOr(foot.area) : (Math.PI * diameter ** 2) / 4
}

function readingRow(row: unknown): ReadingRow | null {
  if (!isRecord(row)) return null
  const sinkage = sinkageOf(row)
  if (sinkage === null) return null
  const { foot } = row
  const load = numberOr(row.load)
  const area = plateArea(foot)
  const isPlate = isRecord(foot) && foot.kind === 'plate'
  return {
    sinkage,
    set: textOr(row.set) ?? '',
    load: isPlate ? null : load,
    pressure: numberOr(row.pressure) ?? (load !== null && area ? load / area : null),
    roller: textOr(row.roller) ?? (isRecord(foot) ? textOr(foot.name) : null),
  }
}

/**
 * The readings in the answer of another entry. That entry says what it has in its own way: what is no reading of a
 * sinkage is left aside here, since the entry itself has told what is wrong with it.
 */
export function readingRows(answer: unknown): readonly ReadingRow[] {
  if (!isRecord(answer)) return []
  const list = [answer.rows, answer.readings].find(Array.isArray) ?? []
  return list.map(readingRow).filter((row): row is ReadingRow => row !== null)
}
