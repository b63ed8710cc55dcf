import { rollerOnTurf } from '../../contact/index.ts'
import { beta, digamma } from '../../numerics/index.ts'
import { curveOf, type PressureLaw, REFERENCE_PRESSURE } from '../../turf/index.ts'
import type { ColumnOf } from './balanceColumns.ts'

/**
 * ln of a load at ln of a sinkage, and its slope. Asked and answered in one object: a call that the engine does not
 * inline puts every number it is handed on the heap.
 */
export type LnReading = { lnSinkage: number; lnLoad: number; slope: number }

export const newLnReading = (): LnReading => ({ lnSinkage: 0, lnLoad: 0, slope: 0 })

/** Reads one draw at the ln sinkage asked; false where nothing is tabulated. */
export type LnReader = (draw: number, reading: LnReading) => boolean

/** Sinkages that draws may meet, roughly. */
export type Depths = { readonly least: number; readonly most: number }

const LN_REFERENCE = Math.log(REFERENCE_PRESSURE)

const lnArcPartAt = (exponent: number): number => Math.log(beta(0.5, exponent + 1) / 2)

/** Knots over the exponents the power law takes: the cubic through them misses by less than 1e-10. */
const EXPONENTS = { low: 0.2, high: 2, step: 0.01 }
let arcParts: { readonly values: Float64Array; readonly rises: Float64Array } | undefined

/** ln C_n, C_n = ½ B(½, n+1): read between knots, for an exponent that is another in every draw. */
function lnArcPart(exponent: number): number {
  const { low, high, step } = EXPONENTS
  if (!(exponent >= low && exponent < high)) return lnArcPartAt(exponent)
  if (!arcParts) {
    const exponents = Float64Array.from(
      { length: Math.round((high - low) / step) + 2 },
      (_, k) => low + k * step,
    )
    arcParts = {
      values: exponents.map(lnArcPartAt),
      rises: exponents.map(n => step * (digamma(n + 1) - digamma(n + 3 / 2))),
    }
  }
  const at = (exponent - low) / step
  const k = Math.floor(at)
  const t = at - k
  const { values, rises } = arcParts
  const rise = values[k + 1]! - values[k]!
  const left = rises[k]!
  const right = rises[k + 1]!
  return values[k]! + t * (left + t * (3 * rise - 2 * left - right + t * (left + right - 2 * rise)))
}

/** ln of a column and something more. A loop, not a map: a map of a typed array puts every number on the heap. */
export function lnOf(column: Float64Array, more: ArrayLike<number> | number, part = 1): Float64Array {
  const sum = new Float64Array(column.length)
  const each = typeof more === 'number' ? undefined : more
  const all = typeof more === 'number' ? more : 0
  for (let i = 0; i < sum.length; i++) sum[i] = (each ? each[i]! : all) + part * Math.log(column[i]!)
  return sum
}

/** Reads sides of rollers, from columns of what is drawn of the law: for the diameters of each roller in turn. */
export type SideMaker = (columnOf: ColumnOf) => (diameter: Float64Array) => LnReader

/**
 *   E = C_n p_r (z/s)ⁿ √(2 R z),  C_n = ½ B(½, n+1)
 *
 * Source  docs/physics.md §3.1
 */
const powerSide =
  (softness: number, exponent: number): SideMaker =>
  columnOf => {
    const s = columnOf('softness', softness)
    const n = columnOf('exponent', exponent)
    const lnOfLaw = new Float64Array(s.length)
    for (let i = 0; i < s.length; i++) lnOfLaw[i] = lnArcPart(n[i]!) + LN_REFERENCE - n[i]! * Math.log(s[i]!)
    return diameter => {
      const lnFactor = lnOf(diameter, lnOfLaw, 1 / 2)
      return (i, reading) => {
        const power = n[i]! + 1 / 2
        reading.lnLoad = lnFactor[i]! + power * reading.lnSinkage
        reading.slope = power
        return true
      }
    }
  }

/** Knots this far apart in the logarithm leave the cubic an error near 1e-10 where a law is smooth. */
const KNOT_STEP = 0.02
/** Diameter of the roller that is tabulated: its radius is 1. */
const UNIT_ROLLER = { mass: 0, diameter: 2, length: 1, surface: { kind: 'smooth' } } as const

type OnTurf = ReturnType<typeof rollerOnTurf>

/** What a table is laid over: a place that grows with the sinkage, and d ln z/d place. */
type Axis = {
  readonly sinkageAt: (place: number) => number
  readonly stretch: (sinkage: number) => number
}

type Table = {
  readonly low: number
  readonly high: number
  readonly step: number
  readonly values: Float64Array
  /** Slopes, over a step. */
  readonly rises: Float64Array
}

function readTable({ low, step, values, rises }: Table, place: number, out: LnReading): void {
  const k = Math.min(Math.floor((place - low) / step), values.length - 2)
  const t = (place - low) / step - k
  const rise = values[k + 1]! - values[k]!
  const left = rises[k]!
  const right = rises[k + 1]!
  const c = 3 * rise - 2 * left - right
  const d = left + right - 2 * rise
  out.lnLoad = values[k]! + t * (left + t * (c + t * d))
  out.slope = (left + t * (2 * c + 3 * t * d)) / step
}

/** ln E against a place, as a cubic through knots and their slopes; its slope is told against the place. */
function layTable({ at, limit }: OnTurf, { sinkageAt, stretch }: Axis, low: number, high: number): Table {
  const count = Math.max(2, Math.ceil((high - low) / KNOT_STEP) + 1)
  const step = (high - low) / (count - 1)
  const values = new Float64Array(count)
  const rises = new Float64Array(count)
  for (let k = 0; k < count; k++) {
    const sinkage = Math.min(sinkageAt(low + k * step), limit)
    const { load, stiffness } = at(sinkage)
    values[k] = Math.log(load / 2)
    rises[k] = ((stiffness * sinkage) / load) * stretch(sinkage) * step
  }
  return { low, high, step, values, rises }
}

/** Up to this part of the depth at which a law locks its load is smooth enough in ln z. */
const SHALLOW = 0.25

/**
 * One side of a roller of radius 1 on one law, ln E against ln z; deeper in a law that locks at H against
 * ln(z/(H − z)), in which the load stays smooth up to the locking.
 */
function sideTable(law: PressureLaw, { least, most }: Depths): LnReader {
  const on = rollerOnTurf({ roller: UNIT_ROLLER, turf: { law }, condition: { kind: 'standing' } })
  const { pole } = curveOf(law)
  const deepest = Math.min(most, on.limit)
  const bend = Math.min(deepest, SHALLOW * pole)
  const inLn = { sinkageAt: Math.exp, stretch: () => 1 }
  const shallow = layTable(on, inLn, Math.log(Math.min(least, bend / 2)), Math.log(bend))
  const placeIn = (part: number) => Math.log(part / (1 - part))
  const locking = {
    sinkageAt: (x: number) => pole / (1 + Math.exp(-x)),
    stretch: (z: number) => 1 - z / pole,
  }
  const deep =
    deepest > bend ? layTable(on, locking, placeIn(bend / pole), placeIn(deepest / pole)) : undefined
  return (_draw, reading) => {
    const { lnSinkage } = reading
    if (lnSinkage < shallow.low) return false
    if (lnSinkage <= shallow.high) {
      readTable(shallow, lnSinkage, reading)
      return true
    }
    const part = Math.exp(lnSinkage) / pole
    const place = placeIn(part)
    if (!deep || !(place <= deep.high)) return false
    readTable(deep, place, reading)
    reading.slope /= 1 - part
    return true
  }
}

/**
 * A law whose draws are all one law stretched in depth by D and in pressure by P: one table tells them all.
 *
 *   E(z; R) = P √(R D) E₁(z/D; 1)
 *
 * Source  similarity (docs/physics.md §7.4)
 */
function similarSide(
  read: LnReader,
  depth: Float64Array,
  pressure: (draw: number) => number,
): ReturnType<SideMaker> {
  const lnDepth = lnOf(depth, 0)
  const lnOfLaw = new Float64Array(depth.length)
  for (let i = 0; i < depth.length; i++) lnOfLaw[i] = Math.log(pressure(i)) + (lnDepth[i]! - Math.LN2) / 2
  return diameter => {
    const lnFactor = lnOf(diameter, lnOfLaw, 1 / 2)
    return (i, reading) => {
      const { lnSinkage } = reading
      reading.lnSinkage = lnSinkage - lnDepth[i]!
      const isTold = read(i, reading)
      reading.lnSinkage = lnSinkage
      reading.lnLoad += lnFactor[i]!
      return isTold
    }
  }
}

/**
 * One side of a roller on a law whose parameters are drawn.
 *
 *   linear, power             any softness and exponent
 *   stiffening, logarithmic   any softness and locking depth: D = H, P = p_r/p₁(s/H)
 *   others                    any softness: they are stretched in depth by `stretch`
 */
export function sideMaker(law: PressureLaw, { least, most }: Depths): SideMaker {
  if (law.kind === 'linear') return powerSide(law.softness, 1)
  if (law.kind === 'power') return powerSide(law.softness, law.exponent)
  if (law.kind === 'stiffening' || law.kind === 'logarithmic') {
    const { softness, lockingDepth } = law
    const unit = { ...law, softness: softness / lockingDepth, lockingDepth: 1 }
    const { pressure } = curveOf(unit)
    const read = sideTable(unit, { least: least / lockingDepth, most: most / lockingDepth })
    return columnOf => {
      const s = columnOf('softness', softness)
      const H = columnOf('lockingDepth', lockingDepth)
      return similarSide(read, H, i => REFERENCE_PRESSURE / pressure(s[i]! / H[i]!))
    }
  }
  const read = sideTable(law, { least, most })
  return columnOf => similarSide(read, columnOf('stretch', 1), () => 1)
}

/** Parameters of a law that sideMaker takes drawn. */
export const similarParameters = (law: PressureLaw): readonly string[] =>
  law.kind === 'power'
    ? ['softness', 'exponent']
    : law.kind === 'stiffening' || law.kind === 'logarithmic'
      ? ['softness', 'lockingDepth']
      : ['softness']
