import { type NoHeight, type Scatter, type UncertainHeight, uncertainHeight } from '@swardsink/model'
import type { Answer, Kind } from '../../book/index.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'
import { type FromFit, fromFit } from './fromFit.ts'
import { SET_HERE, type UncertaintySettings, USUAL } from './settings.ts'
import { straightSpread } from './straight.ts'

export type UncertaintyInput = SettledInput & {
  readonly scatter: Readonly<Record<string, Scatter>>
  readonly fit: Omit<FromFit, 'turf'> | null
  /** A fit was named that has no answer of this kind. */
  readonly lacksFit: boolean
  readonly wanted: { readonly height: number; readonly tolerance: number } | null
  readonly draws: number
  readonly seed: number
}

export type HangsOn = {
  readonly name: string
  readonly share: number
  /** From the limited number of draws; null before any were made. */
  readonly standardError: number | null
  /** Change of the height per standard deviation of it; null for a fit, whose parameters go together. */
  readonly by: number | null
}

export type UncertaintyResult = {
  /** By straight lines at once, or by draws. */
  readonly by: 'lines' | 'draws'
  readonly nominal: number | null
  /** 2.5, 25, 50, 75, 97.5 %. */
  readonly quantiles: readonly number[]
  readonly deviation: number | null
  readonly histogram: {
    readonly from: number
    readonly width: number
    readonly counts: readonly number[]
  } | null
  readonly hangsOn: readonly HangsOn[] | null
  readonly interactions: number | null
  readonly wanted: {
    readonly height: number
    readonly tolerance: number
    /** Parts of all draws; null before any were made. */
    readonly within: number | null
    readonly below: number | null
    readonly above: number | null
  } | null
  readonly unanswered: readonly { readonly why: string; readonly where: string; readonly share: number }[]
  readonly scalps: number
  readonly draws: number
}

/** What scatters, and how; what is told to be exact is left out. */
function scatterOf(settings: UncertaintySettings): Readonly<Record<string, Scatter>> {
  const { softness, benchHeight, scales, rollerMass, fit } = settings
  return {
    ...(softness > 0 && fit === '' ? { softness: { kind: 'log-normal', relative: softness } } : {}),
    ...(benchHeight > 0 ? { benchHeight: { kind: 'normal', standardDeviation: benchHeight } } : {}),
    ...(rollerMass > 0 ? { 'frontRoller.mass': { kind: 'normal', standardDeviation: rollerMass } } : {}),
    ...(scales > 0
      ? {
          'scales.front': { kind: 'uniform', halfWidth: scales },
          'scales.rear': { kind: 'uniform', halfWidth: scales },
        }
      : {}),
  }
}

const none = (reason: string): Answer<UncertaintyResult> => ({
  outcome: 'no answer',
  why: { kind: 'reason', reason, values: {} },
  cautions: [],
})

/** What stands in the way of any answer; null when nothing does. */
function refusal({ scatter, fit, lacksFit }: UncertaintyInput): Answer<UncertaintyResult> | null {
  if (lacksFit) return none('uncertainty lacks a fit')
  if (fit && fit.fit.covariance === null) return none('uncertainty of no fit')
  return Object.keys(scatter).length === 0 && !fit ? none('uncertainty of nothing') : null
}

const partsOf = ({ unit, turf, condition }: UncertaintyInput): SettledInput => ({ unit, turf, condition })

function byLines(input: UncertaintyInput): Answer<UncertaintyResult> {
  return answer<UncertaintyResult>(() => {
    const settled = settleOnce(partsOf(input))
    if (settled.outcome !== 'settled') return settled
    const height = settled.effectiveHeight.middle
    const { scatter, fit, wanted } = input
    const { deviation, quantiles, parts } = straightSpread(partsOf(input), { height, scatter, fit })
    return {
      result: {
        by: 'lines',
        nominal: height,
        quantiles,
        deviation,
        histogram: null,
        hangsOn: deviation > 0 ? parts.map(part => ({ ...part, standardError: null })) : null,
        interactions: null,
        wanted: wanted && { ...wanted, within: null, below: null, above: null },
        unanswered: [],
        scalps: 0,
        draws: 0,
      },
      cautions: settled.cautions,
    }
  })
}

function byDraws(input: UncertaintyInput, onStep: (done: number) => void): Answer<UncertaintyResult> {
  const { scatter, fit, wanted, draws, seed } = input
  let found: UncertainHeight | NoHeight | undefined
  const asked = answer(() => {
    found = uncertainHeight({
      ...partsOf(input),
      scatter,
      draws,
      seed,
      ...(fit ? { fit: fit.fit, ...(fit.set === undefined ? {} : { set: fit.set }) } : {}),
      ...(wanted ? { wanted } : {}),
      onStep,
    })
    return { result: null, cautions: found.cautions }
  })
  if (asked.outcome !== 'answered') return asked
  if (!found || found.outcome === 'no answer') return none('uncertainty without draws')
  return { outcome: 'answered', result: drawn(found), cautions: asked.cautions }
}

/** What the draws say, as far as it is shown. */
const drawn = (found: UncertainHeight): UncertaintyResult => ({
  by: 'draws',
  nominal: found.nominal,
  quantiles: found.quantiles.map(({ value }) => value),
  deviation: found.standardDeviation?.value ?? null,
  histogram: found.histogram,
  hangsOn:
    found.hangsOn?.map(({ name, share, effect }) => ({
      name,
      share: share.value,
      standardError: share.standardError,
      by: effect,
    })) ?? null,
  interactions: found.interactions?.value ?? null,
  wanted: found.wanted
    ? {
        height: found.wanted.height,
        tolerance: found.wanted.tolerance,
        within: found.wanted.within.value,
        below: found.wanted.below.value,
        above: found.wanted.above.value,
      }
    : null,
  unanswered: found.unanswered.map(({ why, where, share }) => ({ why, where, share })),
  scalps: found.scalps.value,
  draws: found.draws.answered,
})

/** What the height may be when the turf, the setting and the scales are known only so well, and what it hangs on. */
export const uncertainty: Kind<'uncertainty', UncertaintySettings, UncertaintyInput, UncertaintyResult> = {
  kind: 'uncertainty',
  read: fields => ({
    softness: fields.number('softness', USUAL.softness),
    benchHeight: fields.number('benchHeight', USUAL.benchHeight),
    scales: fields.number('scales', USUAL.scales),
    rollerMass: fields.number('rollerMass', USUAL.rollerMass),
    tolerance: fields.number('tolerance', USUAL.tolerance),
    fit: fields.text('fit', USUAL.fit),
    set: fields.text('set', USUAL.set),
    draws: fields.number('draws', USUAL.draws),
    seed: fields.number('seed', USUAL.seed),
  }),
  problems: (settings, _, entries) => [
    ...(settings.fit === '' || entries.some(({ id, kind }) => id === settings.fit && kind === 'fit')
      ? []
      : [{ path: 'fit', expected: 'the name of an entry with a fit', received: settings.fit }]),
    ...SET_HERE.filter(name => settings[name] < 0).map(name => ({
      path: name,
      expected: 'at least 0',
      received: String(settings[name]),
    })),
  ],
  needs: ({ fit }, entries) => (entries.some(({ id }) => id === fit) ? [fit] : []),
  input({ settings, scenario, answers }) {
    const present = settledInput(scenario)
    const found = settings.fit === '' ? null : fromFit(answers[settings.fit], present.turf, settings.set)
    const height = scenario.effectiveHeight
    return {
      ...present,
      turf: found?.turf ?? present.turf,
      scatter: scatterOf(settings),
      fit: found && { fit: found.fit, set: found.set },
      lacksFit: settings.fit !== '' && !found,
      wanted: height === undefined ? null : { height, tolerance: settings.tolerance },
      draws: settings.draws,
      seed: settings.seed,
    }
  },
  compute: input => refusal(input) ?? byLines(input),
  refine: (input, onStep) => refusal(input) ?? byDraws(input, onStep),
  offers: ({ quantiles, deviation, nominal, wanted }) => ({
    low: { quantity: 'height', value: quantiles[0] ?? null },
    median: { quantity: 'height', value: quantiles[2] ?? null },
    high: { quantity: 'height', value: quantiles[4] ?? null },
    nominal: { quantity: 'height', value: nominal },
    standardDeviation: { quantity: 'height', value: deviation },
    within: { quantity: 'ratio', value: wanted?.within ?? null },
  }),
  workedOut({ input, result, format }) {
    const { nominal, hangsOn, deviation, draws, by } = result
    const lines = Object.entries(input.scatter).map(([name, scatter]) => {
      const moved = hangsOn?.find(one => one.name === name)?.by
      const told = moved === null || moved === undefined ? '' : format(moved, 'drop', { signed: true })
      return {
        what: 'uncertaintyStep',
        equation: `h(x + σ_x) − h(x), x = ${name}`,
        filled: `${sigma(scatter)}: ${told}`,
      }
    })
    return [
      ...(nominal === null
        ? []
        : [{ what: 'uncertaintyNominal', equation: 'h_e = h_b − drop', filled: format(nominal, 'height') }]),
      ...lines,
      ...(deviation === null
        ? []
        : [
            by === 'lines'
              ? {
                  what: 'uncertaintyLines',
                  equation: 'σ² = Σ (h(x + σ_x) − h(x))²',
                  filled: `σ = ${format(deviation, 'height')}`,
                }
              : {
                  what: 'uncertaintyDraws',
                  equation: 'h_i = h(x_i), x_i ~ X',
                  filled: `${draws}, ${input.seed}: σ = ${format(deviation, 'height')}`,
                },
          ]),
    ]
  },
  section: '§7',
  check: 'test/model/study/uncertainty/uncertainHeight.test.ts',
}

function sigma(scatter: Scatter): string {
  if (scatter.kind === 'log-normal') return `σ_ln = ${scatter.relative}`
  return scatter.kind === 'normal'
    ? `σ = ${scatter.standardDeviation.toPrecision(2)}`
    : `± ${scatter.halfWidth.toPrecision(2)}`
}
