import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isUnfinished, readNumber } from '../../../packages/explorer/src/controls/readNumber.ts'

describe('a number as a person types it', () => {
  it.each([
    ['6.2', 6.2],
    ['6,2', 6.2],
    [' 6.20 ', 6.2],
    ['6.', 6],
    ['.5', 0.5],
    [',5', 0.5],
    ['-4', -4],
    ['\u22124', -4],
    ['+4', 4],
    ['007', 7],
  ])('reads %j as %d', (text, value) => {
    expect(readNumber(text)).toBe(value)
  })

  it('reads a number with its unit behind it', () => {
    expect(readNumber('6.20\u202fkg', 'kg')).toBe(6.2)
    expect(readNumber('6,2 kg', 'kg')).toBe(6.2)
  })

  it.each(['', '-', 'six', '1e3', '0x10', '1.2.3', '1,234.5', '5 lb', 'Infinity', 'NaN', '--4', '4-'])(
    'does not guess at %j',
    text => {
      expect(readNumber(text, 'kg')).toBe(null)
    },
  )

  it('takes no digits without end for a number', () => {
    expect(readNumber('9'.repeat(400))).toBe(null)
    expect(readNumber(`-${'9'.repeat(400)}`)).toBe(null)
  })

  it('reads back every number that is written with a point or a comma', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), fc.nat(4), (digits, decimals) => {
        const text = (digits / 10 ** decimals).toFixed(decimals)
        expect(readNumber(text)).toBe(Number(text))
        expect(readNumber(text.replace('.', ','))).toBe(Number(text))
      }),
    )
  })

  it.each(['', '-', '.', '-.', '\u2212', ','])('says nothing yet about %j', text => {
    expect(isUnfinished(text)).toBe(true)
  })

  it('has something to say about letters and about whole numbers', () => {
    expect(isUnfinished('a')).toBe(false)
    expect(isUnfinished('-4')).toBe(false)
  })
})
