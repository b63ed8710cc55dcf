import { writeFile } from 'node:fs/promises'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { watchedPage } from '../support/watchedPage.ts'

type Folders = { readonly address: string; readonly looked: string; readonly shown: string }

/** 180 mm between margins, as A4 has it. */
const MARGIN = 40
const PAPER = { viewport: { width: 680 + 2 * MARGIN, height: 1000 }, deviceScaleFactor: 1.5 }

/** Pictures of what is made of a book: slides, the workshop view, the set-up sheet with its file for a printer. */
export async function sheetPictures(browser: Browser, { address, looked, shown }: Folders): Promise<void> {
  await at({ viewport: { width: 1280, height: 720 } }, '#view=lecture', async page => {
    await page.screenshot({ path: `${shown}/lecture.png` })
    for (let step = 2; step <= 5; step++) {
      await page.keyboard.press('PageDown')
      await page.waitForTimeout(SETTLES)
      await page.screenshot({ path: `${looked}/lecture-${step}.png` })
    }
  })
  await at({ viewport: { width: 1920, height: 1080 } }, '#view=lecture', page =>
    page.screenshot({ path: `${looked}/lecture-wall.png` }),
  )
  const phone = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true }
  await at(phone, '', async page => {
    await page.getByRole('button', { name: 'Workshop view' }).tap()
    await page.waitForTimeout(SETTLES)
    await page.evaluate(() => window.scrollTo(0, 0))
    await page.screenshot({ path: `${shown}/workshop.png` })
    await page.screenshot({ path: `${looked}/workshop-whole.png`, fullPage: true })
  })
  await at(PAPER, '#view=set-up-sheet', async page => {
    await page.getByRole('textbox', { name: 'Height wanted' }).fill('2.90')
    await page.getByRole('textbox', { name: 'Adjuster, a whole turn' }).fill('1.25')
    await page.getByRole('img', { name: 'This very case as a code for a camera' }).waitFor()
    await writeFile(`${shown}/set-up-sheet.pdf`, await page.pdf({ format: 'A4', printBackground: true }))
    await page.emulateMedia({ media: 'print' })
    await page.waitForTimeout(SETTLES)
    await page.evaluate(margin => {
      document.body.style.padding = `${margin}px`
    }, MARGIN)
    const box = await page.locator('set-up-sheet').boundingBox()
    await page.screenshot({
      path: `${shown}/set-up-sheet.png`,
      clip: { x: 0, y: 0, width: PAPER.viewport.width, height: Math.ceil(box?.height ?? 0) + 2 * MARGIN },
    })
  })

  async function at(
    options: BrowserContextOptions,
    hash: string,
    look: (page: Page) => Promise<unknown>,
  ): Promise<void> {
    const { page, faults } = await watchedPage(browser, options)
    await page.goto(`${address}${hash}`)
    await page.getByRole('heading', { level: 1 }).waitFor()
    await page.waitForTimeout(SETTLES)
    await look(page)
    for (const fault of faults) console.error(`${hash}: ${fault}`)
    await page.context().close()
  }
}

/** Figures answer, draw and fit themselves into a slide in less than this, ms. */
const SETTLES = 1200
