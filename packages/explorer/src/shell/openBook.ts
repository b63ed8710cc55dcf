import type { Problem } from '@swardsink/model'
import { type Book, type KindShelf, kept, readBook, readLink, type Shelf, type Store } from '../book/index.ts'
import type { View } from '../entries/view.ts'
import type { Refiner } from '../flow/index.ts'
import type { Opening } from './sward-book.ts'

/**
 * A book ready to be shown: its own values, else what the reader kept of it, else what the address carries. Damage
 * in any of these is told, and never keeps the book from opening.
 */
export async function openBook(q: {
  readonly name: string
  readonly spec: unknown
  readonly edition: string
  readonly hash: string
  readonly kinds: KindShelf
  readonly views: Shelf<View>
  readonly refiner: Refiner
  readonly store: Store
}): Promise<Opening> {
  const { kinds, views, refiner, store, name, edition } = q
  const own = await readBook(q.spec, kinds)
  if (!own.book) {
    const found = own.problems.map(({ path, expected, received }) => `${path}: ${expected}, not ${received}`)
    throw new Error(`the book ${name} cannot be read: ${found.join('; ')}`)
  }
  const problems: Problem[] = [...own.problems]
  const saved = await kept({ store, name, edition, kinds })
  if (saved) problems.push(...saved.problems)
  let book = saved?.book ?? own.book
  const link = await readLink(q.hash)
  if (link.kind === 'scenario') book = { ...book, scenario: link.scenario }
  if (link.kind === 'damaged') problems.push(...link.problems)
  await fetchViews(views, [book, own.book])
  return { book, own: own.book, problems, kinds, views, refiner, store, name, edition }
}

/** What draws the entries of these books. */
export function fetchViews(views: Shelf<View>, books: readonly Book[]): Promise<readonly string[]> {
  return views.fetch(
    books.flatMap(({ pages }) => pages.flatMap(page => page.entries.map(entry => entry.kind))),
  )
}
