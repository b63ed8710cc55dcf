import { copyFile, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { lectureFile } from '../support/lectureBook.ts'
import { buildStale, type ServedPage, servePage } from '../support/servedPage.ts'
import { tabWalk } from '../support/tabWalk.ts'
import { type WatchedPage, watchedPage } from '../support/watchedPage.ts'

const built = fileURLToPath(new URL('../../dist/swardsink.html', import.meta.url))
const wall = { viewport: { width: 1280, height: 720 } }

let browser: Browser
let served: ServedPage
let stick: string
let fromDisk: string

beforeAll(async () => {
  ;[browser, served] = await Promise.all([openBrowser(), servePage()])
  await buildStale('file')
  stick = await mkdtemp(join(tmpdir(), 'stick of a trainer '))
  await copyFile(built, join(stick, 'swardsink.html'))
  fromDisk = pathToFileURL(join(stick, 'swardsink.html')).href
})
afterEach(async () => {
  await Promise.all(browser.contexts().map(context => context.close()))
})
afterAll(async () => {
  await browser?.close()
  await served?.close()
  await rm(stick, { recursive: true, force: true })
})

/** A lecture of the short book, entered as a trainer does. */
async function lecture(address: string, options: BrowserContextOptions = wall): Promise<WatchedPage> {
  const watched = await watchedPage(browser, options)
  const { page } = watched
  page.setDefaultTimeout(10_000)
  await page.goto(address)
  await page.getByLabel('Open a file').setInputFiles(lectureFile)
  await page.getByText('What is set is not what is cut.').waitFor()
  await page.getByRole('button', { name: 'Lecture', exact: true }).click()
  await page.getByText('1 of 3').waitFor()
  return watched
}

const sentence = (page: Page) => page.getByRole('heading', { level: 1 })
const QUESTION = 'How deep does the front roller sink?'

describe('a lecture', () => {
  it('turns by page keys whatever has the focus, and by arrow keys only when no control has it', async () => {
    const { page, faults } = await lecture(served.address)
    expect(await sentence(page).textContent()).toBe('What is set is not what is cut.')
    await page.keyboard.press('ArrowRight')
    await expect.poll(() => sentence(page).textContent()).toBe(QUESTION)
    await page.keyboard.press('ArrowLeft')
    const line = page.getByRole('slider', { name: 'Mass of the front roller, on the line' })
    await line.focus()
    await page.keyboard.press('ArrowRight')
    expect(await line.getAttribute('aria-valuetext')).toBe('6.21\u202fkg')
    await page.keyboard.press('PageDown')
    await expect.poll(() => sentence(page).textContent()).toBe(QUESTION)
    await page.keyboard.press('PageUp')
    expect(await line.getAttribute('aria-valuetext')).toBe('6.21\u202fkg')
    expect(faults).toEqual([])
  })

  it('goes back to the page it is on by Escape, and by going back to the page it came from', async () => {
    const { page } = await lecture(served.address)
    await page.keyboard.press('PageDown')
    await page.keyboard.press('Escape')
    await page.getByText('2 of 2').waitFor()
    expect(await sentence(page).textContent()).toBe('Say it first')
    expect(page.url()).toContain('page=2')
    await page.goBack()
    await page.getByText('1 of 3').waitFor()
  })

  it.each([
    [1280, 720],
    [1920, 1080],
    [390, 844],
    [320, 256],
  ])('has nothing under 20 px and nothing wider than the wall at %d × %d', async (width, height) => {
    const { page } = await lecture(served.address, { viewport: { width, height } })
    for (let step = 1; step <= 3; step++) {
      await page.waitForTimeout(300)
      const found = await page.evaluate(() => {
        const deep = (root: ParentNode): Element[] =>
          [...root.querySelectorAll('*')].flatMap(element => [
            element,
            ...(element.shadowRoot ? deep(element.shadowRoot) : []),
          ])
        const small = deep(document)
          .filter(element => !element.matches('style, option'))
          .filter(element =>
            [...element.childNodes].some(node => node.nodeType === 3 && node.textContent?.trim()),
          )
          .filter(element => element.getBoundingClientRect().height > 1)
          .filter(element => Number.parseFloat(getComputedStyle(element).fontSize) < 20)
        return {
          small: small.map(element => `${element.localName} ${element.textContent?.trim()}`),
          wide: document.documentElement.scrollWidth - innerWidth,
        }
      })
      expect(found).toEqual({ small: [], wide: 0 })
      await page.keyboard.press('PageDown')
    }
  })

  it('lets the keyboard reach every control of a slide and go on from it', async () => {
    const { page } = await lecture(served.address)
    for (let step = 1; step <= 3; step++) {
      const walk = await tabWalk(page)
      expect(walk).toMatchObject({ missed: [], round: true })
      await page.keyboard.press('PageDown')
    }
  })

  it.each([
    ['as it is', {}],
    ['in forced colours and without motion', { forcedColors: 'active', reducedMotion: 'reduce' }],
    ['at 400 %', { viewport: { width: 320, height: 180 }, deviceScaleFactor: 4 }],
  ] as const)('has no accessibility fault %s', async (_, options) => {
    const { page } = await lecture(served.address, { ...wall, ...options })
    await page.evaluate(() => Object.assign(window, { open: () => null }))
    await page.getByRole('button', { name: 'teacher’s sheet' }).click()
    for (let step = 1; step <= 3; step++) {
      expect(await accessFaults(page)).toEqual([])
      await page.keyboard.press('PageDown')
    }
  })
})

describe('the teacher’s sheet', () => {
  it.each(['from a server', 'from a file on disk'])(
    'opens in a window of its own and follows, %s',
    async place => {
      const { page, faults } = await lecture(place === 'from a server' ? served.address : fromDisk)
      const [sheet] = await Promise.all([
        page.waitForEvent('popup'),
        page.getByRole('button', { name: 'teacher’s sheet' }).click(),
      ])
      await sheet.getByText('Let them feel the edge move.').waitFor()
      await sheet.getByText('20 minutes are planned; the steps after this one take 13 minutes.').waitFor()
      await sheet.getByText(QUESTION).first().waitFor()
      await sheet.keyboard.press('PageDown')
      await expect.poll(() => sentence(page).textContent()).toBe(QUESTION)
      await sheet.getByText('Wait until everybody has written a number down.').waitFor()
      await sheet.getByText('20 minutes left in the plan; the steps after this one take 9 minutes.').waitFor()
      await sheet.getByRole('button', { name: 'later' }).click()
      await sheet.getByText('This is the last step.').waitFor()
      await page.keyboard.press('Escape')
      await expect.poll(() => sheet.isClosed()).toBe(true)
      expect(faults).toEqual([])
    },
  )

  it('tells the minutes left, and that the plan is over', async () => {
    const watched = await watchedPage(browser, wall)
    const { page } = watched
    await page.clock.install()
    await page.goto(served.address)
    await page.getByLabel('Open a file').setInputFiles(lectureFile)
    await page.getByText('What is set is not what is cut.').waitFor()
    await page.getByRole('button', { name: 'Lecture', exact: true }).click()
    // The page has a word of nearly the same name at its foot.
    await page.getByText('1 of 3').waitFor()
    await page.evaluate(() => Object.assign(window, { open: () => null }))
    await page.getByRole('button', { name: 'teacher’s sheet' }).click()
    await page.getByRole('button', { name: 'begin the time now' }).click()
    await page.clock.runFor('05:30')
    await page.getByText('15 minutes left in the plan').waitFor()
    await page.clock.runFor('17:30')
    await page.getByText('The plan is over by 3 minutes').waitFor()
  })

  it('stands under the slide where no window may open, and says so', async () => {
    const { page, faults } = await lecture(served.address)
    await page.evaluate(() => Object.assign(window, { open: () => null }))
    await page.getByRole('button', { name: 'teacher’s sheet' }).click()
    await page.getByText('This browser let no window open').first().waitFor()
    await page.getByText('Let them feel the edge move.').waitFor()
    await page.getByRole('button', { name: 'teacher’s sheet' }).click()
    await page.getByText('Let them feel the edge move.').waitFor({ state: 'detached' })
    expect(faults).toEqual([])
  })
})
