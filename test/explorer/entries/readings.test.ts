import { describe, expect, it } from 'vitest'
import { fieldsOf, readBook, serialiseBook } from '../../../packages/explorer/src/book/index.ts'
import { readingRows } from '../../../packages/explorer/src/entries/readingRows.ts'
import {
  columnsFrom,
  type ReadingsSettings,
  rowsOf,
  settingsFrom,
  textOf,
} from '../../../packages/explorer/src/entries/readings/columns.ts'
import {
  editorTable,
  rowRemarks,
  tableRemarks,
} from '../../../packages/explorer/src/entries/readings/editorTable.ts'
import { readingsFinding } from '../../../packages/explorer/src/entries/readings/finding.ts'
import { readings } from '../../../packages/explorer/src/entries/readings/kind.ts'
import { shownColumn } from '../../../packages/explorer/src/entries/readings/shownColumn.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { answered, asked, reader, shownOf } from './asked.ts'
import { allKinds, firstBook } from './firstBook.ts'

const { scenario } = await firstBook()

const told = (settings: ReadingsSettings) => {
  const q = asked(readings, scenario, settings)
  return { ...q, result: answered(readings.compute(q.input)) }
}
const messy = `# Invented; Ellerby Hollow Turf School
set;plate_diameter_mm;load_N;sinkage_mm;Gauge;note
orchard;60;20;0,42;A;"wet; a wormcast"
orchard;60;40;0,71;A;
orchard;60;60;n/a;A;
nursery;60;20;0.5x;A;
set;plate_diameter_mm;load_N;sinkage_mm;Gauge;note
nursery;60;40;0,93;A;
`

describe('a table of readings', () => {
  it('is cut into columns, with what the file remarked beside it', () => {
    const settings = settingsFrom(messy)
    expect(settings.columns.map(({ head }) => head)).toEqual([
      'set',
      'plate_diameter_mm',
      'load_N',
      'sinkage_mm',
      'Gauge',
      'note',
    ])
    expect(settings.remark).toBe('Invented; Ellerby Hollow Turf School')
    expect(rowsOf(settings.columns)[0]).toEqual(['orchard', '60', '20', '0,42', 'A', 'wet; a wormcast'])
  })

  it('gives the sound readings, and says of each other row what is wrong, by the row’s number in the editor', () => {
    const { settings, result } = told(settingsFrom(messy))
    expect(result.readings.map(({ row }) => row)).toEqual([1, 2, 6])
    expect(result.sets).toEqual(['orchard', 'nursery'])
    const heads = settings.columns.map(({ head }) => head)
    const remarks = rowRemarks(result, heads, reader)
    expect(remarks.find(({ kind }) => kind === 'problem')).toMatchObject({ row: 3, column: 'sinkage_mm' })
    const left = remarks.filter(({ sentence }) => sentence.startsWith('Left out'))
    expect(left.map(({ row }) => row)).toEqual([2, 4])
    expect(tableRemarks(result, reader).notes.join(' ')).toMatch(/Gauge/)
    expect(tableRemarks(result, reader).notes.join(' ')).toMatch(/Missing: sinkage in 1 row/)
  })

  it('finds in one sentence how many of how many sets, between which loads, and what is not among them', () => {
    const { settings, result } = told(settingsFrom(messy))
    const sentence = readingsFinding(shownOf(settings, result, scenario))
    expect(sentence).toBe('3 readings of 2 sets, 20 to 40\u202fN; 2 left out; 1 row that cannot be read yet.')
  })

  it('has nothing to find while it is empty, and is not wrong while it is only begun', () => {
    const empty = told({ columns: [], remark: '' })
    expect(empty.result.problems).toEqual([])
    expect(readingsFinding(shownOf(empty.settings, empty.result, scenario))).toBe(null)
    expect(told({ columns: columnsFrom(['set', 'sinkage_mm'], []), remark: '' }).result.problems).toEqual([])
    const laidOut = told(settingsFrom('roller,load_kg,sinkage_mm\nlight,,\ngrooved,,\n'))
    expect(laidOut.result.problems).toEqual([])
    expect(readingsFinding(shownOf(laidOut.settings, laidOut.result, scenario))).toBe(null)
    const typed = told(settingsFrom('roller,load_kg,sinkage_mm\nlight,14,2.2\ngrooved,,\n'))
    expect(typed.result.readings).toHaveLength(1)
    expect(told(settingsFrom('roller,load_kg,sinkage_mm\nlight,,deep\n')).result.problems).not.toEqual([])
  })

  it('says what a head must be where none is known', () => {
    const { result } = told(settingsFrom('a,b\n1,2\n'))
    expect(result.readings).toEqual([])
    expect(tableRemarks(result, reader).problems.join(' ')).toMatch(/sinkage_mm/)
  })

  it('hands its rows to curves, map and formulas', () => {
    const { result } = told(settingsFrom(messy))
    expect(readingRows(result)).toHaveLength(3)
    expect(readings.offers?.(result)).toEqual({
      count: { quantity: 'count', value: 3 },
      sets: { quantity: 'count', value: 2 },
    })
  })

  it('leaves a long table to the worker, which answers the same', () => {
    const lines = Array.from({ length: 600 }, (_, i) => `A,60,${20 + (i % 5)},0.${30 + (i % 9)}`)
    const { input } = asked(
      readings,
      scenario,
      settingsFrom(['set,plate_diameter_mm,load_N,sinkage_mm', ...lines].join('\n')),
    )
    expect(readings.compute(input)).toEqual({ outcome: 'later' })
    expect(answered(readings.refine?.(input, () => {})).readings).toHaveLength(600)
  })
})

describe('columns of a book', () => {
  const read = (raw: Record<string, unknown>) => {
    const problems: { path: string }[] = []
    return { settings: readings.read(fieldsOf(raw, 'entry', problems as never)), problems }
  }

  it('may be lists or texts of cells, or a table as a file has it', () => {
    const list = read({ columns: [{ head: 'sinkage_mm', cells: [0.3, '0.4', null] }] }).settings
    const text = read({ columns: [{ head: 'sinkage_mm', cells: '0.3\n0.4\n' }] }).settings
    const table = read({ table: '# mine\nsinkage_mm\n0.3\n0.4\n' }).settings
    expect(rowsOf(list.columns)).toEqual([['0.3'], ['0.4'], ['']])
    expect(rowsOf(text.columns)).toEqual([['0.3'], ['0.4']])
    expect(rowsOf(table.columns)).toEqual([['0.3'], ['0.4']])
    expect(table.remark).toBe('mine')
    expect(table).not.toHaveProperty('table')
  })

  it('are reported where they are none, and the sound ones kept', () => {
    const { settings, problems } = read({ columns: [{ head: 'set', cells: ['A'] }, { cells: [] }, 7] })
    expect(settings.columns).toHaveLength(1)
    expect(problems).toHaveLength(2)
    expect(read({ columns: 'x' }).problems).toMatchObject([{ path: 'entry.columns' }])
  })

  it('come back from a file as they were, compact', async () => {
    const { columns, remark } = settingsFrom(messy)
    const raw = {
      swardsink: 1,
      title: 'Mine',
      scenario: JSON.parse(serialiseBook(await firstBook())).scenario,
      pages: [{ title: '', lead: '', entries: [{ kind: 'readings', columns, remark }] }],
    }
    const { book, problems } = await readBook(raw, allKinds)
    expect(problems).toEqual([])
    if (!book) throw new Error('no book')
    const text = serialiseBook(book)
    expect(text.split('\n').filter(line => line.includes('orchard'))).toHaveLength(1)
    const again = await readBook(JSON.parse(text), allKinds)
    expect(again.book?.pages[0]?.entries[0]?.settings).toEqual({ columns, remark })
  })

  it('leave as the same table, commas and quotes and all', () => {
    const { columns, remark } = settingsFrom(
      '# one\n# two\nset,sinkage_mm,note\n"A ""x""",0.3,"a, b"\n#B,0.4,\n"#C",0.5,x',
    )
    const heads = columns.map(({ head }) => head)
    const text = textOf({ heads, rows: rowsOf(columns), remark }, ',')
    expect(settingsFrom(text)).toEqual({ columns, remark })
  })
})

describe('a column in its reader’s units', () => {
  const US = readerFor({ units: 'US', figureText: 13 })

  it('shows what was typed where the units agree', () => {
    const way = shownColumn({ name: 'sinkage', unit: 'mm' }, ['0,310'], 'metric')
    expect([way.unit, way.shown('0,310'), way.taken('0,32')]).toEqual(['mm', '0,310', '0,32'])
  })

  it('is changed into the other system and back, with no digit lost', () => {
    const inches = shownColumn({ name: 'sinkage', unit: 'mm' }, ['0.31', 'NA'], 'US')
    expect([inches.unit, inches.shown('0.31'), inches.shown('NA')]).toEqual(['in', '0.0122', 'NA'])
    expect(inches.taken('0.02')).toBe('0.508')
    const metric = shownColumn({ name: 'sinkage', unit: 'in' }, ['5/32'], 'metric')
    expect(metric.shown('5/32')).toBe('3.97')
    const pounds = shownColumn({ name: 'load', unit: 'kg' }, ['10'], 'US')
    expect([pounds.unit, pounds.shown('10')]).toEqual(['lbf', '22'])
  })

  it('stays as it was typed where a cell is no plain number', () => {
    expect(shownColumn({ name: 'sinkage', unit: 'mm' }, ['0.31', '0.3?'], 'US').unit).toBe('mm')
    expect(shownColumn({ name: 'moisture', unit: 'percent' }, ['21'], 'US').unit).toBe('%')
  })

  it('leaves untouched cells as they were when one is typed over', () => {
    const settings = settingsFrom('set,plate_diameter_mm,load_N,sinkage_mm\nA,60,20,0.31\nB,60,40,0.62\n')
    const { result } = told(settings)
    const rows = rowsOf(settings.columns)
    const heads = settings.columns.map(({ head }) => head)
    const table = editorTable({ heads, rows, result, options: {}, reader: US })
    expect(table.columns.map(({ unit }) => unit)).toEqual(['', 'in', 'lbf', 'in'])
    const [first = [], second = []] = table.rows
    const next = table.taken([first, [...second.slice(0, 3), '0.02']])
    expect(next[0]).toBe(rows[0])
    expect(next[1]).toEqual(['B', '60', '40', '0.508'])
  })
})
