import { boxFilling, levelLoads, type Unit } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

const question = {
  box: { empty: 1.9, full: 8.4, at: -0.31 },
  harvest: 0.0032,
  cuttingWidth: 0.53,
  wheelbase: 0.19,
  distances: [0, 500, 2000, 9000],
}

test('mass grows with the area mown until the box is full', () => {
  const { steps, fullAfter } = boxFilling(question)
  expectNear(steps[0]!.mass, 1.9, identity)
  expectNear(steps[1]!.mass, 1.9 + 0.0032 * 0.53 * 500, identity)
  expectNear(steps[3]!.mass, 8.4, identity)
  expectNear(fullAfter ?? Number.NaN, 6.5 / (0.0032 * 0.53), identity)
})

// Source: median harvest 1.2 L per 100 m² (Woods, clipping volume report, 2017), fresh clippings 150 to 400 kg/m³
test('at the median harvest a box of 6.5 kg is full after 2.6 to 6.8 km of a 0.53 m cut', () => {
  const full = (density: number) => boxFilling({ ...question, harvest: 1.2e-5 * density }).fullAfter
  expectNear(full(150) ?? Number.NaN, 6813, stated(1e-3))
  expectNear(full(400) ?? Number.NaN, 2555, stated(1e-3))
})

test('what is added to the rollers is what a unit with that load more carries', () => {
  const roller = { mass: 4.2, diameter: 0.058, length: 0.53, surface: { kind: 'smooth' } } as const
  const unit: Unit = {
    wheelbase: 0.19,
    edge: 0.1,
    benchHeight: 0.005,
    frontRoller: roller,
    rearRoller: roller,
    body: { mass: 24, at: 0.1 },
  }
  const { steps } = boxFilling(question)
  const before = levelLoads(unit)
  for (const { mass, front, rear } of steps) {
    const after = levelLoads({ ...unit, loads: [{ name: 'clippings', mass: mass - 1.9, at: -0.31 }] })
    expectNear(front, after.front - before.front, stated(1e-11))
    expectNear(rear, after.rear - before.rear, stated(1e-11))
  }
})

test('a box ahead of the front roller lifts the rear one', () => {
  expect(boxFilling(question).steps[2]!.rear).toBeLessThan(0)
})

test('without a harvest the box never fills', () => {
  expect(boxFilling({ ...question, harvest: 0 }).fullAfter).toBeNull()
})

describe('refuses', () => {
  test.each([
    ['box.full', { ...question, box: { empty: 5, full: 2, at: 0 } }],
    ['harvest', { ...question, harvest: -1 }],
    ['cuttingWidth', { ...question, cuttingWidth: 0 }],
    ['distances.1', { ...question, distances: [1, Number.NaN] }],
  ])('%s', (path, bad) => {
    expect(() => boxFilling(bad)).toThrow(path)
  })
})
