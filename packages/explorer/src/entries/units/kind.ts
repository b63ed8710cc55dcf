import {
  type Caution,
  type Condition,
  matchUnits,
  type SettledUnit,
  type Turf,
  type Unit,
  type UnitMatch,
  unitsOf,
} from '@swardsink/model'
import { type Failure, type Kind, presentTurf } from '../../book/index.ts'
import { answer, failureOf, settleOnce } from '../settled.ts'

export type UnitsSettings = {
  /** Units that differ by no more than this cut alike. */
  readonly tolerance: number
}

type NamedUnit = { readonly name: string; readonly unit: Unit }
export type UnitsInput = {
  /** One without a name where the scenario has a single unit. */
  readonly units: readonly NamedUnit[]
  readonly inHand: string
  readonly turf: Turf
  readonly condition: Condition
  readonly tolerance: number
}

export type UnitRow = NamedUnit & {
  readonly inHand: boolean
  readonly settled: SettledUnit | null
  readonly why: Failure | null
  /** Bench height at which it cuts as high as the one in hand does; null where either has no answer. */
  readonly toMatch: number | null
}
export type UnitsResult = {
  readonly rows: readonly UnitRow[]
  /** null where fewer than two of them settle. */
  readonly match: UnitMatch | null
}

/** Two units of one machine are seen to differ at about this. Common practice, no source. */
const SEEN = 0.25e-3

function rowsOf({ units, inHand, turf, condition }: UnitsInput): readonly UnitRow[] {
  const settled = units.map(({ name, unit }) => ({
    name,
    unit,
    found: settleOnce({ unit, turf, condition }),
  }))
  const here = settled.find(({ name }) => name === inHand)?.found
  const wanted = here?.outcome === 'settled' ? here.effectiveHeight.middle : null
  return settled.map(({ name, unit, found }) => {
    if (found.outcome !== 'settled')
      return { name, unit, inHand: name === inHand, settled: null, why: failureOf(found), toMatch: null }
    // the sinkage does not hang on the bench height; the tilt changes an edge's rise by its cosine alone
    const rise = wanted === null ? null : (wanted - found.effectiveHeight.middle) / Math.cos(found.pitch)
    return {
      name,
      unit,
      inHand: name === inHand,
      settled: found,
      why: null,
      toMatch: rise === null ? null : unit.benchHeight + rise,
    }
  })
}

/** One caution of a kind for all the units it is about, with the worst value. */
function cautionsOf(rows: readonly UnitRow[]): readonly Caution[] {
  const found = new Map<Caution['kind'], { readonly worst: Caution; readonly names: Set<string> }>()
  for (const { name, settled } of rows)
    for (const caution of settled?.cautions ?? []) {
      const known = found.get(caution.kind)
      const worse = !known || Math.abs(caution.value ?? 0) > Math.abs(known.worst.value ?? 0)
      const names = known?.names ?? new Set<string>()
      names.add(name)
      found.set(caution.kind, { worst: worse ? caution : known.worst, names })
    }
  return [...found.values()].map(({ worst: { where: _, ...caution }, names }) => {
    const where = [...names].filter(name => name !== '').join(', ')
    return where === '' ? caution : { ...caution, where }
  })
}

/** Units of one machine side by side: whether they cut at one height on this turf, and what to set where not. */
export const units: Kind<'units', UnitsSettings, UnitsInput, UnitsResult> = {
  kind: 'units',
  read: fields => ({ tolerance: fields.number('tolerance', SEEN) }),
  problems: ({ tolerance }) =>
    tolerance >= 0 ? [] : [{ path: 'tolerance', expected: 'at least 0 m', received: String(tolerance) }],
  needs: () => [],
  sets: () => ['unit', 'unit.benchHeight'],
  input({ settings, scenario }) {
    const several = Object.entries(unitsOf(scenario)).map(([name, unit]) => ({ name, unit }))
    return {
      units: several.length > 0 ? several : [{ name: '', unit: scenario.unit }],
      inHand: scenario.unitName ?? '',
      turf: presentTurf(scenario),
      condition: scenario.condition,
      tolerance: Math.max(0, settings.tolerance),
    }
  },
  compute: input =>
    answer(() => {
      const rows = rowsOf(input)
      const heights = Object.fromEntries(
        rows.flatMap(({ name, settled }) => (settled ? [[name, settled.effectiveHeight.middle]] : [])),
      )
      const several = Object.keys(heights).length >= 2
      const match = several ? matchUnits({ heights, tolerance: input.tolerance }) : null
      return { result: { rows, match }, cautions: cautionsOf(rows) }
    }),
  offers: ({ match, rows }) => ({
    spread: { quantity: 'height', value: match?.spread ?? null },
    highest: { quantity: 'height', value: extreme(rows, Math.max) },
    lowest: { quantity: 'height', value: extreme(rows, Math.min) },
  }),
  workedOut({ result, format }) {
    const worst = result.match?.pairs.toSorted((a, b) => Math.abs(b.difference) - Math.abs(a.difference))[0]
    if (!worst) return []
    const height = (name: string) => {
      const row = result.rows.find(one => one.name === name)
      return row?.settled ? format(row.settled.effectiveHeight.middle, 'height', { unit: false }) : ''
    }
    const [first, second] = worst.units
    const pair = {
      what: 'unitPair',
      equation: 'h_e,2 − h_e,1',
      filled: `${second} − ${first}: ${height(second)} − ${height(first)} = ${format(worst.difference, 'height', { signed: true })}`,
    }
    const other = result.rows.find(({ inHand, toMatch }) => !inHand && toMatch !== null)
    const here = result.rows.find(({ inHand }) => inHand)
    if (!other?.settled || other.toMatch === null || !here?.settled) return [pair]
    const mm = (value: number) => format(value, 'height', { unit: false })
    return [
      pair,
      {
        what: 'unitToMatch',
        equation: 'h_b + (h_e,in hand − h_e)/cos θ',
        filled: `${other.name}: ${mm(other.unit.benchHeight)} + (${mm(here.settled.effectiveHeight.middle)} − ${mm(other.settled.effectiveHeight.middle)}) = ${format(other.toMatch, 'height')}`,
      },
    ]
  },
  section: '§4',
  check: 'test/model/unit/matchUnits.test.ts',
}

function extreme(rows: readonly UnitRow[], of: (...heights: number[]) => number): number | null {
  const heights = rows.flatMap(({ settled }) => (settled ? [settled.effectiveHeight.middle] : []))
  return heights.length > 0 ? of(...heights) : null
}
