import { GRAVITY, levelLoads, type Scenario, type Unit, unitFromScales } from '@swardsink/model'
import { type ChoiceSettable, moreThanZero, type QuantitySettable, type Refusal } from './settable.ts'

/** Speed to begin with when a standing unit is set to mow: a walking pace. */
const FIRST_SPEED = 1.2

type Scales = { readonly total: number; readonly front: number }

/** What the scales would read with the unit level on them. */
export function scalesOf(unit: Unit): Scales {
  const { front, rear } = levelLoads(unit)
  return { total: (front + rear) / GRAVITY, front: front / GRAVITY }
}

/** The unit whose body answers these readings, with the loads it carries still on it. */
function fromScales(unit: Unit, scales: Scales): Unit {
  const { loads: _, ...bare } = unit
  const [laden, unladen] = [scalesOf(unit), scalesOf(bare)]
  const { wheelbase, edge, benchHeight } = unit
  const weighed = unitFromScales({
    total: scales.total - (laden.total - unladen.total),
    front: scales.front - (laden.front - unladen.front),
    rollers: { front: unit.frontRoller, rear: unit.rearRoller },
    wheelbase,
    edge,
    benchHeight,
  })
  return { ...unit, body: { ...unit.body, ...weighed.body } }
}

function refuseScales(unit: Unit, scales: Scales): Refusal | null {
  const { frontRoller, rearRoller } = unit
  const rear = scales.total - scales.front
  if (scales.front < frontRoller.mass)
    return {
      reason: 'roller heavier than its reading',
      where: 'front',
      reading: scales.front,
      roller: frontRoller.mass,
    }
  if (rear < rearRoller.mass)
    return {
      reason: 'roller heavier than its reading',
      where: 'rear',
      reading: rear,
      roller: rearRoller.mass,
    }
  return null
}

function scaleSettable(which: keyof Scales, line: QuantitySettable['line']): QuantitySettable {
  return {
    kind: 'quantity',
    name: `scales.${which}`,
    quantity: 'mass',
    line,
    value: scenario => scalesOf(scenario.unit)[which],
    set(scenario, reading) {
      const scales = { ...scalesOf(scenario.unit), [which]: reading }
      return { ...scenario, unit: fromScales(scenario.unit, scales) }
    },
    refuse: (scenario, reading) =>
      moreThanZero(scenario, reading) ??
      refuseScales(scenario.unit, { ...scalesOf(scenario.unit), [which]: reading }),
  }
}

export const scalesTotal = scaleSettable('total', { low: 15, high: 60, usual: [22, 45], scale: 'linear' })
export const scalesFront = scaleSettable('front', { low: 6, high: 40, usual: [10, 25], scale: 'linear' })

function unitSettable(
  which: 'benchHeight' | 'wheelbase' | 'edge',
  rest: Pick<QuantitySettable, 'quantity' | 'line' | 'refuse'>,
): QuantitySettable {
  return {
    kind: 'quantity',
    name: `unit.${which}`,
    ...rest,
    value: scenario => scenario.unit[which],
    set: (scenario, value) => ({ ...scenario, unit: { ...scenario.unit, [which]: value } }),
  }
}

function refuseEdge({ edge, wheelbase }: { edge: number; wheelbase: number }): Refusal | null {
  return edge > 0 && edge < wheelbase ? null : { reason: 'edge outside the wheelbase', edge, wheelbase }
}

export const benchHeight = unitSettable('benchHeight', {
  quantity: 'height',
  line: { low: 2e-3, high: 12e-3, usual: [2.5e-3, 8e-3], scale: 'linear' },
  refuse: moreThanZero,
})

export const wheelbase = unitSettable('wheelbase', {
  quantity: 'wheelbase',
  line: { low: 0.12, high: 0.32, usual: [0.16, 0.26], scale: 'linear' },
  refuse: (scenario, value) =>
    moreThanZero(scenario, value) ?? refuseEdge({ edge: scenario.unit.edge, wheelbase: value }),
})

export const edge = unitSettable('edge', {
  quantity: 'wheelbase',
  line: { low: 0.02, high: 0.3, usual: [0.08, 0.15], scale: 'linear' },
  refuse: (scenario, value) => refuseEdge({ edge: value, wheelbase: scenario.unit.wheelbase }),
})

export const condition: ChoiceSettable = {
  kind: 'choice',
  name: 'condition',
  options: () => ['standing', 'mowing'],
  value: scenario => scenario.condition.kind,
  set(scenario: Scenario, option: string): Scenario {
    if (option === scenario.condition.kind) return scenario
    return {
      ...scenario,
      condition: option === 'mowing' ? { kind: 'mowing', speed: FIRST_SPEED } : { kind: 'standing' },
    }
  },
}

export const speed: QuantitySettable = {
  kind: 'quantity',
  name: 'condition.speed',
  quantity: 'speed',
  line: { low: 0.2, high: 4, usual: [0.8, 2.5], scale: 'linear' },
  value: scenario => (scenario.condition.kind === 'mowing' ? scenario.condition.speed : null),
  set: (scenario, value) =>
    scenario.condition.kind === 'mowing'
      ? { ...scenario, condition: { ...scenario.condition, speed: value } }
      : scenario,
  refuse: moreThanZero,
}
