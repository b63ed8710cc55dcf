import type { QuantityName, Scenario, UnitLoad } from '@swardsink/model'
import { lineOf } from './lineOf.ts'
import { anything, type Line, notNegative, type QuantitySettable, type Refusal } from './settable.ts'

type Field = {
  readonly quantity: QuantityName
  readonly line?: Line
  readonly refuse?: (scenario: Scenario, value: number) => Refusal | null
}

const fields = {
  mass: {
    quantity: 'mass',
    line: { low: 0, high: 20, usual: [0, 10], scale: 'linear' },
    refuse: notNegative,
  },
  down: { quantity: 'load', line: { low: -200, high: 200, usual: [-100, 100], scale: 'linear' } },
  forward: { quantity: 'load', line: { low: -200, high: 200, usual: [-100, 100], scale: 'linear' } },
  at: { quantity: 'place' },
  height: { quantity: 'place', line: { low: 0, high: 0.5, usual: [0.05, 0.3], scale: 'linear' } },
  offset: { quantity: 'place', line: { low: -0.4, high: 0.4, usual: [-0.1, 0.1], scale: 'linear' } },
} as const satisfies Record<string, Field>

export type LoadField = keyof typeof fields
export const LOAD_FIELDS = Object.keys(fields) as readonly LoadField[]

function loadNamed(scenario: Scenario, name: string): UnitLoad | undefined {
  return scenario.unit.loads?.find(load => load.name === name)
}

function numberOf(name: string, field: LoadField): QuantitySettable {
  const change = (scenario: Scenario, to: (load: UnitLoad) => UnitLoad): Scenario => {
    const loads = scenario.unit.loads?.map(load => (load.name === name ? to(load) : load))
    return loads ? { ...scenario, unit: { ...scenario.unit, loads } } : scenario
  }
  const { quantity, line, refuse = anything }: Field = fields[field]
  return {
    kind: 'quantity',
    name: `loads.${name}.${field}`,
    quantity,
    line: line ?? lineOf(quantity),
    ...(quantity === 'load' ? { plausible: [-1000, 1000] as const } : {}),
    refuse,
    value: scenario => loadNamed(scenario, name)?.[field] ?? null,
    set: (scenario, value) => change(scenario, load => ({ ...load, [field]: value })),
    ...(field === 'at'
      ? {}
      : {
          isOpen: (scenario: Scenario) => loadNamed(scenario, name) !== undefined,
          unset: (scenario: Scenario) => change(scenario, ({ [field]: _, ...load }) => load as UnitLoad),
        }),
  }
}

/** What can be set of something the unit carries: the grass box, an accessory, the load of a lift arm. */
export function loadSettable(name: string): QuantitySettable | undefined {
  const dot = name.lastIndexOf('.')
  const field = LOAD_FIELDS.find(one => one === name.slice(dot + 1))
  const start = 'loads.'.length
  return name.startsWith('loads.') && field && dot > start
    ? numberOf(name.slice(start, dot), field)
    : undefined
}

export const loadNames = ({ unit }: Scenario): readonly string[] =>
  (unit.loads ?? []).flatMap(({ name }) => LOAD_FIELDS.map(field => `loads.${name}.${field}`))
