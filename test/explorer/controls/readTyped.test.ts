import type { QuantityName, UnitSystem } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { isUnfinished, readTyped } from '../../../packages/explorer/src/controls/readTyped.ts'
import { expectNear, identity } from '../../support/tolerance.ts'

const INCH = 0.0254
const POUND = 0.45359237

describe('a quantity as a person types it', () => {
  it.each<[string, QuantityName, UnitSystem, number]>([
    ['4', 'height', 'metric', 4e-3],
    ['4,25', 'height', 'metric', 4.25e-3],
    ['4.25 mm', 'height', 'US', 4.25e-3],
    ['4 mm', 'height', 'US', 4e-3],
    ['0.4cm', 'height', 'metric', 4e-3],
    ['0.16 in', 'height', 'metric', 0.16 * INCH],
    ['0.16', 'height', 'US', 0.16 * INCH],
    ['5/32', 'height', 'US', (5 / 32) * INCH],
    ['1 5/32', 'length', 'US', (1 + 5 / 32) * INCH],
    ['1-5/32"', 'length', 'US', (1 + 5 / 32) * INCH],
    ['5/32 in', 'height', 'metric', (5 / 32) * INCH],
    ['5/32″', 'height', 'metric', (5 / 32) * INCH],
    ['\u22121/2', 'place', 'US', -0.5 * INCH],
    ['14 lb', 'mass', 'metric', 14 * POUND],
    ['14 lbs', 'mass', 'US', 14 * POUND],
    ['850 g', 'mass', 'US', 0.85],
    ['4.3 km/h', 'speed', 'metric', 4.3 / 3.6],
    ['1.2 m/s', 'speed', 'metric', 1.2],
    ['3 mph', 'speed', 'metric', (3 * 1609.344) / 3600],
    ['6°', 'angle', 'metric', (6 * Math.PI) / 180],
    ['1200 rpm', 'turning', 'metric', 20],
    ['0.6', 'ratio', 'metric', 0.6],
  ])('“%s” for a %s in %s units', (text, quantity, units, value) => {
    expectNear(readTyped(text, { quantity, units }) ?? Number.NaN, value, identity)
  })

  it.each<[string, QuantityName, UnitSystem]>([
    ['', 'height', 'metric'],
    ['low', 'height', 'metric'],
    ['4 kg', 'height', 'metric'],
    ['4 mm', 'mass', 'metric'],
    ['5/32', 'height', 'metric'],
    ['5/32 mm', 'height', 'US'],
    ['5/0', 'height', 'US'],
    ['5/32', 'mass', 'US'],
    ['1 5', 'height', 'US'],
    ['12 34', 'height', 'metric'],
    ['1e3', 'height', 'metric'],
    ['0.6 mm', 'ratio', 'metric'],
  ])('“%s” for a %s in %s units is nothing', (text, quantity, units) => {
    expect(readTyped(text, { quantity, units })).toBeNull()
  })
})

describe('what is still being typed', () => {
  it.each<[string, QuantityName, UnitSystem]>([
    ['', 'height', 'metric'],
    ['-', 'place', 'metric'],
    ['4 m', 'height', 'metric'],
    ['5/', 'height', 'US'],
    ['1 5', 'length', 'US'],
    ['4 k', 'speed', 'metric'],
    ['14 l', 'mass', 'metric'],
  ])('“%s” is left alone until the field is left', (text, quantity, units) => {
    expect(isUnfinished(text, { quantity, units })).toBe(true)
  })

  it.each<[string, QuantityName, UnitSystem]>([
    ['4', 'height', 'metric'],
    ['4 mm', 'height', 'metric'],
    ['5/32', 'height', 'US'],
    ['4 x', 'height', 'metric'],
    ['14 lbs', 'mass', 'US'],
  ])('“%s” is read at once', (text, quantity, units) => {
    expect(isUnfinished(text, { quantity, units })).toBe(false)
  })
})
