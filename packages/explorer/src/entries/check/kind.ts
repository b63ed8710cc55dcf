import {
  type Caution,
  type ComplianceFit,
  type Condition,
  InputError,
  type Reading,
  refit,
  type Turf,
  type Unit,
  uncertainHeight,
} from '@swardsink/model'
import { isRecord, type Kind, presentTurf } from '../../book/index.ts'
import { fittedTurf } from '../fit/here.ts'
import { settleOnce } from '../settled.ts'
import { type Strip, stripsOf } from './groups.ts'

export type CheckSettings = {
  /** Id of the entry with the heights. */
  readonly readings: string
  /** Id of the fit whose turf is checked; empty: the turf in hand, taken as exact. */
  readonly fit: string
  /** Standard deviation of the bench height as it is set, and of one height as it is measured, m. */
  readonly bench: number
  readonly gauge: number
}
/** A strip with all that its height hangs on; no turf where the fit has none for its set. */
type Asked = Strip & {
  readonly unit: Unit | null
  readonly turf: Turf | null
  /** Of the fit that scatters the turf; null where the turf is taken as exact. */
  readonly ofSet: string | null
}
export type CheckInput = {
  readonly strips: readonly Asked[]
  readonly condition: Condition
  readonly fit: ComplianceFit | null
  readonly bench: number
  readonly gauge: number
}

export type Verdict = 'agrees' | 'lower' | 'higher'
export type Checked = Strip & {
  /** null without an answer. */
  readonly expected: number | null
  /** Where the mean of so many heights should lie with 95 %; null while it is being worked out, and where it cannot be. */
  readonly between: readonly [number, number] | null
  readonly verdict: Verdict | null
  /** How far the mean lies outside; 0 inside. */
  readonly outside: number
  /** Why there is none. */
  readonly why: 'no turf' | 'no roller' | 'no answer' | null
}
export type CheckResult = {
  readonly strips: readonly Checked[]
  /** Intervals are there, where they can be. */
  readonly whole: boolean
}

const SEED = 1
const DRAWS = 4000
/** Half of 95 % of a normal distribution, in standard deviations. */
const REACH = 1.96
const BENCH = 0.05e-3
const GAUGE = 0.05e-3

function fitIn(answer: unknown): ComplianceFit | null {
  // The entry this names is a fit, and this is what it answers.
  return isRecord(answer) && answer.outcome === 'fitted' ? (answer.fit as ComplianceFit) : null
}

const readingsIn = (answer: unknown): readonly Reading[] =>
  isRecord(answer) && Array.isArray(answer.readings) ? (answer.readings as readonly Reading[]) : []

/** Without its readings and residuals, which scatter nothing. */
const lightened = (fit: ComplianceFit): ComplianceFit => ({
  ...fit,
  residuals: [],
  weights: [],
  leverage: [],
  readings: [],
  leftOut: [],
})

type Middle = { readonly expected: number | null; readonly cautions: readonly Caution[] }

/** The height in the middle, at the values as they are. */
function middleOf({ unit, turf }: Asked, condition: Condition): Middle {
  if (!unit || !turf) return { expected: null, cautions: [] }
  const settled = settleOnce({ unit, turf, condition })
  return {
    expected: settled.outcome === 'settled' ? settled.effectiveHeight.middle : null,
    cautions: settled.cautions,
  }
}

/** How far the height may lie below and above the expected one, from the fit and the setting. */
function reachesOf(strip: Asked, input: CheckInput): readonly [number, number] | null {
  const { unit, turf, ofSet } = strip
  const { fit, condition, bench } = input
  if (!unit || !turf) return null
  const hasScatter = bench > 0
  if (!hasScatter && !fit) return [0, 0]
  const question = {
    unit,
    turf,
    condition,
    scatter: hasScatter ? { benchHeight: { kind: 'normal' as const, standardDeviation: bench } } : {},
    draws: DRAWS,
    seed: SEED,
  }
  const fitted = fit ? { fit, ...(ofSet === null ? {} : { set: ofSet }) } : {}
  try {
    const found = uncertainHeight({ ...question, ...fitted })
    if (found.outcome !== 'answered' || found.nominal === null) return null
    const at = (probability: number) => found.quantiles.find(one => one.probability === probability)?.value
    const [low, high] = [at(LOW), at(HIGH)]
    return low === undefined || high === undefined ? null : [found.nominal - low, high - found.nominal]
  } catch (error) {
    // A fit that does not determine its numbers: nothing is known of how far they may be off.
    if (error instanceof InputError) return null
    throw error
  }
}

const LOW = 0.025
const HIGH = 0.975

function checked(
  strip: Asked,
  middle: Middle,
  reaches: readonly [number, number] | null,
  gauge: number,
): Checked {
  const { unit, turf, ofSet: _, ...own } = strip
  const { expected } = middle
  const { measured } = strip
  const why = !unit ? 'no roller' : !turf ? 'no turf' : expected === null ? 'no answer' : null
  const told = { ...own, expected, why } as const
  if (expected === null || reaches === null) return { ...told, between: null, verdict: null, outside: 0 }
  const noise = REACH * (strip.standardError ?? gauge / Math.sqrt(strip.count))
  const between = [
    expected - Math.hypot(reaches[0], noise),
    expected + Math.hypot(reaches[1], noise),
  ] as const
  const verdict = measured < between[0] ? 'lower' : measured > between[1] ? 'higher' : 'agrees'
  const outside = Math.max(0, between[0] - measured, measured - between[1])
  return { ...told, between, verdict, outside }
}

/** Each caution once, though several strips give rise to it. */
function once(cautions: readonly Caution[]): readonly Caution[] {
  return [...new Map(cautions.map(caution => [`${caution.kind} ${caution.where ?? ''}`, caution])).values()]
}

function compared(input: CheckInput, onStep: ((done: number) => void) | null) {
  const middles = input.strips.map(strip => middleOf(strip, input.condition))
  const strips = input.strips.map((strip, i) => {
    const reaches = onStep ? reachesOf(strip, input) : null
    onStep?.((i + 1) / input.strips.length)
    return checked(strip, middles[i] ?? { expected: null, cautions: [] }, reaches, input.gauge)
  })
  return {
    outcome: 'answered' as const,
    result: { strips, whole: onStep !== null },
    cautions: once(middles.flatMap(({ cautions }) => cautions)),
  }
}

/** Heights after a test strip, beside those that a fit lets expect. */
export const check: Kind<'check', CheckSettings, CheckInput, CheckResult> = {
  kind: 'check',
  read: fields => ({
    readings: fields.text('readings', ''),
    fit: fields.text('fit', ''),
    bench: fields.number('bench', BENCH),
    gauge: fields.number('gauge', GAUGE),
  }),
  whenAdded: ({ entries }) => {
    const first = (kind: string) => entries.find(entry => entry.kind === kind)?.id ?? ''
    return { readings: first('readings'), fit: first('fit') }
  },
  problems: ({ readings, fit, bench, gauge }, _, entries) => {
    const is = (id: string, kind: string) =>
      id === '' || entries.some(entry => entry.id === id && entry.kind === kind)
    return [
      ...(is(readings, 'readings')
        ? []
        : [{ path: 'readings', expected: 'the name of an entry with readings', received: readings }]),
      ...(is(fit, 'fit') ? [] : [{ path: 'fit', expected: 'the name of a fit', received: fit }]),
      ...(bench >= 0 ? [] : [{ path: 'bench', expected: 'at least 0', received: String(bench) }]),
      ...(gauge >= 0 ? [] : [{ path: 'gauge', expected: 'at least 0', received: String(gauge) }]),
    ]
  },
  needs: ({ readings, fit }, entries) => [readings, fit].filter(id => entries.some(entry => entry.id === id)),
  input({ settings, scenario, answers }) {
    const { unit, rollers, condition } = scenario
    const fit = settings.fit === '' ? null : fitIn(answers[settings.fit])
    const turfFor = (set: string): Turf | null => {
      if (settings.fit === '') return presentTurf(scenario)
      if (!fit) return null
      if (fit.turf) return fittedTurf(fit, null, scenario)
      return Object.hasOwn(fit.turfs, set) ? fittedTurf(fit, set, scenario) : null
    }
    const unitWith = (name: string | null): Unit | null => {
      if (name === null) return unit
      const roller = Object.hasOwn(rollers, name) ? rollers[name] : undefined
      return roller ? refit({ unit, position: 'front', roller }) : null
    }
    return {
      strips: stripsOf(readingsIn(answers[settings.readings])).map(strip => ({
        ...strip,
        unit: unitWith(strip.roller),
        turf: turfFor(strip.set),
        ofSet: fit && !fit.turf ? strip.set : null,
      })),
      condition,
      fit: fit && lightened(fit),
      bench: settings.bench,
      gauge: settings.gauge,
    }
  },
  compute: input => ({
    ...compared(input, null),
    ...(input.strips.length === 0 ? { whole: true as const } : {}),
  }),
  refine: (input, onStep) => compared(input, onStep),
  offers: ({ strips }) => {
    const differences = strips.flatMap(({ measured, expected }) =>
      expected === null ? [] : [measured - expected],
    )
    const mean = differences.reduce((sum, one) => sum + one, 0) / differences.length
    return {
      strips: { quantity: 'count', value: strips.length },
      agree: { quantity: 'count', value: strips.filter(({ verdict }) => verdict === 'agrees').length },
      difference: { quantity: 'height', value: differences.length === 0 ? null : mean },
    }
  },
  workedOut({ result, format }) {
    const one = result.strips.find(({ between }) => between !== null)
    if (!one?.between || one.expected === null) return []
    return [
      {
        what: 'checkBetween',
        equation: 'h ± √(U² + (1.96 σ_g)²/n)',
        filled: `${format(one.expected, 'height')}: ${format(one.between[0], 'height')} to ${format(one.between[1], 'height')}, n = ${one.count}`,
      },
      {
        what: 'checkMean',
        equation: 'h̄ = Σ h_i/n',
        filled: `${format(one.measured, 'height')}, ${format(one.measured - one.expected, 'height', { signed: true })} from what was expected`,
      },
    ]
  },
  section: '§7',
  check: 'test/explorer/entries/check.test.ts',
}
