import { type Caution, type Condition, InputError, uncertainHeight } from '@swardsink/model'
import { answer, settleOnce } from '../settled.ts'
import type { Asked, Checked, CheckInput, CheckResult } from './kind.ts'

const SEED = 1
const DRAWS = 4000
/** Half of 95 % of a normal distribution, in standard deviations. */
const REACH = 1.96
/** The ends of 95 %. */
const LOW = 0.025
const HIGH = 0.975

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
    if (error instanceof InputError && error.quantity.startsWith('fit.')) return null
    throw error
  }
}

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

/** Every strip beside what is expected; intervals come with `onStep`, which hears how far they are. */
export function compared(input: CheckInput, onStep: ((done: number) => void) | null) {
  return answer<CheckResult>(() => {
    const middles = input.strips.map(strip => middleOf(strip, input.condition))
    const strips = input.strips.map((strip, i) => {
      const reaches = onStep ? reachesOf(strip, input) : null
      onStep?.((i + 1) / input.strips.length)
      return checked(strip, middles[i] ?? { expected: null, cautions: [] }, reaches, input.gauge)
    })
    return {
      result: { strips, whole: onStep !== null },
      cautions: once(middles.flatMap(({ cautions }) => cautions)),
    }
  })
}
