import type { Measured, Spread } from './measure.ts'

const US_PER_MS = 1e3
const DIGITS = 3

const short = (value: number): string =>
  value >= 1e4 ? value.toFixed(0) : String(Number(value.toPrecision(DIGITS)))
const shown = (spread: Spread | undefined): string =>
  spread ? `${short(spread.median)} ± ${short(spread.spread)}` : '–'

function told({ bar, reached, met }: Measured): string {
  if (!bar) return ''
  const what = bar.of === 'ms' ? 'ms' : bar.of === 'row' ? `× ${bar.row}` : `× ${bar.of}`
  if (reached === null) return `≤ ${bar.most} ${what}: not told, ${bar.of} was left out`
  return `${short(reached)} ${what}, bar ${bar.most}: ${met ? 'met' : 'MISSED'}`
}

function notes(one: Measured): string {
  const differs = Object.entries(one.differs).map(
    ([side, by]) => `${side} differs by ${Math.abs(by).toExponential(0)}`,
  )
  const worst = one.worst === undefined ? [] : [`worst of all cases ${one.worst.toExponential(1)}`]
  return [told(one), ...(one.counts ? [one.counts] : []), ...worst, ...differs].filter(Boolean).join('; ')
}

/** Medians of CPU time and of ratios over the rounds, each with half of what its middle half spans. */
export function table(rows: readonly Measured[], skipped: readonly string[]): string {
  const head = ['', 'µs of CPU', 'ms in all', '× plain', '× C', '× scipy', '']
  const body = rows.map(one => [
    one.name,
    `${shown(one.us.ours)} a ${one.per}`,
    short(((one.us.ours?.median ?? 0) * one.pieces) / US_PER_MS),
    shown(one.ratios.plain),
    shown(one.ratios.C),
    shown(one.ratios.scipy),
    notes(one),
  ])
  const widths = head.map((cell, k) => Math.max(cell.length, ...body.map(row => row[k]!.length)))
  const lines = [head, ...body].map(row =>
    row
      .map((cell, k) => cell.padEnd(k === row.length - 1 ? 0 : widths[k]!))
      .join('  ')
      .trimEnd(),
  )
  return [...lines, '', ...skipped].join('\n').trimEnd()
}
