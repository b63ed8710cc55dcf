import { describe, expect, it } from 'vitest'
import {
  canRedo,
  canUndo,
  endGesture,
  record,
  redo,
  startHistory,
  undo,
} from '../../../packages/explorer/src/book/history.ts'

describe('the history of a book', () => {
  it('steps back to what was, and forward again', () => {
    const history = record(record(startHistory('a'), { present: 'b' }), { present: 'c' })
    expect(undo(history).present).toBe('b')
    expect(undo(undo(history)).present).toBe('a')
    expect(redo(undo(history)).present).toBe('c')
  })

  it('undoes a whole gesture at once', () => {
    const dragged = ['1', '2', '3'].reduce(
      (history, value) => record(history, { present: value, gesture: 'drag' }),
      startHistory('0'),
    )
    expect(dragged.present).toBe('3')
    expect(undo(dragged).present).toBe('0')
  })

  it('starts a new step when a gesture has ended', () => {
    const first = record(startHistory('0'), { present: '1', gesture: 'drag' })
    const second = record(endGesture(first), { present: '2', gesture: 'drag' })
    expect(undo(second).present).toBe('1')
  })

  it('forgets what was undone when something else is done', () => {
    const history = record(undo(record(startHistory('a'), { present: 'b' })), { present: 'c' })
    expect(canRedo(history)).toBe(false)
    expect(undo(history).present).toBe('a')
  })

  it('stays where it is at either end', () => {
    const history = startHistory('a')
    expect(canUndo(history)).toBe(false)
    expect(undo(history)).toBe(history)
    expect(redo(history)).toBe(history)
  })

  it('keeps a bounded number of steps', () => {
    let history = startHistory(0)
    for (let value = 1; value <= 1500; value++) history = record(history, { present: value })
    expect(history.past.length).toBe(1000)
    expect(history.past.at(-1)).toBe(1499)
  })
})
