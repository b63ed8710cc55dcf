import {
  GRAVITY,
  InputError,
  type Metres,
  type Newtons,
  numberProblem,
  type Pascals,
  type Problem,
  refuse,
  tell,
} from '../../quantities/index.ts'
import type { Foot } from '../../readings/index.ts'
import type { Scenario } from '../../scenario/index.ts'
import type { ComplianceFit } from '../fit/compliance/complianceFit.ts'

/** A reading that might be made next. */
export type Candidate = {
  readonly foot: Foot
  /** A roller without one is loaded by the unit of the scenario. */
  readonly load?: Newtons
  /** Of a plate, in place of the load. */
  readonly pressure?: Pascals
  /** A drop is read here along the wheelbase, from the unknown zero of its set; absent: a sinkage. */
  readonly point?: number
  readonly set?: string
  /** Readings alike; 1 unless given. */
  readonly replicates?: number
  /** What all of them cost, in any unit; their number unless given. */
  readonly cost?: number
  /** Of one of them; that of the readings fitted unless given. */
  readonly standardDeviation?: Metres
}

export type Parts = Pick<Scenario, 'unit' | 'rollers'>

/** Loads tried of each foot, evenly in the logarithm from half the least fitted to twice the greatest. */
const RUNGS = 6
const BEYOND = 2

const ladder = (low: number, high: number): number[] =>
  high > low ? Array.from({ length: RUNGS }, (_, k) => low * (high / low) ** (k / (RUNGS - 1))) : [high]

const keyOf = (foot: Foot): string =>
  foot.kind === 'roller'
    ? `roller ${foot.name ?? ''}`
    : `plate ${'diameter' in foot ? foot.diameter : foot.area}`

/** Feet of the readings that were fitted, and every roller of the scenario. */
function feetOf(fit: ComplianceFit, scenario: Parts | undefined): Foot[] {
  const read = fit.readings.map(({ foot }) => foot)
  const named = Object.keys(scenario?.rollers ?? {}).map((name): Foot => ({ kind: 'roller', name }))
  const usable = [...read, ...named].filter(foot => foot.kind === 'plate' || scenario !== undefined)
  return [...new Map(usable.map(foot => [keyOf(foot), foot])).values()]
}

/** A roller can not weigh less than itself. */
function leastLoad(foot: Foot, scenario: Parts | undefined): Newtons {
  if (foot.kind === 'plate') return 0
  const roller = foot.name === null ? scenario?.unit.frontRoller : scenario?.rollers[foot.name]
  return (roller?.mass ?? 0) * GRAVITY
}

/** A ladder of loads on every foot that is at hand, in every set whose turf is fitted by itself. */
function laddersOf(fit: ComplianceFit, scenario: Parts | undefined): Candidate[] {
  const { loads } = fit
  if (!loads) return []
  const sets = fit.turf ? [undefined] : Object.keys(fit.turfs)
  return sets.flatMap(set =>
    feetOf(fit, scenario).flatMap(foot => {
      const low = Math.max(loads.low / BEYOND, leastLoad(foot, scenario))
      return ladder(low, loads.high * BEYOND).map(load => ({
        foot,
        load,
        ...(set === undefined ? {} : { set }),
      }))
    }),
  )
}

/** Every roller of the scenario on its unit, the drop read at the edge, in every set that has drops. */
function dropsOf(fit: ComplianceFit, scenario: Parts | undefined): Candidate[] {
  if (!scenario) return []
  const { edge, wheelbase } = scenario.unit
  const sets = new Set(fit.readings.filter(({ kind }) => kind === 'drop').map(({ set }) => set))
  return [...sets].flatMap(set =>
    Object.keys(scenario.rollers).map(name => ({
      foot: { kind: 'roller' as const, name },
      point: edge / wheelbase,
      set,
    })),
  )
}

/** What there is at hand to read next. */
export function usualCandidates(fit: ComplianceFit, scenario: Parts | undefined): Candidate[] {
  const all = [...laddersOf(fit, scenario), ...dropsOf(fit, scenario)]
  if (all.length > 0) return all
  throw new InputError({
    path: 'candidates',
    expected:
      'candidates by name, for the fit has no reading under a load and no scenario to read drops with',
    received: 'none',
  })
}

const wholeProblem = (value: number, path: string): Problem[] =>
  Number.isInteger(value) ? [] : [{ path, expected: 'a whole number', received: String(value) }]

export function checkCandidates(candidates: readonly Candidate[]): void {
  if (candidates.length === 0)
    throw new InputError({ path: 'candidates', expected: 'at least one candidate', received: 'none' })
  refuse(
    candidates.flatMap(({ replicates, cost, standardDeviation }, i) => {
      const path = `candidates.${i}`
      return [
        ...(replicates === undefined
          ? []
          : [
              ...numberProblem(replicates, `${path}.replicates`, 'count', { atLeast: 1 }),
              ...wholeProblem(replicates, `${path}.replicates`),
            ]),
        ...(cost === undefined ? [] : numberProblem(cost, `${path}.cost`, 'ratio', { above: 0 })),
        ...(standardDeviation === undefined
          ? []
          : numberProblem(standardDeviation, `${path}.standardDeviation`, 'sinkage', { above: 0 })),
      ]
    }),
  )
}

const footWords = (foot: Foot): string =>
  foot.kind === 'roller'
    ? foot.name === null
      ? 'the roller on the unit'
      : `the roller "${foot.name}"`
    : `the plate of ${tell('diameter' in foot ? foot.diameter : Math.sqrt((4 * foot.area) / Math.PI), 'length')}`

/** What to do, as part of a sentence. */
export function candidateWords({ foot, load, pressure, point, set, replicates = 1 }: Candidate): string {
  const under =
    load !== undefined
      ? ` under ${tell(load, 'load')}`
      : pressure !== undefined
        ? ` at ${tell(pressure, 'pressure')}`
        : ' under the unit'
  const where = set === undefined || set === '' ? '' : ` in set "${set}"`
  const what = point === undefined ? '' : 'the drop with '
  return `${what}${footWords(foot)}${under}${where}${replicates > 1 ? `, ${replicates} times` : ''}`
}
