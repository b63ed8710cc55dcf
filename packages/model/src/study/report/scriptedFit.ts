import type { Metres, Newtons } from '../../quantities/index.ts'
import type { Roller } from '../../roller/index.ts'
import type { Scenario } from '../../scenario/index.ts'
import type { LawName } from '../../turf/index.ts'
import type { ComplianceFit, FittedReading } from '../fit/compliance/complianceFit.ts'
import type { FittedParameter } from '../fit/fit.ts'

/** A reading as a script needs it. */
export type ScriptedRow = {
  readonly row: number
  readonly set: string
  readonly load: Newtons
  readonly measured: Metres
  /** 1/m² when the noise is known, else relative. */
  readonly weight: number
  readonly foot:
    | { readonly kind: 'plate' /** m² */; readonly area: number }
    /** The lands alone carry, without spread: their length. */
    | { readonly kind: 'roller'; readonly diameter: Metres; readonly bearing: Metres }
}

/** A number of the fit, and how a script solves for it: in its logarithm, in mm, or not at all. */
export type ScriptedParameter = {
  readonly name: string
  readonly set: string | null
  readonly by: 'ln' | 'mm' | 'held'
  readonly value: number
}

export type ScriptedFit = {
  readonly law: ScriptedLaw
  readonly spreads: boolean
  readonly rows: readonly ScriptedRow[]
  readonly parameters: readonly ScriptedParameter[]
  readonly noise: 'known' | 'estimated'
  readonly level: number
}

/** Laws whose sinkage under a plate can be written down. */
export const scriptedLaws = ['linear', 'power', 'stiffening', 'logarithmic'] as const
export type ScriptedLaw = (typeof scriptedLaws)[number]

const isScripted = (law: LawName): law is ScriptedLaw => (scriptedLaws as readonly string[]).includes(law)

/** Solved for as they are; every other number of these laws is positive and solved for in its logarithm. */
const PLAIN = ['spread', 'datum', 'dropDatum']

const parameterOf = ({ name, set, value, state }: FittedParameter): ScriptedParameter => ({
  name,
  set: set ?? null,
  by: state !== 'free' ? 'held' : PLAIN.includes(name) ? 'mm' : 'ln',
  value,
})

export const LEVEL = 0.95

/** The level of the intervals of a fit. */
export function levelOf(parameters: readonly FittedParameter[]): number {
  const told = parameters.flatMap(({ interval }) => (interval.kind === 'interval' ? [interval.level] : []))
  return told[0] ?? LEVEL
}

type Part = Pick<Scenario, 'unit' | 'rollers'>

const rollerOf = (name: string | null, scenario: Part | undefined): Roller | undefined =>
  name === null
    ? scenario?.unit.frontRoller
    : scenario && Object.hasOwn(scenario.rollers, name)
      ? scenario.rollers[name]
      : undefined

function footOf(
  reading: FittedReading,
  spreads: boolean,
  scenario: Part | undefined,
): ScriptedRow['foot'] | string {
  const { foot, predicted } = reading
  if (foot.kind === 'plate')
    return { kind: 'plate', area: 'area' in foot ? foot.area : (Math.PI / 4) * foot.diameter ** 2 }
  if (spreads) return 'a roller on turf that spreads load has no sinkage that can be written down'
  const roller = rollerOf(foot.name, scenario)
  if (!roller) return 'the scenario with its rollers is not at hand'
  const { diameter, length, surface } = roller
  if (surface.kind === 'smooth') return { kind: 'roller', diameter, bearing: length }
  if (predicted === null || predicted >= surface.depth) return 'turf reaches the floor of a groove'
  const { land, pitch } = surface
  return { kind: 'roller', diameter, bearing: land * ((length - land) / pitch + 1) }
}

/** A fit as a short script can repeat it, or the reason why none can. */
export function scriptedFit(fit: ComplianceFit, scenario?: Part, robust = false): ScriptedFit | string {
  const { law, noise, readings, weights } = fit
  if (robust) return 'its robust loss is weighed by a procedure of its own'
  if (!isScripted(law)) return `the ${law} law has no sinkage that can be written down`
  const spreads = fit.parameters.some(
    ({ name, value, state }) => name === 'spread' && (value > 0 || state === 'free'),
  )
  if (spreads && law !== 'linear')
    return 'a plate on turf that spreads load has no sinkage that can be written down, but with the linear law'
  const rows: ScriptedRow[] = []
  for (const [i, reading] of readings.entries()) {
    const { row, set, load, measured } = reading
    if (load === null) return 'a drop of the whole unit asks for its balance'
    const foot = footOf(reading, spreads, scenario)
    if (typeof foot === 'string') return foot
    rows.push({ row, set, load, measured, weight: weights[i]!, foot })
  }
  if (fit.outcome !== 'converged') return 'the search did not end at a minimum'
  if (fit.parameters.some(({ state, standardError }) => state === 'free' && standardError === null))
    return 'the readings do not determine every number of it'
  const parameters = fit.parameters.map(parameterOf)
  return { law, spreads, rows, parameters, noise, level: levelOf(fit.parameters) }
}
