import { patch, press, type Roller, type Turf } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import { quickQuarter } from '../../../../packages/explorer/src/entries/patch/quickQuarter.ts'
import { contactPatch } from '../../../../packages/explorer/src/figures/contactPatch.ts'
import type { PatchSpec } from '../../../../packages/explorer/src/figures/patchLayout.ts'
import { patchFigure } from '../../../../packages/explorer/src/words/english/patch.ts'
import type { Framing } from './gallery.ts'

const mm = 1e-3
const base = { mass: 6.2, diameter: 57 * mm, length: 0.56 }
const smooth: Roller = { ...base, surface: { kind: 'smooth' } }
const grooved = (pitch: number, land: number, depth: number): Roller => ({
  ...base,
  surface: { kind: 'grooved', pitch: pitch * mm, land: land * mm, depth: depth * mm },
})
const green: Turf = {
  law: { kind: 'stiffening', softness: 0.3 * mm, lockingDepth: 4 * mm },
  spread: 1.6 * mm,
}
const linear = (softness: number, spread: number): Turf => ({
  law: { kind: 'linear', softness: softness * mm },
  spread: spread * mm,
})

type Case = { readonly roller: Roller; readonly turf: Turf; readonly load: number; readonly quick?: boolean }

/** Invented rollers, from the usual one to the ends of what may be typed. */
const cases: Record<string, Case> = {
  smooth: { roller: smooth, turf: green, load: 148 },
  grooved: { roller: grooved(12, 5, 6), turf: green, load: 148 },
  discs: { roller: grooved(30, 4, 12), turf: green, load: 148 },
  'floor touched': { roller: grooved(12, 5, 0.4), turf: green, load: 300 },
  'no spread': { roller: grooved(12, 5, 6), turf: linear(0.3, 0), load: 148 },
  'firmest and lightest': { roller: { ...smooth, mass: 0.5 }, turf: linear(0.05, 0.3), load: 5 },
  'softest and heaviest': { roller: { ...grooved(12, 5, 6), mass: 60 }, turf: linear(5, 3), load: 600 },
  'wide pitch': { roller: grooved(60, 6, 9), turf: green, load: 90 },
  'quick, smooth': { roller: smooth, turf: green, load: 148, quick: true },
  'quick, grooved': { roller: grooved(12, 5, 6), turf: green, load: 148, quick: true },
}

/** A contact as the entry would draw it. */
export function patchSpec({ roller, turf, load, quick = false }: Case): PatchSpec {
  const { surface, diameter } = roller
  const grooves = surface.kind === 'grooved' ? { pitch: surface.pitch, land: surface.land } : null
  const pressed = press({ roller, turf, load, condition: { kind: 'standing' } })
  if (pressed.outcome !== 'settled') throw new Error(pressed.outcome)
  if (quick) {
    const quarter = quickQuarter({ roller, turf, load, quick: pressed, full: null })
    return { quarter, sinkage: pressed.sinkage, diameter, grooves }
  }
  const full = patch({ roller, turf, load, cells: 48 })
  if (full.outcome !== 'settled') throw new Error(full.outcome)
  const { along, across, values, depths } = full.pressure
  const { outline, edges } = full
  const quarter = { along, across, pressures: values, depths, outline, edges }
  return { quarter, sinkage: full.sinkage, diameter, grooves }
}

export const patchSpecs: Record<string, PatchSpec> = Object.fromEntries(
  Object.entries(cases).map(([name, one]) => [name, patchSpec(one)]),
)

export const patchFigures = (framing: Framing): Record<string, TemplateResult> => {
  const isUS = framing(null).units === 'US'
  const length = isUS ? 'in' : 'mm'
  const words = patchFigure({ unit: isUS ? 'psi' : 'kPa', lengthUnit: length, depthUnit: length })
  return Object.fromEntries(
    Object.entries(patchSpecs).map(([name, spec]) => [name, contactPatch(spec, framing(words))]),
  )
}
