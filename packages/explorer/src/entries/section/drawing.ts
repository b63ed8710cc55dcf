import type { Frame, SectionSpec, SectionWords } from '../../figures/index.ts'
import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import { groovesOf, type SectionResult, type SectionSettings } from './kind.ts'

/** What the figure draws, and what it is drawn into. */
export function specOf({ result, settings }: Shown<SectionSettings, SectionResult>): SectionSpec {
  const { roller, sinkage, pressure, grooves, track } = result
  const surface = groovesOf(roller)
  return {
    grooves:
      surface && grooves
        ? {
            pitch: surface.pitch,
            land: surface.land,
            depth: surface.depth,
            mat: grooves.across,
            relief: grooves.relief,
            touching: grooves.floor === 'touching',
            edgeForce: grooves.edgeForce,
            bearingFraction: grooves.bearingFraction,
          }
        : null,
    sinkage,
    pressure,
    track,
    pitches: settings.pitches,
  }
}

export function frameOf(reader: Reader, width: number): Frame<SectionWords> {
  const { words, format, units, locale, figureText } = reader
  return { width, words: words.figures.section, format, units, locale, text: figureText }
}
