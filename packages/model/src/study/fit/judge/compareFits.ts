import type { LawName } from '../../../turf/index.ts'
import type { Fit } from '../fit.ts'
import { type NestedTest, nestedTest, nestings } from './nestedTest.ts'

/** What an information criterion was worked out with; criteria of different ones do not compare. */
export type Likelihood = 'normal, variance known' | 'normal, variance estimated'

/** A fit that found no answer has nothing to compare, and its line in the table. */
export type FailedFit = Pick<Fit, 'why'> & { readonly outcome: 'failed' }

export type FitToCompare = {
  readonly name: string
  readonly law: LawName
  readonly fit: Fit | FailedFit
  /** Of a reading of weight 1, with the noise known; 1 unless given, the weights then being 1/variance. */
  readonly variance?: number
}

export type ComparedFit = {
  readonly name: string
  readonly law: LawName
  readonly outcome: Fit['outcome']
  readonly why: string
  /** Free parameters, datums among them. */
  readonly free: number | null
  readonly sumOfSquares: number | null
  readonly degreesOfFreedom: number | null
  /** Of a reading of weight 1. */
  readonly standardDeviation: number | null
  readonly aicc: number | null
  /** Above the least AICc of the table. */
  readonly difference: number | null
}

/** Several laws on the same readings, side by side. */
export type Comparison = {
  readonly likelihood: Likelihood
  readonly readings: number
  /** In the order of AICc, those without one last. */
  readonly laws: readonly ComparedFit[]
  readonly nested: readonly NestedTest[]
  /** Pairs between which the readings do not choose. */
  readonly alike: readonly (readonly [string, string])[]
  readonly sentences: readonly string[]
}

/** Two laws nearer than this in AICc are told to be alike: the odds between them are below e to 1. */
const ALIKE = 2
/** A nested law is taken to miss something below this probability. */
const MISSES = 0.05

const shown = (value: number) => String(Number(value.toPrecision(3)))

/** Whether there are numbers to compare; `failed` as an outcome of a whole Fit has none either. */
const answered = (fit: Fit | FailedFit): fit is Fit => fit.outcome !== 'failed'

function rowOf({ name, law, fit }: FitToCompare): Omit<ComparedFit, 'difference'> {
  const told = { name, law, outcome: fit.outcome, why: fit.why }
  if (!answered(fit))
    return {
      ...told,
      free: null,
      sumOfSquares: null,
      degreesOfFreedom: null,
      standardDeviation: null,
      aicc: null,
    }
  return {
    ...told,
    free: fit.parameters.filter(({ state }) => state !== 'fixed').length,
    sumOfSquares: fit.sumOfSquares,
    degreesOfFreedom: fit.degreesOfFreedom,
    standardDeviation: fit.residualStandardDeviation,
    aicc: fit.aicc,
  }
}

const freeNames = ({ parameters }: Fit) =>
  parameters.flatMap(({ name, set, state }) => (state === 'fixed' ? [] : [`${name} ${set ?? ''}`]))

/** Nested when nothing but what the larger law has more is free in it and not in the smaller. */
function nestedTests(fits: readonly FitToCompare[]): readonly NestedTest[] {
  return nestings.flatMap(nesting =>
    fits.flatMap(smaller =>
      fits.flatMap(larger => {
        if (smaller.law !== nesting.smaller || larger.law !== nesting.larger) return []
        if (!answered(smaller.fit) || !answered(larger.fit)) return []
        const [few, many] = [freeNames(smaller.fit), freeNames(larger.fit)]
        const more = many.filter(name => !few.includes(name)).map(name => name.split(' ')[0]!)
        const inside = few.every(name => many.includes(name))
        if (!inside || more.length === 0 || !more.every(name => nesting.more.includes(name))) return []
        return (
          nestedTest({
            smaller: { ...smaller.fit, name: smaller.name },
            larger: { ...larger.fit, name: larger.name },
            within: nesting.within,
            atEdge: nesting.atEdge,
            variance: smaller.fit.noise === 'known' ? (smaller.variance ?? 1) : null,
          }) ?? []
        )
      }),
    ),
  )
}

function alikeIn(laws: readonly ComparedFit[], nested: readonly NestedTest[]): Comparison['alike'] {
  return laws.flatMap((one, i) =>
    laws.slice(i + 1).flatMap(other => {
      if (one.aicc === null || other.aicc === null) return []
      if (Math.abs(one.aicc - other.aicc) >= ALIKE) return []
      const test = nested.find(({ smaller, larger }) =>
        [smaller, larger].every(name => name === one.name || name === other.name),
      )
      return test && test.probability < MISSES ? [] : [[one.name, other.name] as const]
    }),
  )
}

function sentencesOf(laws: readonly ComparedFit[], { nested, alike }: Pick<Comparison, 'nested' | 'alike'>) {
  const [first, ...rest] = laws.filter(({ difference }) => difference !== null)
  const order =
    first === undefined || rest.length === 0
      ? []
      : [
          `Least AICc: ${first.name}; above it ${rest.map(({ name, difference }) => `${name} by ${shown(difference!)}`).join(', ')}.`,
        ]
  return [
    ...order,
    ...alike.map(([one, other]) => `These readings do not tell ${one} from ${other}.`),
    ...nested.map(test => {
      const by = `${test.kind === 'F' ? 'F' : 'χ²'} ${shown(test.statistic)}, probability ${shown(test.probability)}${test.atEdge ? ', halved at the edge' : ''}`
      return test.probability < MISSES
        ? `${test.larger} follows the readings better than ${test.smaller}, which is its case of ${test.within} (${by}).`
        : `${test.larger} follows the readings no better than ${test.smaller}, its case of ${test.within}, by more than chance (${by}).`
    }),
    ...laws.flatMap(({ name, outcome, why }) =>
      outcome === 'converged' ? [] : [`${name}: ${why.replace(/\.$/, '')}.`],
    ),
  ]
}

/**
 * Fits of several laws to the same readings with the same weights, compared; never one winner without its lead.
 *
 *   AICc = −2 ln L + 2k + 2k(k + 1)/(n − k − 1), L of normal scatter; k counts the variance where it is estimated
 *
 * Source  Hurvich and Tsai 1989, Biometrika 76:297-307; differences: Burnham and Anderson 2002, §2.6 (from memory)
 */
export function compareFits(fits: readonly FitToCompare[]): Comparison {
  const rows = fits.map(rowOf)
  const least = Math.min(...rows.flatMap(({ aicc }) => aicc ?? []))
  const laws = rows
    .map(row => ({ ...row, difference: row.aicc === null ? null : row.aicc - least }))
    .sort((a, b) => (a.difference ?? Number.POSITIVE_INFINITY) - (b.difference ?? Number.POSITIVE_INFINITY))
  const nested = nestedTests(fits)
  const alike = alikeIn(laws, nested)
  const first = fits.map(({ fit }) => fit).find(answered)
  return {
    likelihood: first?.noise === 'known' ? 'normal, variance known' : 'normal, variance estimated',
    readings: first?.residuals.length ?? 0,
    laws,
    nested,
    alike,
    sentences: sentencesOf(laws, { nested, alike }),
  }
}
