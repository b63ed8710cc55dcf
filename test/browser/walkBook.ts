import type { Page } from 'playwright-core'
import { focusedName } from '../support/focusedName.ts'

type Frame = {
  readonly id: string
  readonly status: string
  readonly draft: boolean
  readonly drawn: boolean
  readonly failure: string
}

/** Every entry of the page that is shown, and how far it has come. */
export const framesOf = (page: Page): Promise<readonly Frame[]> =>
  page.evaluate(() => {
    const shown = document.querySelector('sward-book')?.shadowRoot?.querySelector('sward-page')
    return [...(shown?.shadowRoot?.querySelectorAll('entry-frame') ?? [])].map(frame => {
      const { state, heldBackBy } = frame as unknown as {
        readonly state: { readonly status: string; readonly draft: boolean; readonly failure: unknown }
        readonly heldBackBy: string | null
      }
      const id = frame.getAttribute('data-entry') ?? ''
      const { status, draft, failure } = state
      return {
        id,
        status,
        draft,
        drawn: heldBackBy === null,
        failure: failure ? JSON.stringify(failure) : '',
      }
    })
  })

/** Waits until every entry of the page has its answer; what is far down is looked at first. */
export async function settledPage(page: Page): Promise<readonly Frame[]> {
  for (;;) {
    const frames = await framesOf(page)
    const open = frames.find(({ status, draft }) => status !== 'done' || draft)
    if (frames.length > 0 && !open) return frames
    if (open?.status === 'failed') throw new Error(`${open.id} failed: ${open.failure}`)
    if (open)
      await page
        .locator(`entry-frame[data-entry="${open.id}"]`)
        .scrollIntoViewIfNeeded()
        .catch(() => undefined)
    await page.waitForTimeout(LOOK_AGAIN)
  }
}

const LOOK_AGAIN = 100
const MOST_TABS = 80

async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let step = 0; step < MOST_TABS; step++) {
    if (name.test(await focusedName(page))) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`the keyboard does not come to ${name}, but to ${await focusedName(page)}`)
}

/** Answers a question by the keyboard alone, locks it, and lets the model answer. */
export async function answerByKeyboard(page: Page, id: string, said: string): Promise<void> {
  const frame = page.locator(`entry-frame[data-entry="${id}"]`)
  const radio = frame.getByRole('radio').first()
  if ((await radio.count()) > 0) {
    await radio.focus()
    await page.keyboard.press('Space')
  } else {
    await frame.getByRole('textbox', { name: 'Your prediction' }).focus()
    await page.keyboard.type(said)
  }
  await tabTo(page, /^button Lock it/)
  await page.keyboard.press('Enter')
  await frame.getByRole('button', { name: 'Show me' }).waitFor()
  await tabTo(page, /^button Show me/)
  await page.keyboard.press('Enter')
  await frame
    .getByText(/the model says|The model says/)
    .first()
    .waitFor()
}

/** The questions of the page that are not answered yet. */
export const questionsOf = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const shown = document.querySelector('sward-book')?.shadowRoot?.querySelector('sward-page')
    return [...(shown?.shadowRoot?.querySelectorAll('entry-frame') ?? [])].flatMap(frame => {
      const { entry } = frame as unknown as { readonly entry: { readonly kind: string; readonly id: string } }
      return entry.kind === 'question' ? [entry.id] : []
    })
  })

/** Goes on by the keyboard; false on the last page. */
export async function turnByKeyboard(page: Page): Promise<boolean> {
  const later = page.getByRole('link', { name: 'later page' })
  if ((await later.count()) === 0) return false
  const next = Number(/page=(\d+)/.exec((await later.getAttribute('href')) ?? '')?.[1])
  await later.focus()
  await page.keyboard.press('Enter')
  // Reading begins at the heading of the new page.
  await page.waitForFunction(shownFrom, next)
  return true
}

function shownFrom(number: number): boolean {
  const shown = document.querySelector('sward-book')?.shadowRoot?.querySelector('sward-page')
  const focused = shown?.shadowRoot?.activeElement
  return (
    shown !== null &&
    shown !== undefined &&
    'index' in shown &&
    shown.index === number - 1 &&
    focused?.localName === 'h1'
  )
}
