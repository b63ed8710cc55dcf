import type { Book } from './book.ts'

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null

/** Sentences that stand at the same place of two things that are built alike, where they differ. */
function gather(from: unknown, to: unknown, into: Map<string, string>): void {
  if (typeof from === 'string') {
    if (typeof to === 'string' && to !== from) into.set(from, to)
  } else if (isObject(from) && isObject(to))
    for (const [name, value] of Object.entries(from)) gather(value, to[name], into)
}

/** What a book says; its scenario is left out, for names in it are called by formulas and prose. */
const said = ({ title, pages }: Book) => ({ title, pages })

/**
 * Tells a book in the words of another language: `from` is a book that ships as the reader has it, `to` the same one
 * as they want it. What a reader wrote themselves stays as it is, wherever they have moved the rest.
 */
export function retelling(from: Book, to: Book): (book: Book) => Book {
  const sentences = new Map<string, string>()
  gather(said(from), said(to), sentences)
  // Books of one past share what did not change: told again, they still do.
  const done = new WeakMap<object, unknown>()
  function retell(value: unknown): unknown {
    if (typeof value === 'string') return sentences.get(value) ?? value
    if (!isObject(value)) return value
    const known = done.get(value)
    if (known !== undefined) return known
    const again = Array.isArray(value)
      ? value.map(retell)
      : Object.fromEntries(Object.entries(value).map(([name, part]) => [name, retell(part)]))
    done.set(value, again)
    return again
  }
  return book => (book === from ? to : { ...book, ...(retell(said(book)) as ReturnType<typeof said>) })
}

/** Whether a book has anything left of what another one says on its pages. */
export function speaksLike(book: Book, other: Book): boolean {
  const leads = ({ pages }: Book) => pages.flatMap(({ title, lead }) => [title, lead]).filter(Boolean)
  const there = new Set(leads(other))
  return leads(book).some(lead => there.has(lead))
}
