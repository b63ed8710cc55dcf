import type { SettledUnit } from '@swardsink/model'
import { presentTurf } from '../../book/index.ts'
import type { Frame, SideViewSpec, SideViewWords } from '../../figures/index.ts'
import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import type { SideViewSettings } from './kind.ts'

/** What the figure draws, and what it is drawn into. */
export function specOf({ scenario, result, settings }: Shown<SideViewSettings, SettledUnit>): SideViewSpec {
  return {
    unit: scenario.unit,
    settled: result,
    turf: presentTurf(scenario),
    exaggeration: settings.exaggeration,
  }
}

export function frameOf(reader: Reader, width: number): Frame<SideViewWords> {
  const { words, format, units, locale, figureText, tallest } = reader
  const limit = tallest === undefined ? {} : { tallest }
  return { width, words: words.figures.sideView, format, units, locale, text: figureText, ...limit }
}
