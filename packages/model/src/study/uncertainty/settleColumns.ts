import type { BalanceColumns } from './balanceColumns.ts'
import { type LnReader, newLnReading } from './sideMaker.ts'

/** What becomes of a draw that the columns can not settle: it is solved by itself. */
export const UNSETTLED = 255

type Question = {
  readonly balance: BalanceColumns
  readonly front: LnReader
  readonly rear: LnReader
  readonly edge: Float64Array
  readonly benchHeight: Float64Array
  readonly frontDiameter: Float64Array
  /** ln sinkages to start from. */
  readonly start: { readonly front: number; readonly rear: number }
}

const MOST_TURNS = 30
/** On ln(load): a miss this small is mended along the tangent, which leaves less than its square. */
const TANGENT = 2e-5
/** On sin θ. */
const CLOSE = 1e-15
/** Greatest step of ln z. */
const REACH = 1.5

const f = newLnReading()
const r = newLnReading()

/** sin θ of z_r − z_f = B sin θ + (R_r − R_f)(1 − cos θ): the second part is a thousandth of the first. */
function sineOf(deeper: number, wheelbase: number, rise: number): number {
  let sine = deeper / wheelbase
  if (rise === 0) return sine
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const next = (deeper - rise * leanLoss(sine)) / wheelbase
    const moved = Math.abs(next - sine)
    sine = next
    if (moved <= CLOSE) break
  }
  return sine
}

/** 1 − cos θ without cancellation. */
const leanLoss = (sine: number): number => (sine * sine) / (1 + Math.sqrt(1 - sine * sine))

const within = (step: number): number => Math.min(Math.max(step, -REACH), REACH)

/**
 * Effective height of every draw: both rollers and the lean together, by Newton in (ln z_f, ln z_r).
 *
 *   ln W_f(z_f) = ln(Σ N − F_r),  ln W_r(z_r) = ln F_r,  F_r as rearLoad at the tilt of z_r − z_f
 *   h_e = h_b − z_f − c sin θ − (h_b − R_f)(1 − cos θ)
 *
 * Fills heights; draws that leave what is tabulated, or do not settle, are marked UNSETTLED.
 *
 * Source  docs/physics.md §4
 */
export function settleColumns(question: Question, heights: Float64Array, codes: Uint8Array): void {
  const { balance, front, rear, edge, benchHeight, frontDiameter, start } = question
  const { total, along, above, steady, wheelbase, rise } = balance
  for (let i = 0; i < heights.length; i++) {
    if (codes[i] !== 0) continue
    const B = wheelbase[i]!
    const lift = rise[i]!
    const levelRear = (along[i]! + steady[i]!) / B
    const levelFront = total[i]! - levelRear
    f.lnSinkage = start.front
    r.lnSinkage = start.rear
    if (!(levelRear > 0 && levelFront > 0 && front(i, f) && rear(i, r))) {
      codes[i] = UNSETTLED
      continue
    }
    // level first: straight in logarithms, or nearly
    let lnFront = start.front + within((Math.log(levelFront) - f.lnLoad) / f.slope)
    let lnRear = start.rear + within((Math.log(levelRear) - r.lnLoad) / r.slope)
    let settled = false
    for (let turn = 0; turn < MOST_TURNS && !settled; turn++) {
      f.lnSinkage = lnFront
      r.lnSinkage = lnRear
      if (!front(i, f) || !rear(i, r)) break
      const deepFront = Math.exp(lnFront)
      const deepRear = Math.exp(lnRear)
      const sine = sineOf(deepRear - deepFront, B, lift)
      const cosine = 1 - leanLoss(sine)
      const arm = B * cosine + lift * sine
      const onRear = (along[i]! * cosine + above[i]! * sine + steady[i]!) / arm
      const onFront = total[i]! - onRear
      if (!(onRear > 0 && onFront > 0)) break
      // d F_r/d(z_r − z_f)
      const shift =
        (above[i]! * cosine - along[i]! * sine - onRear * (lift * cosine - B * sine)) / (arm * arm)
      const missFront = f.lnLoad - Math.log(onFront)
      const missRear = r.lnLoad - Math.log(onRear)
      const a = f.slope - (shift * deepFront) / onFront
      const b = (shift * deepRear) / onFront
      const c = (shift * deepFront) / onRear
      const d = r.slope - (shift * deepRear) / onRear
      const determinant = a * d - b * c
      const stepFront = (b * missRear - d * missFront) / determinant
      const stepRear = (c * missFront - a * missRear) / determinant
      settled = Math.abs(missFront) + Math.abs(missRear) <= TANGENT
      const damp = Math.min(1, REACH / Math.max(Math.abs(stepFront), Math.abs(stepRear)))
      lnFront += damp * stepFront
      lnRear += damp * stepRear
    }
    if (!settled || !Number.isFinite(lnFront + lnRear)) {
      codes[i] = UNSETTLED
      continue
    }
    const deepFront = Math.exp(lnFront)
    const sine = sineOf(Math.exp(lnRear) - deepFront, B, lift)
    heights[i] =
      benchHeight[i]! -
      deepFront -
      edge[i]! * sine -
      (benchHeight[i]! - frontDiameter[i]! / 2) * leanLoss(sine)
  }
}
