import { describe, expect, test } from 'vitest'
import { expectNear, identity } from '../../support/tolerance.ts'
import { lines, problemsOf, readOrFail, sinkages } from './readOrFail.ts'

describe('the delimiter is found by the names in the first row', () => {
  test.each([
    ['commas', 'set,load_N,sinkage_mm\nA,120,0.5'],
    ['semicolons', 'set;load_N;sinkage_mm\nA;120;0.5'],
    ['tabs', 'set\tload_N\tsinkage_mm\nA\t120\t0.5'],
    ['semicolons around decimal commas', 'set;load_N;sinkage_mm\nA;120,0;0,5'],
    ['tabs around decimal commas', 'set\tload_N\tsinkage_mm\nA\t120,0\t0,5'],
    ['semicolons where commas are more', 'set;load_N;sinkage_mm;note\nA;120,0;0,5;a, b, c, d, e, f, g'],
    ['commas where semicolons are more', 'set,load_N,sinkage_mm,note\nA,120,0.5,a; b; c; d; e; f; g'],
    ['commas, decimal commas in quotes', 'set,load_N,sinkage_mm\nA,"120,0","0,5"'],
    ['semicolons below a comment with commas', '# x, y, z, load_N, set\nset;load_N;sinkage_mm\nA;120;0,5'],
  ])('%s', (_, text) => {
    const { readings } = readOrFail(text)
    expect(readings).toMatchObject([{ set: 'A', load: 120, measured: { sinkage: 0.5 * 1e-3 } }])
  })
})

describe('decimals', () => {
  const column = (...cells: string[]) => lines('set;sinkage_mm', ...cells.map(cell => `A;${cell}`))

  test.each([
    ['0.5', 0.5],
    ['0,5', 0.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['+0.5', 0.5],
    ['5e-1', 0.5],
    ['5,0E-1', 0.5],
    ['−0.05', -0.05],
    ['-0.05', -0.05],
    ['3', 3],
    ['3.', 3],
  ])('%s', (cell, value) => {
    expectNear(sinkages(column(cell))[0] ?? Number.NaN, value, identity)
  })

  test('three figures after a comma are decimals where the table has decimal commas', () => {
    expect(sinkages(column('0,61', '1,234'))).toEqual([0.61, 1.234])
  })

  test('between semicolons, with no other sign, they are decimals with a note', () => {
    const { readings, notes } = readOrFail(column('1,234', '2,345'))
    expect(readings).toHaveLength(2)
    expect(notes[0]?.received).toBe('1,234: taken as a decimal comma')
  })

  test.each([
    ['beside decimal points', 'load_N;sinkage_mm\n1,234;0.5'],
    ['between tabs, with no other sign', 'load_N\tsinkage_mm\n1,234\t3'],
    ['between commas, in quotes', 'load_N,sinkage_mm\n"1,234",0.5'],
    ['a point beside decimal commas', 'load_N;sinkage_mm\n1.234;0,5'],
    ['both marks', 'load_N;sinkage_mm\n1,234.5;0.5'],
    ['both marks the other way', 'load_N;sinkage_mm\n1.234,5;0,5'],
    ['millions', 'load_N;sinkage_mm\n1,234,567;0.5'],
    ['spaces', 'load_N;sinkage_mm\n1 234;0.5'],
    ['spaces that do not break', 'load_N;sinkage_mm\n1\u00a0234,5;0,5'],
    ['narrow ones', 'load_N;sinkage_mm\n1\u202f234;0.5'],
    ['apostrophes', "load_N;sinkage_mm\n1'234;0.5"],
  ])('separators of thousands are refused with a sentence: %s', (_, text) => {
    const { problems } = problemsOf(text)
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatchObject({ row: 2, column: 'load_N' })
    expect(problems[0]?.expected).toContain('without thousands separators')
  })

  test('points and commas in one table are noted, and each read where it can be but one', () => {
    const { notes, readings } = readOrFail(column('0.5', '0,6'))
    expect(readings).toHaveLength(2)
    expect(notes[0]?.expected).toBe('decimal points or decimal commas')
  })

  test('a mark that is given is held to', () => {
    expect(readOrFail('load_N,sinkage_mm\n"1,234",2', { decimal: ',' }).readings[0]?.load).toBe(1.234)
    expect(() => readOrFail('load_N,sinkage_mm\n12.5,2', { decimal: ',' })).toThrow(/a decimal comma/)
  })

  test('decimal commas without quotes, between commas, are a ragged row with a hint', () => {
    const { problems } = problemsOf('set,sinkage_mm\nA,0,5')
    expect(problems[0]?.expected).toBe(
      '2 cells, as in the header (decimal commas need quotation marks, or semicolons between cells)',
    )
  })
})

describe('inches', () => {
  test.each([
    ['5/32', 5 / 32],
    ['1 5/32', 1 + 5 / 32],
    ['1-5/32', 1 + 5 / 32],
    ['0 5/32', 5 / 32],
    ['-1/32', -1 / 32],
    ['5/32"', 5 / 32],
    ['5/32″', 5 / 32],
    ['0.125', 0.125],
    ['½', 0.5],
    ['1½', 1.5],
    ['1 ⅛', 1.125],
    ['5 / 32', 5 / 32],
    ['5⁄32', 5 / 32],
  ])('%s', (cell, inches) => {
    const { measured } = readOrFail(`set;drop_in\nA;${cell}\nA;1/4`).readings[0]!
    expectNear(measured.kind === 'drop' ? measured.drop : Number.NaN, inches * 0.0254, identity)
  })

  test.each([
    ['drop_mm', '5/32', 'a decimal number (fractions are for inches)'],
    ['drop_in', '5/0', 'a fraction of something'],
    ['drop_in', '5/32 in', 'a number'],
    ['drop_in', '1/2/3', 'a number'],
  ])('%s %s is refused', (header, cell, expected) => {
    expect(problemsOf(`set,${header}\nA,${cell}\nA,1`).problems).toMatchObject([
      { row: 2, column: header, expected },
    ])
  })
})

describe('what is missing is counted', () => {
  test.each(['', 'NA', 'n/a', 'na', 'N/A', '-', '–', '—', ' ', '\u00a0', ' – '])('"%s"', cell => {
    const { missing, readings } = readOrFail(`set,load_N,sinkage_mm\nA,${cell},0.5\nA,120,0.6`)
    expect(missing).toEqual([{ column: 'load_N', count: 1 }])
    expect(readings.map(({ load }) => load)).toEqual([undefined, 120])
  })

  test.each([
    ['roller,load_N,sinkage_mm\nlight,120,NA', 'nothing measured'],
    ['plate_diameter_mm,load_N,sinkage_mm\n50,NA,0.5', 'the load on the plate is missing'],
    ['roller,load_N,sinkage_mm\nNA,120,0.5', 'the roller or plate is missing'],
  ])('%j is left out and says why', (text, why) => {
    const [header, first] = text.split('\n')
    const rest = first?.replaceAll('NA', '70').replace('70,120', 'light,120') ?? ''
    const { leftOut, readings } = readOrFail(lines(header ?? '', first ?? '', rest))
    expect(leftOut).toEqual([{ row: 2, why }])
    expect(readings.map(({ row }) => row)).toEqual([3])
  })
})
