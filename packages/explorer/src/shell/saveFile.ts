import { type Book, serialiseBook } from '../book/index.ts'
import { fileName, handOver } from '../controls/index.ts'

/** Hands the reader a book as a file. */
export function saveFile(book: Book): void {
  handOver(
    new Blob([serialiseBook(book)], { type: 'application/json' }),
    fileName(book.title, 'swardsink.json'),
  )
}
