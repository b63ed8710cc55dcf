import { runoutOf, type SettledUnit, settle, type Turf, type Unit } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { standing } from '../../support/arbitraries.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const roller = (buildUp?: number) => ({
  mass: 5.2,
  diameter: 0.06,
  length: 0.5,
  surface: { kind: 'smooth' } as const,
  ...(buildUp === undefined ? {} : { buildUp }),
})
const unitWith = (front?: number, rear?: number): Unit => ({
  wheelbase: 0.2,
  edge: 0.11,
  benchHeight: 6 * mm,
  frontRoller: roller(front),
  rearRoller: roller(rear),
  body: { mass: 21, at: 0.095, height: 0.1 },
})
const heightOf = (unit: Unit, turf: Turf) =>
  (settle({ unit, turf, condition: standing }) as SettledUnit).effectiveHeight.middle

describe('what sticks to the rollers', () => {
  const hard: Turf = { law: { kind: 'linear', softness: 1e-8 } }

  test('raises the cut by its thickness times (1 − c/B) at the front and c/B at the rear, on hard ground', () => {
    // derived: half the growth in diameter in those shares (docs/physics.md §4)
    const clean = heightOf(unitWith(), hard)
    expectNear(heightOf(unitWith(0.4 * mm), hard) - clean, 0.4 * mm * (1 - 0.11 / 0.2), stated(1e-4))
    expectNear(heightOf(unitWith(0, 0.4 * mm), hard) - clean, (0.4 * mm * 0.11) / 0.2, stated(1e-4))
  })

  test('raises it on soft turf too, by a little more: a thicker roller also sinks less', () => {
    const soft: Turf = { law: { kind: 'linear', softness: 1 * mm } }
    const raised = heightOf(unitWith(0.4 * mm), soft) - heightOf(unitWith(), soft)
    expect(raised).toBeGreaterThan(0.4 * mm * (1 - 0.11 / 0.2))
    expect(raised).toBeLessThan(0.4 * mm)
  })
})

test('a roller out of true repeats with its turns, in the same shares as what sticks to it', () => {
  const unit = unitWith()
  const { front, rear } = runoutOf({ ...unit, frontRoller: { ...roller(), runout: 0.1 * mm } })
  expectNear(front.rise, 0.1 * mm * (1 - 0.11 / 0.2), stated(1e-12))
  expectNear(front.every, 0.06 * Math.PI, stated(1e-12))
  expect(rear.rise).toBe(0)
})
