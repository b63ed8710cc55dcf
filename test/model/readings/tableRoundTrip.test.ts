import { type Foot, type Measured, type Reading, readTable, writeTable } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readOrFail } from './readOrFail.ts'

const mm = 1e-3
const size = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true, noDefaultInfinity: true })
/** Words as people write them: nothing around them, and none that says there is nothing. */
const words = fc
  .string({ minLength: 1, maxLength: 12, unit: fc.constantFrom(...'aAé0 ,;\t"#.\n-–/ü5'.split('')) })
  .map(text => text.trim())
  .filter(text => !/^(?:|na|n\/a|-|–|—|−)$/i.test(text))
const names = words.filter(text => !/[\n\t]/.test(text))

const feet: fc.Arbitrary<{ foot: Foot; pressed: 'load' | 'pressure' }> = fc.oneof(
  fc.record({
    foot: names.map((name): Foot => ({ kind: 'roller', name })),
    pressed: fc.constant('load' as const),
  }),
  fc.record({
    foot: fc.oneof(
      size(5 * mm, 300 * mm).map((diameter): Foot => ({ kind: 'plate', diameter })),
      size(1e-4, 0.05).map((area): Foot => ({ kind: 'plate', area })),
    ),
    pressed: fc.constantFrom('load' as const, 'pressure' as const),
  }),
)
const measured: fc.Arbitrary<Measured> = fc.oneof(
  size(0, 15 * mm).map((sinkage): Measured => ({ kind: 'sinkage', sinkage })),
  fc.record({ kind: fc.constant('drop' as const), drop: size(-5 * mm, 5 * mm), point: size(0, 1) }),
  size(-5 * mm, 5 * mm).map((drop): Measured => ({ kind: 'drop', drop })),
  size(1 * mm, 50 * mm).map((height): Measured => ({ kind: 'height', height })),
)
const parts = fc.record(
  {
    replicate: fc.integer({ min: 1, max: 20 }).map(String),
    standardDeviation: size(1e-6, 1 * mm),
    gaugeStep: size(1e-6, 1 * mm),
    time: size(0, 600),
    pass: fc.integer({ min: 0, max: 9 }),
    date: fc.constantFrom('2025-04-01', '2025-04-01T09:30:00Z'),
    moisture: size(0, 1),
    note: words,
  },
  { requiredKeys: [] },
)
const readings: fc.Arbitrary<Reading> = fc
  .tuple(feet, size(0, 900), measured, parts, fc.oneof(fc.constant(''), names))
  .map(([{ foot, pressed }, load, what, rest, set]) => ({
    row: 0,
    set,
    foot,
    [pressed]: load,
    measured: what,
    count: 1,
    ...rest,
  }))

const unnumbered = (list: readonly Reading[]) => list.map(reading => ({ ...reading, row: 0 }))

test('what is written is read back to the last bit, whatever stands between the cells', () => {
  fc.assert(
    fc.property(
      fc.array(readings, { minLength: 1, maxLength: 8 }),
      fc.constantFrom(',' as const, ';' as const, '\t' as const),
      (list, delimiter) => {
        const read = readOrFail(writeTable(list, { delimiter }))
        expect(unnumbered(read.readings)).toEqual(list)
        expect(read.leftOut).toEqual([])
      },
    ),
    { numRuns: 300 },
  )
})

test('numbers as a gauge shows them stay as they were', () => {
  const text = 'set,roller,load_N,sinkage_mm\nA,light,120,0.61\nA,light,120.5,0.7\n'
  expect(writeTable(readOrFail(text).readings)).toBe(text)
})

describe('a table by hand', () => {
  const hand = fc.record({
    delimiter: fc.constantFrom(',', ';', '\t'),
    decimal: fc.constantFrom('.', ','),
    end: fc.constantFrom('\n', '\r\n', '\r'),
    mark: fc.boolean(),
    comment: fc.boolean(),
    closed: fc.boolean(),
    rows: fc.array(
      fc.record({
        set: names,
        load: fc.integer({ min: 1, max: 9999 }),
        sinkage: fc.integer({ min: 1, max: 1499 }),
        note: words,
      }),
      { minLength: 1, maxLength: 6 },
    ),
  })

  test('reads the same under every delimiter, decimal mark and line end', () => {
    fc.assert(
      fc.property(hand, ({ delimiter, decimal, end, mark, comment, closed, rows }) => {
        const cell = (text: string) =>
          text.includes(delimiter) || /["\n]|^#/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
        // One and two decimals: never to be mistaken for thousands.
        const number = (hundredths: number, places: number) =>
          cell((hundredths / 10 ** places).toFixed(places).replace('.', decimal))
        const lines = [
          ...(comment ? [`# loads, sinkages; tabs\tand "quotes"`] : []),
          ['set', 'load_N', 'sinkage_mm', 'note'].join(delimiter),
          ...rows.map(({ set, load, sinkage, note }) =>
            [cell(set), number(load, 1), number(sinkage, 2), cell(note)].join(delimiter),
          ),
          ...(closed ? [''] : []),
        ]
        const text = lines.join('\n').replaceAll('\n', end)
        const read = readOrFail(mark ? `\uFEFF${text}` : text)
        let row = comment ? 3 : 2
        const expected = rows.map(({ set, load, sinkage, note }) => {
          const reading = {
            row,
            set,
            foot: { kind: 'roller', name: null },
            load: Number((load / 10).toFixed(1)),
            measured: { kind: 'sinkage', sinkage: Number((sinkage / 100).toFixed(2)) * 1e-3 },
            count: 1,
            note,
          }
          row += 1 + note.split('\n').length - 1
          return reading
        })
        expect(read.readings).toEqual(expected)
      }),
      { numRuns: 400 },
    )
  })
})

describe('whatever the text', () => {
  const pieces = fc.constantFrom(
    ...['sinkage_mm', 'load_N', 'set', 'roller', 'plate_area_mm2', 'n', 'date', 'drop_in', 'mean', 'NA'],
    ...[',', ';', '\t', '\n', '\r\n', '\r', '"', '""', '#', ' ', '\u00a0', '\uFEFF', '-', '–', '/', 'e'],
    ...[
      '0',
      '5',
      '0.61',
      '1,234',
      '1.234',
      '5/32',
      '1e400',
      '2025-04-01',
      'sep=',
      '\u0000',
      '\uFFFD',
      '😀',
      '½',
    ],
  )
  const texts = fc.oneof(
    fc.string({ maxLength: 300 }),
    fc.string({ maxLength: 300, unit: 'binary' }),
    fc.array(pieces, { maxLength: 80 }).map(list => list.join('')),
    fc.array(pieces, { maxLength: 80 }).map(list => `set,roller,load_N,drop_in,sinkage_mm\n${list.join('')}`),
  )

  test('an answer comes back: readings, or problems that each say where, what and instead of what', () => {
    fc.assert(
      fc.property(texts, text => {
        const read = readTable(text)
        for (const problem of [...(read.ok ? [] : read.problems), ...read.notes]) {
          expect(problem.path).not.toBe('')
          expect(problem.expected).not.toBe('')
          expect(problem.received).not.toBe('')
        }
        expect(read.ok ? read.readings.length : read.problems.length).toBeGreaterThan(0)
        expect(JSON.parse(JSON.stringify(read))).toEqual(read)
      }),
      { numRuns: 2000 },
    )
  })

  test('no row is passed over: it gives readings, is left out, or has a problem', () => {
    const cells = fc.constantFrom('A', '', 'NA', '120', '0.5', '1 234', 'x', '1/8', '"a', 'mean', 'sd')
    const tables = fc.array(fc.array(cells, { minLength: 1, maxLength: 7 }), { minLength: 1, maxLength: 8 })
    fc.assert(
      fc.property(tables, rows => {
        const text = ['set,replicate,roller,load_N,sinkage_mm', ...rows.map(row => row.join(','))].join('\n')
        if (text.includes('"')) return
        const read = readTable(text)
        const told = new Set([
          ...read.readings.map(({ row }) => row),
          ...read.leftOut.map(({ row }) => row),
          ...(read.ok ? [] : read.problems.map(({ row }) => row)),
        ])
        rows.forEach((row, i) => {
          if (row.some(cell => cell !== '')) expect(told).toContain(i + 2)
        })
      }),
      { numRuns: 500 },
    )
  })

  // A reader that grew with the square of these would be at it for minutes.
  test.each([
    ['open quotation marks', `sinkage_mm\n${'"a'.repeat(200_000)}`],
    ['quotation marks alone', '"'.repeat(300_001)],
    ['marks inside fields', `set,sinkage_mm\n${'"a"b,0.5\n'.repeat(50_000)}`],
    ['commas alone', ','.repeat(300_000)],
    ['names without end', `${'sinkage'.repeat(40_000)},sinkage_mm\nx,0.5`],
    ['digits without end', `sinkage_mm\n${'9'.repeat(300_000)}`],
    ['groups of digits without end', `load_N;sinkage_mm\n${'1'}${' 234'.repeat(100_000)};0.5`],
    ['spaces without end', `set,sinkage_mm\n${' '.repeat(300_000)}x,0.5`],
    ['a hundred thousand rows', `set,load_N,sinkage_mm,n\n${'A,120,0.5,1\nA,120,0.5,3\n'.repeat(50_000)}`],
    [
      'a hundred thousand sets',
      `set,sinkage_mm\n${Array.from({ length: 1e5 }, (_, i) => `${i},0.5`).join('\n')}`,
    ],
  ])('an answer comes soon: %s', (_, text) => {
    expect(typeof readTable(text).ok).toBe('boolean')
  })
})
