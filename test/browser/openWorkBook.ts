import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { workBook } from '../support/workBook.ts'
import { type FirstPage, openFirstPage } from './openFirstPage.ts'

export async function giveFile(page: Page, text: string): Promise<void> {
  await page
    .locator('page-foot input[type="file"]')
    .setInputFiles({ name: 'a.swardsink.json', mimeType: 'application/json', buffer: Buffer.from(text) })
}

/** The work book, opened as a reader opens a file. */
export async function openWorkBook(
  browser: Browser,
  address: string,
  options?: BrowserContextOptions,
): Promise<FirstPage> {
  const first = await openFirstPage(browser, address, options)
  await giveFile(first.page, JSON.stringify(workBook))
  await first.page.getByRole('heading', { level: 1, name: workBook.pages[0]?.lead ?? '' }).waitFor()
  await first.entry('setting-3').waitFor()
  return first
}
