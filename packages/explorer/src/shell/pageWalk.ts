import { bookOf, isBooksAddress, placeOf, readAddress } from '../book/index.ts'
import type { BooksPage } from './books-page.ts'
import { focusSetting, settingPlace } from './findSetting.ts'
import { openBook } from './openBook.ts'
import { showAddressedView } from './otherView.ts'
import type { PageEditor } from './page-editor.ts'
import type { Act } from './readerEvents.ts'
import type { SwardBook } from './sward-book.ts'
import type { SwardPage } from './sward-page.ts'

/** Entries drawn before the window has said which of them are in view. */
const FIRST_DRAWN = 6
/** A page of so many entries is kept whole; of a longer one only what is in view or near it. */
const KEPT_WHOLE = 12

const idsOf = (on: SwardBook): readonly string[] => {
  const { desk } = on
  return desk ? (bookOf(desk.session()).pages[on.page]?.entries.map(({ id }) => id) ?? []) : []
}

/** Shows a page of the book that is open, its first entries at once. */
export function showPage(on: SwardBook, asked: number): void {
  const { desk } = on
  if (!desk) return
  const last = bookOf(desk.session()).pages.length - 1
  on.said = ''
  on.listing = false
  on.view = null
  on.page = Math.min(Math.max(asked, 0), last)
  desk.look(new Set(idsOf(on).slice(0, FIRST_DRAWN)))
  on.turn++
}

/** Lists all books in place of a page. */
export function showBooks(on: SwardBook): void {
  on.said = ''
  on.editing = false
  on.listing = true
}

/** Goes to a page as a reader would, so that going back works. */
export function turnTo(on: SwardBook, page: number): void {
  showPage(on, page)
  history.pushState(null, '', on.addressOf(on.page) || '#page=1')
}

/** Something of a page has come near, or gone far. */
export function heardNear(on: SwardBook, near: ReadonlySet<string>): void {
  const ids = idsOf(on)
  on.desk?.look(ids.length > KEPT_WHOLE ? near : new Set(ids))
}

/** All of the page is worked out: it goes on paper as a whole. */
export function showWhole(on: SwardBook): void {
  on.desk?.look(new Set(idsOf(on)))
}

/** The reader went elsewhere by the address: another page, another book, other values. */
export async function heardAddress(on: SwardBook): Promise<void> {
  const { desk } = on
  if (!desk) return
  const { house } = desk
  if (isBooksAddress(location.hash)) {
    showBooks(on)
    await on.updateComplete
    window.scrollTo(0, 0)
    await on.renderRoot.querySelector<BooksPage>('books-page')?.focusHeading()
    return
  }
  const address = readAddress(location.hash)
  const name = address.book ?? house.first
  const before = on.desks.get(name)
  for (const text of address.foreign) desk.tell({ kind: 'foreign address', text })
  if (address.foreign.length > 0) return
  const hasOther = address.scenario !== null && address.scenario !== desk.carried()
  if (name !== desk.name() && before && address.scenario === null) {
    on.desk = before
    showPage(on, (address.page ?? 1) - 1)
  } else if (name !== desk.name() || hasOther)
    on.opening = await openBook(house, location.hash, on.preferences.language)
  else showPage(on, (address.page ?? 1) - 1)
  await showAddressedView(on)
  const page = await shownPage(on)
  window.scrollTo(0, 0)
  page?.focusHeading()
}

async function shownPage(on: SwardBook): Promise<SwardPage | null> {
  await on.updateComplete
  const page = on.renderRoot.querySelector<SwardPage>('sward-page')
  await page?.updateComplete
  return page
}

/** Makes an entry's page the one that is shown, and the entry drawn. */
export async function reveal(on: SwardBook, id: string): Promise<SwardPage | null> {
  const { desk } = on
  const place = desk && placeOf(bookOf(desk.session()), id)
  if (!place) return null
  if (place.page !== on.page) turnTo(on, place.page)
  desk.look(new Set([...desk.near(), id]))
  const page = await shownPage(on)
  await page?.frame(id)?.updateComplete
  return page
}

/** Leads to where something is set, on whatever page. */
export async function findSetting(on: SwardBook, name: string): Promise<void> {
  const { desk } = on
  if (!desk) return
  const { items: kinds } = desk.house.kinds
  const id = settingPlace(bookOf(desk.session()), { name, page: on.page, kinds })
  const page = id === null ? null : await reveal(on, id)
  // The list itself draws its fields one turn after the frame that holds it.
  await Promise.resolve()
  if (page) focusSetting(page.renderRoot, name)
}

export async function focusPageEditor(on: SwardBook, act: Act | 'title'): Promise<void> {
  await on.updateComplete
  const editor = on.renderRoot.querySelector<PageEditor>('page-editor')
  await (act === 'title' ? editor?.focusTitle() : editor?.focusAct(act))
}
