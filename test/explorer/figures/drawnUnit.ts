import { type SettledUnit, settle, type Turf, type Unit } from '@swardsink/model'
import fc from 'fast-check'
import { settledOrThrow } from './settledOrThrow.ts'

/** What a side view is drawn from, with sinkages chosen at will: a figure must hold for more than a model may answer. */
export type DrawnUnit = { readonly unit: Unit; readonly settled: SettledUnit; readonly turf: Turf }

const MM = 1e-3
const length = 0.56
const usual: Unit = {
  wheelbase: 0.19,
  edge: 0.105,
  benchHeight: 3.4 * MM,
  frontRoller: { mass: 6.2, diameter: 0.057, length, surface: { kind: 'smooth' } },
  rearRoller: { mass: 4.6, diameter: 0.051, length, surface: { kind: 'smooth' } },
  body: { mass: 18.3, at: 0.09 },
}
const turf: Turf = { law: { kind: 'linear', softness: 0.1 * MM } }
const base = settledOrThrow(settle({ unit: usual, turf, condition: { kind: 'standing' } }))

type Sizes = {
  wheelbase: number
  edgePart: number
  bench: number
  front: number
  rear: number
  frontSinkage: number
  rearSinkage: number
  spread: number
  body: number
  bodyPart: number
}

export function drawnUnit(sizes: Sizes): DrawnUnit {
  const wheelbase = sizes.wheelbase * MM
  const edge = sizes.edgePart * wheelbase
  const benchHeight = sizes.bench * MM
  const [front, rear] = [sizes.frontSinkage * MM, sizes.rearSinkage * MM]
  const drop = front + (rear - front) * sizes.edgePart
  const all = (value: number) => ({ left: value, middle: value, right: value })
  const weight = sizes.body * 9.80665
  return {
    turf: { ...turf, spread: sizes.spread * MM },
    unit: {
      ...usual,
      wheelbase,
      edge,
      benchHeight,
      frontRoller: { ...usual.frontRoller, diameter: sizes.front * MM },
      rearRoller: { ...usual.rearRoller, diameter: sizes.rear * MM },
      body: { mass: sizes.body, at: sizes.bodyPart * wheelbase },
    },
    settled: {
      ...base,
      front: { ...base.front, sinkage: front, load: weight * (1 - sizes.bodyPart) + 60 },
      rear: { ...base.rear, sinkage: rear, load: weight * sizes.bodyPart + 45 },
      drop: all(drop),
      effectiveHeight: all(benchHeight - drop),
    },
  }
}

/** The case on the first page. */
export const usualUnit: DrawnUnit = { unit: usual, turf: { ...turf, spread: 1.5 * MM }, settled: base }

/** Whole hundredths: as many decimals as a reader types, and quick to shrink. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map(hundredths => hundredths / 100)

/** Any unit that a reader may type, the two rollers clear of each other. */
export const anyUnit: fc.Arbitrary<DrawnUnit> = fc
  .record({
    wheelbase: between(100, 400),
    edgePart: between(0, 1),
    bench: between(2, 50),
    front: between(40, 200),
    rear: between(40, 200),
    frontSinkage: between(0.05, 15),
    rearSinkage: between(0.05, 15),
    spread: between(0, 6),
    body: between(5, 60),
    bodyPart: between(0.2, 0.8),
  })
  .filter(({ wheelbase, front, rear }) => (front + rear) / 2 < wheelbase)
  .map(drawnUnit)
