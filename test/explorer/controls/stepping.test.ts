import { describe, expect, it } from 'vitest'
import { printed, stepped } from '../../../packages/explorer/src/controls/stepping.ts'

const line = { low: 2, high: 12, usual: [4, 9], scale: 'linear' } as const
const from = (key: string, value: number, units: 'metric' | 'US' = 'metric') =>
  stepped({ key, value, quantity: 'mass', units, line }, { ends: true })

describe('stepping a value by keys', () => {
  it('moves one printed digit by an arrow and ten by a page', () => {
    expect(from('ArrowUp', 6.2)).toBe(6.21)
    expect(from('ArrowLeft', 6.2)).toBe(6.19)
    expect(from('PageUp', 6.2)).toBe(6.3)
    expect(from('PageDown', 6.2)).toBe(6.1)
  })

  it('steps from the printed value, not from digits nobody sees', () => {
    expect(from('ArrowUp', 6.2044)).toBe(6.21)
  })

  it('goes to the ends of the line', () => {
    expect(from('Home', 6.2)).toBe(2)
    expect(from('End', 6.2)).toBe(12)
  })

  it('moves one printed digit of the units shown', () => {
    const pound = 0.45359237
    expect(from('ArrowUp', 10 * pound, 'US')).toBe(10.01 * pound)
  })

  it('leaves other keys alone, and side arrows where text is edited', () => {
    expect(from('a', 6.2)).toBe(null)
    expect(from('Tab', 6.2)).toBe(null)
    expect(
      stepped({ key: 'ArrowLeft', value: 6.2, quantity: 'mass', units: 'metric', line }, { ends: false }),
    ).toBe(null)
  })

  it('does not creep over many steps', () => {
    let value = 2
    for (let step = 0; step < 100; step++) value = from('ArrowUp', value) ?? Number.NaN
    expect(value).toBe(3)
  })

  it('rounds to what is printed', () => {
    expect(printed(0.00034567, { quantity: 'sinkage', units: 'metric' })).toBe(0.35e-3)
  })
})
