import { describe, expect, test } from 'vitest'
import { lines, readOrFail } from './readOrFail.ts'

const header = 'set,replicate,roller,load_N,sinkage_mm,n'
const rowsOf = (text: string) => readOrFail(text).readings.map(({ row }) => row)

describe('a mean', () => {
  test('beside its own raw rows is left out and said so', () => {
    const text = lines(
      header,
      'A,1,light,120,0.5,',
      'A,2,light,120,0.7,',
      'A,,light,120,0.6,2',
      'B,,light,120,0.9,4',
    )
    const { readings, leftOut } = readOrFail(text)
    expect(readings.map(({ row, count }) => [row, count])).toEqual([
      [2, 1],
      [3, 1],
      [5, 4],
    ])
    expect(leftOut).toEqual([{ row: 4, why: 'a mean whose own rows stand beside it' }])
  })

  test('is found before its rows too, and at whatever pass or time they say', () => {
    const text = lines(
      'set,load_N,sinkage_mm,n,time_s,pass',
      'A,120,0.6,2,,',
      'A,120,0.5,1,30,1',
      'A,120,0.7,1,31,2',
    )
    expect(rowsOf(text)).toEqual([3, 4])
  })

  test('of another set, foot, load, pass or kind of reading stays', () => {
    const text = lines(
      'set,roller,load_N,sinkage_mm,drop_mm,pass,n',
      'A,light,120,0.5,,1,1',
      'B,light,120,0.5,,1,3',
      'A,stout,120,0.5,,1,3',
      'A,light,121,0.5,,1,3',
      'A,light,120,0.5,,2,3',
      'A,light,120,,1.2,1,3',
      'A,light,120,,1.3,1,3',
    )
    expect(rowsOf(text)).toEqual([2, 3, 4, 5, 6, 7, 8])
  })

  test.each(['mean', 'Mean', 'average', 'Ø'])('may call itself one: %s', word => {
    const text = lines(header, 'A,1,light,120,0.5,', 'A,2,light,120,0.7,', `A,${word},light,120,0.6,`)
    expect(rowsOf(text)).toEqual([2, 3])
  })

  test('that calls itself one, alone, is kept with a note that its number is unknown', () => {
    const { readings, notes } = readOrFail(lines(header, 'A,mean,light,120,0.6,'))
    expect(readings).toHaveLength(1)
    expect(notes).toMatchObject([{ row: 2, column: 'replicate', expected: 'n, how many a mean is of' }])
  })

  test('whose lines of spread and total stand below is parted from them, whatever they hold', () => {
    const text = lines(
      header,
      'A,1,light,120,0.5,',
      'A,2,light,120,0.7,',
      'A,mean,light,120,0.6,',
      'A,SD,light,120,0.14,',
      'A,SE,light,120,0.10,',
      'A,CV %,light,120,23.6 %,',
      'Total,,,,1.2,',
    )
    const { readings, leftOut } = readOrFail(text)
    expect(readings.map(({ row }) => row)).toEqual([2, 3])
    expect(leftOut.map(({ row }) => row)).toEqual([4, 5, 6, 7, 8])
  })

  test('SE is a corner of the plot where nothing is summed up', () => {
    expect(rowsOf(lines(header, 'A,NW,light,120,0.5,', 'A,SE,light,120,0.7,'))).toEqual([2, 3])
  })
})
