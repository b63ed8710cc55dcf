import type { Roller, Turf, Unit } from '@swardsink/model'

const mm = 1e-3
export const smooth = (diameter: number, mass = 5.1): Roller => ({
  mass,
  diameter: diameter * mm,
  length: 0.56,
  surface: { kind: 'smooth' },
})
export const grooved = (diameter: number, mass = 4.4): Roller => ({
  ...smooth(diameter, mass),
  surface: { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 7 * mm },
})
export const turf = (softness: number, spread = 1.5): Turf => ({
  law: { kind: 'stiffening', softness: softness * mm, lockingDepth: 18 * mm },
  spread: spread * mm,
})

type Shape = {
  B: number
  c: number
  Df: number
  Dr: number
  bench: number
  body?: number
  at?: number
  box?: boolean
  front?: Roller
}
export const unit = (q: Shape): Unit => ({
  wheelbase: q.B * mm,
  edge: q.c * mm,
  benchHeight: q.bench * mm,
  frontRoller: q.front ?? smooth(q.Df, 6.2),
  rearRoller: smooth(q.Dr, 4.6),
  body: { mass: q.body ?? 18.3, at: (q.at ?? q.B * 0.46) * mm },
  ...(q.box ? { loads: [{ name: 'box', mass: 6.4, at: -70 * mm }] } : {}),
})

/** Invented units, from the usual one to those at the ends of what may be typed. */
export const units: Record<string, { unit: Unit; turf: Turf }> = {
  usual: { unit: unit({ B: 190, c: 105, Df: 57, Dr: 51, bench: 3.4 }), turf: turf(0.1) },
  grooved: {
    unit: unit({ B: 190, c: 105, Df: 76, Dr: 60, bench: 3.4, front: grooved(76), box: true }),
    turf: turf(0.3),
  },
  soft: { unit: unit({ B: 190, c: 105, Df: 57, Dr: 51, bench: 6, body: 30 }), turf: turf(2) },
  long: { unit: unit({ B: 400, c: 210, Df: 120, Dr: 200, bench: 50, body: 60 }), turf: turf(0.6, 6) },
  locking: {
    unit: unit({ B: 190, c: 105, Df: 57, Dr: 51, bench: 3.4 }),
    turf: { law: { kind: 'logarithmic', softness: 0.3 * mm, lockingDepth: 1.4 * mm }, spread: 1.5 * mm },
  },
  short: { unit: unit({ B: 100, c: 48, Df: 40, Dr: 45, bench: 2, body: 8 }), turf: turf(0.08) },
  forward: { unit: unit({ B: 200, c: 12, Df: 80, Dr: 60, bench: 12 }), turf: turf(0.3) },
  backward: { unit: unit({ B: 220, c: 205, Df: 60, Dr: 90, bench: 20 }), turf: turf(0.9) },
  'under the turf': { unit: unit({ B: 180, c: 95, Df: 50, Dr: 50, bench: 2, body: 40 }), turf: turf(3) },
}
