import { GRAVITY, levelLoads, type Unit, unitFromScales } from '@swardsink/model'
import { moreThanZero, type QuantitySettable, type Refusal } from './settable.ts'

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

type Reading = {
  readonly line: QuantitySettable['line']
  readonly read: (scales: Scales) => number
  readonly with: (scales: Scales, reading: number) => Scales
}

const readings: Readonly<Record<string, Reading>> = {
  total: {
    line: { low: 15, high: 60, usual: [22, 45], scale: 'linear' },
    read: ({ total }) => total,
    with: (scales, total) => ({ ...scales, total }),
  },
  front: {
    line: { low: 6, high: 40, usual: [10, 25], scale: 'linear' },
    read: ({ front }) => front,
    with: (scales, front) => ({ ...scales, front }),
  },
  // the front reading stands; what the rear reads more or less, the whole unit does too
  rear: {
    line: { low: 6, high: 40, usual: [10, 25], scale: 'linear' },
    read: ({ total, front }) => total - front,
    with: ({ front }, rear) => ({ front, total: front + rear }),
  },
}

/** What the scales read, set the other way round: the body that answers them is found. */
export const scaleSettables: readonly QuantitySettable[] = Object.entries(readings).map(
  ([name, reading]) => ({
    kind: 'quantity',
    name: `scales.${name}`,
    quantity: 'mass',
    line: reading.line,
    value: scenario => reading.read(scalesOf(scenario.unit)),
    set: (scenario, value) => ({
      ...scenario,
      unit: fromScales(scenario.unit, reading.with(scalesOf(scenario.unit), value)),
    }),
    refuse: (scenario, value) =>
      moreThanZero(scenario, value) ??
      refuseScales(scenario.unit, reading.with(scalesOf(scenario.unit), value)),
  }),
)
