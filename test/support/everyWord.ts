import { fetchMoreWords } from '../../packages/explorer/src/words/index.ts'

// Elements are drawn with every word at hand, as on a page that has fetched their kind.
await fetchMoreWords()
