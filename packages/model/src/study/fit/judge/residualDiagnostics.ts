import type { Fit } from '../fit.ts'
import { type AddedTerms, addedTerms } from './addedTerms.ts'
import type { Judged } from './judged.ts'
import { type Normality, normalityOf } from './normality.ts'
import { type JudgedResidual, judgedResiduals } from './suspicion.ts'
import { setColumns, type Trend, trendAlong } from './trends.ts'

/** What the residuals of a fit say about the fit. */
export type ResidualDiagnostics = {
  readonly residuals: readonly JudgedResidual[]
  /** Rows worth a second look, the most striking first. None was left out of the fit. */
  readonly suspicious: readonly JudgedResidual[]
  /** Along the load: a bend that the law does not follow. null without a scatter to measure by. */
  readonly alongLoad: Trend | null
  /** In the order of reading: a drift of gauge or turf. */
  readonly inOrder: Trend | null
  /** Whether sets that share their parameters differ; null with one set. */
  readonly betweenSets: AddedTerms | null
  readonly normality: Normality
  readonly sentences: readonly string[]
}

/** As rare as this is told: with three looks at every fit a sound one gets a remark one time in twenty or so. */
const RARE = 0.02
const shown = (value: number) => String(Number(value.toPrecision(2)))

function setWords(sets: AddedTerms | null, { parameters }: Fit): readonly string[] {
  if (sets?.kind !== 'tested' || !(sets.probability < RARE)) return []
  const own = parameters.some(({ name, set }) => name === 'softness' && set !== undefined)
  const what = own
    ? 'let each have more of its own than its softness, or try another law'
    : 'let each have a softness of its own'
  return [
    `The sets differ more than their readings scatter (by chance with probability ${shown(sets.probability)}): ${what}.`,
  ]
}

const tested = ({ test }: Trend) => (test.kind === 'tested' ? test.probability : null)
const rareRuns = ({ runs }: Trend) => (runs === null ? null : runs.probability)

function bendWords(trend: Trend, word: string): readonly string[] {
  const bend = tested(trend)
  if (bend !== null && bend < RARE)
    return [
      `Along the ${word} the residuals bend (${trend.pattern}, from the least ${word} up): a law that bends otherwise would take up more; so much comes by chance with probability ${shown(bend)}.`,
    ]
  const runs = rareRuns(trend)
  return runs !== null && runs < RARE
    ? [
        `Along the ${word} the residuals keep their sign for long stretches (${trend.pattern}): so few changes come by chance with probability ${shown(runs)}.`,
      ]
    : []
}

function driftWords(trend: Trend): readonly string[] {
  const drift = tested(trend)
  return drift !== null && drift < RARE
    ? [
        `In the order of reading the residuals drift; so much comes by chance with probability ${shown(drift)}. Look at the gauge's zero and at turf that was pressed before.`,
      ]
    : []
}

const normalWords = (normality: Normality): readonly string[] =>
  normality.kind === 'tested' && normality.probability < RARE
    ? [
        `The residuals do not look normal (probability ${shown(normality.probability)}): a hint, from few readings or a coarse gauge it means little; intervals are then nominal.`,
      ]
    : []

/**
 * Residuals as a statistician looks at them: standardised and studentised, Cook's distance, leverage, suspicious rows
 * with the reason, order and trend, a hint of how normal they are. Nothing is removed.
 *
 *   r_i √w_i/s;  t_i = that/√(1 − h_i);  D_i = t_i² h_i/(p (1 − h_i))
 *
 * Source  Cook 1977, Technometrics 19:15-18; Belsley, Kuh and Welsch 1980 (from memory); docs/physics.md §7.3
 */
export function residualDiagnostics(judged: Judged): ResidualDiagnostics {
  const residuals = judgedResiduals(judged)
  const standard = residuals.flatMap(({ standardised }) => (standardised === null ? [] : [standardised]))
  const measurable = standard.length === residuals.length && standard.length > 0
  const { rows, alongWord } = judged
  const alongLoad = measurable
    ? trendAlong(
        judged,
        standard,
        rows.map(({ along }) => along),
        'bend',
      )
    : null
  const inOrder = measurable
    ? trendAlong(
        judged,
        standard,
        rows.map((_, i) => i + 1),
        'drift',
      )
    : null
  const normality = normalityOf(
    residuals.flatMap(({ studentised }) => (studentised === null ? [] : [studentised])),
  )
  const columns = setColumns(judged)
  const betweenSets = columns.length > 0 && measurable ? addedTerms(judged, columns) : null
  const suspicious = residuals
    .filter(({ suspicions }) => suspicions.length > 0)
    .sort((a, b) => (b.cook ?? 0) - (a.cook ?? 0))
  return {
    residuals,
    suspicious,
    alongLoad,
    inOrder,
    betweenSets,
    normality,
    sentences: [
      ...suspicious.map(
        ({ row, suspicions }) =>
          `Row ${row}: ${suspicions.map(({ sentence }) => sentence).join('; ')}. It is left in.`,
      ),
      ...setWords(betweenSets, judged.fit),
      ...(alongLoad === null ? [] : bendWords(alongLoad, alongWord)),
      ...(inOrder === null ? [] : driftWords(inOrder)),
      ...normalWords(normality),
    ],
  }
}
