import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ALL_DRAWN, rowWindow, topOf } from '../../../packages/explorer/src/controls/rowWindow.ts'

const heights = { row: 34, sentence: 44 }
const drawn = (runs: ReturnType<typeof rowWindow>['runs']) =>
  runs.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, i) => from + i))

describe('the part of a table that is drawn', () => {
  it('is all of a short one', () => {
    const { runs, below } = rowWindow({
      count: ALL_DRAWN,
      tall: [3],
      heights,
      scrolled: 0,
      room: 300,
      focused: 3,
    })
    expect(runs).toEqual([{ from: 0, to: ALL_DRAWN, above: 0 }])
    expect(below).toBe(0)
  })

  const scrolledTable = fc.record({
    count: fc.integer({ min: ALL_DRAWN + 1, max: 6000 }),
    tall: fc.uniqueArray(fc.integer({ min: 0, max: 5999 }), { maxLength: 40 }),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
    room: fc.integer({ min: 100, max: 800 }),
    focused: fc.option(fc.integer({ min: 0, max: 5999 })),
  })
  const windowOf = (q: typeof scrolledTable extends fc.Arbitrary<infer Q> ? Q : never) => {
    const tall = q.tall.filter(row => row < q.count).sort((a, b) => a - b)
    const whole = topOf(q.count, tall, heights)
    const scrolled = q.part * (whole - q.room)
    const asked = { count: q.count, tall, heights, scrolled, room: q.room, focused: q.focused }
    return { ...rowWindow(asked), tall, whole, scrolled }
  }

  it('covers everything in view, once, in order, and is a small part of the whole', () => {
    fc.assert(
      fc.property(scrolledTable, q => {
        const { runs, tall, scrolled } = windowOf(q)
        const rows = drawn(runs)
        expect(rows).toEqual([...new Set(rows)].sort((a, b) => a - b))
        for (let row = 0; row < q.count; row++) {
          const seen =
            topOf(row + 1, tall, heights) > scrolled && topOf(row, tall, heights) < scrolled + q.room
          if (seen) expect(rows).toContain(row)
        }
        expect(rows.length).toBeLessThan(60)
      }),
      { numRuns: 40 },
    )
  })

  it('holds the row with the focus, and what is drawn and what is room add up to the whole', () => {
    fc.assert(
      fc.property(scrolledTable, q => {
        const { runs, below, tall, whole } = windowOf(q)
        const rows = drawn(runs)
        if (q.focused !== null && q.focused < q.count) expect(rows).toContain(q.focused)
        const room = runs.reduce((sum, { above }) => sum + above, below)
        const lines = rows.reduce(
          (sum, row) => sum + heights.row + (tall.includes(row) ? heights.sentence : 0),
          0,
        )
        expect(room + lines).toBe(whole)
      }),
    )
  })
})
