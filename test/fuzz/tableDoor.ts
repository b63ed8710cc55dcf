import { readTable, sentence, tableCells, writeTable } from '@swardsink/model'
import fc from 'fast-check'
import { tears, torn } from './damage.ts'
import { door } from './door.ts'
import { must, mustBeFinite, mustBeSame } from './expectations.ts'

const heads = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.constantFrom(
      ...[
        'set',
        'roller',
        'plate_diameter_mm',
        'plate_diameter_in',
        'plate_area_mm2',
        'load_N',
        'load_kg',
        'load_lbf',
      ],
      ...[
        'pressure_kPa',
        'pressure_psi',
        'sinkage_mm',
        'sinkage_mm',
        'sinkage_in',
        'drop_mm',
        'height_mm',
        'point',
      ],
      ...[
        'sd_mm',
        'gauge_step_mm',
        'n',
        'time_s',
        'time_min',
        'pass',
        'date',
        'moisture_percent',
        'note',
        'replicate',
      ],
    ),
  },
  { weight: 1, arbitrary: fc.string({ maxLength: 10 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom('', '__proto__', 'constructor', 'sinkage', 'sinkage_kg', 'Sinkage (mm)'),
  },
)

const numbers = fc
  .tuple(fc.double({ min: -5, max: 500, noNaN: true }), fc.nat(6))
  .map(([value, digits]) => value.toFixed(digits))

const cells = fc.oneof(
  { weight: 8, arbitrary: numbers },
  { weight: 2, arbitrary: numbers.map(text => text.replace('.', ',')) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      ...[
        '',
        ' ',
        'NA',
        'n/a',
        '-',
        '–',
        '1e308',
        '1e-320',
        '-0',
        '0',
        '1.234,5',
        "1'234",
        '12 mm',
        '1/4',
        '½',
        'inf',
      ],
      ...[
        'NaN',
        '#REF!',
        '2024-05-01',
        '01/05/2024',
        'light',
        '"',
        'a\nb',
        '٣',
        '3.',
        '.5',
        '+1',
        '0x10',
        '1_000',
      ],
    ),
  },
)

const quoted = (cell: string, delimiter: string) =>
  cell.includes(delimiter) || cell.includes('\n') ? `"${cell.replaceAll('"', '""')}"` : cell

/** Tables of readings, as programs and people write them, and what is left of them. */
export const tableDoor = door({
  name: 'tables',
  arbitrary: fc.record({
    heads: fc.array(heads, { maxLength: 9 }),
    rows: fc.array(fc.array(cells, { maxLength: 9 }), { maxLength: 12 }),
    delimiter: fc.constantFrom(',', ';', '\t'),
    ends: fc.constantFrom('\n', '\r\n', '\r'),
    before: fc.constantFrom('', '\uFEFF', '# made up\n', '\n\n', 'sep=;\n'),
    damage: tears,
  }),
  check({ heads: first, rows, delimiter, ends, before, damage }) {
    const lines = [first, ...rows].map(row => row.map(cell => quoted(cell, delimiter)).join(delimiter))
    const text = torn(before + lines.join(ends), damage)
    const cut = tableCells(text)
    must(cut.rows.every(Array.isArray), 'no rows')
    const read = readTable(text)
    mustBeFinite(read.readings, 'readings')
    must(read.ok || read.problems.length > 0, 'a table refused without a reason')
    for (const problem of [...(read.ok ? [] : read.problems), ...read.notes, ...read.leftOut])
      must('expected' in problem ? sentence(problem).length > 0 : true, 'a problem of a table without words')
    if (read.readings.length === 0) return
    const again = readTable(writeTable(read.readings))
    const plain = (list: typeof read.readings) => list.map(({ row: _, ...rest }) => rest)
    mustBeSame(plain(again.readings), plain(read.readings), 'readings written and read')
  },
})
