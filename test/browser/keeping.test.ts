import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser } from '../support/browser.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { textOf } from './openFirstPage.ts'

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

type Tab = { readonly page: Page; readonly faults: readonly string[] }

/** A tab of one reader's browser: its storage is that of the other tabs of the context. */
async function tabOf(context: BrowserContext, hash = ''): Promise<Tab> {
  const page = await context.newPage()
  const faults: string[] = []
  page.on('console', message => {
    if (['error', 'warning'].includes(message.type())) faults.push(message.text())
  })
  page.on('pageerror', error => faults.push(error.message))
  page.setDefaultTimeout(8000)
  await page.goto(served.address + hash)
  await page.locator('entry-frame').first().waitFor()
  return { page, faults }
}

const mass = (page: Page) => page.getByRole('textbox', { name: 'Mass of the front roller', exact: true })
const word = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true })
const notices = (page: Page) => page.locator('notice-list').getByRole('status').textContent()
const openFile = (page: Page, text: string) =>
  page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'a.swardsink.json', mimeType: 'application/json', buffer: Buffer.from(text) })

/** The book as this page saves it. */
async function saved(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    word(page, 'Save as a file').first().click(),
  ])
  const stream = await download.createReadStream()
  return Buffer.concat(await stream.toArray()).toString('utf8')
}

describe('closing the page in the middle of an edit', () => {
  it.each([
    ['closed', (page: Page) => page.close({ runBeforeUnload: true })],
    ['left for another', (page: Page) => page.goto('about:blank')],
  ] as const)('loses nothing when it is %s while prose is typed', async (_, leave) => {
    const context = await browser.newContext()
    const { page } = await tabOf(context)
    await word(page, 'Edit this page').click()
    await page.locator('entry-frame[data-entry="text"]').getByRole('textbox', { name: 'Paragraphs' }).focus()
    await page.keyboard.press('Control+a')
    await page.keyboard.type('Half a sentence about {drop} and')
    await leave(page)
    const { page: again, faults } = await tabOf(context)
    const prose = again.locator('entry-frame[data-entry="text"]')
    await expect.poll(() => textOf(prose)).toContain('Half a sentence about 0.75')
    expect(faults).toEqual([])
  })

  it('loses nothing when it is hidden and the browser never comes back to it', async () => {
    const context = await browser.newContext()
    const { page } = await tabOf(context)
    await mass(page).fill('9.1')
    await page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { value: 'hidden' })
      document.dispatchEvent(new Event('visibilitychange'))
    })
    const kept = await page.evaluate(() => localStorage.getItem('swardsink/book/heavier-roller'))
    expect(kept).toContain('9.1')
  })
})

describe('two tabs on one book', () => {
  it('tell of each other, and neither writes over what the other has changed', async () => {
    const context = await browser.newContext()
    const one = await tabOf(context)
    const two = await tabOf(context)
    await mass(one.page).fill('9.1')
    await mass(one.page).press('Tab')
    await expect.poll(() => notices(two.page)).toContain('This book was changed in another tab')
    await mass(two.page).fill('4.4')
    await mass(two.page).press('Tab')
    await expect
      .poll(() => notices(two.page))
      .toContain('Both are kept: yours is now “why-a-heavier-roller-cuts-lower”')
    expect(new URL(two.page.url()).hash).toBe('#book=why-a-heavier-roller-cuts-lower')
    await one.page.reload()
    await expect.poll(() => mass(one.page).inputValue()).toBe('9.10')
    await two.page.reload()
    await expect.poll(() => mass(two.page).inputValue()).toBe('4.40')
    expect([...one.faults, ...two.faults]).toEqual([])
  })

  it('open the other’s changes when they are asked to, and undo brings back their own', async () => {
    const context = await browser.newContext()
    const one = await tabOf(context)
    const two = await tabOf(context)
    await mass(one.page).fill('9.1')
    await mass(one.page).press('Tab')
    await two.page.getByRole('button', { name: 'open the other’s' }).click()
    await expect.poll(() => mass(two.page).inputValue()).toBe('9.10')
    await word(two.page, 'Undo').click()
    await expect.poll(() => mass(two.page).inputValue()).toBe('6.20')
    await word(two.page, 'Redo').click()
    await mass(two.page).fill('9.3')
    await mass(two.page).press('Tab')
    await expect.poll(() => notices(one.page)).toContain('This book was changed in another tab')
    await one.page.reload()
    await expect.poll(() => mass(one.page).inputValue()).toBe('9.30')
  })

  it('do not write over each other even before either has heard', async () => {
    const context = await browser.newContext()
    const one = await tabOf(context)
    const two = await tabOf(context)
    await two.page.evaluate(() =>
      window.addEventListener('storage', event => event.stopImmediatePropagation(), { capture: true }),
    )
    await mass(one.page).fill('9.1')
    await one.page.waitForFunction(() => localStorage.getItem('swardsink/book/heavier-roller') !== null)
    await mass(two.page).fill('4.4')
    await expect.poll(() => notices(two.page)).toContain('Both are kept')
    const first = await one.page.evaluate(() => localStorage.getItem('swardsink/book/heavier-roller'))
    expect(first).toContain('9.1')
  })
})

describe('a browser that keeps nothing', () => {
  it('is told at the foot when it refuses, and the page works', async () => {
    const context = await browser.newContext()
    await context.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('refused', 'SecurityError')
        },
      })
    })
    const { page, faults } = await tabOf(context)
    await mass(page).fill('9.1')
    await expect.poll(() => page.locator('page-foot').textContent()).not.toBe(null)
    expect(await page.getByText('This browser keeps nothing for later').count()).toBe(1)
    expect(faults).toEqual([])
  })

  it('is told above the page when it is full, with the word that saves a file', async () => {
    const context = await browser.newContext()
    const { page } = await tabOf(context)
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError')
      }
    })
    await mass(page).fill('9.1')
    await expect.poll(() => notices(page)).toContain('This browser has no room left')
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('notice-list').getByRole('button', { name: 'Save as a file' }).click(),
    ])
    expect(download.suggestedFilename()).toMatch(/\.swardsink\.json$/)
    expect(await page.getByText('This browser keeps nothing for later').count()).toBe(1)
  })
})

describe('several books', () => {
  it('are kept by name, listed, gone back to and forgotten', async () => {
    const context = await browser.newContext()
    const { page, faults } = await tabOf(context)
    await mass(page).fill('9.1')
    await mass(page).press('Tab')
    const file = (await saved(page)).replace('Why a heavier roller cuts lower', 'Greens in March')
    await mass(page).fill('5.5')
    await mass(page).press('Tab')
    await openFile(page, file)
    await expect.poll(() => notices(page)).toContain('Opened: Greens in March.')
    expect(await mass(page).inputValue()).toBe('9.10')
    expect(new URL(page.url()).hash).toBe('#book=greens-in-march')
    await mass(page).fill('8.2')
    await mass(page).press('Tab')
    await page.getByRole('link', { name: 'back to “Why a heavier roller cuts lower”' }).click()
    await expect.poll(() => mass(page).inputValue()).toBe('5.50')
    // Each has its own past in this window.
    await word(page, 'Undo').click()
    await expect.poll(() => mass(page).inputValue()).toBe('9.10')
    await page.getByRole('link', { name: 'Greens in March' }).click()
    await expect.poll(() => mass(page).inputValue()).toBe('8.20')
    await page.reload()
    await expect.poll(() => mass(page).inputValue()).toBe('8.20')
    await word(page, 'Back to this book’s values').click()
    await expect.poll(() => mass(page).inputValue()).toBe('9.10')
    await page.getByRole('link', { name: 'Why a heavier roller cuts lower' }).click()
    await expect.poll(() => mass(page).inputValue()).toBe('9.10')
    await word(page, 'forget Greens in March').click()
    await expect.poll(() => page.getByText('Forgotten: Greens in March.').count()).toBe(1)
    expect(await page.getByRole('link', { name: 'Greens in March' }).count()).toBe(0)
    await page.goto(`${served.address}#book=greens-in-march`)
    await expect.poll(() => notices(page)).toContain('No book called “greens-in-march”')
    expect(faults).toEqual([])
  })

  it('say what was wrong with a file, without saying that it was opened', async () => {
    const context = await browser.newContext()
    const { page } = await tabOf(context)
    const file = await saved(page)
    await openFile(page, file.replace('"swardsink": 1', '"swardsink": 9'))
    await expect.poll(() => notices(page)).toContain('it is of version 9, and this program reads version 1')
    expect(new URL(page.url()).hash).toBe('')
    await openFile(page, '{ "swardsink": 1')
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('could not be opened')
    await openFile(page, file.slice(0, file.indexOf('"rack"')))
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('Not all of this could be read')
    const told = await notices(page)
    expect(told).toContain('as far as it could be read')
    expect(told).not.toContain('Opened')
  })

  it('keep what they cannot draw, and say so in its place', async () => {
    const context = await browser.newContext()
    const { page, faults } = await tabOf(context)
    const file = JSON.parse(await saved(page))
    const carousel = { kind: 'carousel', turns: [1, 2] }
    file.pages[0].entries.splice(1, 0, carousel, { kind: 'constructor' })
    await openFile(page, JSON.stringify(file))
    await expect.poll(() => page.getByText('“carousel”. It is kept as it came').count()).toBe(1)
    await mass(page).fill('9.1')
    expect(JSON.parse(await saved(page)).pages[0].entries[1]).toEqual(carousel)
    expect(faults).toEqual([])
  })
})

describe('an address', () => {
  it('that ends in nothing known is told, and the page opens', async () => {
    const { page } = await tabOf(await browser.newContext(), '#garbage')
    await expect.poll(() => notices(page)).toContain('“garbage”, which means nothing here')
    await word(page, 'all right').click()
    await expect.poll(() => notices(page)).toBe('')
    await page.evaluate(() => {
      location.hash = 'more-garbage'
    })
    await expect.poll(() => notices(page)).toContain('“more-garbage”')
  })

  it('with values lays them over the reader’s own, which undo brings back and the browser keeps', async () => {
    const context = await browser.newContext()
    const { page } = await tabOf(context)
    await mass(page).fill('9.1')
    await mass(page).press('Tab')
    await word(page, 'A link to these values').click()
    const text = page.getByRole('textbox', { name: 'The link' })
    await expect.poll(() => text.inputValue()).toContain('#scenario=')
    const link = await text.inputValue()
    await mass(page).fill('4.4')
    await page.goto('about:blank')
    const { page: linked } = await tabOf(context, new URL(link).hash)
    await expect.poll(() => mass(linked).inputValue()).toBe('9.10')
    await expect.poll(() => notices(linked)).toContain('Undo brings back those you had')
    await word(linked, 'Undo').click()
    await expect.poll(() => mass(linked).inputValue()).toBe('4.40')
    await word(linked, 'Redo').click()
    await mass(linked).fill('7.7')
    await expect.poll(() => new URL(linked.url()).hash).toBe('')
    await linked.reload()
    await expect.poll(() => mass(linked).inputValue()).toBe('7.70')
    // What the reader had before the link is among the books of this browser.
    const own = linked
      .locator('book-list')
      .getByRole('list', { name: 'Kept in this browser' })
      .getByRole('link')
    await own.click()
    await expect.poll(() => mass(linked).inputValue()).toBe('4.40')
  })
})
