import { type Caution, type ComparedRoller, compareRollers, type Roller } from '@swardsink/model'
import type { Kind } from '../../book/index.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'

export const RACK_COLUMNS = [
  'mass',
  'load',
  'sinkage',
  'pressure',
  'relief',
  'benchHeight',
  'change',
  'effectiveHeight',
] as const
export type RackColumn = (typeof RACK_COLUMNS)[number]

export type RackSettings = { readonly sort: RackColumn; readonly order: 'up' | 'down' }
export type RackInput = SettledInput & {
  readonly rollers: Readonly<Record<string, Roller>>
  readonly effectiveHeight: number | null
}
export type RackResult = readonly ComparedRoller[]

export type ComparedSettled = Extract<ComparedRoller, { outcome: 'settled' }>

export const isSettled = (row: ComparedRoller): row is ComparedSettled => row.outcome === 'settled'

/** What settle calls the roller that is compared. */
const COMPARED = 'front roller'

/** One caution of a kind for all the rollers it is about, with the worst value, and what hangs on the unit itself. */
function rackCautions(rows: RackResult, ofFitted: readonly Caution[]): readonly Caution[] {
  const found = new Map<Caution['kind'], { readonly worst: Caution; readonly names: readonly string[] }>()
  for (const row of rows) {
    for (const caution of row.cautions.filter(({ where }) => where === COMPARED)) {
      const { worst, names } = found.get(caution.kind) ?? { worst: caution, names: [] }
      const worse = (caution.value ?? 0) > (worst.value ?? 0) ? caution : worst
      found.set(caution.kind, { worst: worse, names: [...names, row.name] })
    }
  }
  return [
    ...[...found.values()].map(({ worst, names }) => ({ ...worst, where: names.join(', ') })),
    ...ofFitted.filter(({ where }) => where !== COMPARED),
  ]
}

/** Every roller of the rack on this unit, one after the other, and the bench height that makes up for it. */
export const rack: Kind<'rack', RackSettings, RackInput, RackResult> = {
  kind: 'rack',
  read: fields => ({
    sort: fields.oneOf('sort', RACK_COLUMNS, 'effectiveHeight'),
    order: fields.oneOf('order', ['up', 'down'], 'down'),
  }),
  problems: () => [],
  needs: () => [],
  input: ({ scenario }) => ({
    ...settledInput(scenario),
    rollers: scenario.rollers,
    effectiveHeight: scenario.effectiveHeight ?? null,
  }),
  compute: ({ unit, turf, condition, rollers, effectiveHeight }) =>
    answer(() => {
      const fitted = settleOnce({ unit, turf, condition })
      if (fitted.outcome !== 'settled') return fitted
      const result = compareRollers({
        unit,
        rollers,
        turf,
        condition,
        ...(effectiveHeight === null ? {} : { effectiveHeight }),
      })
      return { result, cautions: rackCautions(result, fitted.cautions) }
    }),
  workedOut({ input, result, format }) {
    const other = result.filter(isSettled).find(row => !row.fitted && row.benchHeight !== null)
    if (!other || other.benchHeight === null || other.benchChange === null || other.change === null) return []
    const mm = (height: number) => format(height, 'height', { unit: false })
    const wanted = input.effectiveHeight ?? other.effectiveHeight - other.change
    const unrecovered = wanted + other.drop - other.benchHeight
    return [
      {
        what: 'hold',
        equation: 'h_b = wanted + drop − not yet recovered',
        filled: `${other.name}: ${mm(wanted)} + ${mm(other.drop)} − ${mm(Math.max(0, unrecovered))} = ${format(other.benchHeight, 'height')}`,
      },
      {
        what: 'adjust',
        equation: 'change = h_b − h_b,old − ½ ΔD (1 − c/B)',
        filled: `${mm(other.benchHeight)} − ${mm(input.unit.benchHeight)} − ½ (${mm(other.roller.diameter)} − ${mm(input.unit.frontRoller.diameter)}) × ${(1 - input.unit.edge / input.unit.wheelbase).toFixed(3)} = ${format(other.benchChange, 'height', { signed: true })}`,
      },
    ]
  },
  section: '§4',
  check: 'test/model/reference/twoRollers.test.ts',
}
