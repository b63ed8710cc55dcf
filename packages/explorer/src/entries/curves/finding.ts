import type { Shown } from '../view.ts'
import { nameOf } from './drawing.ts'
import type { CurvesResult, CurvesSettings } from './kind.ts'

/** What the present load does under each of the curves, or what softness is. */
export function curvesFinding({ result, reader }: Shown<CurvesSettings, CurvesResult>): string {
  const { words, format } = reader
  const { present, curves, softness, show, over } = result
  const x = format(present.x, show)
  const sinkage = format(present.sinkage, 'sinkage')
  if (softness)
    return words.curves.softness({ softness: format(softness.sinkage, 'softness'), pressure: x, sinkage })
  const ranked = curves
    .filter(({ atPresent }) => atPresent !== null)
    .toSorted((a, b) => (a.atPresent ?? 0) - (b.atPresent ?? 0))
  const [least, most] = [ranked[0], ranked.at(-1)]
  const { found } = words.curves
  if (!least || !most || least === most) return found.alone({ x, sinkage })
  const range = {
    least: format(least.atPresent ?? 0, 'sinkage'),
    leastName: nameOf(least.name, words),
    most: format(most.atPresent ?? 0, 'sinkage'),
    mostName: nameOf(most.name, words),
  }
  if (range.least === range.most) return found.alone({ x, sinkage })
  return found[over]({ x, sinkage, softness: format(result.softnessHere, 'softness'), ...range })
}
