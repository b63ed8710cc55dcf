/** What a reader is told above the page, and may act on. */
export type Notice =
  /** Another tab changed this book. */
  | { readonly kind: 'other tab' }
  /** Another tab changed this book first: what is changed here is kept under another name. */
  | { readonly kind: 'kept apart'; readonly name: string }
  /** The store is full: what is changed from now on is not kept. */
  | { readonly kind: 'store full' }
  /** A file that a later program wrote. */
  | { readonly kind: 'newer file'; readonly version: number }
  | { readonly kind: 'nothing in it' }
  /** A file without sound values, shown with those that were there, or values without pages. */
  | { readonly kind: 'borrowed'; readonly what: 'values' | 'pages' }
  | {
      readonly kind: 'opened'
      readonly title: string
      /** All of it could be read. */
      readonly sound: boolean
      readonly before: string
      readonly beforeTitle: string
    }
  | { readonly kind: 'foreign address'; readonly text: string }
  | { readonly kind: 'no such book'; readonly name: string }
  | { readonly kind: 'earlier edition'; readonly name: string; readonly title: string }
  /** An address with values came in over the reader's own. */
  | { readonly kind: 'linked' }

/** A later notice of a kind takes the place of an earlier one. */
export function withNotice(notices: readonly Notice[], notice: Notice): readonly Notice[] {
  return [...notices.filter(({ kind }) => kind !== notice.kind), notice]
}

export function withoutNotice(notices: readonly Notice[], kind: Notice['kind']): readonly Notice[] {
  return notices.filter(notice => notice.kind !== kind)
}
