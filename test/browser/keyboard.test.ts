import type { Browser } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { tabWalk } from '../support/tabWalk.ts'
import { openFirstPage } from './openFirstPage.ts'

let browser: Browser
let served: ServedPage

beforeAll(async () => {
  ;[browser, served] = await Promise.all([openBrowser(), servePage()])
})
afterEach(async () => {
  await Promise.all(browser.contexts().map(context => context.close()))
})
afterAll(async () => {
  await browser?.close()
  await served?.close()
})

const laptop = { viewport: { width: 1440, height: 900 } }

describe('the keyboard alone', () => {
  it('comes to every control of a page and out of each, with everything folded out', async () => {
    const { page } = await openFirstPage(browser, served.address, laptop)
    for (const name of ['How far to trust this', 'As a table'])
      for (const word of await page.getByRole('button', { name }).all()) await word.click()
    await page.getByRole('button', { name: 'Words of the trade' }).click()
    await page.getByText('US: bedknife').waitFor()
    const walk = await tabWalk(page)
    expect(walk).toMatchObject({ missed: [], round: true })
    expect(walk.steps).toBeGreaterThan(40)
  })

  it('comes to every control of a page that is edited', async () => {
    const { page } = await openFirstPage(browser, served.address, laptop)
    await page.getByRole('button', { name: 'Edit this page' }).click()
    await page.getByRole('button', { name: 'add an entry' }).click()
    expect(await tabWalk(page)).toMatchObject({ missed: [], round: true })
  })

  it('comes to every control of every page of the book', async () => {
    const { page } = await openFirstPage(browser, served.address, laptop)
    const pages = await page.getByRole('navigation', { name: 'Pages' }).getByRole('listitem').count()
    for (let at = 2; at <= pages; at++) {
      await page.goto(`${served.address}#page=${at}`)
      await page.getByText(`of ${pages}`, { exact: false }).first().waitFor()
      // Entries far down the page are drawn when they come near.
      await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight))
      await page.waitForTimeout(600)
      expect(await tabWalk(page), `page ${at}`).toMatchObject({ missed: [], round: true })
    }
  })
})

describe('what explains the page', () => {
  it('has no accessibility fault: words of the trade, and how far to trust a figure', async () => {
    const { page, entry } = await openFirstPage(browser, served.address, laptop)
    await page.getByRole('button', { name: 'Words of the trade' }).click()
    await page.getByText('US: bedknife').waitFor()
    await entry('map').getByRole('button', { name: 'How far to trust this' }).click()
    await entry('map').getByText('A result is as good as the softness that goes in.').waitFor()
    expect(await accessFaults(page)).toEqual([])
  })
})
