import type { Scatter, Surface, Turf, Unit } from '@swardsink/model'

const mm = 1e-3

/** Ellerby Hollow Turf School: unit, turf and scatter are invented. */
export const unitWith = (surface: Surface): Unit => ({
  wheelbase: 202 * mm,
  edge: 111 * mm,
  benchHeight: 4.8 * mm,
  frontRoller: { mass: 5.6, diameter: 58 * mm, length: 545 * mm, surface },
  rearRoller: { mass: 4.2, diameter: 52 * mm, length: 545 * mm, surface: { kind: 'smooth' } },
  body: { mass: 18.2, at: 97 * mm, height: 90 * mm },
  loads: [{ name: 'grass box', mass: 1.8, at: -62 * mm, height: 128 * mm }],
})

export const smooth: Surface = { kind: 'smooth' }
export const grooved: Surface = { kind: 'grooved', pitch: 12.5 * mm, land: 4.8 * mm, depth: 5.2 * mm }
export const shallow: Surface = { kind: 'grooved', pitch: 16 * mm, land: 5.2 * mm, depth: 0.9 * mm }

export const normal = (standardDeviation: number): Scatter => ({ kind: 'normal', standardDeviation })
export const relative = (part: number): Scatter => ({ kind: 'log-normal', relative: part })
export const uniform = (halfWidth: number): Scatter => ({ kind: 'uniform', halfWidth })

/** Scatter of the unit and its setting. */
export const ofUnit: Readonly<Record<string, Scatter>> = {
  'frontRoller.mass': normal(0.05),
  'frontRoller.diameter': normal(0.1 * mm),
  'rearRoller.mass': normal(0.05),
  'rearRoller.diameter': normal(0.1 * mm),
  'body.at': normal(2 * mm),
  'body.height': normal(8 * mm),
  'scales.front': normal(0.1),
  'scales.rear': normal(0.1),
  'loads.0.mass': uniform(0.3),
  edge: normal(1 * mm),
  wheelbase: normal(1 * mm),
  benchHeight: uniform(0.05 * mm),
}

export const softness = 0.62 * mm

export const springs: Readonly<Record<string, { turf: Turf; scatter: Readonly<Record<string, Scatter>> }>> = {
  linear: {
    turf: { law: { kind: 'linear', softness } },
    scatter: { softness: relative(0.2) },
  },
  'linear with spread': {
    turf: { law: { kind: 'linear', softness }, spread: 2.1 * mm },
    scatter: { softness: relative(0.2), spread: relative(0.15) },
  },
  power: {
    turf: { law: { kind: 'power', softness, exponent: 0.8 } },
    scatter: { softness: relative(0.2), exponent: normal(0.05) },
  },
  stiffening: {
    turf: { law: { kind: 'stiffening', softness, lockingDepth: 6.2 * mm } },
    scatter: { softness: relative(0.2), lockingDepth: relative(0.1) },
  },
  logarithmic: {
    turf: { law: { kind: 'logarithmic', softness, lockingDepth: 7.1 * mm } },
    scatter: { softness: relative(0.2), lockingDepth: relative(0.1) },
  },
  measured: {
    turf: {
      law: {
        kind: 'measured',
        points: [
          { sinkage: 0.3 * mm, pressure: 4e3 },
          { sinkage: 0.7 * mm, pressure: 11e3 },
          { sinkage: 1.6 * mm, pressure: 34e3 },
          { sinkage: 2.6 * mm, pressure: 80e3 },
        ],
      },
    },
    scatter: { softness: relative(0.2) },
  },
  layered: {
    turf: {
      law: {
        kind: 'layered',
        upper: { kind: 'stiffening', softness: 0.4 * mm, lockingDepth: 4.4 * mm },
        lower: { kind: 'linear', softness: 0.2 * mm },
      },
    },
    scatter: { softness: relative(0.2) },
  },
}
