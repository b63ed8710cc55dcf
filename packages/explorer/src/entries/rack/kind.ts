import { type ComparedRoller, compareRollers, type Roller, settle } from '@swardsink/model'
import type { Kind } from '../../book/index.ts'
import { answer, type SettledInput, settledInput } from '../settled.ts'

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
      const fitted = settle({ unit, turf, condition })
      if (fitted.outcome !== 'settled') return fitted
      const result = compareRollers({
        unit,
        rollers,
        turf,
        condition,
        ...(effectiveHeight === null ? {} : { effectiveHeight }),
      })
      return { result, cautions: fitted.cautions }
    }),
  workedOut({ input, result, format }) {
    const other = result.filter(isSettled).find(row => !row.fitted && row.benchHeight !== null)
    if (!other || other.benchHeight === null || other.benchChange === null) return []
    const mm = (height: number) => format(height, 'height', { unit: false })
    const wanted = input.effectiveHeight ?? other.benchHeight - other.drop
    return [
      {
        what: 'hold',
        equation: 'h_b = wanted + drop − not yet recovered',
        filled: `${other.name}: ${mm(other.benchHeight)} for a wanted ${mm(wanted)}, drop ${mm(other.drop)}`,
      },
      {
        what: 'adjust',
        equation: 'change = h_b − h_b,old − ½ ΔD (1 − c/B)',
        filled: `${mm(other.benchHeight)} − ${mm(input.unit.benchHeight)} − ½ (${mm(other.roller.diameter)} − ${mm(input.unit.frontRoller.diameter)}) × ${(1 - input.unit.edge / input.unit.wheelbase).toFixed(3)} = ${format(other.benchChange, 'height', { signed: true })}`,
      },
    ]
  },
  section: '§4',
  check: 'test/model/study/compareRollers.test.ts',
}
