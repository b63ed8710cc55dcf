import { displayUnit } from '@swardsink/model'
import type { CurvesSpec, CurvesWords, Frame } from '../../figures/index.ts'
import type { Reader, Words } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import type { CurvesResult, CurvesSettings, Show } from './kind.ts'
import type { CurveName } from './questions.ts'

/** What a curve is called on screen. */
export function nameOf(name: CurveName, { curves, options }: Words): string {
  switch (name.of) {
    case 'reader':
      return name.name
    case 'law':
      return curves.laws[name.law] ?? name.law
    case 'condition':
      return options[name.condition] ?? name.condition
    case 'fitted':
      return curves.fitted
  }
}

/** What the figure draws, and what it is drawn into. */
export function specOf({ result, reader }: Shown<CurvesSettings, CurvesResult>): CurvesSpec {
  const { show, curves, present, softness, readings, most } = result
  return {
    quantity: show,
    curves: curves.map(curve => ({ ...curve, label: nameOf(curve.name, reader.words) })),
    present,
    softness,
    readings,
    most,
  }
}

export function frameOf(
  reader: Reader,
  q: { readonly show: Show; readonly width: number },
): Frame<CurvesWords> {
  const { words, format, units, locale, figureText } = reader
  const said = words.figures.curves({
    show: q.show,
    unit: displayUnit(q.show, units),
    sinkageUnit: displayUnit('sinkage', units),
  })
  return { width: q.width, words: said, format, units, locale, text: figureText }
}
