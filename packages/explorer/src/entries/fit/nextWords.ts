import type { NextReading } from '@swardsink/model'
import { decimalText, type Reader } from '../../words/index.ts'
import { footWords } from './tables.ts'

/** More decimals than heights have: a reading narrows what is known by hundredths of a millimetre. */
const MICRONS = {
  metric: { per: 1e-3, unit: 'mm', decimals: 3 },
  US: { per: 0.0254, unit: 'in', decimals: 4 },
} as const

function errorText(error: number, { units, locale }: Reader): string {
  const { per, unit, decimals } = MICRONS[units]
  return `${decimalText(error / per, { decimals, locale })}\u202f${unit}`
}

/** Which reading to make next, and what it would do, in the reader's units. */
export function nextWords({ ranked, now, aim, enough }: NextReading, reader: Reader): string {
  const { next: said } = reader.words.fit
  const [best] = ranked
  if (!best) return said.nothing
  const { foot, load, set } = best.candidate
  const what = footWords(foot, reader)
  const first = said.best({
    what: set ? `${what}, ${set},` : what,
    load: load === undefined ? reader.words.fit.footNames.unitLoad : reader.format(load, 'load'),
  })
  const part = reader.words.percent(best.narrowed)
  const then =
    aim.kind === 'height' && best.height && now.height
      ? said.height({
          to: errorText(best.height.standardError, reader),
          from: errorText(now.height.standardError, reader),
          part,
        })
      : said.other(part)
  return [first, then, ...(enough === null ? [] : [said.enough(enough)])].join(' ')
}
