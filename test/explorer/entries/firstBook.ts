import { type Book, type Kind, readBook } from '../../../packages/explorer/src/book/index.ts'
import { books } from '../../../packages/explorer/src/books/index.ts'
import { kindShelf } from '../../../packages/explorer/src/entries/kinds.ts'
import { viewShelf } from '../../../packages/explorer/src/entries/views.ts'

/** Every kind of entry, fetched. */
export const allKinds = kindShelf()
export const allViews = viewShelf()
const unfetched = [await allKinds.fetch(allKinds.names), await allViews.fetch(allViews.names)].flat()
if (unfetched.length > 0) throw new Error(`not fetched: ${unfetched.join(', ')}`)

export const everyKind: readonly Kind[] = Object.values(allKinds.items)

/** The first book that ships, read as the page reads it. */
export async function firstBook(): Promise<Book> {
  const { spec } = await books['heavier-roller'].load()
  const { book, problems } = await readBook(spec, allKinds)
  if (!book || problems.length > 0) throw new Error(JSON.stringify(problems))
  return book
}
