import { GRAVITY } from '../../quantities/index.ts'
import type { Unit } from '../../unit/index.ts'

/** A column by the name of an input: as drawn, or its one value throughout. */
export type ColumnOf = (name: string, nominal: number) => Float64Array

/** The sums of the balance (see balanceOf), a column each; nothing rolls and nothing leans sideways. */
export type BalanceColumns = {
  readonly total: Float64Array
  readonly along: Float64Array
  readonly above: Float64Array
  readonly steady: Float64Array
  readonly wheelbase: Float64Array
  /** R_r − R_f. */
  readonly rise: Float64Array
}

/** Adds a force at a place, `lift` above the front axle. */
type Add = (i: number, down: number, back: number, at: number, lift: number) => void

/**
 * The balance of every draw at once.
 *
 *   as balanceOf: total = Σ N, along = Σ N x + Σ T (h − R_f), above = Σ N (h − R_f) − Σ T x, steady = −P (h_hitch − R_f)
 *
 * Holds   at rest, level across; what the scales were out by stands on the body
 * Source  docs/physics.md §4.2
 */
export function balanceColumns(unit: Unit, columnOf: ColumnOf, count: number): BalanceColumns {
  const { body, loads = [], frontRoller, rearRoller } = unit
  const wheelbase = columnOf('wheelbase', unit.wheelbase)
  const frontDiameter = columnOf('frontRoller.diameter', frontRoller.diameter)
  const rearDiameter = columnOf('rearRoller.diameter', rearRoller.diameter)
  const slope = columnOf('slopeAlong', unit.slopeAlong ?? 0)
  const fresh = () => new Float64Array(count)
  const down = fresh().fill(GRAVITY)
  const back = fresh()
  // loops, not maps: a map of a typed array puts every number on the heap
  for (let i = 0; i < count; i++) {
    const angle = slope[i]!
    if (angle === 0) continue
    down[i] = GRAVITY * Math.cos(angle)
    back[i] = GRAVITY * Math.sin(angle)
  }
  const sums = { total: fresh(), along: fresh(), above: fresh(), pull: fresh() }
  const add: Add = (i, downwards, backwards, at, lift) => {
    sums.total[i] = sums.total[i]! + downwards
    sums.pull[i] = sums.pull[i]! + backwards
    sums.along[i] = sums.along[i]! + downwards * at + backwards * lift
    sums.above[i] = sums.above[i]! + downwards * lift - backwards * at
  }
  const liftOf = (name: string, height: number | undefined) => {
    const column = height === undefined ? undefined : columnOf(name, height)
    return (i: number) => (column ? column[i]! - frontDiameter[i]! / 2 : 0)
  }
  const bodyMass = columnOf('body.mass', body.mass)
  const bodyAt = columnOf('body.at', body.at)
  const bodyLift = liftOf('body.height', body.height)
  const scalesFront = columnOf('scales.front', 0)
  const scalesRear = columnOf('scales.rear', 0)
  const frontMass = columnOf('frontRoller.mass', frontRoller.mass)
  const rearMass = columnOf('rearRoller.mass', rearRoller.mass)
  const rise = fresh()
  for (let i = 0; i < count; i++) {
    const g = down[i]!
    const t = back[i]!
    const B = wheelbase[i]!
    rise[i] = (rearDiameter[i]! - frontDiameter[i]!) / 2
    const mass = bodyMass[i]! + scalesFront[i]! + scalesRear[i]!
    const at = (bodyMass[i]! * bodyAt[i]! + scalesRear[i]! * B) / mass
    add(i, mass * g, mass * t, at, bodyLift(i))
    add(i, frontMass[i]! * g, frontMass[i]! * t, 0, 0)
    add(i, rearMass[i]! * g, rearMass[i]! * t, B, rise[i]!)
  }
  loads.forEach((load, k) => {
    const name = (part: string) => `loads.${k}.${part}`
    const mass = columnOf(name('mass'), load.mass ?? 0)
    const pressed = columnOf(name('down'), load.down ?? 0)
    const forward = columnOf(name('forward'), load.forward ?? 0)
    const at = columnOf(name('at'), load.at)
    const lift = liftOf(name('height'), load.height)
    for (let i = 0; i < count; i++)
      add(i, mass[i]! * down[i]! + pressed[i]!, mass[i]! * back[i]! - forward[i]!, at[i]!, lift(i))
  })
  const hitch = liftOf('hitchHeight', unit.hitchHeight)
  const steady = fresh()
  if (unit.hitchHeight !== undefined) for (let i = 0; i < count; i++) steady[i] = -sums.pull[i]! * hitch(i)
  return { total: sums.total, along: sums.along, above: sums.above, steady, wheelbase, rise }
}
