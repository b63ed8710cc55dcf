import type { Scenario, Turf } from '@swardsink/model'
import type { TemplateResult } from 'lit'
import { specOf } from '../../../../packages/explorer/src/entries/curves/drawing.ts'
import {
  type CurvesResult,
  type CurvesSettings,
  curves,
} from '../../../../packages/explorer/src/entries/curves/kind.ts'
import type { CurvesSpec } from '../../../../packages/explorer/src/figures/curvesLayout.ts'
import { sinkageCurves } from '../../../../packages/explorer/src/figures/sinkageCurves.ts'
import { readerFor } from '../../../../packages/explorer/src/words/index.ts'
import type { Framing } from './gallery.ts'
import { grooved, smooth, turf, unit } from './units.ts'

const mm = 1e-3
const turfs: Record<string, Turf> = {
  usual: turf(0.3),
  firm: turf(0.05),
  'a long name for a green': turf(1.6),
  read: {
    law: {
      kind: 'measured',
      points: [
        { sinkage: 0.2 * mm, pressure: 6e3 },
        { sinkage: 0.4 * mm, pressure: 14e3 },
      ],
    },
    spread: 1 * mm,
  },
  locking: { law: { kind: 'logarithmic', softness: 0.2 * mm, lockingDepth: 0.6 * mm } },
}
const rollers = {
  'smooth, fitted': smooth(57, 6.2),
  heavy: smooth(57, 9.4),
  grooved: grooved(57),
  'fine grooves': {
    ...grooved(57),
    surface: { kind: 'grooved', pitch: 8 * mm, land: 5 * mm, depth: 4 * mm },
  },
} as const
const scenario: Scenario = {
  unit: unit({ B: 190, c: 105, Df: 57, Dr: 51, bench: 3.4 }),
  rollers,
  turfs,
  turf: 'usual',
  condition: { kind: 'standing' },
}

const cases: Record<string, { settings: Partial<CurvesSettings>; scenario?: Scenario; rows?: object[] }> = {
  rollers: { settings: {} },
  turfs: { settings: { over: 'turfs' } },
  laws: { settings: { over: 'laws' } },
  conditions: {
    settings: { over: 'conditions' },
    scenario: { ...scenario, turfs: { usual: { ...turf(0.3), rebound: 0.5 } } },
  },
  'pressure, rollers': { settings: { show: 'pressure' } },
  'pressure, turfs': { settings: { show: 'pressure', over: 'turfs' } },
  'pressure, laws': { settings: { show: 'pressure', over: 'laws' } },
  'known so far': { settings: { over: 'turfs' }, scenario: { ...scenario, turf: 'read' } },
  'pressure known so far': {
    settings: { show: 'pressure', over: 'rollers' },
    scenario: { ...scenario, turf: 'read' },
  },
  readings: {
    settings: { readings: 'ours' },
    rows: [80, 120, 120, 160, 200].map((load, i) => ({
      load,
      sinkage: (0.33 + 0.002 * load + (i % 2) * 0.04) * mm,
      set: 'A',
    })),
  },
  alone: { settings: {}, scenario: { ...scenario, rollers: { only: scenario.unit.frontRoller } } },
}

/** Curves as the entry would ask for them. */
export function curvesSpec(name: string): CurvesSpec {
  const one = cases[name]
  if (!one) throw new Error(`no case ${name}`)
  const settings: CurvesSettings = { show: 'load', over: 'rollers', readings: '', ...one.settings }
  const input = curves.input({
    settings,
    scenario: one.scenario ?? scenario,
    answers: { ours: { rows: one.rows ?? [] } },
    entries: [],
    offered: {},
  })
  const found = curves.refine?.(input, () => {})
  if (found?.outcome !== 'answered') throw new Error(`${name}: no answer`)
  const result: CurvesResult = found.result
  const reader = readerFor({ units: 'metric', figureText: 13 })
  const shown = {
    id: 'it',
    settings,
    result,
    scenario,
    now: scenario,
    held: {},
    stale: false,
    edition: 1,
    reader,
  }
  return specOf(shown)
}

export const curveCases = Object.keys(cases)

export const curveFigures = (framing: Framing): Record<string, TemplateResult> =>
  Object.fromEntries(
    curveCases.map(name => {
      const spec = curvesSpec(name)
      const { units } = framing(null)
      const { words } = readerFor({ units, figureText: 13 })
      const said = words.figures.curves({
        show: spec.quantity,
        unit: { metric: { load: 'N', pressure: 'kPa' }, US: { load: 'lbf', pressure: 'psi' } }[units][
          spec.quantity
        ],
        sinkageUnit: units === 'US' ? 'in' : 'mm',
      })
      return [name, sinkageCurves(spec, framing(said))]
    }),
  )
