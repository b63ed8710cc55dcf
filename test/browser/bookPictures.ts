import { mkdir } from 'node:fs/promises'
import type { Browser, BrowserContextOptions } from 'playwright-core'
import { books } from '../../packages/explorer/src/books/index.ts'
import { watchedPage } from '../support/watchedPage.ts'
import { settledPage } from './walkBook.ts'

type Size = { readonly name: string; readonly paper: string; readonly options: BrowserContextOptions }

/** As a book opens, on four screens; the larger ones are kept smaller than they were seen. */
const sizes: readonly Size[] = [
  { name: 'laptop', paper: 'light', options: { viewport: { width: 1440, height: 900 } } },
  {
    name: 'wall',
    paper: 'projector',
    options: { viewport: { width: 1920, height: 1080 }, deviceScaleFactor: 0.5 },
  },
  {
    name: 'tablet',
    paper: 'dark',
    options: { viewport: { width: 820, height: 1180 }, deviceScaleFactor: 0.75, hasTouch: true },
  },
  {
    name: 'phone',
    paper: 'light',
    options: { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true },
  },
]

/** Pictures of the first page of every book, into a folder of the documents. */
export async function bookPictures(
  browser: Browser,
  { address, shown }: { readonly address: string; readonly shown: string },
): Promise<void> {
  await mkdir(`${shown}/books`, { recursive: true })
  for (const { name: size, paper, options } of sizes) {
    const { page, faults } = await watchedPage(browser, options)
    for (const [name, { title }] of Object.entries(books)) {
      await page.goto(`${address}#book=${name}`)
      await page.getByRole('banner').getByText(title, { exact: true }).waitFor()
      await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
      await settledPage(page)
      await page.evaluate(() => window.scrollTo(0, 0))
      await page.mouse.move(0, 0)
      await page.evaluate(() => {
        let at = document.activeElement
        while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement
        if (at instanceof HTMLElement) at.blur()
      })
      await page.screenshot({ path: `${shown}/books/${name}-${size}.png` })
    }
    for (const fault of faults) console.error(`books, ${size}: ${fault}`)
    await page.context().close()
  }
}
