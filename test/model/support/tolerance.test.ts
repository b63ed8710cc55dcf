import { describe, expect, test } from 'vitest'
import {
  expectNear,
  expectPrinted,
  identity,
  missOf,
  ofSize,
  printed,
  rate,
  solver,
  stated,
} from '../../support/tolerance.ts'

describe('a tolerance', () => {
  test('of an identity lets twelve digits through and stops at eleven', () => {
    expect(missOf(1 + 5e-13, 1, identity)).toBeUndefined()
    expect(missOf(1 + 5e-12, 1, identity)).toMatch(/off by 5.00e-12, 5.00e-12 relative \(identity\)/)
  })

  test('is relative: a millimetre told in metres is not near another', () => {
    expect(missOf(0.025, 0.028, identity)).toMatch(/1.07e-1 relative/)
    expect(missOf(1e-9, 2e-9, stated(0.4))).toMatch(/off by 1.00e-9/)
  })

  test('of a solver is ten times its own', () => {
    expect(missOf(1 + 1.9e-11, 1, solver)).toBeUndefined()
    expect(missOf(1 + 2.1e-11, 1, solver)).toMatch(/\(solver\)/)
  })

  test('never lets something pass for nothing unless a size is given', () => {
    expect(missOf(1e-300, 0, identity)).toMatch(/of zero/)
    expect(missOf(0, 0, identity)).toBeUndefined()
    expect(missOf(1e-10, 0, ofSize(200, identity))).toBeUndefined()
    expect(missOf(1e-9, 0, ofSize(200, identity))).toMatch(/identity of 200/)
  })

  test('never lets NaN or infinity pass', () => {
    expect(missOf(Number.NaN, 1, stated(1e9))).toBeDefined()
    expect(missOf(1, Number.NaN, stated(1e9))).toBeDefined()
    expect(missOf(Number.POSITIVE_INFINITY, 1, stated(1e9))).toBeDefined()
  })
})

describe('a printed number', () => {
  test('stands for half its last digit either way', () => {
    expect(printed('0.1353')).toMatchObject({ value: 0.1353 })
    expectPrinted(0.13534, '0.1353')
    expectPrinted(0.13525, '0.1353')
    expect(() => expectPrinted(0.13536, '0.1353')).toThrow(/printed 0.1353/)
    expect(() => expectPrinted(0.13524, '0.1353')).toThrow(/printed 0.1353/)
  })

  test('keeps its trailing zeros and its power of ten', () => {
    expect(() => expectPrinted(27.84, '27.80')).toThrow()
    expectPrinted(27.804, '27.80')
    expectPrinted(1.24e-3, '1.2e-3')
    expect(() => expectPrinted(1.26e-3, '1.2e-3')).toThrow()
    expectPrinted(1530, '1.53E+03')
  })

  test('is refused when it is no number', () => {
    expect(() => printed('1,5')).toThrow(/not a printed number/)
    expect(() => printed('')).toThrow(/not a printed number/)
  })
})

describe('a comparison', () => {
  test('says what it compared', () => {
    expect(() => expectNear(1, 2, identity, 'line load')).toThrow(/line load: received 1, expected 2/)
  })
})

describe('an order of convergence', () => {
  test('is read off the last two meshes', () => {
    rate(2).of([1, 0.26, 0.065])
    expect(() => rate(2).of([1, 0.25, 0.125])).toThrow(/order 1, expected 2/)
    expect(() => rate(2).of([1])).toThrow(/order undefined/)
    expect(() => rate(2).of([1, 0])).toThrow(/order Infinity/)
  })
})
