/** Views of a book beside its pages: a lecture, and what goes on paper by itself. */
export const VIEWS = ['lecture', 'teachers-sheet', 'set-up-sheet', 'hand-in'] as const
export type ViewName = (typeof VIEWS)[number]

/** What an address says after #: which book, which page of it, whose values. */
export type Address = {
  readonly book: string | null
  /** Counted from 1, as it is read on the page. */
  readonly page: number | null
  /** A packed scenario. */
  readonly scenario: string | null
  /** Another view than the pages; absent for those. */
  readonly view?: ViewName
  /** What means nothing here. */
  readonly foreign: readonly string[]
}

/** The address of the list of books. */
export const booksAddress = '#books'

export const isBooksAddress = (hash: string): boolean => hash === booksAddress

export function readAddress(hash: string): Address {
  let address: Address = { book: null, page: null, scenario: null, foreign: [] }
  for (const part of hash.replace(/^#/, '').split('&')) {
    if (part === '' || `#${part}` === booksAddress) continue
    const at = part.indexOf('=')
    const [name, value] = at < 0 ? [part, ''] : [part.slice(0, at), part.slice(at + 1)]
    const view = VIEWS.find(known => known === value)
    if (name === 'scenario') address = { ...address, scenario: value }
    else if (name === 'book' && value !== '') address = { ...address, book: decoded(value) }
    else if (name === 'view' && view) address = { ...address, view }
    else if (name === 'page' && /^[1-9]\d{0,3}$/.test(value)) address = { ...address, page: Number(value) }
    else address = { ...address, foreign: [...address.foreign, decoded(part)] }
  }
  return address
}

/** The address of a page, with #; empty for the first page of the first book. */
export function writeAddress(q: {
  readonly book: string | null
  readonly page: number
  readonly scenario?: string | null
  readonly view?: ViewName | null
}): string {
  const parts = [
    ...(q.book === null ? [] : [`book=${encodeURIComponent(q.book)}`]),
    ...(q.page === 1 ? [] : [`page=${q.page}`]),
    ...(q.view ? [`view=${q.view}`] : []),
    ...(q.scenario ? [`scenario=${q.scenario}`] : []),
  ]
  return parts.length > 0 ? `#${parts.join('&')}` : ''
}

/** Half an escape is a damaged address, told as it stands. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}
