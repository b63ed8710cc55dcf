import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  CLEARANCE,
  fittingExaggeration,
  sideGeometry,
} from '../../../packages/explorer/src/figures/sideGeometry.ts'
import { sideInput } from '../../../packages/explorer/src/figures/sideLayout.ts'
import { depthBeside } from '../../../packages/explorer/src/figures/turfSurface.ts'
import { anyUnit, usualUnit } from './drawnUnit.ts'

/** Rounding of sums and roots of lengths of a few hundred millimetres. */
const ROUNDING = 1e-9

const factor = fc.constantFrom(1, 2, 5, 10)

describe('the cutting cylinder', () => {
  test('touches the edge and clears both rollers', () => {
    fc.assert(
      fc.property(anyUnit, factor, (drawn, exaggeration) => {
        const { cylinder, edge, front, rear } = sideGeometry({ ...sideInput(drawn), exaggeration })
        if (!cylinder) return
        expect(Math.abs(Math.hypot(cylinder.x - edge.x, cylinder.y - edge.y) - cylinder.radius)).toBeLessThan(
          ROUNDING,
        )
        for (const roller of [front, rear]) {
          const apart =
            Math.hypot(cylinder.x - roller.x, cylinder.y - roller.y) - cylinder.radius - roller.radius
          expect(apart).toBeGreaterThanOrEqual(CLEARANCE - ROUNDING)
        }
      }),
    )
  })

  test('is as large as that allows, up to a third of the wheelbase', () => {
    fc.assert(
      fc.property(anyUnit, factor, (drawn, exaggeration) => {
        const input = { ...sideInput(drawn), exaggeration }
        const { cylinder, front, rear } = sideGeometry(input)
        if (!cylinder) return
        const gaps = [front, rear].map(
          roller =>
            Math.hypot(cylinder.x - roller.x, cylinder.y - roller.y) - cylinder.radius - roller.radius,
        )
        const touches = Math.min(...gaps) < CLEARANCE + 1e-6
        expect(touches || Math.abs(cylinder.radius - 0.33 * input.wheelbase) < ROUNDING).toBe(true)
      }),
    )
  })

  test('is left out where the edge is under a roller', () => {
    const input = { ...sideInput(usualUnit), exaggeration: 1 }
    expect(sideGeometry({ ...input, edge: 2 }).cylinder).toBeUndefined()
    expect(sideGeometry(input).cylinder).toBeDefined()
  })
})

describe('the surface of the turf', () => {
  test('never rises above the undisturbed ground', () => {
    fc.assert(
      fc.property(
        anyUnit,
        factor,
        fc.double({ min: -300, max: 700, noNaN: true }),
        (drawn, exaggeration, x) => {
          expect(sideGeometry({ ...sideInput(drawn), exaggeration }).surface(x)).toBeLessThanOrEqual(0)
        },
      ),
    )
  })

  test('never cuts into a roller', () => {
    fc.assert(
      fc.property(anyUnit, fc.double({ min: -1, max: 1, noNaN: true }), (drawn, part) => {
        const input = sideInput(drawn)
        const { surface, front, rear } = sideGeometry({ ...input, exaggeration: 1 })
        for (const { x, y, radius } of [front, rear]) {
          const under = y - radius * Math.sqrt(1 - part * part)
          if (y > 0) expect(surface(x + part * radius)).toBeLessThanOrEqual(Math.max(under, 0) + ROUNDING)
        }
      }),
    )
  })

  test('goes on with the slope of the circle where it leaves it', () => {
    const [radius, depth, spread] = [30, 4, 6]
    const beside = depthBeside({ radius, depth, spread })
    // Where it leaves: depth of the circle = spread × its slope.
    let contact = 0
    const under = (d: number) => depth - (radius - Math.sqrt(radius * radius - d * d))
    while (under(contact) > (spread * contact) / Math.sqrt(radius * radius - contact * contact))
      contact += 1e-4
    const step = 1e-3
    const before = (beside(contact) - beside(contact - step)) / step
    const after = (beside(contact + step) - beside(contact)) / step
    expect(Math.abs(after - before) / Math.abs(before)).toBeLessThan(1e-3)
    expect(beside(0)).toBe(depth)
    expect(beside(contact + spread) / beside(contact)).toBeGreaterThan(Math.exp(-1) - 1e-3)
    expect(beside(contact + spread) / beside(contact)).toBeLessThan(Math.exp(-1) + 1e-3)
  })

  test('without spread is flat beside the roller', () => {
    const beside = depthBeside({ radius: 30, depth: 4, spread: 0 })
    expect(beside(Math.sqrt(2 * 30 * 4 - 16) + 0.01)).toBe(0)
    expect(beside(10)).toBe(4 - (30 - Math.sqrt(800)))
  })

  test('keeps the track that has not come back between and behind the rollers', () => {
    const input = { ...sideInput(usualUnit), exaggeration: 5 }
    const { surface } = sideGeometry({ ...input, unrecovered: input.frontSinkage / 2 })
    expect(surface(input.wheelbase / 2)).toBe((-5 * input.frontSinkage) / 2)
    expect(surface(-input.wheelbase)).toBeGreaterThan(-1e-6)
  })
})

describe('heights at the turf', () => {
  test('carry one factor, sinkage and bench height alike', () => {
    fc.assert(
      fc.property(anyUnit, factor, (drawn, exaggeration) => {
        const input = sideInput(drawn)
        const { edge, front } = sideGeometry({ ...input, exaggeration })
        const one = sideGeometry({ ...input, exaggeration: 1 })
        expect(Math.abs(edge.y - exaggeration * one.edge.y)).toBeLessThan(ROUNDING)
        expect(
          Math.abs(front.radius - front.y - exaggeration * (one.front.radius - one.front.y)),
        ).toBeLessThan(ROUNDING)
      }),
    )
  })

  test('are drawn with a smaller factor where a roller would drown', () => {
    const input = sideInput(usualUnit)
    expect(fittingExaggeration(input, 10)).toBe(10)
    expect(fittingExaggeration({ ...input, frontSinkage: 6 }, 10)).toBe(2)
    expect(fittingExaggeration({ ...input, benchHeight: 50 }, 5)).toBe(1)
    expect(fittingExaggeration(input, 5)).toBe(5)
  })
})
