import {
  type ComplianceFit,
  InputError,
  nextReading,
  type Scenario,
  type Turf,
  turfOf,
} from '@swardsink/model'
import { presentTurf } from '../../book/index.ts'
import { settleOnce } from '../settled.ts'
import { feetOf } from './curve.ts'

/** What the unit in hand would do on the fitted turf. */
export type Here = {
  readonly height: number
  /** Half of the 95 % interval from the fit alone; null where that is not known. */
  readonly half: number | null
  /** Of the front roller. */
  readonly load: number
  readonly sinkage: number
}

/** The fitted turf with what was not measured of it: rebound and recovery of the turf in hand. */
export function fittedTurf(fit: ComplianceFit, set: string | null, now: Scenario): Turf {
  const { spread: _, fittedFrom: __, fittedTo: ___, source: ____, ...rest } = presentTurf(now)
  return { ...rest, ...turfOf(fit, set ?? undefined) }
}

/** How many standard errors the intervals of this fit reach; null where none of them says. */
export function reachOf({ parameters }: ComplianceFit): number | null {
  for (const { name, value, standardError, interval } of parameters) {
    if (standardError === null || !(standardError > 0) || interval.kind !== 'interval') continue
    const { low, high } = interval
    const isPlain = name === 'spread' || name === 'datum' || name === 'dropDatum'
    if (isPlain) return (high - low) / 2 / standardError
    if (low > 0) return Math.log(high / low) / 2 / (standardError / value)
  }
  return null
}

/** The standard error of the height from the fit alone, by its slopes along the fitted numbers. */
function errorOf(fit: ComplianceFit, set: string | null, now: Scenario): number | null {
  const { unit, rollers, condition } = now
  const foot = feetOf(fit)[0] ?? { kind: 'roller' as const, name: null }
  const of = set === null ? {} : { set }
  const load = fit.loads?.high ?? 1
  try {
    const { now: known } = nextReading({
      fit,
      unit,
      condition,
      scenario: { unit, rollers },
      ...of,
      candidates: [{ foot, load, ...of }],
    })
    return known.height?.standardError ?? null
  } catch (error) {
    if (error instanceof InputError) return null
    throw error
  }
}

const known = new WeakMap<ComplianceFit, { readonly key: string; readonly here: Here | null }>()

/** On the fitted turf of a set; null where the unit has no answer there. */
export function hereOf(fit: ComplianceFit, set: string | null, now: Scenario): Here | null {
  const turf = fittedTurf(fit, set, now)
  const { unit, condition } = now
  const key = JSON.stringify([set, unit, condition, turf])
  const found = known.get(fit)
  if (found?.key === key) return found.here
  const settled = settleOnce({ unit, turf, condition })
  const error = settled.outcome === 'settled' ? errorOf(fit, set, now) : null
  const reach = reachOf(fit)
  const here =
    settled.outcome !== 'settled'
      ? null
      : {
          height: settled.effectiveHeight.middle,
          half: error === null || reach === null ? null : reach * error,
          load: settled.front.load,
          sinkage: settled.front.sinkage,
        }
  known.set(fit, { key, here })
  return here
}
