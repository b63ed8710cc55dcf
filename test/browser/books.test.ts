import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { books } from '../../packages/explorer/src/books/index.ts'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { type FolderServer, serveFolder } from '../support/folderServer.ts'
import { buildStale } from '../support/servedPage.ts'
import { type WatchedPage, watchedPage } from '../support/watchedPage.ts'
import { answerByKeyboard, questionsOf, settledPage, turnByKeyboard } from './walkBook.ts'

const fileFrom = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url))
const oneFile = pathToFileURL(fileFrom('dist/swardsink.html')).href
const listed = Object.entries(books)
/** Every page is worked out, and looked over on three papers. */
const timeout = 300_000
const laptop = { viewport: { width: 1440, height: 900 } }

let browser: Browser
let server: FolderServer

beforeAll(async () => {
  await buildStale('page')
  await buildStale('file')
  ;[browser, server] = await Promise.all([
    openBrowser(),
    serveFolder(fileFrom('packages/explorer/dist'), '/'),
  ])
})
afterEach(async () => {
  await Promise.all(browser.contexts().map(context => context.close()))
})
afterAll(async () => {
  await browser?.close()
  await server?.close()
})

type Walked = { readonly pages: number; readonly answered: number }

/** Reads a book to its end by the keyboard, and answers whatever it asks. */
async function walk(page: Page, onPage: () => Promise<void> = async () => {}): Promise<Walked> {
  let [pages, answered] = [0, 0]
  do {
    pages++
    await settledPage(page)
    for (const id of await questionsOf(page)) {
      await answerByKeyboard(page, id, '2')
      answered++
    }
    const frames = await settledPage(page)
    expect(frames.filter(({ drawn }) => !drawn)).toEqual([])
    await onPage()
  } while (await turnByKeyboard(page))
  return { pages, answered }
}

const asked = async (name: string): Promise<Walked> => {
  const { spec } = await books[name as keyof typeof books].load()
  const questions = spec.pages.flatMap(({ entries }) => entries.filter(({ kind }) => kind === 'question'))
  return { pages: spec.pages.length, answered: questions.length }
}

/** What a page asked the network for, but for itself and what it carries. */
const strayed = ({ requests }: WatchedPage, home: string): readonly string[] =>
  requests.filter(url => !url.startsWith(home) && !/^(blob|data):/.test(url))

describe.each(listed)('the book %s, the network off', (name, { title }) => {
  it('is read to its end by the keyboard, and has no accessibility fault on any paper', {
    timeout,
  }, async () => {
    const watched = await watchedPage(browser, { ...laptop, serviceWorkers: 'allow' })
    const { page, faults } = watched
    await page.goto(server.address)
    await page.getByText('opens without a network').waitFor()
    await page.context().setOffline(true)
    await page.goto(`${server.address}#book=${name}`)
    await page.getByRole('banner').getByText(title, { exact: true }).waitFor()
    const found: string[] = []
    const lookOver = async () => {
      for (const paper of ['light', 'dark', 'projector']) {
        await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
        await settledPage(page)
        found.push(...(await accessFaults(page)).map(fault => `${page.url()}, ${paper}: ${fault}`))
      }
    }
    expect(await walk(page, lookOver)).toEqual(await asked(name))
    expect(found).toEqual([])
    expect(faults).toEqual([])
    expect(strayed(watched, server.address)).toEqual([])
  })

  it('is read to its end from the one file', { timeout }, async () => {
    const watched = await watchedPage(browser, { ...laptop, offline: true })
    const { page, faults } = watched
    await page.goto(`${oneFile}#book=${name}`)
    await page.getByRole('banner').getByText(title, { exact: true }).waitFor()
    expect(await walk(page)).toEqual(await asked(name))
    expect(faults).toEqual([])
    expect(strayed(watched, oneFile)).toEqual([])
  })
})

describe('the list of books', () => {
  it('is reached from the running head, tells whom each is for, and opens one', async () => {
    const { page, faults } = await watchedPage(browser, laptop)
    await page.goto(server.address)
    await page.getByRole('link', { name: 'Books' }).press('Enter')
    for (const [, { title, about }] of listed) {
      await page.getByRole('heading', { name: title }).waitFor()
      expect(await page.getByText(about).count()).toBe(1)
    }
    expect(await accessFaults(page)).toEqual([])
    await page.getByRole('main').getByRole('link', { name: 'Fit your own gauge' }).press('Enter')
    await page.getByRole('heading', { name: 'Two feet on two greens' }).waitFor()
    await page.goBack()
    await page.getByRole('heading', { level: 1, name: 'The books that come with this' }).waitFor()
    expect(faults).toEqual([])
  })
})

describe('a lesson with a pad', () => {
  it('lands a reading on the curve as it is typed, and the guesses of the room beside the answer', async () => {
    const { page, faults } = await watchedPage(browser, laptop)
    await page.goto(`${server.address}#book=weight-or-surface&page=5`)
    await page.getByRole('banner').getByText('Weight or surface?', { exact: true }).waitFor()
    await settledPage(page)
    const table = page.locator('entry-frame[data-entry="weights"]')
    const curve = page.locator('entry-frame[data-entry="weight-curve"]')
    await table.getByRole('textbox', { name: /^load/ }).first().focus()
    await page.keyboard.type('13.2')
    await page.keyboard.press('Tab')
    await page.keyboard.type('2.41')
    await page.keyboard.press('Enter')
    await curve.getByText('Small rings: 1 reading').waitFor()

    await page.goto(`${server.address}#book=weight-or-surface&page=2`)
    const question = page.locator('entry-frame[data-entry="guess-weight"]')
    await question.getByRole('textbox', { name: 'Guesses of the room' }).fill('3 3.5 ×4 5')
    await answerByKeyboard(page, 'guess-weight', '4')
    await question.getByText('6 guesses of the room').waitFor()
    expect(faults).toEqual([])
  })
})
