import { copyFile, mkdtemp, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { kindShelf } from '../../packages/explorer/src/entries/kinds.ts'
import { openBrowser } from '../support/browser.ts'
import { buildStale } from '../support/servedPage.ts'
import { watchedPage } from '../support/watchedPage.ts'

const built = fileURLToPath(new URL('../../dist/swardsink.html', import.meta.url))

let browser: Browser
let stick: string
let address: string

beforeAll(async () => {
  await buildStale('file')
  // Alone in a folder with a name as people give them, so that nothing beside it can be what makes it work.
  stick = await mkdtemp(join(tmpdir(), 'stick of Ellerby Höllow #1 '))
  await copyFile(built, join(stick, 'swardsink.html'))
  address = pathToFileURL(join(stick, 'swardsink.html')).href
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  await rm(stick, { recursive: true, force: true })
})

test('the one file opens from disk without a fault and shows its first number', async () => {
  const { page, faults, requests } = await watchedPage(browser, { offline: true })
  await page.goto(address, { waitUntil: 'load' })
  await page
    .getByText(/\d\s(mm|kPa|kg)/)
    .first()
    .waitFor()
  // Its own worker is the only other thing it may load.
  expect(
    requests.filter(url => url !== address && !url.startsWith('blob:') && !url.startsWith('data:')),
  ).toEqual([])
  expect(faults).toEqual([])
})

test('its worker answers from disk', async () => {
  const { page, faults } = await watchedPage(browser, { offline: true })
  await page.addInitScript(() => {
    const heard: unknown[] = []
    const Native = Worker
    Object.assign(window, {
      heard,
      Worker: class extends Native {
        constructor(...given: ConstructorParameters<typeof Worker>) {
          super(...given)
          this.addEventListener('message', event => heard.push(event.data))
        }
      },
    })
  })
  await page.goto(address)
  await page.waitForFunction(() => (window as unknown as { heard: unknown[] }).heard.length > 0)
  expect(faults).toEqual([])
})

test('draws every kind of entry from disk, and every sheet, and asks for nothing', async () => {
  const kinds = kindShelf().names
  const { heavierRoller } = await import('../../packages/explorer/src/books/heavierRoller.ts')
  const pages = kinds.map(kind => ({ title: kind, lead: `All of ${kind}`, entries: [{ kind, id: kind }] }))
  const { page, faults, requests } = await watchedPage(browser, { offline: true })
  page.setDefaultTimeout(10_000)
  await page.goto(address)
  await page.getByLabel('Open a file').setInputFiles({
    name: 'kinds.swardsink.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...heavierRoller, title: 'Every kind', pages })),
  })
  await page.getByText(`All of ${kinds[0]}`).waitFor()
  for (const [at, kind] of kinds.entries()) {
    await page.evaluate(to => {
      location.hash = `${location.hash.replace(/&?page=\d+/, '')}&page=${to}`.replace('#&', '#')
    }, at + 1)
    await page.getByText(`All of ${kind}`).waitFor()
    await expect.poll(() => page.locator('entry-frame .drawn').count(), { message: kind }).toBeGreaterThan(0)
  }
  for (const name of ['Set-up sheet', 'Hand-in', 'Teacher’s sheet']) {
    await page.getByRole('button', { name, exact: true }).click()
    await page.getByRole('button', { name: 'back to the book' }).click()
  }
  await page.getByRole('button', { name: 'Words of the trade' }).click()
  await page.getByText('US: bedknife').waitFor()
  expect(
    requests.filter(url => url !== address && !url.startsWith('blob:') && !url.startsWith('data:')),
  ).toEqual([])
  expect(faults).toEqual([])
})

test('a script added to the one file is refused', async () => {
  const { page, faults } = await watchedPage(browser)
  await page.goto(address)
  const title = await page.evaluate(() => {
    const script = document.createElement('script')
    script.textContent = 'document.title = "taken over"'
    document.body.append(script)
    return document.title
  })
  expect(title).not.toBe('taken over')
  await expect.poll(() => faults).toContain('policy: script-src-elem refused inline')
})

test('the one file fits on anything', async () => {
  const limit = 1.5e6
  expect((await stat(built)).size).toBeLessThan(limit)
})
