import { type HeightQuestion, uncertainHeight } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import { heightSpread } from '../../../../packages/explorer/src/figures/heightSpread.ts'
import { type SharesSpec, shareBars } from '../../../../packages/explorer/src/figures/shareBars.ts'
import type { SpreadSpec } from '../../../../packages/explorer/src/figures/spreadLayout.ts'
import { uncertaintyFigure } from '../../../../packages/explorer/src/words/english/uncertainty.ts'
import type { Framing } from './gallery.ts'
import { units } from './units.ts'

const mm = 1e-3
type Case = Pick<HeightQuestion, 'scatter'> & { readonly unit?: string; readonly wanted?: number }

const scatter: HeightQuestion['scatter'] = {
  softness: { kind: 'log-normal', relative: 0.2 },
  benchHeight: { kind: 'normal', standardDeviation: 0.05 * mm },
  'scales.front': { kind: 'uniform', halfWidth: 0.1 },
}
const cases: Record<string, Case> = {
  usual: { scatter, wanted: 3 * mm },
  'without a wanted height': { scatter },
  'wanted far off': { scatter, wanted: 6 * mm },
  'very sure': { scatter: { benchHeight: { kind: 'normal', standardDeviation: 1e-6 } }, wanted: 3 * mm },
  'very unsure': { scatter: { softness: { kind: 'log-normal', relative: 0.8 } }, wanted: 3 * mm },
  soft: { scatter, unit: 'soft', wanted: 5 * mm },
}

export function spreadSpec({ scatter: scattered, unit = 'usual', wanted }: Case): SpreadSpec {
  const { unit: one, turf } = units[unit] as (typeof units)[string]
  const found = uncertainHeight({
    unit: one,
    turf,
    condition: { kind: 'standing' },
    scatter: scattered,
    draws: 2000,
    seed: 3,
  })
  if (found.outcome !== 'answered') throw new Error(found.outcome)
  const [low = 0, , middle = 0, , high = 0] = found.quantiles.map(({ value }) => value)
  return {
    nominal: found.nominal,
    quantiles: [low, middle, high],
    histogram: found.histogram,
    deviation: found.standardDeviation?.value ?? 0,
    wanted: wanted === undefined ? null : { height: wanted, tolerance: 0.2 * mm },
  }
}

const drawn = Object.fromEntries(Object.entries(cases).map(([name, one]) => [name, spreadSpec(one)]))
const usual = drawn.usual as SpreadSpec

export const spreadSpecs: Record<string, SpreadSpec> = {
  ...drawn,
  'by straight lines': { ...usual, histogram: null },
  'nothing scatters': {
    ...usual,
    quantiles: [3 * mm, 3 * mm, 3 * mm],
    histogram: { from: 3 * mm, width: 0, counts: [2000] },
    deviation: 0,
  },
  'no case in hand': { ...usual, nominal: null },
}

export const shareSpecs: Record<string, SharesSpec> = {
  shares: {
    shares: [
      { name: 'softness of the turf', share: 0.71 },
      { name: 'setting on the bench', share: 0.27 },
      { name: 'scales, in front', share: 0.001 },
    ],
    together: 0.02,
  },
  'one share': { shares: [{ name: 'the turf, as fitted', share: 1 }], together: 0 },
  'no shares': { shares: [], together: null },
}

export const spreadFigures = (framing: Framing): Record<string, TemplateResult> => {
  const words = uncertaintyFigure({ unit: framing(null).units === 'US' ? 'in' : 'mm' })
  const frame = framing(words)
  return {
    ...Object.fromEntries(
      Object.entries(spreadSpecs).map(([name, spec]) => [name, heightSpread(spec, frame)]),
    ),
    ...Object.fromEntries(Object.entries(shareSpecs).map(([name, spec]) => [name, shareBars(spec, frame)])),
  }
}
