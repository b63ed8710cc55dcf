import type { Shown } from '../view.ts'
import { type FullPatch, greatest, moreThanQuick, type PatchResult, type PatchSettings } from './kind.ts'

/** A share too small for whole percents, with as many digits as it needs to be read. */
export function finePercent(share: number, locale: string): string {
  const number = new Intl.NumberFormat(locale, { maximumSignificantDigits: 2 })
  return `${number.format(100 * Math.abs(share))}\u202f%`
}

/** Where it presses hardest, what hangs on the edges, and how far the quick model lies from it. */
export function patchFinding({ result, reader }: Shown<PatchSettings, PatchResult>): string {
  const { words, format } = reader
  const { full, quick } = result
  if (!full)
    return words.patch.begun({
      sinkage: format(quick.sinkage, 'sinkage'),
      pressure: format(quick.peakPressure, 'pressure'),
    })
  const pressure = format(greatest(full.pressures), 'pressure')
  const hardest =
    full.across.length === 1
      ? words.patch.smooth({ pressure, sinkage: format(full.sinkage, 'sinkage') })
      : full.edgePart > 0
        ? words.patch.grooved({ pressure, share: words.percent(full.edgePart) })
        : words.patch.springs({ pressure })
  return `${hardest} ${against(full, reader)}`
}

/** What is less than the mesh can tell is told as alike. */
function against(full: FullPatch, { words, locale }: Shown<PatchSettings, PatchResult>['reader']): string {
  const more = moreThanQuick(full)
  const share = finePercent(more, locale)
  if (Math.abs(more) <= full.meshError) return words.patch.alike(finePercent(full.meshError, locale))
  return more > 0 ? words.patch.more(share) : words.patch.less(share)
}
