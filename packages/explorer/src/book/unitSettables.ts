import { type Scenario, type Unit, unitsOf, withUnitInHand } from '@swardsink/model'
import { lineOf } from './lineOf.ts'
import {
  anything,
  type ChoiceSettable,
  moreThanZero,
  notNegative,
  type QuantitySettable,
  type Refusal,
  type Settable,
  whole,
} from './settable.ts'

type Rest = Pick<QuantitySettable, 'quantity'> &
  Partial<Pick<QuantitySettable, 'line' | 'refuse' | 'plausible'>>

/** A number of the unit in hand. One that may be left open is not known until it is set. */
function numberOf(
  name: string,
  rest: Rest,
  at: {
    readonly read: (unit: Unit) => number | null
    readonly write: (unit: Unit, value: number) => Unit
    readonly clear?: (unit: Unit) => Unit
  },
): QuantitySettable {
  const { clear } = at
  return {
    kind: 'quantity',
    name,
    line: lineOf(rest.quantity),
    refuse: anything,
    ...rest,
    value: scenario => at.read(scenario.unit),
    set: (scenario, value) => ({ ...scenario, unit: at.write(scenario.unit, value) }),
    ...(clear
      ? {
          isOpen: () => true,
          unset: (scenario: Scenario) => ({ ...scenario, unit: clear(scenario.unit) }),
        }
      : {}),
  }
}

type Size = 'benchHeight' | 'wheelbase' | 'edge' | 'slopeAlong' | 'slopeAcross' | 'hitchHeight' | 'edgeLength'

const size = (which: Size, rest: Rest, unsaid: number | null | undefined = undefined): QuantitySettable =>
  numberOf(`unit.${which}`, rest, {
    read: unit => unit[which] ?? unsaid ?? null,
    write: (unit, value) => ({ ...unit, [which]: value }),
    ...(unsaid === null
      ? {
          clear(unit: Unit): Unit {
            const { [which]: _, ...others } = unit
            return others as Unit
          },
        }
      : {}),
  })

function refuseEdge({ edge, wheelbase }: { edge: number; wheelbase: number }): Refusal | null {
  return edge > 0 && edge < wheelbase ? null : { reason: 'edge outside the wheelbase', edge, wheelbase }
}

const sizes: readonly QuantitySettable[] = [
  size('benchHeight', {
    quantity: 'height',
    line: { low: 2e-3, high: 12e-3, usual: [2.5e-3, 8e-3], scale: 'linear' },
    refuse: moreThanZero,
  }),
  size('wheelbase', {
    quantity: 'wheelbase',
    line: { low: 0.12, high: 0.32, usual: [0.16, 0.26], scale: 'linear' },
    refuse: (scenario, value) =>
      moreThanZero(scenario, value) ?? refuseEdge({ edge: scenario.unit.edge, wheelbase: value }),
  }),
  size('edge', {
    quantity: 'wheelbase',
    line: { low: 0.02, high: 0.3, usual: [0.08, 0.15], scale: 'linear' },
    plausible: [0.02, 0.45],
    refuse: (scenario, value) => refuseEdge({ edge: value, wheelbase: scenario.unit.wheelbase }),
  }),
  size('slopeAlong', { quantity: 'angle', line: slopes() }, 0),
  size('slopeAcross', { quantity: 'angle', line: slopes() }, 0),
  size('hitchHeight', { quantity: 'place', refuse: notNegative, plausible: [0, 1] }, null),
  size(
    'edgeLength',
    {
      quantity: 'length',
      line: { low: 0.3, high: 0.9, usual: [0.45, 0.76], scale: 'linear' },
      refuse: moreThanZero,
    },
    null,
  ),
]

function slopes(): QuantitySettable['line'] {
  const [steep, usual] = [0.35, 0.1]
  return { low: -steep, high: steep, usual: [-usual, usual], scale: 'linear' }
}

type BodySize = keyof Unit['body'] & ('mass' | 'at' | 'height' | 'offset')

const ofBody = (which: BodySize, rest: Rest, unsaid: number | null | undefined = undefined) =>
  numberOf(`body.${which}`, rest, {
    read: ({ body }) => body[which] ?? unsaid ?? null,
    write: (unit, value) => ({ ...unit, body: { ...unit.body, [which]: value } }),
    ...(unsaid === null
      ? {
          clear(unit: Unit): Unit {
            const { [which]: _, ...others } = unit.body
            return { ...unit, body: others as Unit['body'] }
          },
        }
      : {}),
  })

const body: readonly QuantitySettable[] = [
  ofBody('mass', {
    quantity: 'mass',
    line: { low: 5, high: 50, usual: [12, 32], scale: 'linear' },
    refuse: notNegative,
  }),
  ofBody('at', { quantity: 'place', line: { low: 0, high: 0.3, usual: [0.06, 0.15], scale: 'linear' } }),
  ofBody(
    'height',
    { quantity: 'place', line: { low: 0, high: 0.25, usual: [0.05, 0.15], scale: 'linear' } },
    null,
  ),
  ofBody(
    'offset',
    { quantity: 'place', line: { low: -0.1, high: 0.1, usual: [-0.03, 0.03], scale: 'linear' } },
    0,
  ),
]

/** To begin with when a cylinder is first told of: the other number then stands beside it to be put right. */
const FIRST_CYLINDER: NonNullable<Unit['cylinder']> = { blades: 9, turnsPerSecond: 25 }

const ofCylinder = (which: keyof typeof FIRST_CYLINDER, rest: Rest) =>
  numberOf(`cylinder.${which}`, rest, {
    read: ({ cylinder }) => cylinder?.[which] ?? null,
    write: (unit, value) => ({ ...unit, cylinder: { ...(unit.cylinder ?? FIRST_CYLINDER), [which]: value } }),
    clear: ({ cylinder: _, ...unit }) => unit,
  })

const cylinder: readonly QuantitySettable[] = [
  ofCylinder('blades', {
    quantity: 'count',
    line: { low: 3, high: 15, usual: [7, 11], scale: 'linear' },
    refuse: (_, value) => whole(value),
  }),
  ofCylinder('turnsPerSecond', {
    quantity: 'turning',
    line: { low: 8, high: 45, usual: [13, 37], scale: 'linear' },
    refuse: moreThanZero,
  }),
]

const unitChoice: ChoiceSettable = {
  kind: 'choice',
  name: 'unit',
  named: true,
  options: scenario => Object.keys(unitsOf(scenario)),
  value: scenario => scenario.unitName ?? '',
  set: (scenario, name) =>
    Object.hasOwn(unitsOf(scenario), name) ? withUnitInHand(scenario, name) : scenario,
}

/** What can be set of the unit in hand besides its rollers and what it carries. */
export const unitSettables: readonly Settable[] = [...sizes, ...body, ...cylinder, unitChoice]
