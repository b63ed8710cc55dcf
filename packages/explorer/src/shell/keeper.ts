import {
  type Book,
  forget,
  freeName,
  keep,
  keepOpened,
  keptBooks,
  keptText,
  keptUnder,
  type Store,
} from '../book/index.ts'

/** Writing a whole book while a slider moves would cost frames: it is kept a moment after the last change. */
const AFTER = 400

/** Of a reader's own books: they have one edition. */
export const OWN_EDITION = ''

/** Why nothing is kept: from the start, or no longer. */
export type Trouble = 'refused' | 'full'

export type Keeper = {
  /** The name under which it keeps, which changes when another tab has written under the old one. */
  name(): string
  keep(book: Book, own: Book): void
  /** Takes what another tab wrote as known, and keeps under the old name again: the next change goes over it. */
  accept(): void
  trouble(): Trouble | null
  close(): void
}

/**
 * Keeps a reader's changes in the browser, so that closing the page loses nothing. What another tab has written
 * since this one last looked is never written over: from then on this one keeps under a name of its own.
 */
export function openKeeper(q: {
  readonly store: Store
  readonly name: string
  readonly edition: string
  /** Names that are taken whether or not anything is kept under them. */
  readonly reserved: readonly string[]
  /** Another tab changed this book. */
  readonly onOther: () => void
  /** From now on this tab keeps under another name. */
  readonly onApart: (name: string) => void
  readonly onTrouble: (trouble: Trouble | null) => void
}): Keeper {
  const { store } = q
  let { name, edition } = q
  let known = keptText({ store, name })
  let timer: ReturnType<typeof setTimeout> | undefined
  let due: { readonly book: Book; readonly own: Book } | null = null
  let trouble: Trouble | null = canWrite(store) ? null : 'refused'

  function moveApart({ book, own }: { readonly book: Book; readonly own: Book }): void {
    const taken = [...q.reserved, ...keptBooks(store).map(listed => listed.name)]
    name = freeName(book.title, taken)
    edition = OWN_EDITION
    keepOpened({ store, name, book: own, when: new Date().toISOString() })
    q.onApart(name)
  }

  function write(): void {
    clearTimeout(timer)
    const now = due
    due = null
    if (!now) return
    if (keptText({ store, name }) !== known) {
      if (now.book === now.own) return
      moveApart(now)
    }
    if (now.book === now.own) {
      forget({ store, name })
      known = null
      return
    }
    const written = keep({ store, name, edition, book: now.book, when: new Date().toISOString() })
    if (written !== null) known = written
    const after = written === null ? (trouble ?? 'full') : null
    if (after !== trouble) {
      trouble = after
      q.onTrouble(trouble)
    }
  }

  function hidden(): void {
    if (document.visibilityState === 'hidden') write()
  }
  function heard(event: StorageEvent): void {
    if (event.key === keptUnder(name) && event.newValue !== known) q.onOther()
  }
  window.addEventListener('pagehide', write)
  document.addEventListener('visibilitychange', hidden)
  window.addEventListener('storage', heard)

  return {
    name: () => name,
    keep(book, own) {
      clearTimeout(timer)
      due = { book, own }
      timer = setTimeout(write, AFTER)
    },
    accept() {
      write()
      name = q.name
      edition = q.edition
      known = keptText({ store, name })
    },
    trouble: () => trouble,
    close() {
      write()
      window.removeEventListener('pagehide', write)
      document.removeEventListener('visibilitychange', hidden)
      window.removeEventListener('storage', heard)
    },
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
