import { GRAVITY, readTable } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, identity } from '../../support/tolerance.ts'
import { lines, problemsOf, readOrFail, sinkages, told } from './readOrFail.ts'

const one = (text: string) => readOrFail(text).readings[0] ?? expect.fail('no reading')

describe('a row', () => {
  test('with everything in it is a reading in SI', () => {
    const text = lines(
      'set,replicate,roller,load_N,sinkage_mm,sd_mm,gauge_step_mm,n,time_s,pass,date,moisture_percent,note',
      'first lawn,2,light,120.5,0.84,0.21,0.01,6,30,1,2025-04-01,21.5,"by the oak, wet"',
    )
    const { load, measured, standardDeviation, gaugeStep, moisture, ...rest } = one(text)
    expect(rest).toEqual({
      row: 2,
      set: 'first lawn',
      replicate: '2',
      foot: { kind: 'roller', name: 'light' },
      count: 6,
      time: 30,
      pass: 1,
      date: '2025-04-01',
      note: 'by the oak, wet',
    })
    expectNear(load ?? Number.NaN, 120.5, identity)
    expect(measured.kind).toBe('sinkage')
    expectNear(standardDeviation ?? Number.NaN, 0.21e-3, identity)
    expectNear(gaugeStep ?? Number.NaN, 0.01e-3, identity)
    expectNear(moisture ?? Number.NaN, 0.215, identity)
  })

  test('says nothing of what its table has no column for', () => {
    expect(one('sinkage_mm\n0.5')).toEqual({
      row: 2,
      set: '',
      foot: { kind: 'roller', name: null },
      measured: { kind: 'sinkage', sinkage: 0.5 * 1e-3 },
      count: 1,
    })
  })

  test('with a sinkage and a height gives two readings', () => {
    const { readings } = readOrFail('load_N,sinkage_mm,height_mm\n120,0.8,3.4')
    expect(readings.map(({ row, measured }) => [row, measured.kind])).toEqual([
      [2, 'sinkage'],
      [2, 'height'],
    ])
  })

  test('carries the point of a drop', () => {
    expect(one('set,drop_mm,point\nA,1.2,0.25\nA,1.6,0.25').measured).toEqual({
      kind: 'drop',
      drop: 1.2 * 1e-3,
      point: 0.25,
    })
  })
})

describe('units', () => {
  // Inch, pound, standard gravity: 1959 agreement and 3rd CGPM, exact.
  test.each([
    ['load_kg', '10', 'load', 10 * GRAVITY],
    ['load_lb', '22', 'load', 22 * 0.45359237 * 9.80665],
    ['load_lbf', '22', 'load', 22 * 0.45359237 * 9.80665],
    ['load_N', '98', 'load', 98],
    ['sd_in', '0.02', 'standardDeviation', 0.02 * 0.0254],
    ['gauge_step_in', '0.001', 'gaugeStep', 0.001 * 0.0254],
    ['time_ms', '250', 'time', 0.25],
    ['moisture_percent', '25', 'moisture', 0.25],
  ] as const)('%s %s', (header, cell, name, value) => {
    const reading = one(`sinkage_mm,${header}\n0.5,${cell}`)
    expectNear(reading[name] ?? Number.NaN, value, identity)
  })

  test.each([
    ['plate_area_mm2', '1963', 'area', 1963e-6],
    ['plate_area_cm2', '20', 'area', 20e-4],
    ['plate_area_in2', '3', 'area', 3 * 0.0254 ** 2],
    ['plate_diameter_mm', '50', 'diameter', 0.05],
    ['plate_diameter_in', '2', 'diameter', 0.0508],
  ] as const)('of a plate: %s %s', (header, cell, name, value) => {
    const { foot, pressure } = one(`${header},pressure_kPa,sinkage_mm\n${cell},20,0.5`)
    expectNear((foot as unknown as Record<string, number>)[name] ?? Number.NaN, value, identity)
    expectNear(pressure ?? Number.NaN, 20e3, identity)
  })

  test('metric and US columns may stand side by side, each filled where it was read', () => {
    const text = lines('load_N,load_lbf,sinkage_mm,sinkage_in', '120,,0.81,', ',27,,1/32')
    const { readings, missing } = readOrFail(text)
    expect(missing).toEqual([])
    const [first, second] = readings.map(({ load = Number.NaN, measured }) => ({ load, measured }))
    expectNear(first?.load ?? Number.NaN, 120, identity)
    expectNear(second?.load ?? Number.NaN, 27 * 0.45359237 * 9.80665, identity)
    expect(second?.measured).toEqual({ kind: 'sinkage', sinkage: 0.0254 / 32 })
  })

  test('two spellings of one quantity pass when they agree to their last digits', () => {
    // 10 kg is 98.07 N, 0.79 mm is 0.0311 in.
    const text = lines('load_N,load_kg,sinkage_mm,sinkage_in', '98,10,0.79,0.031', '98,10,0.79,1/32')
    const { readings, notes } = readOrFail(text)
    expect(readings.map(({ load }) => load)).toEqual([98, 98])
    expect(notes.map(({ column }) => column)).toEqual(['load_kg', 'sinkage_in'])
  })

  test('two spellings that disagree are a problem of their row', () => {
    const { problems, readings } = problemsOf('load_N,load_kg,sinkage_mm\n98,10,0.5\n98,11,0.5')
    expect(problems.map(told)).toEqual([
      'row 3, load_kg: expected the same as in load_N, received 11 beside 98',
    ])
    expect(readings.map(({ row }) => row)).toEqual([2])
  })

  test('a diameter and an area, a load and a pressure are held against each other', () => {
    const header = 'plate_diameter_mm,plate_area_mm2,load_N,pressure_kPa,sinkage_mm'
    expect(readOrFail(lines(header, '50,1963,39,20,0.5')).readings).toHaveLength(1)
    expect(problemsOf(lines(header, '50,2100,39,20,0.5')).problems.map(({ path }) => path)).toEqual([
      'row 2, plate_area_mm2',
    ])
    expect(problemsOf(lines(header, '50,1963,59,20,0.5')).problems.map(({ path }) => path)).toEqual([
      'row 2, pressure_kPa',
    ])
  })
})

describe('headings', () => {
  test.each([
    'Sinkage (mm)',
    ' sinkage mm ',
    'SINKAGE_MM',
    'Sinkage [mm]',
    'sinkage\u00a0mm',
    'sinkage-mm',
    'Sinkage_mm',
  ])('%s is sinkage_mm', header => {
    expect(sinkages(`load_N,${header}\n120,0.5`)).toEqual([0.5])
  })

  test('symbols are read: m² and %', () => {
    const { foot, moisture } = one('plate area mm²,load_n,sinkage_mm,moisture (%)\n2000,40,0.5,20')
    expect(foot).toEqual({ kind: 'plate', area: 2000 * 0.001 ** 2 })
    expect(moisture).toBe(20 / 100)
  })

  test.each([
    ['sinkge_mm', 'sinkage_mm'],
    ['laod_N', 'load_N'],
    ['presure_kPa', 'pressure_kPa'],
    ['replicat', 'replicate'],
    ['plot', 'set'],
    ['remarks', 'note'],
    ['depth_mm', 'sinkage_mm'],
  ])('%s is unknown, and near %s', (header, near) => {
    const { notes, columns } = readOrFail(`height_mm,${header}\n3.4,1`)
    expect(notes.map(told)).toEqual([
      `row 1, ${header}: expected a known name, perhaps ${near}, received "${header}", which is not read`,
    ])
    expect(columns[1]).toEqual({ header, name: null, unit: '' })
  })

  test('a name near none is noted with all that there are', () => {
    const [note] = readOrFail('sinkage_mm,xyzzyx_qqq\n0.5,1').notes
    expect(note?.expected).toMatch(/^one of set, .*sinkage_mm/)
  })

  test.each([
    ['sinkage', /^row 1, sinkage: expected its unit after the name: sinkage_m, .*sinkage_mm/],
    ['sinkage_kN', /its unit after the name/],
    ['load', /load_N, .*load_kg/],
    ['n_mm', /n without a unit/],
  ])('a known quantity without its unit is a problem: %s', (header, words) => {
    expect(told(problemsOf(`height_mm,${header}\n3.4,1`).problems[0]!)).toMatch(words)
  })

  test('without a measured column there is nothing to read', () => {
    expect(problemsOf('set,load_N\nA,120').problems.map(told)).toEqual([
      'row 1: expected a header row with at least one of sinkage_mm, drop_mm, height_mm, received "set, load_N"',
    ])
  })

  test('a plate without a column of loads or pressures is a problem', () => {
    expect(problemsOf('plate_diameter_mm,sinkage_mm\n50,0.4').problems[0]?.expected).toBe(
      'load_N, load_kg or pressure_kPa beside a plate',
    )
  })

  test('a column that stands twice is noted, compared and taken once', () => {
    const { readings, notes } = readOrFail('set,sinkage_mm,sinkage_mm\nA,0.5,0.5\nA,,0.7')
    expect(readings.map(({ measured }) => measured)).toEqual([
      { kind: 'sinkage', sinkage: 0.5 * 1e-3 },
      { kind: 'sinkage', sinkage: 0.7 * 1e-3 },
    ])
    expect(notes.map(({ column, expected }) => [column, expected])).toEqual([
      ['sinkage_mm', 'sinkage to be given once'],
    ])
    expect(problemsOf('set,set,sinkage_mm\nA,B,0.5').problems.map(({ path }) => path)).toEqual(['row 2, set'])
  })
})

describe('around the table', () => {
  test('a byte-order mark, comments, blank lines and a header after them', () => {
    const text =
      '\uFEFF# Ellerby Hollow, invented\n\n#\n  \nset,sinkage_mm\n# more\nA,0.5\n,\n\n"# quoted, by a spreadsheet",\nA,0.6\n'
    const { readings, leftOut } = readOrFail(text)
    expect(readings.map(({ row }) => row)).toEqual([7, 11])
    expect(leftOut).toEqual([])
  })

  test.each([
    ['Windows', '\r\n'],
    ['old Mac', '\r'],
    ['Unix', '\n'],
  ])('line ends of %s leave the rows their numbers', (_, end) => {
    const text = ['# c', 'set,sinkage_mm,note', 'A,0.5,"two', 'lines"', 'A,0.6,', ''].join(end)
    const { readings } = readOrFail(text)
    expect(readings.map(({ row }) => row)).toEqual([3, 5])
    expect(readings[0]?.note).toBe('two\nlines')
  })

  test('a first line that tells the delimiter is heeded and counted', () => {
    const { readings } = readOrFail('sep=;\nset;sinkage_mm\nA;0,5')
    expect(readings).toMatchObject([{ row: 3, set: 'A' }])
  })

  test('a line turned off that could have been a row is noted', () => {
    const { notes } = readOrFail('set,sinkage_mm\n# a remark\nA,0.5\n#A,0.6')
    expect(notes.map(({ row }) => row)).toEqual([4])
  })

  test('the header again, inside, is left out and said so', () => {
    const { readings, leftOut } = readOrFail('set,sinkage_mm\nA,0.5\nset,sinkage_mm\nB,0.6')
    expect(readings.map(({ set }) => set)).toEqual(['A', 'B'])
    expect(leftOut).toEqual([{ row: 3, why: 'the header again' }])
  })

  test('spaces that do not break neither part names nor spoil numbers', () => {
    const { readings } = readOrFail('set,sinkage_mm\nfirst\u00a0lawn,\u00a00.5\u202f\nfirst lawn,0.6')
    expect(new Set(readings.map(({ set }) => set))).toEqual(new Set(['first lawn']))
  })

  test('nothing, comments alone, and a header alone are no table', () => {
    for (const text of ['', '\n\n', '# only this', 'set,sinkage_mm', 'set,sinkage_mm\nA,NA'])
      expect(readTable(text).ok).toBe(false)
  })

  test('text of another encoding is told', () => {
    const wide = [...'set,sinkage_mm\nA,0.5'].map(letter => `${letter}\u0000`).join('')
    expect(problemsOf(wide).problems.map(({ expected }) => expected)).toContain('text in UTF-8')
    expect(readOrFail('set,sinkage_mm\nH\uFFFDhe,0.5').notes.map(({ expected }) => expected)).toEqual([
      'text in UTF-8',
    ])
  })

  test('what is no text is the caller’s mistake', () => {
    expect(() => readTable(undefined as unknown as string)).toThrow(/^text: expected a text/)
  })

  test('the answer survives JSON', () => {
    const read = readTable('set,sinkage_mm,drop_in\nA,0.5,1/8\nB,NA,x')
    expect(JSON.parse(JSON.stringify(read))).toEqual(read)
  })
})
