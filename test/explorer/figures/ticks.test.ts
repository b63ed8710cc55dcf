import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { spreadOut } from '../../../packages/explorer/src/figures/spreadOut.ts'
import {
  barLength,
  decimalsOf,
  linearTicksOf,
  logTicksOf,
  roundNumber,
} from '../../../packages/explorer/src/figures/ticks.ts'

const metric = { units: 'metric' } as const
const US = { units: 'US' } as const
const named = (ticks: readonly { text: string }[]) => ticks.map(tick => tick.text).filter(text => text !== '')

describe('ticks', () => {
  test('are round in the unit that is read', () => {
    const of = (reader: { units: 'metric' | 'US' }) =>
      linearTicksOf({ domain: [2, 10], quantity: 'mass', count: 5, reader })
    expect(named(of(metric))).toEqual(['2', '4', '6', '8', '10'])
    expect(named(of(US))).toEqual(['5', '10', '15', '20'])
    expect(Math.abs((of(US)[0]?.value ?? 0) - 5 * 0.45359237)).toBeLessThan(1e-12)
  })

  test('of a logarithmic axis are named at 1, 2 and 5', () => {
    const ticks = logTicksOf({
      domain: [0.05e-3, 1e-3],
      quantity: 'softness',
      length: 250,
      needs: 20,
      reader: metric,
    })
    expect(named(ticks)).toEqual(['0.05', '0.1', '0.2', '0.5', '1'])
    expect(ticks).toHaveLength(15)
  })

  test('of a narrow logarithmic axis still have two names', () => {
    const ticks = logTicksOf({
      domain: [0.21e-3, 0.29e-3],
      quantity: 'softness',
      length: 250,
      needs: 20,
      reader: metric,
    })
    expect(named(ticks).length).toBeGreaterThanOrEqual(2)
  })

  test('of a logarithmic axis with little room keep their names apart', () => {
    const q = {
      domain: [0.07e-3, 15e-3],
      quantity: 'softness',
      length: 120,
      needs: 40,
      reader: metric,
    } as const
    const places = logTicksOf(q)
      .filter(tick => tick.text !== '')
      .map(tick => (120 * Math.log(tick.value / 0.07e-3)) / Math.log(15 / 0.07))
    places.slice(1).forEach((place, i) => {
      expect(place - (places[i] ?? 0)).toBeGreaterThanOrEqual(40)
    })
  })

  test('carry a true minus, the reader’s decimal mark and no needless decimals', () => {
    expect(roundNumber(-1.5, 1, {})).toBe('\u22121.5')
    expect(roundNumber(0.25, 2, { locale: 'de' })).toBe('0,25')
    expect(decimalsOf([0.1 + 0.2, 0.5])).toBe(1)
    expect(decimalsOf([2, 4])).toBe(0)
  })
})

test('a scale bar is as long as it says and fits its room', () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 400 }), fc.integer({ min: 100, max: 9000 }), (room, perMetre) => {
      const bar = barLength({ room, perMetre, quantity: 'wheelbase', reader: metric })
      const shown = Number(bar.text.split('\u202f')[0])
      expect(bar.length).toBeLessThanOrEqual(room * (1 + 1e-9))
      expect(bar.length).toBeGreaterThan(room / 2.5 - 1e-9)
      expect(Math.abs((shown * 1e-3 * perMetre) / bar.length - 1)).toBeLessThan(1e-9)
    }),
  )
})

describe('places spread out', () => {
  const places = fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 7 })

  test('keep the gap, the order and the ends', () => {
    fc.assert(
      fc.property(places, wanted => {
        const spread = spreadOut(wanted, { gap: 15, low: 0, high: 300 })
        const order = wanted
          .map((place, i) => ({ place, now: spread[i] ?? Number.NaN }))
          .sort((a, b) => a.now - b.now)
        order.forEach(({ place, now }, i) => {
          expect(now).toBeGreaterThanOrEqual(-1e-9)
          expect(now).toBeLessThanOrEqual(300 + 1e-9)
          const before = order[i - 1]
          if (before) {
            expect(now - before.now).toBeGreaterThanOrEqual(15 - 1e-9)
            expect(place).toBeGreaterThanOrEqual(before.place)
          }
        })
      }),
    )
  })

  test('do not move where there is room', () => {
    expect(spreadOut([200, 10, 100], { gap: 15, low: 0, high: 300 })).toEqual([200, 10, 100])
  })
})
