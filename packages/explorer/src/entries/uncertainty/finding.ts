import type { Shown } from '../view.ts'
import type { UncertaintyResult } from './kind.ts'
import type { UncertaintySettings } from './settings.ts'

const LEAST = 0.0005

/** Between which heights 95 of 100 lie, and what that hangs on most. */
export function uncertaintyFinding({
  result,
  reader,
}: Shown<UncertaintySettings, UncertaintyResult>): string {
  const { words, format, locale } = reader
  const said = words.uncertainty
  const { quantiles, hangsOn, wanted, by, scalps, unanswered } = result
  if (!hangsOn && by === 'draws' && quantiles[0] === quantiles[4]) return said.alike
  if (by === 'lines' && !hangsOn) return said.alike
  const ends = { low: format(quantiles[0] ?? 0, 'height'), high: format(quantiles[4] ?? 0, 'height') }
  const between = by === 'draws' ? said.found(ends) : said.about(ends)
  const [first] = hangsOn ?? []
  const most = first
    ? `; ${said.mostly({ what: said.inputs[first.name] ?? first.name, share: words.percent(first.share) })}`
    : '.'
  const share = (value: number) => fewer(value, locale)
  return [
    between + most,
    ...(wanted && wanted.within !== null
      ? [
          said.wanted({
            within: share(wanted.within),
            height: format(wanted.height, 'height'),
            tolerance: format(wanted.tolerance, 'height'),
          }),
        ]
      : []),
    ...(scalps > LEAST ? [said.scalps(share(scalps))] : []),
    ...unanswered.map(one =>
      said.unanswered({ share: share(one.share), why: said.reasons[one.why] ?? one.why }),
    ),
  ].join(' ')
}

/** A share that is not rounded away. */
function fewer(share: number, locale: string): string {
  const digits = share > 0 && share < 0.1 ? 2 : 0
  const text = new Intl.NumberFormat(locale, {
    style: 'percent',
    ...(digits > 0 ? { maximumSignificantDigits: digits } : { maximumFractionDigits: 0 }),
  })
  return text.format(share).replace('%', '\u202f%')
}
