import { type Book, entryOf, type Step } from '../book/index.ts'
import type { Shown, View } from '../entries/view.ts'
import type { Reader } from '../words/index.ts'
import { kindName } from './kindName.ts'

/** What a step of a lecture is drawn from. */
export type StepParts = {
  readonly book: Book
  readonly step: Step
  readonly views: Readonly<Record<string, View>>
  readonly shownBy: (id: string) => Shown | null
  readonly reader: Reader
}

/** The one sentence of a step: its page's on the first of a page, else what it found, else what it is called. */
export function stepSentence(parts: StepParts): string {
  const { book, step, reader } = parts
  const page = book.pages[step.page]
  if (step.opens && page?.lead) return page.lead
  const said = stepQuestion(parts) ?? stepFinding(parts)
  return said ?? (stepTitle(parts) || page?.title || reader.words.page.untitledPage(step.page + 1))
}

/** What it asks the room; null where it asks nothing, or the values it asks with are not known yet. */
export function stepQuestion({ book, step, views, shownBy }: StepParts): string | null {
  const entry = step.entry === null ? undefined : entryOf(book, step.entry)
  const shown = entry ? shownBy(entry.id) : null
  return (entry && shown && views[entry.kind]?.asked?.(shown).question) || null
}

/** What its figure found; a question keeps that to itself, under what it asks. */
export function stepFinding({ book, step, views, shownBy }: StepParts): string | null {
  const entry = step.entry === null ? undefined : entryOf(book, step.entry)
  const view = entry && views[entry.kind]
  const shown = entry ? shownBy(entry.id) : null
  return view && shown && !view.asked ? view.finding(shown) : null
}

export function stepTitle({ book, step, views, shownBy, reader }: StepParts): string {
  const entry = step.entry === null ? undefined : entryOf(book, step.entry)
  if (!entry) return ''
  const view = views[entry.kind]
  // What goes without a heading on its page goes under the page's own.
  if (view?.untitled) return entry.title ?? ''
  const shown = shownBy(entry.id)
  const usual = shown ? view?.title(shown) : undefined
  return entry.title || usual || kindName(entry.kind, reader)
}
