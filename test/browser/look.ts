import { mkdir } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { BrowserContextOptions } from 'playwright-core'
import { openBrowser } from '../support/browser.ts'
import { servePage } from '../support/servedPage.ts'
import { bookPictures } from './bookPictures.ts'
import { openFirstPage } from './openFirstPage.ts'
import { sheetPictures } from './sheetPictures.ts'

// npm run look: pictures of the first page, of every book, a slide, the workshop view and the set-up sheet to be looked at, and the
// ones that the documents show.

type Picture = {
  readonly name: string
  readonly options: BrowserContextOptions
  readonly paper?: string
  /** Only what a reader sees on opening; the whole page unless said. */
  readonly fold?: boolean
  /** One that the documents show, and that is kept with them. */
  readonly shown?: boolean
}

const laptop = { viewport: { width: 1440, height: 900 } }
const phone = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true }
const wall = { viewport: { width: 1920, height: 1080 } }

const pictures: readonly Picture[] = [
  { name: 'first-page', options: laptop, paper: 'light', fold: true, shown: true },
  { name: 'first-page-whole-light', options: laptop, paper: 'light' },
  { name: 'first-page-whole-dark', options: laptop, paper: 'dark' },
  { name: 'first-page-phone-light', options: phone, paper: 'light' },
  { name: 'first-page-phone-dark', options: phone, paper: 'dark' },
  { name: 'first-page-wall', options: wall, paper: 'projector', fold: true },
  { name: 'first-page-wall-whole', options: wall, paper: 'projector' },
]

const root = new URL('../../', import.meta.url)
/** Where they go: to be looked at, in a folder named on the command line or one that git does not see. */
const looked = process.argv[2] ?? fileURLToPath(new URL('node_modules/.cache/swardsink/look', root))
const shown = fileURLToPath(new URL('docs/pictures', root))

await Promise.all([looked, shown].map(folder => mkdir(folder, { recursive: true })))
const [browser, served] = await Promise.all([openBrowser(), servePage()])
try {
  for (const { name, options, paper, fold, shown: kept } of pictures) {
    const { page, faults } = await openFirstPage(browser, served.address, options)
    if (paper) await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
    await page.mouse.move(0, 0)
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
    await page.screenshot({ path: `${kept ? shown : looked}/${name}.png`, fullPage: !fold })
    for (const fault of faults) console.error(`${name}: ${fault}`)
    await page.context().close()
  }
  await sheetPictures(browser, { address: served.address, looked, shown })
  await bookPictures(browser, { address: served.address, shown })
} finally {
  await browser.close()
  await served.close()
}
console.log(`Pictures are in ${looked}, those of the documents in ${shown}`)
