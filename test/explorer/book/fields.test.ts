import type { Problem } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { fieldsOf } from '../../../packages/explorer/src/book/fields.ts'

function read(record: Record<string, unknown>) {
  const problems: Problem[] = []
  return { fields: fieldsOf(record, 'entry', problems), problems }
}

describe('fields of a file', () => {
  it('take the usual value where the file says nothing', () => {
    const { fields, problems } = read({})
    expect(fields.text('title', 'usual')).toBe('usual')
    expect(fields.flag('beside', false)).toBe(false)
    expect(fields.oneOf('times', [1, 5, 10], 5)).toBe(5)
    expect(problems).toEqual([])
  })

  it('report every wrong one with its path and go on', () => {
    const { fields, problems } = read({ title: 3, of: ['a', 4], times: 7 })
    expect(fields.text('title', '')).toBe('')
    expect(fields.texts('of', [])).toEqual([])
    expect(fields.oneOf('times', [1, 5, 10], 5)).toBe(5)
    expect(problems).toEqual([
      { path: 'entry.title', expected: 'text', received: '3' },
      { path: 'entry.of', expected: 'a list of texts', received: '["a",4]' },
      { path: 'entry.times', expected: 'one of 1, 5, 10', received: '7' },
    ])
  })

  it('report a field nobody asked for', () => {
    const { fields, problems } = read({ titel: 'misspelt' })
    fields.text('title', '')
    fields.rest()
    expect(problems.map(problem => problem.path)).toEqual(['entry.titel'])
  })
})
