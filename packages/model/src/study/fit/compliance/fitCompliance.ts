import { endings, leastSquares, type Solved } from '../../../numerics/index.ts'
import type { Turf } from '../../../turf/index.ts'
import type { Fit, FittedParameter, Noise } from '../fit.ts'
import { fitFrom } from '../statement.ts'
import type { ComplianceFailed, ComplianceFit, Span } from './complianceFit.ts'
import { turfParameters } from './lawParameters.ts'
import { asItIs } from './plan.ts'
import { predictionsAt, spanOf, turfsAt } from './predictions.ts'
import type { ComplianceQuestion } from './question.ts'
import { residualsOf, type SetUp, setUp } from './setUp.ts'

/** A fit with all it was made from: for those who read more off it than it says itself. */
export type SolvedCompliance = {
  readonly fit: ComplianceFit | ComplianceFailed
  readonly solved: Solved
  readonly made: SetUp
}

/** Numbers of the turf that stayed as they were told. */
function heldParameters({ asked }: SetUp): FittedParameter[] {
  const free = asked.free.map(({ name }) => name)
  return turfParameters(asked.law)
    .filter(({ name }) => !free.includes(name))
    .flatMap(({ name, given, stretches }) => {
      const value = asked.held.get(name) ?? (stretches ? undefined : given)
      return value === undefined || !Number.isFinite(value)
        ? []
        : [
            {
              name,
              value,
              standardError: null,
              interval: { kind: 'undetermined', why: 'it was held, not fitted' } as const,
              state: 'fixed' as const,
            },
          ]
    })
}

/** The weights hold the variances already: of a known noise one is left. */
const noiseOfWeights = (noise: Noise): Noise =>
  noise.kind === 'known' ? { kind: 'known', standardDeviation: 1 } : noise

/** Every number where it began, for a search that got no further. */
const begun = ({ plan }: SetUp, p: Float64Array): FittedParameter[] =>
  plan.planned.map(({ name, set, by }, k) => ({
    name,
    ...(set === undefined ? {} : { set }),
    value: asItIs(by, p[k]!),
    standardError: null,
    interval: { kind: 'undetermined', why: 'the search got no further than this' },
    state: 'free',
  }))

function turfsBySet(made: SetUp, p: Float64Array, pressures: Span | null): [string, Turf][] {
  const fitted = pressures ? { fittedFrom: pressures.low, fittedTo: pressures.high } : {}
  return turfsAt(made, p).flatMap((turf, g) => (turf ? [[made.plan.sets[g]!, { ...turf, ...fitted }]] : []))
}

/** What is said of a turf that cannot bear every reading: it comes nearest, and nothing is known of how sure it is. */
function bottomedOut(stated: Fit, rows: readonly number[], count: number): Fit {
  const [first] = rows
  if (first === undefined) return stated
  const which = rows.length === 1 ? `row ${first}` : `${rows.length} of ${count} readings, row ${first} first`
  const why = `the turf that comes nearest bottoms out under ${which}`
  return {
    ...stated,
    outcome: 'stopped',
    why: `stopped: ${why}`,
    parameters: stated.parameters.map(one =>
      one.state === 'free' ? { ...one, standardError: null, interval: { kind: 'undetermined', why } } : one,
    ),
    covariance: null,
    correlation: null,
  }
}

/** A fit, solved, with what it was made from. */
export function solveCompliance(question: ComplianceQuestion): SolvedCompliance {
  const made = setUp(question)
  const { plan, measured, weights, start, lower, upper, scale } = made
  const { noise, loss, restarts, seed, level } = question
  const solved = leastSquares({
    residuals: residualsOf(made, measured, weights),
    start,
    lower,
    upper,
    scale,
    ...(loss ? { loss } : {}),
    ...(restarts === undefined ? {} : { restarts }),
    ...(seed === undefined ? {} : { seed }),
  })
  const held = heldParameters(made)
  const told = { law: made.asked.law.kind, leftOut: made.leftOut, notes: made.notes }
  if (solved.outcome === 'failed')
    return {
      made,
      solved,
      fit: {
        outcome: 'failed',
        why: endings[solved.why].sentence,
        parameters: [...begun(made, solved.p), ...held],
        ...told,
      },
    }
  const stated = fitFrom({
    solved,
    names: plan.planned.map(({ name, set }) => (set === undefined ? { name } : { name, set })),
    held,
    noise: noiseOfWeights(noise),
    ...(level === undefined ? {} : { level }),
    measured,
    weights,
    transforms: plan.planned.map(({ by }) => (by === 'ln' ? 'ln' : 'itself')),
  })
  const readings = predictionsAt(made, solved.p)
  const beyond = readings.flatMap(({ row }, r) => (made.model.isBeyond(r) ? [row] : []))
  const honest = bottomedOut(stated, beyond, readings.length)
  const pressures = spanOf(readings.map(({ pressure }) => pressure))
  const turfs = turfsBySet(made, solved.p, pressures)
  return {
    made,
    solved,
    fit: {
      ...honest,
      outcome: beyond.length > 0 ? 'stopped' : solved.outcome,
      ...told,
      turfs: Object.fromEntries(turfs),
      turf: plan.groups === 1 ? (turfs[0]?.[1] ?? null) : null,
      readings,
      pressures,
      loads: spanOf(readings.map(({ load }) => load)),
      perSet: plan.moved.flatMap(({ name }, j) => (plan.perSet[j] ? [name] : [])),
    },
  }
}

/**
 * Fits turf to readings of a gauge, of rollers under known loads, and of drops of the unit.
 *
 *   Σ wᵢ (readingᵢ − model(footᵢ, loadᵢ; turf of its set) − datum of its set)² → least
 *   ∂z/∂θ = −(∂W/∂θ)/(∂W/∂z) at W(z; θ) = load
 *
 * Softness, exponents and depths are solved for in their logarithms, spread and datums as they are.
 *
 * Holds   standing, on fresh turf; in the pressures of the readings, which the fitted turf carries with it
 * Units   SI; weights 1/m² when the noise is known
 * Throws  InputError for names, numbers or rollers that cannot be understood, and for fewer readings than free numbers
 * Source  derived (docs/physics.md §7.2)
 */
export const fitCompliance = (question: ComplianceQuestion): ComplianceFit | ComplianceFailed =>
  solveCompliance(question).fit
