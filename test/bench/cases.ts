import { formulaLaw, type PressureLaw, type Roller, type Unit } from '@swardsink/model'

/** Rollers, turf and unit of the bench: invented, and the same in every tongue (kernels.c, peer.py, patch.c). */

export const mm = 1e-3
export const standing = { kind: 'standing' } as const

export const softness = 0.6 * mm
export const lockingDepth = 6 * mm

export const smooth: Roller = { mass: 6.2, diameter: 58 * mm, length: 0.55, surface: { kind: 'smooth' } }
export const surface = { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 5 * mm } as const
export const grooved: Roller = { ...smooth, mass: 5.4, surface }
export const discs: Roller = {
  ...smooth,
  mass: 4.6,
  surface: { kind: 'grooved', pitch: 32 * mm, land: 7 * mm, depth: 9 * mm },
}

export const unit: Unit = {
  wheelbase: 0.19,
  edge: 0.105,
  benchHeight: 3.4 * mm,
  frontRoller: grooved,
  rearRoller: { ...smooth, mass: 4.3, diameter: 51 * mm },
  body: { mass: 18.3, at: 0.09, height: 0.07 },
}

export const unitWith = (mass: number, roller: Roller = smooth): Unit => ({
  ...unit,
  frontRoller: { ...roller, mass },
})

export const stiffening = (soft = softness): PressureLaw => ({
  kind: 'stiffening',
  softness: soft,
  lockingDepth,
})
export const stiffnessAt = (soft: number) => (10e3 * (1 - soft / lockingDepth)) / soft
/** The stiffening law as a closure. */
export const nativePressure = (soft: number) => {
  const k = stiffnessAt(soft)
  return (z: number) => (k * z) / (1 - z / lockingDepth)
}

const read = await formulaLaw({
  expression: 'k * z / (1 - z / H)',
  values: { k: stiffnessAt(softness), H: lockingDepth },
  deepest: 0.95 * lockingDepth,
})
if (!read.ok) throw new Error(read.problems.map(({ path, expected }) => `${path}: ${expected}`).join('\n'))

export const laws = {
  power: { kind: 'power', softness, exponent: 0.8 },
  stiffening: stiffening(),
  layered: {
    kind: 'layered',
    upper: { kind: 'stiffening', softness: 0.4 * mm, lockingDepth: 4 * mm },
    lower: { kind: 'linear', softness: 0.2 * mm },
  },
  formula: read.law,
  measured: {
    kind: 'measured',
    points: [0.2, 0.5, 1, 2, 3.5].map(z => ({
      sinkage: z * mm,
      pressure: nativePressure(softness)(z * mm),
    })),
  },
} satisfies Record<string, PressureLaw>

/** Numbers between 0 and 1 that fill the interval evenly, the same in every tongue. */
const GOLDEN = [0.6180339887498949, 0.7548776662466927, 0.5698402909980532] as const
export const even = (i: number, kind: 0 | 1 | 2): number => (i * GOLDEN[kind]) % 1

export const column = (count: number, at: (i: number) => number): Float64Array => {
  const values = new Float64Array(count)
  for (let i = 0; i < count; i++) values[i] = at(i)
  return values
}
export const evenly = (low: number, high: number, count: number): Float64Array =>
  column(count, i => low + ((high - low) * i) / (count - 1))
export const logarithmically = (low: number, high: number, count: number): Float64Array =>
  evenly(Math.log(low), Math.log(high), count).map(Math.exp)

export const sum = (values: ArrayLike<number>): number => {
  let total = 0
  for (let i = 0; i < values.length; i++) total += values[i]!
  return total
}
