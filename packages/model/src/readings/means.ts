import type { Column } from './header.ts'
import type { Reading } from './reading.ts'
import type { Line } from './tokens.ts'

/** What may stand in the replicate or the set of a row that sums others up. */
const MEAN = /^(?:mean|average|avg|ø)\.?$/i
const TOTAL = /^(?:total|sum|median|std\.? ?dev\.?|stdev|standard deviation)$/i
const SPREAD = /^(?:sd|s\.d\.|std|s\.e\.|sem|cv|cv ?%|min|max|lsd)$/i
/** Also the south-east corner of a plot: believed only beside others of its kind. */
const ERROR = /^se$/i

export type LeftOut = { readonly row: number; readonly why: string }

/** Things that a mean may leave unsaid while its rows say them. */
const finer = ['pass', 'time', 'date', 'moisture'] as const
const DIGITS = 6

const number = (value: number | undefined): string => (value === undefined ? '' : value.toPrecision(DIGITS))

function footKey(reading: Reading): string {
  const { foot, set, measured } = reading
  const size = foot.kind === 'roller' ? (foot.name ?? '') : 'area' in foot ? foot.area : foot.diameter
  const point = measured.kind === 'drop' ? measured.point : undefined
  const key = [
    set,
    foot.kind,
    size,
    number(reading.load),
    number(reading.pressure),
    measured.kind,
    number(point),
  ]
  return key.join('\u0000')
}

const said = (reading: Reading): string =>
  finer.map(name => (reading[name] === undefined ? '' : 'x')).join(',')

const fineKey = (reading: Reading, pattern: string): string =>
  pattern
    .split(',')
    .map((mark, i) => (mark === '' ? '' : String(reading[finer[i]!])))
    .join('\u0000')

const isMean = ({ count, replicate = '' }: Reading): boolean => count > 1 || MEAN.test(replicate)

type Texts = { readonly set?: string; readonly replicate?: string }

/** Whether a row sums others up, by what stands for its set or replicate; in a table that has such rows or not. */
export const sumsUp = ({ set = '', replicate = '' }: Texts, summed: boolean): boolean =>
  MEAN.test(set) ||
  TOTAL.test(set) ||
  TOTAL.test(replicate) ||
  SPREAD.test(replicate) ||
  (summed && ERROR.test(replicate))

/** Whether a table has rows of means or spreads. */
export function isSummedUp(lines: readonly Line[], found: readonly Column[]): boolean {
  const replicate = found.find(({ name }) => name === 'replicate')
  if (!replicate) return false
  return lines.some(({ cells }) => {
    const cell = (cells[replicate.index] ?? '').trim()
    return MEAN.test(cell) || SPREAD.test(cell)
  })
}

/** Parts readings from means that repeat them: beside raw rows of the same set, foot and load. */
export function apartFromMeans(all: readonly Reading[]): {
  readonly readings: readonly Reading[]
  readonly leftOut: readonly LeftOut[]
} {
  const leftOut: LeftOut[] = []
  const patterns = new Set(all.filter(isMean).map(said))
  const beside = new Set<string>()
  if (patterns.size > 0)
    for (const reading of all) {
      if (isMean(reading)) continue
      const key = footKey(reading)
      for (const pattern of patterns) beside.add(`${key}\u0001${pattern}\u0001${fineKey(reading, pattern)}`)
    }
  const readings = all.filter(reading => {
    if (!isMean(reading)) return true
    const pattern = said(reading)
    if (!beside.has(`${footKey(reading)}\u0001${pattern}\u0001${fineKey(reading, pattern)}`)) return true
    leftOut.push({ row: reading.row, why: 'a mean whose own rows stand beside it' })
    return false
  })
  return { readings, leftOut }
}

/** A mean by its name that does not say of how many. */
export const isMeanOfUnknown = ({ count, replicate = '' }: Reading): boolean =>
  count === 1 && MEAN.test(replicate)
