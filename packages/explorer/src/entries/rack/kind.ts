import {
  type Caution,
  type ComparedRoller,
  compareRollers,
  type Position,
  type Roller,
} from '@swardsink/model'
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
  'sliding',
] as const
export type RackColumn = (typeof RACK_COLUMNS)[number]

export const POSITIONS = ['front', 'rear'] as const

export type RackSettings = {
  readonly sort: RackColumn
  readonly order: 'up' | 'down'
  /** Which roller of the unit is changed. */
  readonly position: Position
  /** Of a turn on the headland, m; 0 leaves sliding out. */
  readonly headlandRadius: number
}

/** What the table has room for a reason to show: sliding, once there is a turn to slide on. */
export const columnsOf = ({ headlandRadius }: RackSettings): readonly RackColumn[] =>
  RACK_COLUMNS.filter(column => column !== 'sliding' || headlandRadius > 0)
export type RackInput = SettledInput & {
  readonly rollers: Readonly<Record<string, Roller>>
  readonly effectiveHeight: number | null
  readonly position: Position
  readonly headlandRadius: number
}
export type RackResult = readonly ComparedRoller[]

export type ComparedSettled = Extract<ComparedRoller, { outcome: 'settled' }>

export const isSettled = (row: ComparedRoller): row is ComparedSettled => row.outcome === 'settled'

/** What settle calls the roller that is compared. */
const COMPARED = { front: 'front roller', rear: 'rear roller' } as const
/** Up to so many rollers are told of one by one, each with its own value. */
const ONE_BY_ONE = 3

type Named = { readonly caution: Caution; readonly name: string }

/** Cautions about the rollers compared, each with its name; where they are many, once with the worst value. */
function rackCautions(
  rows: RackResult,
  ofFitted: readonly Caution[],
  position: Position,
): readonly Caution[] {
  const found = new Map<Caution['kind'], readonly Named[]>()
  for (const { name, cautions } of rows) {
    for (const caution of cautions.filter(({ where }) => where === COMPARED[position]))
      found.set(caution.kind, [...(found.get(caution.kind) ?? []), { caution, name }])
  }
  return [
    ...[...found.values()].flatMap(list => (list.length <= ONE_BY_ONE ? list.map(alone) : [worstOf(list)])),
    ...ofFitted.filter(({ where }) => where !== COMPARED[position]),
  ]
}

const alone = ({ caution, name }: Named): Caution => ({ ...caution, where: name })

function worstOf(list: readonly Named[]): Caution {
  const [first, ...others] = list.map(({ caution }) => caution)
  const worst = others.reduce((a, b) => ((b.value ?? 0) > (a?.value ?? 0) ? b : a), first)
  const where = list.map(({ name }) => name).join(', ')
  return { ...(worst as Caution), where }
}

/** Every roller of the rack on this unit, one after the other, and the bench height that makes up for it. */
export const rack: Kind<'rack', RackSettings, RackInput, RackResult> = {
  kind: 'rack',
  read: fields => ({
    sort: fields.oneOf('sort', RACK_COLUMNS, 'effectiveHeight'),
    order: fields.oneOf('order', ['up', 'down'], 'down'),
    position: fields.oneOf('position', POSITIONS, 'front'),
    headlandRadius: fields.number('headlandRadius', 0),
  }),
  problems: ({ headlandRadius }) =>
    headlandRadius >= 0
      ? []
      : [{ path: 'headlandRadius', expected: 'at least 0 m', received: String(headlandRadius) }],
  needs: () => [],
  input: ({ settings, scenario }) => ({
    ...settledInput(scenario),
    rollers: scenario.rollers,
    effectiveHeight: scenario.effectiveHeight ?? null,
    position: settings.position,
    headlandRadius: settings.headlandRadius,
  }),
  compute: ({ unit, turf, condition, rollers, effectiveHeight, position, headlandRadius }) =>
    answer(() => {
      const fitted = settleOnce({ unit, turf, condition })
      if (fitted.outcome !== 'settled') return fitted
      const result = compareRollers({
        unit,
        rollers,
        turf,
        condition,
        position,
        ...(effectiveHeight === null ? {} : { effectiveHeight }),
        ...(headlandRadius > 0 ? { headlandRadius } : {}),
      })
      return { result, cautions: rackCautions(result, fitted.cautions, position) }
    }),
  workedOut({ input, result, format }) {
    const other = result.filter(isSettled).find(row => !row.fitted && (row.benchHeight ?? 0) > 0)
    if (!other || other.benchHeight === null || other.benchChange === null || other.change === null) return []
    const mm = (height: number) => format(height, 'height', { unit: false })
    const wanted = input.effectiveHeight ?? other.effectiveHeight - other.change
    const unrecovered = wanted + other.drop - other.benchHeight
    const { unit, position } = input
    const fitted = position === 'front' ? unit.frontRoller : unit.rearRoller
    const part = unit.edge / unit.wheelbase
    const share = position === 'front' ? 1 - part : part
    return [
      {
        what: 'hold',
        equation: 'h_b = wanted + drop − not yet recovered',
        filled: `${other.name}: ${mm(wanted)} + ${mm(other.drop)} − ${mm(Math.max(0, unrecovered))} = ${format(other.benchHeight, 'height')}`,
      },
      {
        what: 'adjust',
        equation: `change = h_b − h_b,old − ½ ΔD ${position === 'front' ? '(1 − c/B)' : 'c/B'}`,
        filled: `${mm(other.benchHeight)} − ${mm(unit.benchHeight)} − ½ (${mm(other.roller.diameter)} − ${mm(fitted.diameter)}) × ${share.toFixed(3)} = ${format(other.benchChange, 'height', { signed: true })}`,
      },
    ]
  },
  section: '§4',
  check: 'test/model/reference/twoRollers.test.ts',
}
