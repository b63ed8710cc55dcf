import { type Book, serialiseBook } from '../book/index.ts'

/** Hands the reader a book as a file. */
export function saveFile(book: Book): void {
  const address = URL.createObjectURL(new Blob([serialiseBook(book)], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = `${book.title.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}.swardsink.json`
  link.click()
  URL.revokeObjectURL(address)
}
