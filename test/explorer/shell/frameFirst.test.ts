import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Refiner } from '../../../packages/explorer/src/flow/index.ts'
import { frameFirst } from '../../../packages/explorer/src/shell/frameFirst.ts'

type Job = Parameters<Refiner['refine']>[0]

const job = (id: string, input: unknown): Job => ({
  id,
  kind: 'map',
  input,
  onProgress: () => {},
  onAnswer: () => {},
})

function open() {
  const asked: string[] = []
  const dropped: string[] = []
  const refiner = frameFirst({
    refine: ({ id, input }) => asked.push(`${id} ${input}`),
    drop: id => dropped.push(id),
  })
  return { refiner, asked, dropped }
}

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

describe('work handed to the worker', () => {
  it('waits until the frame is over, and is then what was asked last', () => {
    const { refiner, asked } = open()
    for (const mass of [1, 2, 3]) refiner.refine(job('map', mass))
    refiner.refine(job('curves', 3))
    expect(asked).toEqual([])
    vi.runAllTimers()
    expect(asked).toEqual(['map 3', 'curves 3'])
  })

  it('is not put off for ever by a key that is held', () => {
    const { refiner, asked } = open()
    for (let key = 0; key < 10; key++) {
      refiner.refine(job('map', key))
      vi.advanceTimersByTime(30)
    }
    expect(asked.length).toBeGreaterThan(3)
  })

  it('is forgotten when it is dropped before it was handed over', () => {
    const { refiner, asked, dropped } = open()
    refiner.refine(job('map', 1))
    refiner.drop('map')
    vi.runAllTimers()
    expect(asked).toEqual([])
    expect(dropped).toEqual(['map'])
  })
})
