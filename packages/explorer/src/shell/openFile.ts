import type { Problem } from '@swardsink/model'
import { type Book, type KindShelf, parseBook } from '../book/index.ts'
import type { Notice } from './notices.ts'

/** What came of a file that a reader opened. */
export type OpenedFile = {
  readonly book: Book | null
  readonly problems: readonly Problem[]
  readonly notices: readonly Notice[]
}

/** Reads a file as far as it can be read; what it does not hold, the book that is open lends it. */
export async function openFile(
  file: Blob,
  { kinds, present }: { readonly kinds: KindShelf; readonly present: Book },
): Promise<OpenedFile> {
  const read = await parseBook(await file.text(), kinds, { present })
  if (read.newer !== undefined)
    return { book: null, problems: [], notices: [{ kind: 'newer file', version: read.newer }] }
  const { book, problems } = read
  if (!book) return { book, problems, notices: [{ kind: 'nothing in it' }] }
  const notices: Notice[] = []
  if (book.scenario === present.scenario) notices.push({ kind: 'borrowed', what: 'values' })
  if (book.pages === present.pages) notices.push({ kind: 'borrowed', what: 'pages' })
  return { book, problems, notices }
}
