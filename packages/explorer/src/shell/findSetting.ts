import type { Book, Kinds } from '../book/index.ts'

/** The entry in which something is set, on the page that is shown if there is one; null when the book has none. */
export function settingPlace(
  book: Book,
  q: { readonly name: string; readonly page: number; readonly kinds: Kinds },
): string | null {
  const order = [q.page, ...book.pages.keys()]
  for (const at of order)
    for (const { id, kind, settings } of book.pages[at]?.entries ?? [])
      if (q.kinds[kind]?.sets?.(settings).includes(q.name)) return id
  return null
}

/** Puts the focus on the place of a setting, through all the shadow trees below. */
export function focusSetting(root: ParentNode, name: string): boolean {
  for (const element of root.querySelectorAll('*')) {
    if ('find' in element && typeof element.find === 'function' && element.find(name) === true) return true
    if (element.shadowRoot && focusSetting(element.shadowRoot, name)) return true
  }
  return false
}
