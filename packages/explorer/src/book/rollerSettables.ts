import type { Roller, Scenario } from '@swardsink/model'
import { type ChoiceSettable, moreThanZero, type QuantitySettable } from './settable.ts'

type Grooves = Extract<Roller['surface'], { kind: 'grooved' }>

/** A surface to begin with when a smooth roller is given grooves. */
const FIRST_GROOVES: Grooves = { kind: 'grooved', pitch: 0.012, land: 0.005, depth: 0.006 }

function sameRoller(a: Roller, b: Roller): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}

/** The name in the rack of the roller now fitted in front, if it is one of the rack. */
export function fittedName(scenario: Scenario): string | null {
  const found = Object.entries(scenario.rollers).find(([, roller]) =>
    sameRoller(roller, scenario.unit.frontRoller),
  )
  return found?.[0] ?? null
}

/** Changes the roller fitted in front, on the unit and, as it is the same roller, in the rack. */
function changeFrontRoller(scenario: Scenario, change: Partial<Roller>): Scenario {
  const name = fittedName(scenario)
  const frontRoller: Roller = { ...scenario.unit.frontRoller, ...change }
  const rollers = name === null ? scenario.rollers : { ...scenario.rollers, [name]: frontRoller }
  return { ...scenario, rollers, unit: { ...scenario.unit, frontRoller } }
}

function groovesOf(scenario: Scenario): Grooves | null {
  const { surface } = scenario.unit.frontRoller
  return surface.kind === 'grooved' ? surface : null
}

function changeGrooves(scenario: Scenario, change: Partial<Grooves>): Scenario {
  const grooves = groovesOf(scenario)
  return grooves ? changeFrontRoller(scenario, { surface: { ...grooves, ...change } }) : scenario
}

export const frontMass: QuantitySettable = {
  kind: 'quantity',
  name: 'frontRoller.mass',
  quantity: 'mass',
  line: { low: 2, high: 12, usual: [4, 9], scale: 'linear' },
  value: scenario => scenario.unit.frontRoller.mass,
  set: (scenario, mass) => changeFrontRoller(scenario, { mass }),
  refuse: moreThanZero,
}

export const frontDiameter: QuantitySettable = {
  kind: 'quantity',
  name: 'frontRoller.diameter',
  quantity: 'diameter',
  line: { low: 0.04, high: 0.1, usual: [0.05, 0.076], scale: 'linear' },
  value: scenario => scenario.unit.frontRoller.diameter,
  set: (scenario, diameter) => changeFrontRoller(scenario, { diameter }),
  refuse: moreThanZero,
}

export const groovePitch: QuantitySettable = {
  kind: 'quantity',
  name: 'frontRoller.pitch',
  quantity: 'pitch',
  line: { low: 0.004, high: 0.04, usual: [0.008, 0.032], scale: 'linear' },
  value: scenario => groovesOf(scenario)?.pitch ?? null,
  set: (scenario, pitch) => changeGrooves(scenario, { pitch }),
  refuse(scenario, pitch) {
    const land = groovesOf(scenario)?.land ?? 0
    return (
      moreThanZero(scenario, pitch) ?? (land < pitch ? null : { reason: 'land against pitch', land, pitch })
    )
  },
}

export const grooveLand: QuantitySettable = {
  kind: 'quantity',
  name: 'frontRoller.land',
  quantity: 'land',
  line: { low: 0.001, high: 0.02, usual: [0.003, 0.01], scale: 'linear' },
  value: scenario => groovesOf(scenario)?.land ?? null,
  set: (scenario, land) => changeGrooves(scenario, { land }),
  refuse(scenario, land) {
    const pitch = groovesOf(scenario)?.pitch ?? Number.POSITIVE_INFINITY
    return (
      moreThanZero(scenario, land) ?? (land < pitch ? null : { reason: 'land against pitch', land, pitch })
    )
  },
}

export const grooveDepth: QuantitySettable = {
  kind: 'quantity',
  name: 'frontRoller.depth',
  quantity: 'grooveDepth',
  line: { low: 0.001, high: 0.02, usual: [0.004, 0.01], scale: 'linear' },
  value: scenario => groovesOf(scenario)?.depth ?? null,
  set: (scenario, depth) => changeGrooves(scenario, { depth }),
  refuse: moreThanZero,
}

export const frontSurface: ChoiceSettable = {
  kind: 'choice',
  name: 'frontRoller.surface',
  options: () => ['smooth', 'grooved'],
  value: scenario => scenario.unit.frontRoller.surface.kind,
  set: (scenario, option) =>
    changeFrontRoller(scenario, {
      surface: option === 'grooved' ? (groovesOf(scenario) ?? FIRST_GROOVES) : { kind: 'smooth' },
    }),
}

export const fittedRoller: ChoiceSettable = {
  kind: 'choice',
  name: 'frontRoller',
  options: scenario => Object.keys(scenario.rollers),
  value: scenario => fittedName(scenario) ?? '',
  set(scenario, option) {
    const frontRoller = scenario.rollers[option]
    return frontRoller ? { ...scenario, unit: { ...scenario.unit, frontRoller } } : scenario
  },
}
