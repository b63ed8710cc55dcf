import { type Book, forget, keep, type Store } from '../book/index.ts'

/** Writing a whole book while a slider moves would cost frames: it is kept a moment after the last change. */
const AFTER = 400

export type Keeper = {
  keep(book: Book, isOwn: boolean): void
  /** Whether this browser keeps anything at all. */
  keeps(): boolean
}

/** Keeps a reader's changes in the browser, so that closing the page loses nothing. */
export function openKeeper(q: {
  readonly store: Store
  readonly name: string
  readonly edition: string
}): Keeper {
  let timer: ReturnType<typeof setTimeout> | undefined
  let due: Book | null = null
  let able = canWrite(q.store)
  const write = (): void => {
    clearTimeout(timer)
    if (due) able = keep({ ...q, book: due })
    due = null
  }
  window.addEventListener('pagehide', write)
  return {
    keep(book, isOwn) {
      clearTimeout(timer)
      if (isOwn) {
        due = null
        forget(q)
        return
      }
      due = book
      timer = setTimeout(write, AFTER)
    },
    keeps: () => able,
  }
}

function canWrite(store: Store): boolean {
  const key = 'swardsink/try'
  try {
    store.setItem(key, key)
    const written = store.getItem(key) === key
    store.removeItem(key)
    return written
  } catch {
    return false
  }
}
