import { halved, type PlainRoller, sinkageUnder } from './side.ts'

export type PlainUnit = {
  readonly wheelbase: number
  readonly edge: number
  readonly benchHeight: number
  readonly front: PlainRoller & { readonly mass: number }
  readonly rear: PlainRoller & { readonly mass: number }
  /** Without rollers; height above the bench line. */
  readonly body: { readonly mass: number; readonly at: number; readonly height: number }
}

export type PlainSettled = {
  readonly front: number
  readonly rear: number
  readonly tilt: number
  readonly effectiveHeight: number
}

const GRAVITY = 9.80665
/** No unit leans more. */
const STEEPEST = 0.2

/**
 * A unit at rest on springs, loop within loop: a tilt, the loads it gives, the sinkages they give, the tilt those give.
 *
 *   F_r X(B, R_r) = Σ N X(x, h),  X = x cos θ + (h − R_f) sin θ;  z_r − z_f = B sin θ + (R_r − R_f)(1 − cos θ)
 */
export function settled(unit: PlainUnit, pressure: (depth: number) => number, deepest: number): PlainSettled {
  const { wheelbase, front, rear, body } = unit
  const R = front.radius
  const weights = [
    { force: front.mass * GRAVITY, at: 0, height: R },
    { force: rear.mass * GRAVITY, at: wheelbase, height: rear.radius },
    { force: body.mass * GRAVITY, at: body.at, height: body.height },
  ]
  const total = weights.reduce((sum, { force }) => sum + force, 0)
  const sinkagesAt = (tilt: number) => {
    const X = (x: number, h: number) => x * Math.cos(tilt) + (h - R) * Math.sin(tilt)
    const moment = weights.reduce((sum, { force, at, height }) => sum + force * X(at, height), 0)
    const onRear = moment / X(wheelbase, rear.radius)
    return {
      front: sinkageUnder(pressure, front, total - onRear, deepest),
      rear: sinkageUnder(pressure, rear, onRear, deepest),
    }
  }
  const excess = (tilt: number) => {
    const found = sinkagesAt(tilt)
    const lean = wheelbase * Math.sin(tilt) + (rear.radius - R) * (1 - Math.cos(tilt))
    return lean - (found.rear - found.front)
  }
  const tilt = halved(excess, 0, [-STEEPEST, STEEPEST])
  const found = sinkagesAt(tilt)
  const drop = found.front + unit.edge * Math.sin(tilt) + (unit.benchHeight - R) * (1 - Math.cos(tilt))
  return { ...found, tilt, effectiveHeight: unit.benchHeight - drop }
}
