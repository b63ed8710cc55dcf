export { openBook } from './openBook.ts'
export { openStore } from './store.ts'
export type { SwardBook } from './sward-book.ts'

import './sward-book.ts'
