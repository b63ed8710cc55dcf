import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core'
import { type WatchedPage, watchedPage } from '../support/watchedPage.ts'

/** The first page of the first book, as a reader has it before them. */
export type FirstPage = WatchedPage & {
  /** An entry by its name in the book. */
  entry(id: string): Locator
  field(name: string): Locator
  line(name: string): Locator
}

export async function openFirstPage(
  browser: Browser,
  address: string,
  options?: BrowserContextOptions,
): Promise<FirstPage> {
  const watched = await watchedPage(browser, options)
  const { page } = watched
  const patience = 8000
  page.setDefaultTimeout(patience)
  await page.goto(address)
  await page.getByText('cut here', { exact: true }).waitFor()
  await settledMap(page)
  return {
    ...watched,
    entry: id => page.locator(`entry-frame[data-entry="${id}"]`),
    field: name => page.getByRole('textbox', { name, exact: true }),
    line: name => page.getByRole('slider', { name: `${name}, on the line` }),
  }
}

/** Waits until the worker's fine map has come. */
export async function settledMap(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const frame = document
      .querySelector('sward-book')
      ?.shadowRoot?.querySelector('sward-page')
      ?.shadowRoot?.querySelector('entry-frame[data-entry="map"]')
    const state: unknown = frame && 'state' in frame ? frame.state : null
    return typeof state === 'object' && state !== null && 'status' in state && state.status === 'done'
  })
}

/** All text an entry shows, through every shadow tree: what a reader could read there. */
export function textOf(entry: Locator): Promise<string> {
  return entry.evaluate(element => {
    const read = (node: Node): string => {
      if (node instanceof HTMLStyleElement) return ''
      if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? ''
      const inside = node instanceof Element && node.shadowRoot ? node.shadowRoot : node
      return [...inside.childNodes].map(read).join(' ')
    }
    return read(element).replace(/\s+/g, ' ').trim()
  })
}
