import { type ComplianceFit, InputError, type Turf, turfOf } from '@swardsink/model'
import { isRecord } from '../../book/index.ts'

/** A turf that was found from readings, with what is needed of its fit to scatter it. */
export type FromFit = { readonly turf: Turf; readonly fit: ComplianceFit; readonly set: string | undefined }

function isFit(value: unknown): value is ComplianceFit {
  return (
    isRecord(value) &&
    (value.outcome === 'converged' || value.outcome === 'stopped') &&
    Array.isArray(value.parameters) &&
    isRecord(value.turfs)
  )
}

/** Without its readings and residuals, which scatter nothing: it goes to the worker with every question. */
const lightened = (fit: ComplianceFit): ComplianceFit => ({
  ...fit,
  residuals: [],
  weights: [],
  leverage: [],
  readings: [],
  leftOut: [],
})

/**
 * The turf of a fit's answer, as a set of it or as what all sets share; null where there is none. What a fit does not
 * tell, how the turf comes back, is taken from the turf in hand.
 */
export function fromFit(answer: unknown, present: Turf, asked: string): FromFit | null {
  const told = isRecord(answer) ? answer : {}
  const fit = isFit(told.fit) ? told.fit : isFit(answer) ? answer : null
  if (!fit) return null
  const shown = isRecord(told.curve) && typeof told.curve.set === 'string' ? told.curve.set : undefined
  const { law: _, spread: __, ...rest } = present
  for (const set of [asked || undefined, undefined, shown, Object.keys(fit.turfs)[0]]) {
    try {
      return { turf: { ...rest, ...turfOf(fit, set) }, fit: lightened(fit), set: asked === '' ? set : asked }
    } catch (error) {
      if (!(error instanceof InputError)) throw error
    }
  }
  return null
}
