import type {
  ComplianceQuestion,
  Free,
  Noise,
  PressureLaw,
  Reading,
  Roller,
  Scenario,
  Unit,
} from '@swardsink/model'
import { type FitSettings, heldAt, ownLaw, parametersOf, roleOf } from './settings.ts'

/** What is asked of the model, but for the readings, which are a long list of another entry's. */
export type FitQuestion = Omit<ComplianceQuestion, 'readings'>

/** From so many standard deviations on a reading counts less; 95 % efficient (Holland and Welsch 1977, from memory). */
const ROBUST_FROM = { huber: 1.345, bisquare: 4.685 } as const

const isFitted = ({ measured }: Reading): boolean => measured.kind !== 'height'

/** How the scatter of a reading is known: by the readings' own words where all say it. */
export function noiseOf(settings: FitSettings, readings: readonly Reading[]): Noise {
  const { noise, standardDeviation } = settings
  if (noise === 'known') return { kind: 'known', standardDeviation }
  if (noise === 'estimated') return { kind: 'estimated' }
  const fitted = readings.filter(isFitted)
  const variances = fitted.flatMap(({ standardDeviation: sd }) => (sd === undefined ? [] : [sd ** 2]))
  if (fitted.length === 0 || variances.length < fitted.length) return { kind: 'estimated' }
  return {
    kind: 'known',
    standardDeviation: Math.sqrt(variances.reduce((sum, one) => sum + one, 0) / variances.length),
  }
}

/** Pressed by a known load a roller is its face alone: what it weighs, and on what unit, changes nothing. */
const faceOf = (roller: Roller): Roller => ({ ...roller, mass: 1 })
const frameRound = (frontRoller: Roller): Unit => ({
  wheelbase: 2 * frontRoller.diameter,
  edge: frontRoller.diameter,
  benchHeight: frontRoller.diameter / 20,
  frontRoller,
  rearRoller: frontRoller,
  body: { mass: 1, at: frontRoller.diameter },
})

/**
 * As much of the scenario as these readings lean on, so that nothing is fitted again for a change that cannot matter:
 * nothing for plates, faces for rollers under known loads, the unit where it is what presses.
 */
export function leanedOn(readings: readonly Reading[], scenario: Scenario): FitQuestion['scenario'] {
  const rolled = readings.filter(reading => isFitted(reading) && reading.foot.kind === 'roller')
  if (rolled.length === 0) return undefined
  const names = new Set(
    rolled.flatMap(({ foot }) => (foot.kind === 'roller' && foot.name !== null ? [foot.name] : [])),
  )
  const named = Object.entries(scenario.rollers).filter(([name]) => names.has(name))
  const byUnit = rolled.some(
    ({ load, measured }) => load === undefined || (measured.kind === 'drop' && measured.point !== undefined),
  )
  if (byUnit) return { unit: scenario.unit, rollers: Object.fromEntries(named) }
  const isUnnamed = rolled.some(({ foot }) => foot.kind === 'roller' && foot.name === null)
  const front = isUnnamed ? scenario.unit.frontRoller : (named[0]?.[1] ?? scenario.unit.frontRoller)
  return {
    unit: frameRound(faceOf(front)),
    rollers: Object.fromEntries(named.map(([name, roller]) => [name, faceOf(roller)])),
  }
}

export function questionOf(
  settings: FitSettings,
  q: { readonly readings: readonly Reading[]; readonly scenario: Scenario },
): FitQuestion {
  const { law, loss, datum } = settings
  const sets = new Set(q.readings.filter(isFitted).map(({ set }) => set)).size
  const names = parametersOf(law)
  const free = names.flatMap((name): Free[] => {
    const role = roleOf(settings, name, sets)
    return role === 'held' ? [] : [role === 'shared' ? name : { name, per: 'set' }]
  })
  const held = names.filter(name => roleOf(settings, name, sets) === 'held')
  const scenario = leanedOn(q.readings, q.scenario)
  const asked: LawName | PressureLaw = law === 'own' ? ownLaw(q.scenario) : law
  return {
    law: asked,
    free,
    start: Object.fromEntries(held.map(name => [name, heldAt(settings, name)])),
    noise: noiseOf(settings, q.readings),
    ...(datum === 'per set' ? { datum } : {}),
    ...(loss === 'squares' ? {} : { loss: { kind: loss, at: ROBUST_FROM[loss] } }),
    ...(scenario ? { scenario } : {}),
  }
}

type LawName = Exclude<FitSettings['law'], 'own'>
