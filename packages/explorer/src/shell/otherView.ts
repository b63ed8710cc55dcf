import { html, type TemplateResult } from 'lit'
import { bookOf, readAddress, type ViewName } from '../book/index.ts'
import { showPage } from './pageWalk.ts'
import type { SwardBook } from './sward-book.ts'
import type { SwardPage } from './sward-page.ts'

/** What draws a view is fetched when it is first asked for. */
const load: Readonly<Record<ViewName, () => Promise<unknown>>> = {
  lecture: () => import('./lecture-view.ts'),
  'teachers-sheet': () => import('./lesson-sheet.ts'),
  'set-up-sheet': () => import('./set-up-sheet.ts'),
  'hand-in': () => import('./hand-in.ts'),
}

/** Shows another view of the book in place of its page; where it cannot be fetched, says so and stays. */
export async function showView(on: SwardBook, view: ViewName): Promise<void> {
  try {
    await load[view]()
  } catch {
    on.said = on.reader.words.page.noView
    return
  }
  on.editing = false
  on.said = ''
  on.view = view
}

/** The view that the address names, if it names one. */
export async function showAddressedView(on: SwardBook): Promise<void> {
  const { view } = readAddress(location.hash)
  if (view) await showView(on, view)
}

/** As a reader goes there, so that going back works. */
export async function enterView(on: SwardBook, view: ViewName): Promise<void> {
  await showView(on, view)
  if (on.view === view) history.pushState(null, '', on.addressOf(on.page))
}

/** Back to the pages of the book. */
export async function leaveView(on: SwardBook, page: number): Promise<void> {
  showPage(on, page)
  history.pushState(null, '', on.addressOf(on.page) || '#page=1')
  await on.updateComplete
  const shown = on.renderRoot.querySelector<SwardPage>('sward-page')
  await shown?.updateComplete
  window.scrollTo(0, 0)
  shown?.focusHeading()
}

export function drawView(on: SwardBook, view: ViewName): TemplateResult | null {
  const { desk, page, reader, turn } = on
  if (!desk) return null
  if (view === 'lecture')
    return html`<lecture-view .desk=${desk} .page=${page} .reader=${reader} .turn=${turn}></lecture-view>`
  const book = bookOf(desk.session())
  const addressed = on.bookInAddress
  if (view === 'set-up-sheet')
    return html`<set-up-sheet
      .book=${book}
      .held=${desk.session().held}
      .addressed=${addressed}
      .page=${page}
      .invented=${Object.hasOwn(desk.house.shipped, desk.name())}
      .reader=${reader}
    ></set-up-sheet>`
  if (view === 'hand-in')
    return html`<hand-in .desk=${desk} .book=${book} .page=${page} .reader=${reader} .turn=${turn}></hand-in>`
  return html`<lesson-sheet .desk=${desk} .book=${book} .page=${page} .reader=${reader} .turn=${turn}></lesson-sheet>`
}
