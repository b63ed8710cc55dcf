import { displayUnit } from '@swardsink/model'
import type { Frame, SlidingSpec, SlidingWords } from '../../figures/index.ts'
import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import type { HeadlandResult, HeadlandSettings } from './kind.ts'

/** What the figure draws, and what it is drawn into. */
export function specOf({ result, settings }: Shown<HeadlandSettings, HeadlandResult>): SlidingSpec {
  const { roller, sliding, whole, axleSpacing } = result
  return {
    length: roller.length,
    sections: roller.sections ?? 1,
    radius: settings.radius,
    offset: axleSpacing / 2,
    still: sliding.still,
    mean: sliding.mean,
    rootMeanSquare: sliding.rootMeanSquare,
    whole: whole?.still[0] ?? null,
  }
}

export function frameOf(reader: Reader, width: number): Frame<SlidingWords> {
  const { words, format, units, locale, figureText } = reader
  const said = words.figures.headland({
    unit: displayUnit('sliding', units),
    placeUnit: displayUnit('place', units),
  })
  return { width, words: said, format, units, locale, text: figureText }
}
