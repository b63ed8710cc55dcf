import { readTable, type Scenario, type UnitSystem } from '@swardsink/model'
import { html, type TemplateResult } from 'lit'
import { fieldsOf } from '../../../../packages/explorer/src/book/index.ts'
import { fitSpec, setsSpec } from '../../../../packages/explorer/src/entries/fit/drawing.ts'
import { type Fitted, fit } from '../../../../packages/explorer/src/entries/fit/kind.ts'
import { type FitSettings, readSettings } from '../../../../packages/explorer/src/entries/fit/settings.ts'
import {
  type CheckedRow,
  checkAxis,
  checkRow,
  checkScale,
} from '../../../../packages/explorer/src/figures/checkRow.ts'
import { fitCurve } from '../../../../packages/explorer/src/figures/fitCurve.ts'
import type { FitSpec } from '../../../../packages/explorer/src/figures/fitLayout.ts'
import { type SetsSpec, setsFigure } from '../../../../packages/explorer/src/figures/setsFigure.ts'
import * as words from '../../../../packages/explorer/src/words/english/fit.ts'
import { readerFor } from '../../../../packages/explorer/src/words/index.ts'
import type { Framing } from './gallery.ts'
import { smooth, turf, unit } from './units.ts'

// All readings in here are made up by a few lines: those of no gauge and no green.

type Case = { readonly table: string; readonly settings?: Partial<FitSettings> }

const HEAD = 'set,plate_diameter_mm,load_N,sinkage_mm'
const table = (rows: readonly string[], head = HEAD): string => [head, ...rows].join('\n')

/** Sinkages near a curve, with a wobble that repeats: enough to look like a gauge. */
function plates(q: {
  set: string
  softness: number
  loads: readonly number[]
  each: number
  wobble: number
}): string[] {
  return q.loads.flatMap((load, at) =>
    Array.from({ length: q.each }, (_, i) => {
      const sinkage = q.softness * (load / 20) ** 0.8 + q.wobble * (((at * 7 + i * 3) % 5) - 2)
      return `${q.set},50,${load},${sinkage.toFixed(3)}`
    }),
  )
}

const ladder = [6, 12, 24, 48, 72]
const usual = { set: 'orchard', softness: 0.6, loads: ladder, each: 3, wobble: 0.03 }
const ONE_NUMBER: Partial<FitSettings> = {
  roles: { exponent: 'held' },
  noise: 'known',
}

const cases: Record<string, Case> = {
  plates: { table: table(plates(usual)) },
  'three sets': {
    table: table([
      ...plates(usual),
      ...plates({ ...usual, set: 'nursery', softness: 0.9 }),
      ...plates({ ...usual, set: 'a long name for a green', softness: 0.7 }),
    ]),
  },
  rollers: {
    table: table(
      [80, 110, 150, 190].flatMap(load =>
        [0, 1].map(i => `A,smooth,${load},${(0.9 + load / 140 + 0.04 * ((load + i) % 3)).toFixed(3)}`),
      ),
      'set,roller,load_N,sinkage_mm',
    ),
  },
  drops: {
    table: table(
      ['smooth', 'heavy'].flatMap(roller =>
        [0, 1].flatMap(point =>
          [0, 1].map(
            i =>
              `A,${roller},${point},${(3 + 0.2 * point + 0.3 * i * 0.1 + (roller === 'heavy' ? 0.25 : 0)).toFixed(2)}`,
          ),
        ),
      ),
      'set,roller,point,drop_mm',
    ),
    settings: { roles: { exponent: 'held' } },
  },
  'one reading': { table: table(['A,50,20,0.6']), settings: ONE_NUMBER },
  'two loads alike': { table: table(['A,50,20,0.6', 'A,50,21,0.62', 'A,50,22,0.66']) },
  'pressures of a plate': {
    table: table(
      [5, 10, 20, 30].map((p, i) => `A,60,${p},${(0.05 * p + 0.01 * i).toFixed(2)}`),
      'set,plate_diameter_mm,pressure_kPa,sinkage_mm',
    ),
  },
  'firm as a road': { table: table(plates({ ...usual, softness: 0.05, wobble: 0.002 })) },
  'soft as a bog': { table: table(plates({ ...usual, softness: 5, wobble: 0.1 })) },
  'a roller of 0.5 kg and one of 60': {
    table: table(
      ['A,smooth,5,0.1', 'A,smooth,5,0.12', 'A,smooth,590,2.2', 'A,smooth,590,2.4'],
      'set,roller,load_N,sinkage_mm',
    ),
  },
  'many readings': { table: table(plates({ ...usual, each: 80 })) },
  'near locking': {
    table: table(
      [6, 12, 24, 48, 72].map(
        (load, i) => `A,50,${load},${(3 * (1 - Math.exp(-load / 20)) + 0.02 * (i % 2)).toFixed(2)}`,
      ),
    ),
    settings: { law: 'stiffening' },
  },
}

const scenario: Scenario = {
  unit: { ...unit({ B: 190, c: 105, Df: 57, Dr: 51, bench: 3.4 }), fitted: { front: 'smooth' } },
  rollers: { smooth: smooth(57, 6.2), heavy: smooth(57, 9.4) },
  turfs: { usual: turf(0.3) },
  turf: 'usual',
  condition: { kind: 'standing' },
}

function fittedOf({ table: text, settings = {} }: Case): { fitted: Fitted; settings: FitSettings } {
  const complete = { ...readSettings(fieldsOf({}, 'entry', [])), readings: 'ours', ...settings }
  const { readings } = readTable(text)
  const input = fit.input({
    settings: complete,
    scenario,
    answers: { ours: { readings } },
    entries: [],
    offered: {},
  })
  const found = fit.refine?.(input, () => {})
  if (found?.outcome !== 'answered' || found.result.outcome !== 'fitted')
    throw new Error(JSON.stringify(found))
  return { fitted: found.result, settings: complete }
}

function shownFor(name: string) {
  const one = cases[name]
  if (!one) throw new Error(`no case ${name}`)
  const { fitted, settings } = fittedOf(one)
  const reader = readerFor({ units: 'metric', figureText: 13 })
  const result = { outcome: 'fitted' as const, ...fitted }
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
  return { shown, fitted }
}

/** A fit as the entry would draw it. */
export function fitCase(name: string): FitSpec {
  const { shown, fitted } = shownFor(name)
  return fitSpec(shown, fitted)
}

const emptySpec: FitSpec = {
  quantity: 'load',
  most: 0,
  points: [],
  readings: [],
  others: [],
  scatter: null,
  present: null,
}
const bandless: FitSpec = {
  ...emptySpec,
  most: 100,
  points: [20, 50, 100].map(x => ({ x, sinkage: x * 1e-5, curve: null, reading: null, beyond: false })),
  readings: [{ x: 50, sinkage: 6e-4, residual: 1e-4 }],
}
const endless: FitSpec = {
  ...bandless,
  points: [20, 50, 100].map(x => ({
    x,
    sinkage: x * 1e-5,
    curve: [-3, 4],
    reading: [-30, 40],
    beyond: x > 50,
  })),
  scatter: 1e-4,
}

export const fitSpecs: Record<string, FitSpec> = {
  ...Object.fromEntries(Object.keys(cases).map(name => [name, fitCase(name)])),
  'no data': emptySpec,
  'no bands': bandless,
  'bands without end': endless,
}

const noSets: SetsSpec = { along: 'set', sets: [], median: null, interval: null, newSet: null }
const day = 20_000
const sets = [0.6, 0.9, 0.72, 0.74].map((softness, i) => ({
  name: ['orchard', 'nursery', 'chapel', 'a long name for a green'][i] ?? '',
  at: i,
  softness: softness * 1e-3,
  interval: [softness * 0.9e-3, softness * 1.1e-3] as const,
}))

export const setsSpecs: Record<string, SetsSpec> = {
  'three sets': (() => {
    const { shown, fitted } = shownFor('three sets')
    return setsSpec(shown, fitted)
  })(),
  'by date': {
    along: 'date',
    sets: sets.map(set => ({ ...set, at: day + 9 * set.at })),
    median: 0.73e-3,
    interval: [0.6e-3, 0.9e-3],
    newSet: [0.45e-3, 1.1e-3],
  },
  'by moisture, two alike': {
    along: 'moisture',
    sets: sets.map(set => ({ ...set, at: 0.18 + 0.04 * Math.floor(set.at / 2) })),
    median: 0.73e-3,
    interval: [0.6e-3, 0.9e-3],
    newSet: null,
  },
  'no sets': noSets,
  'one set': { ...noSets, along: 'date', sets: sets.slice(0, 1) },
  'many sets': {
    ...noSets,
    sets: Array.from({ length: 40 }, (_, i) => ({
      name: `green ${i}`,
      at: i,
      softness: (0.05 + 0.12 * i) * 1e-3,
      interval: null,
    })),
    median: 2e-3,
  },
  'intervals without end': {
    ...noSets,
    sets: sets.map(set => ({ ...set, interval: [0, 1] as const })),
    median: 0.7e-3,
    interval: [1e-9, 3],
    newSet: [1e-12, 9],
  },
}

const rowsOfHeights: Record<string, readonly Omit<CheckedRow, 'mean'>[]> = {
  'agrees and does not': [
    { name: 'orchard', measured: [3.02e-3, 3.05e-3, 3.04e-3], expected: 3.01e-3, between: [2.9e-3, 3.12e-3] },
    { name: 'nursery', measured: [2.4e-3], expected: 2.8e-3, between: [2.7e-3, 2.9e-3] },
    { name: 'meadow', measured: [2.6e-3], expected: null, between: null },
  ],
  'not yet': [{ name: 'orchard', measured: [3.02e-3], expected: 3.01e-3, between: null }],
  'one height': [{ name: 'orchard', measured: [3e-3], expected: null, between: null }],
  'no height': [{ name: 'orchard', measured: [], expected: null, between: null }],
  'far apart': [{ name: 'orchard', measured: [1e-3, 50e-3], expected: 3e-3, between: [2.99e-3, 3.01e-3] }],
}

export const checkedRows: Record<string, readonly CheckedRow[]> = Object.fromEntries(
  Object.entries(rowsOfHeights).map(([name, rows]) => [
    name,
    rows.map(row => ({
      ...row,
      mean: row.measured.length === 0 ? null : row.measured.reduce((a, b) => a + b, 0) / row.measured.length,
    })),
  ]),
)

const lengths = (units: UnitSystem) => (units === 'US' ? 'in' : 'mm')
const loads = { metric: { load: 'N', pressure: 'kPa' }, US: { load: 'lbf', pressure: 'psi' } }

export const fitFigures = (framing: Framing): Record<string, TemplateResult> => {
  const { units, width } = framing(null)
  const sinkageUnit = lengths(units)
  const drawn = Object.entries(fitSpecs).map(([name, spec]): [string, TemplateResult] => [
    name,
    fitCurve(
      spec,
      framing(words.fitFigure({ along: spec.quantity, unit: loads[units][spec.quantity], sinkageUnit })),
    ),
  ])
  const bySet = Object.entries(setsSpecs).map(([name, spec]): [string, TemplateResult] => [
    `sets: ${name}`,
    setsFigure(
      spec,
      framing(words.setsFigure({ along: spec.along, unit: sinkageUnit, day: at => `day ${at}` })),
    ),
  ])
  const checks = Object.entries(checkedRows).map(([name, rows]): [string, TemplateResult] => {
    const scale = checkScale(rows, { width: Math.min(320, width) })
    return [
      `check: ${name}`,
      html`<table>${rows.map(row => html`<tr><td style="position:relative;height:40px;width:${scale.width}px;padding:0">${checkRow(row, scale)}</td></tr>`)}<tr><td style="padding:0">${checkAxis(scale, { ...framing({ axis: `height, ${sinkageUnit}` }), width: scale.width })}</td></tr></table>`,
    ]
  })
  return Object.fromEntries([...drawn, ...bySet, ...checks])
}
