import { describe, expect, it } from 'vitest'
import { type Book, lecturePlan, type Page } from '../../../packages/explorer/src/book/index.ts'

const entry = (id: string, minutes?: number) => ({
  id,
  kind: 'text',
  beside: false,
  settings: {},
  ...(minutes === undefined ? {} : { minutes }),
})
const page = (entries: Page['entries'], minutes?: number): Page => ({
  title: '',
  lead: '',
  entries,
  ...(minutes === undefined ? {} : { minutes }),
})
const plan = (...pages: readonly Page[]) => lecturePlan({ pages } as Pick<Book, 'pages'> as Book)

describe('the plan of a lecture', () => {
  it('takes the entries of all pages in order, and a page without any as a step of its own', () => {
    const { steps } = plan(page([entry('a'), entry('b')]), page([]), page([entry('c')]))
    expect(steps.map(({ page, entry, opens }) => [page, entry, opens])).toEqual([
      [0, 'a', true],
      [0, 'b', false],
      [1, null, true],
      [2, 'c', true],
    ])
  })

  it('adds up the minutes of entries where a page gives none of its own', () => {
    const { steps, minutes } = plan(page([entry('a', 3), entry('b', 4)]), page([entry('c')], 10))
    expect(minutes).toBe(17)
    expect(steps.map(step => step.minutesAfter)).toEqual([14, 10, 0])
  })

  it('never leaves more for the rest of a page than the page has', () => {
    const { steps, minutes } = plan(page([entry('a', 1), entry('b', 9)], 5), page([], 2))
    expect(minutes).toBe(7)
    expect(steps.map(step => step.minutesAfter)).toEqual([7, 2, 0])
  })

  it('says that nothing is planned by 0 minutes', () => {
    expect(plan(page([entry('a')])).minutes).toBe(0)
  })
})
