import type { Shown } from '../view.ts'
import type { UnitsResult, UnitsSettings } from './kind.ts'

type ShownUnits = Shown<UnitsSettings, UnitsResult>

/** Which two differ most, and what to set so that they do not. */
export function unitsFinding({ result, settings, reader }: ShownUnits): string | null {
  const { words, format } = reader
  const said = words.units
  const lost = result.rows.find(({ settled }) => !settled)
  if (result.rows.length < 2) return said.single
  if (lost) return said.unanswered(lost.name)
  const ranked = result.rows
    .flatMap(row => (row.settled ? [{ row, height: row.settled.effectiveHeight.middle }] : []))
    .toSorted((a, b) => a.height - b.height)
  const [lowest, highest] = [ranked[0], ranked.at(-1)]
  if (!lowest || !highest || !result.match) return null
  const tolerance = format(settings.tolerance, 'height')
  if (result.match.matched)
    return said.alike({
      count: String(ranked.length),
      low: format(lowest.height, 'height', { unit: false }),
      high: format(highest.height, 'height'),
      tolerance,
    })
  const apart = said.apart({
    higher: highest.row.name,
    lower: lowest.row.name,
    by: format(highest.height - lowest.height, 'height'),
    tolerance,
  })
  return `${apart} ${remedy(ranked, reader) ?? ''}`.trim()
}

/** What to set on the unit that is furthest from the one in hand. */
function remedy(
  ranked: readonly { readonly row: UnitsResult['rows'][number]; readonly height: number }[],
  { words, format }: ShownUnits['reader'],
): string | null {
  const here = ranked.find(({ row }) => row.inHand)
  if (!here) return null
  const furthest = ranked.toSorted(
    (a, b) => Math.abs(b.height - here.height) - Math.abs(a.height - here.height),
  )[0]
  if (!furthest || furthest === here || furthest.row.toMatch === null) return null
  const names = { name: furthest.row.name, inHand: here.row.name }
  return furthest.row.toMatch > 0
    ? words.units.setTo({ ...names, bench: format(furthest.row.toMatch, 'height') })
    : words.units.below(names)
}
