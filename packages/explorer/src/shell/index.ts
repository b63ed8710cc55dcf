export { openStore } from './store.ts'
export type { Opening } from './sward-book.ts'

import './sward-book.ts'
