import { describe, expect, it } from 'vitest'
import type { Book, Entry } from '../../../packages/explorer/src/book/index.ts'
import type { QuestionResult } from '../../../packages/explorer/src/entries/question/kind.ts'
import type { QuestionSettings } from '../../../packages/explorer/src/entries/question/settings.ts'
import { shownOf } from '../entries/asked.ts'
import { allKinds, allViews } from '../entries/firstBook.ts'
import { answersOf, shipped } from './shippedBooks.ts'

const entriesOf = ({ pages }: Book): readonly Entry[] => pages.flatMap(({ entries }) => entries)
const isQuestion = (entry: Entry): entry is Entry & { readonly settings: QuestionSettings } =>
  entry.kind === 'question'

/** Every question answered: the first option, or a number of the right size. */
function revealed(book: Book): Book {
  const answer = (entry: Entry): Entry =>
    isQuestion(entry)
      ? { ...entry, settings: { ...entry.settings, prediction: 0, state: 'revealed' } }
      : entry
  return { ...book, pages: book.pages.map(page => ({ ...page, entries: page.entries.map(answer) })) }
}

/** Some of their work is the worker's, and takes seconds on a busy machine. */
const timeout = 60_000

describe.each(shipped)('the book “$title”', ({ title, about, spec, book }) => {
  const asked = revealed(book)
  let answers: ReturnType<typeof answersOf> | null = null
  const stateOf = (id: string) => {
    answers ??= answersOf(asked)
    return answers(id)
  }

  it('is listed under its own title, with a sentence', () => {
    expect(spec.title).toBe(title)
    expect(about).toMatch(/^[A-Z].+\.$/)
  })

  it('has a title and a sentence on every page', () => {
    for (const page of book.pages) {
      expect(page.title).not.toBe('')
      expect(page.lead).toMatch(/[.?]$/)
    }
  })

  it('asks of its entries nothing that they cannot do', () => {
    const entries = entriesOf(book)
    for (const { kind, settings, id } of entries) {
      const problems = allKinds.items[kind]?.problems(settings, book.scenario, entries)
      expect({ id, problems }).toEqual({ id, problems: [] })
    }
  })

  it('has an answer to every entry, and finds something wherever there is something to find', {
    timeout,
  }, () => {
    for (const { id, kind, settings } of entriesOf(asked)) {
      const { status, failure, draft, result } = stateOf(id)
      expect({ id, status, failure, draft }).toEqual({ id, status: 'done', failure: null, draft: false })
      const view = allViews.items[kind]
      const finding = view?.finding({ ...shownOf(settings, result, book.scenario), id })
      if (finding !== null) expect(finding).not.toMatch(/NaN|undefined|Infinity|null/)
    }
  })

  it('has an answer to every question, and says why', { timeout }, () => {
    for (const entry of entriesOf(asked).filter(isQuestion)) {
      const { settings, id } = entry
      const result = stateOf(id).result as QuestionResult
      expect({ id, refused: result.refused }).toEqual({ id, refused: null })
      expect(result.answer).not.toBeNull()
      if (settings.options.length > 0) expect(result.right).not.toBeNull()
      expect(settings.because).not.toBe('')
      for (const [name, { value }] of Object.entries(result.values))
        expect({ id, name, known: value !== null }).toEqual({ id, name, known: true })
    }
  })
})
