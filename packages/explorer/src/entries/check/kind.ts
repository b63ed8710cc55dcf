import {
  type ComplianceFit,
  type Condition,
  type Reading,
  refit,
  type Turf,
  type Unit,
} from '@swardsink/model'
import { isRecord, type Kind, presentTurf } from '../../book/index.ts'
import { fittedTurf } from '../fit/here.ts'
import { compared } from './compared.ts'
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
export type Asked = Strip & {
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
  compute(input) {
    const found = compared(input, null)
    return input.strips.length === 0 && found.outcome === 'answered' ? { ...found, whole: true } : found
  },
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
