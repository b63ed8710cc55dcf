import { describe, expect, it } from 'vitest'
import { workingOrder } from '../../../packages/explorer/src/flow/order.ts'

describe('the order of working out', () => {
  it('puts each entry after those it needs, wherever they stand on the page', () => {
    const { order, rings } = workingOrder(
      new Map([
        ['check', ['fit']],
        ['fit', ['readings']],
        ['readings', []],
      ]),
    )
    expect(order).toEqual(['readings', 'fit', 'check'])
    expect(rings).toEqual([])
  })

  it('names the entries that need each other in a ring, and still orders the others', () => {
    const { order, rings } = workingOrder(
      new Map([
        ['a', ['b']],
        ['b', ['a']],
        ['c', []],
      ]),
    )
    expect(order).toEqual(['c'])
    expect(rings).toEqual(['a', 'b'])
  })

  it('does not wait for an entry that is not there', () => {
    expect(workingOrder(new Map([['a', ['gone']]])).order).toEqual(['a'])
  })
})
