import { books } from './books/index.ts'
import { kindShelf } from './entries/kinds.ts'
import { viewShelf } from './entries/views.ts'
import { dress } from './look/index.ts'
import { openBook, openStore, type SwardBook } from './shell/index.ts'
import { openWorker } from './worker/index.ts'

dress(document)

const house = {
  shipped: books,
  first: 'heavier-roller',
  kinds: kindShelf(),
  views: viewShelf(),
  refiner: openWorker(() => new Worker(new URL('./worker/entry.ts', import.meta.url), { type: 'module' })),
  store: openStore(),
}
// No await out here: the one-file build runs this as a classic script.
openBook(house, location.hash).then(opening => {
  const book = document.querySelector<SwardBook>('sward-book')
  if (book) book.opening = opening
})
