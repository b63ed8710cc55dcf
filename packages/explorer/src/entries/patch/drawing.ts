import { displayUnit } from '@swardsink/model'
import type { Frame, PatchSpec, PatchWords } from '../../figures/index.ts'
import type { Reader } from '../../words/index.ts'
import type { FullPatch, PatchResult } from './kind.ts'
import { quickQuarter } from './quickQuarter.ts'

const drawn = new WeakMap<PatchResult, PatchSpec>()

/** What the figure draws; kept, so that a figure can tell by it that nothing has changed. */
export function specOf(result: PatchResult): PatchSpec {
  const kept = drawn.get(result)
  if (kept) return kept
  const { roller, full, quick } = result
  const { surface, diameter } = roller
  const grooves =
    surface.kind === 'grooved' && surface.depth > 0 && surface.land < surface.pitch ? surface : null
  const spec = {
    quarter: full ? quarterOf(full) : quickQuarter(result),
    sinkage: (full ?? quick).sinkage,
    diameter,
    grooves: grooves && { pitch: grooves.pitch, land: grooves.land },
  }
  drawn.set(result, spec)
  return spec
}

const quarterOf = ({
  along,
  across,
  pressures,
  depths,
  outline,
  edges,
}: FullPatch): PatchSpec['quarter'] => ({
  along,
  across,
  pressures,
  depths,
  outline,
  edges,
})

export function frameOf(reader: Reader, width: number): Frame<PatchWords> {
  const { words, format, units, locale, figureText } = reader
  return {
    width,
    words: words.figures.patch({
      unit: displayUnit('pressure', units),
      lengthUnit: displayUnit('place', units),
      depthUnit: displayUnit('sinkage', units),
    }),
    format,
    units,
    locale,
    text: figureText,
  }
}
