import { describe, expect, test } from 'vitest'
import { lines, problemsOf, readOrFail, told } from './readOrFail.ts'

describe('what cannot be is a problem with row and column', () => {
  const header = [
    'set',
    'roller',
    'load_N',
    'sinkage_mm',
    'sd_mm',
    'gauge_step_mm',
    'n',
    'time_s',
    'pass',
    'date',
    'moisture_percent',
  ]
  const sound = ['A', 'light', '120', '0.5', '0.1', '0.01', '3', '20', '1', '2025-04-01', '20']
  const withCell = (column: string, cell: string) => {
    const at = header.indexOf(column)
    const bad = sound.map((one, i) => (i === at ? cell : one))
    return lines(header.join(';'), sound.join(';'), bad.join(';'))
  }

  test.each([
    ['load_N', '-3', 'at least 0'],
    ['load_N', 'heavy', 'a number'],
    ['load_N', '120 N', 'a number'],
    ['load_N', 'Infinity', 'a number'],
    ['load_N', '1e999', 'a finite number'],
    ['sinkage_mm', 'NaN', 'a number'],
    ['sinkage_mm', '#DIV/0!', 'a number'],
    ['sinkage_mm', '<0.1', 'a number'],
    ['sinkage_mm', '0.5?', 'a number'],
    ['sd_mm', '0', 'more than 0'],
    ['sd_mm', '-0.1', 'more than 0'],
    ['gauge_step_mm', '0', 'more than 0'],
    ['n', '0', 'at least 1'],
    ['n', '2.5', 'a whole number'],
    ['time_s', '-1', 'at least 0'],
    ['pass', '1.5', 'a whole number'],
    ['date', '01/04/2025', 'a date such as 2025-04-01'],
    ['date', '2025-02-30', 'a date such as 2025-04-01'],
    ['date', '2025-4-1', 'a date such as 2025-04-01'],
    ['date', '1 April', 'a date such as 2025-04-01'],
    ['moisture_percent', '-2', 'at least 0'],
  ])('%s %s', (column, cell, expected) => {
    const { problems, readings } = problemsOf(withCell(column, cell))
    expect(problems).toMatchObject([{ path: `row 3, ${column}`, row: 3, column, expected }])
    expect(problems[0]?.received).toContain(cell)
    expect(readings.map(({ row }) => row)).toEqual([2])
  })

  test.each([
    '2025-04-01',
    '2024-02-29',
    '2025-04-01T09:30',
    '2025-04-01 09:30:15',
    '2025-04-01T09:30:15.5Z',
    '2025-04-01T09:30+01:00',
  ])('the date %s is one', date => {
    expect(readOrFail(withCell('date', date)).readings[1]?.date).toBe(date)
  })

  test.each(['-0.1', '1.1', '50'])('a point of %s is not between the rollers', point => {
    expect(problemsOf(`set,drop_mm,point\nA,1.2,0\nA,1.2,${point}`).problems).toMatchObject([
      { row: 3, column: 'point', expected: '0 to 1' },
    ])
  })

  test('a roller and a plate in one row, and a pressure under a roller', () => {
    const header = 'roller,plate_diameter_mm,load_N,pressure_kPa,sinkage_mm'
    const { problems } = problemsOf(lines(header, 'light,50,40,,0.5', 'light,,,20,0.5', 'light,,120,,0.5'))
    expect(problems.map(told)).toEqual([
      'row 2, roller: expected a roller or a plate, received both in one row',
      'row 3, pressure_kPa: expected a load where there is no plate, received a pressure',
    ])
  })

  test('a diameter of nothing', () => {
    expect(problemsOf('plate_diameter_mm,load_N,sinkage_mm\n0,40,0.5').problems[0]?.expected).toBe(
      'more than 0',
    )
  })
})

describe('rows', () => {
  test('too long ones and too short ones are problems of their row', () => {
    const { problems } = problemsOf('set,load_N,sinkage_mm,note\nA,120,0.5,x,y\nA,120\nA,120,0.5,')
    expect(problems.map(({ row, received }) => [row, received])).toEqual([
      [2, '5'],
      [3, '2'],
    ])
  })

  test('empty cells after the last column, and a note left off, lose nothing', () => {
    expect(readOrFail('set,load_N,sinkage_mm,note\nA,120,0.5,x,,\nA,120,0.5').readings).toHaveLength(2)
  })

  test('a quotation mark that is never closed, or stands inside, is told where it starts', () => {
    expect(problemsOf('set,sinkage_mm,note\nA,0.5,fine\nA,0.5,"open\nB,0.6,\n').problems).toMatchObject([
      { row: 3, expected: 'a closing quotation mark' },
    ])
    expect(problemsOf('set,sinkage_mm,note\nA,0.5,"a "wet" spot"\n').problems[0]).toMatchObject({ row: 2 })
  })

  test('every problem of a table comes in one pass, with what could be read', () => {
    const text = lines(
      '# Ellerby Hollow, invented',
      'set;roller;Load (kg);sinkage_mm;n;date;wether',
      'A;light;10,5;0,61;1;2025-04-01;dry',
      'A;light;−3;0,62;0;2025-04-01;dry',
      'A;light;1.234;0,6x;1;yesterday;dry',
      'A;light;12;0,70;1;2025-04-01;dry;;more',
    )
    const { problems, readings, notes } = problemsOf(text)
    expect(problems.map(({ path }) => path)).toEqual([
      'row 4, Load (kg)',
      'row 4, n',
      'row 5, Load (kg)',
      'row 5, sinkage_mm',
      'row 5, date',
      'row 6',
    ])
    expect(readings.map(({ row }) => row)).toEqual([3])
    expect(notes.map(({ path }) => path)).toEqual(['row 2, wether'])
  })
})

describe('what can be but seldom is comes as a note', () => {
  test.each([
    ['sinkage_mm', '40', /^at most about 15 mm$/],
    ['load_N', '5000', /^at most about 1000 N, or another unit \(likely load_g\)$/],
    ['sinkage_in', '0.9', /^at most about 15 mm, or another unit \(likely .*sinkage_mm\)$/],
    ['sinkage_mm', '-0.2', /^at least about 0 mm$/],
    ['load_kg', '150', /likely .*load_N/],
    ['height_mm', '0.2', /^at least about 1 mm, or another unit \(likely .*height_in/],
    ['moisture_percent', '140', /^at most about 100 percent/],
  ])('%s %s', (column, cell, words) => {
    const rest = column.startsWith('height') || column.startsWith('sinkage') ? 'set' : 'sinkage_mm'
    const { notes } = readOrFail(lines(`${rest},${column}`, `${rest === 'set' ? 'A' : '0.5'},${cell}`))
    expect(notes).toHaveLength(1)
    expect(notes[0]).toMatchObject({ row: 2, column, received: cell })
    expect(notes[0]?.expected).toMatch(words)
  })

  test('a whole column a thousand times too small', () => {
    const { notes } = readOrFail('load_N,sinkage_mm\n120,0.0005\n140,0.0006')
    expect(notes.map(told)).toEqual([
      'sinkage_mm: expected at least about 0.015 mm somewhere, or another unit, received at most 0.0006 mm',
    ])
  })

  test('a set with one drop, and sets whose drops lie apart', () => {
    const text = lines(
      'set,roller,drop_mm',
      'A,light,1.2',
      'A,stout,1.6',
      'B,light,4.2',
      'B,stout,4.7',
      'C,light,1.3',
    )
    const { notes, readings } = readOrFail(text)
    expect(readings).toHaveLength(5)
    expect(notes.map(told)).toEqual([
      'row 6, drop_mm: expected at least two drops in the set "C", received one, which its datum takes up',
      'drop_mm: expected one datum for all sets, or a datum of its own for each, received drops about 1.2 mm in "A" and 4.7 mm in "B": the datums differ, or the sets do',
    ])
    expect(readOrFail(lines('set,drop_mm', 'A,1.2', 'B,1.3', 'A,1.6', 'B,1.5')).notes).toEqual([])
  })

  test('two spellings of a set', () => {
    expect(readOrFail('set,sinkage_mm\nFirst Lawn,0.5\nfirst lawn,0.6').notes.map(told)).toEqual([
      'row 3, set: expected one spelling of a set: "First Lawn" in row 2, received "first lawn", taken as another set',
    ])
  })

  test('a point beside no drop', () => {
    expect(readOrFail('point,sinkage_mm\n0.5,0.5').notes).toMatchObject([{ row: 2, column: 'point' }])
  })
})

test('numbers of a size that nothing has are refused', () => {
  const text = lines('load_kg,sinkage_mm,sd_mm', '1e308,0.5,0.1', '5,0.5,1e-300', '5,-1e40,0.1')
  expect(problemsOf(text).problems.map(told)).toEqual([
    'row 2, load_kg: expected a number of a size that can be calculated with, received 1e308',
    'row 3, sd_mm: expected a number of a size that can be calculated with, received 1e-300',
    'row 4, sinkage_mm: expected a number of a size that can be calculated with, received -1e40',
  ])
})
