import { freshId, swapped, type Way } from './arrange.ts'
import type { Book, Entry, Page } from './book.ts'

/** Puts an empty page behind another. */
export function addPage(book: Book, { after, page }: { readonly after: number; readonly page: Page }): Book {
  return { ...book, pages: book.pages.toSpliced(after + 1, 0, page) }
}

export function withPage(book: Book, index: number, change: (page: Page) => Page): Book {
  return { ...book, pages: book.pages.map((page, at) => (at === index ? change(page) : page)) }
}

/** A copy of a page behind it; its entries get names of their own, so that both can be told apart. */
export function copyPage(book: Book, index: number): Book {
  const page = book.pages[index]
  if (!page) return book
  let next = addPage(book, { after: index, page: { ...page, entries: [] } })
  const copies: Entry[] = []
  for (const entry of page.entries) {
    copies.push({ ...entry, id: freshId(next, entry.kind) })
    next = withPage(next, index + 1, copy => ({ ...copy, entries: copies }))
  }
  return next
}

export function movePage(book: Book, { index, way }: { readonly index: number; readonly way: Way }): Book {
  const to = index + (way === 'earlier' ? -1 : 1)
  if (to < 0 || to >= book.pages.length) return book
  return { ...book, pages: swapped(book.pages, index, to) }
}

/** A book keeps at least one page. */
export function takeOutPage(book: Book, index: number): Book {
  return book.pages.length > 1 ? { ...book, pages: book.pages.toSpliced(index, 1) } : book
}
