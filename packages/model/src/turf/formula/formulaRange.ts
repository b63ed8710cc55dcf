import { catalogue, describe, type Metres, type Pascals, type Problem } from '../../quantities/index.ts'
import { REFERENCE_PRESSURE } from '../laws/lawKind.ts'
import { type Program, runProgram } from './program.ts'

/** A corner of a written law: where it is, and which function bends. */
export type FormulaCorner = { readonly sinkage: Metres; readonly function: string }

export type FormulaRange = {
  /** Down to here the expression was checked and is used; further on its last slope is continued. */
  readonly sinkage: Metres
  readonly pressure: Pascals
  readonly corners: readonly FormulaCorner[]
}

export type Checked =
  | { readonly ok: true; readonly range: FormulaRange }
  | { readonly ok: false; readonly problem: Omit<Problem, 'path'> }

/** Rollers press turf at a few tens of kPa: a law is checked up to the greatest pressure the catalogue holds plausible. */
const TO: Pascals = catalogue.pressure.high
/** At zero no more than this may stand, Pa: a millionth of what a leaf weighs on its print. */
const NOTHING = 1e-6
const SAMPLES = 2000
/** Near zero samples crowd: so many, each so much deeper than the last. */
const NEAR_ZERO = 60
const RATIO = 1.25
const HALVINGS = 60

type Sample = {
  readonly sinkage: number
  readonly pressure: number
  readonly slope: number
  readonly gaps: Float64Array
}

/** One depth at a time, with what changes sign at a corner. */
function sampler(program: Program, parameters: ArrayLike<number>): (sinkage: number) => Sample {
  const depth = new Float64Array(1)
  const value = new Float64Array(1)
  const slope = new Float64Array(1)
  const columns = program.corners.map(() => new Float64Array(1))
  return sinkage => {
    depth[0] = sinkage
    runProgram(program, parameters, depth, 1, value, slope, columns)
    return {
      sinkage,
      pressure: value[0]!,
      slope: slope[0]!,
      gaps: Float64Array.from(columns, column => column[0]!),
    }
  }
}

/** Why a sample cannot follow the one before it, or nothing. */
function fault(sample: Sample, before: Sample): Omit<Problem, 'path'> | undefined {
  const { pressure, slope } = sample
  if (pressure > before.pressure && slope >= 0 && Number.isFinite(pressure)) return undefined
  const place = describe(sample.sinkage, 'sinkage')
  if (!Number.isFinite(pressure))
    return { expected: `a finite pressure at z = ${place}`, received: describe(pressure) }
  if (Number.isNaN(slope)) return { expected: `a slope at z = ${place}`, received: 'none' }
  return {
    expected: `pressure that grows with sinkage at z = ${place}`,
    received: `${describe(pressure, 'pressure')} after ${describe(before.pressure, 'pressure')}, slope ${describe(slope)} Pa/m`,
  }
}

function depthsTo(deepest: number): number[] {
  const first = deepest / SAMPLES
  const near = Array.from({ length: NEAR_ZERO }, (_, i) => first * RATIO ** (i - NEAR_ZERO))
  return [...near, ...Array.from({ length: SAMPLES }, (_, i) => ((i + 1) * deepest) / SAMPLES)]
}

/** Between a sound sample and one that is not, or bears too much: the last sound depth below the pressure asked for. */
function lastSound(sample: (sinkage: number) => Sample, sound: Sample, beyond: Sample): Sample {
  let low = sound
  let high = beyond.sinkage
  for (let i = 0; i < HALVINGS; i++) {
    const middle = sample((low.sinkage + high) / 2)
    if (middle.sinkage === low.sinkage || middle.sinkage === high) break
    if (fault(middle, low) || middle.pressure > TO) high = middle.sinkage
    else low = middle
  }
  return low
}

function cornersBetween(
  sample: (sinkage: number) => Sample,
  names: readonly string[],
  from: Sample,
  to: Sample,
): FormulaCorner[] {
  return names.flatMap((name, i) => {
    const before = from.gaps[i]!
    if (before === 0 || !(before * to.gaps[i]! <= 0)) return []
    let low = from.sinkage
    let high = to.sinkage
    for (let turn = 0; turn < HALVINGS; turn++) {
      const middle = (low + high) / 2
      if (middle === low || middle === high) break
      if (sample(middle).gaps[i]! * before > 0) low = middle
      else high = middle
    }
    return [{ sinkage: high, function: name }]
  })
}

/** How far a walk down from zero is sound, and what stopped it. */
function walk(
  sample: (sinkage: number) => Sample,
  names: readonly string[],
  deepest: number,
): { readonly last: Sample; readonly corners: FormulaCorner[]; readonly why?: Omit<Problem, 'path'> } {
  let last = sample(0)
  const corners: FormulaCorner[] = []
  for (const depth of depthsTo(deepest)) {
    const next = sample(depth)
    const why = fault(next, last)
    if (why || next.pressure > TO) {
      const end = lastSound(sample, last, next)
      corners.push(...cornersBetween(sample, names, last, end))
      return why ? { last: end, corners, why } : { last: end, corners }
    }
    corners.push(...cornersBetween(sample, names, last, next))
    last = next
  }
  return { last, corners }
}

/** Reached to this part: bisection towards a pole ends a little short. */
const REACHED = 1 - 1e-6

/**
 * Checks a written law: zero at zero, finite and increasing down to the depth where it bears 200 kPa, or to `deepest`.
 *
 * Holds   at 2000 depths evenly, and more near zero: a dip narrower than a sample is not seen
 */
export function checkRange(program: Program, parameters: ArrayLike<number>, deepest: Metres): Checked {
  const sample = sampler(program, parameters)
  const atZero = sample(0).pressure
  if (!(Math.abs(atZero) <= NOTHING))
    return {
      ok: false,
      problem: { expected: 'no pressure at z = 0 mm', received: describe(atZero, 'pressure') },
    }
  // a first walk finds how deep 200 kPa lies, a second looks closely down to there
  const rough = walk(sample, program.corners, deepest)
  const isWhole = rough.last.pressure >= TO * REACHED
  if (rough.why && !isWhole) return { ok: false, problem: rough.why }
  const { last, corners, why } = walk(sample, program.corners, rough.last.sinkage)
  if (why && last.pressure < rough.last.pressure * REACHED) return { ok: false, problem: why }
  if (last.pressure < REFERENCE_PRESSURE)
    return {
      ok: false,
      problem: {
        expected: `at least ${describe(REFERENCE_PRESSURE, 'pressure')} within ${describe(deepest, 'sinkage')}`,
        received: describe(last.pressure, 'pressure'),
      },
    }
  corners.sort((a, b) => a.sinkage - b.sinkage)
  return { ok: true, range: { sinkage: last.sinkage, pressure: last.pressure, corners } }
}
