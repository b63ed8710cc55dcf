import { fileURLToPath } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser } from '../support/browser.ts'
import { type FolderServer, serveFolder } from '../support/folderServer.ts'
import { buildStale } from '../support/servedPage.ts'
import { watchedPage } from '../support/watchedPage.ts'

const built = fileURLToPath(new URL('../../packages/explorer/dist', import.meta.url))

let browser: Browser
let server: FolderServer

beforeAll(async () => {
  await buildStale('page')
  ;[browser, server] = await Promise.all([openBrowser(), serveFolder(built, '/turf/school/')])
})
afterEach(async () => {
  server.instead.clear()
  await Promise.all(browser.contexts().map(context => context.close()))
})
afterAll(async () => {
  await browser?.close()
  await server?.close()
})

const keeping = { serviceWorkers: 'allow' } as const

describe('a page that was opened once, under a path of its own', () => {
  it('opens without a network, with what it had not fetched before', async () => {
    const { page, faults } = await watchedPage(browser, keeping)
    await page.goto(server.address)
    await page.getByText('opens without a network').waitFor()
    await page.context().setOffline(true)
    const again = await page.context().newPage()
    const uncaught: string[] = []
    again.on('pageerror', error => uncaught.push(error.stack ?? error.message))
    await again.goto(`${server.address}#view=lecture`)
    await again.getByText('cut here', { exact: true }).waitFor()
    await again.keyboard.press('Escape')
    await again.getByRole('button', { name: 'Words of the trade' }).click()
    await again.getByText('US: bedknife').waitFor()
    await again.goto(`${server.address}index.html`)
    await again.getByText('cut here', { exact: true }).waitFor()
    expect([...faults, ...uncaught]).toEqual([])
  })

  it('says that a newer edition waits, and stays the page it is', async () => {
    const { page, faults } = await watchedPage(browser, keeping)
    await page.goto(server.address)
    await page.getByText('opens without a network').waitFor()
    await page.evaluate(() => Object.assign(window, { before: true }))
    server.instead.set('service-worker.js', text =>
      text.replace(/^const edition = .*$/m, "const edition = ours + 'newer'"),
    )
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
    await page.getByText('A newer edition of this page is here').waitFor()
    expect(await page.evaluate(() => 'before' in window)).toBe(true)
    expect(faults).toEqual([])
  })

  it('is not kept when one of its files is not the one it was built with', async () => {
    const { page } = await watchedPage(browser, keeping)
    server.instead.set('icon.svg', text => text.replace('512', '511'))
    await page.goto(server.address)
    await page.getByText('cut here', { exact: true }).waitFor()
    await expect
      .poll(
        () => page.evaluate(async () => (await navigator.serviceWorker.getRegistration()) === undefined),
        {
          timeout: 15_000,
        },
      )
      .toBe(true)
    expect(await page.evaluate(() => caches.keys())).toEqual([])
  })

  it('can be installed: its manifest is read without a fault', async () => {
    const { page } = await watchedPage(browser)
    await page.goto(server.address)
    const session = await page.context().newCDPSession(page)
    const { errors, data } = await session.send('Page.getAppManifest')
    expect(errors).toEqual([])
    expect(JSON.parse(data ?? '{}')).toMatchObject({ name: 'Swardsink', scope: './' })
  })
})
