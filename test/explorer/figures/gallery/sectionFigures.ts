import { acrossGrooves, pressureAt, type Turf } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import { grooveSection } from '../../../../packages/explorer/src/figures/grooveSection.ts'
import type { SectionSpec } from '../../../../packages/explorer/src/figures/sectionLayout.ts'
import { sectionFigure } from '../../../../packages/explorer/src/words/english/section.ts'
import type { Framing } from './gallery.ts'

const mm = 1e-3
type Case = {
  turf: Turf
  sinkage: number
  pitch: number
  land: number
  depth: number
  pitches?: number
  track?: number
}

const turf = (softness: number, spread = 1.6): Turf => ({
  law: { kind: 'stiffening', softness: softness * mm, lockingDepth: 24 * mm },
  spread: spread * mm,
})
const cases: Record<string, Case> = {
  usual: { turf: turf(0.3), sinkage: 0.57, pitch: 12, land: 5, depth: 6 },
  'one pitch': { turf: turf(0.3), sinkage: 0.57, pitch: 12, land: 5, depth: 6, pitches: 1 },
  shallow: { turf: turf(2, 3), sinkage: 4, pitch: 16, land: 8, depth: 2.2 },
  'no spread': { turf: turf(0.3, 0), sinkage: 0.6, pitch: 12, land: 5, depth: 6 },
  fine: { turf: turf(0.1), sinkage: 0.2, pitch: 8, land: 6, depth: 4 },
  discs: { turf: turf(1, 2), sinkage: 3, pitch: 45, land: 4, depth: 25 },
  firm: { turf: turf(0.05, 1), sinkage: 0.01, pitch: 12, land: 5, depth: 6 },
  soft: { turf: turf(5, 4), sinkage: 14, pitch: 12, land: 5, depth: 6 },
  'in a track': { turf: turf(0.3), sinkage: 0.57, pitch: 12, land: 5, depth: 6, track: 0.2 },
  power: {
    turf: { law: { kind: 'power', softness: 0.5 * mm, exponent: 0.6 }, spread: 1 * mm },
    sinkage: 0.4,
    pitch: 20,
    land: 5,
    depth: 8,
  },
}

/** A section as the entry would ask for it. */
export function sectionSpec(q: Case): SectionSpec {
  const { pitch, land, depth } = { pitch: q.pitch * mm, land: q.land * mm, depth: q.depth * mm }
  const sinkage = q.sinkage * mm
  const found = acrossGrooves({ surface: { kind: 'grooved', pitch, land, depth }, turf: q.turf, sinkage })
  return {
    grooves: {
      pitch,
      land,
      depth,
      mat: found.across,
      relief: found.relief,
      touching: found.floor === 'touching',
      edgeForce: found.edgeForce,
      bearingFraction: found.bearingFraction,
    },
    sinkage: sinkage + (q.track ?? 0) * mm,
    pressure: pressureAt(q.turf.law, sinkage),
    track: (q.track ?? 0) * mm,
    pitches: q.pitches ?? 2,
  }
}

export const sectionSpecs: Record<string, SectionSpec> = {
  ...Object.fromEntries(Object.entries(cases).map(([name, one]) => [name, sectionSpec(one)])),
  smooth: { grooves: null, sinkage: 0.39 * mm, pressure: 14e3, track: 0, pitches: 2 },
  'smooth and soft': { grooves: null, sinkage: 15 * mm, pressure: 14e3, track: 0, pitches: 2 },
}

export const sectionFigures = (frame: Framing): Record<string, TemplateResult> =>
  Object.fromEntries(
    Object.entries(sectionSpecs).map(([name, spec]) => [name, grooveSection(spec, frame(sectionFigure))]),
  )
