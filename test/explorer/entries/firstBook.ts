import { type Book, kindsByName, readBook } from '../../../packages/explorer/src/book/index.ts'
import { books } from '../../../packages/explorer/src/books/index.ts'
import { kinds } from '../../../packages/explorer/src/entries/kinds.ts'

export const allKinds = kindsByName(kinds)

/** The first book that ships, read as the page reads it. */
export async function firstBook(): Promise<Book> {
  const { book, problems } = await readBook(books['heavier-roller'].spec, allKinds)
  if (!book || problems.length > 0) throw new Error(JSON.stringify(problems))
  return book
}
