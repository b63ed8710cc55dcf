import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openBrowser } from '../support/browser.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { watchedPage } from '../support/watchedPage.ts'

let browser: Browser
let served: ServedPage

beforeAll(async () => {
  served = await servePage()
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
  await served?.close()
})

test('the served page keeps to its own content policy', async () => {
  const { page, faults } = await watchedPage(browser)
  await page.goto(served.address, { waitUntil: 'networkidle' })
  expect(faults).toEqual([])
})

test('a script or a style written into the page is refused', async () => {
  const { page, faults } = await watchedPage(browser)
  await page.goto(served.address)
  const outcome = await page.evaluate(() => {
    const script = document.createElement('script')
    script.textContent = 'document.title = "taken over"'
    document.body.append(script)
    const paragraph = document.createElement('p')
    paragraph.setAttribute('style', 'color: rgb(1, 2, 3)')
    document.body.append(paragraph)
    return { title: document.title, colour: getComputedStyle(paragraph).color }
  })
  expect(outcome.title).not.toBe('taken over')
  expect(outcome.colour).not.toBe('rgb(1, 2, 3)')
  await expect
    .poll(() => faults.filter(fault => fault.startsWith('policy:')))
    .toEqual(['policy: script-src-elem refused inline', 'policy: style-src-attr refused inline'])
})

test('text is never evaluated as code', async () => {
  const { page, faults } = await watchedPage(browser)
  await page.goto(served.address)
  // Through a timer, because the test driver's own calls are exempt from the policy.
  await page.evaluate(() => void setTimeout('document.title = "taken over"'))
  await expect.poll(() => faults).toContain('policy: script-src refused eval')
  expect(await page.title()).not.toBe('taken over')
})

test('nothing is asked of any other place', async () => {
  const { page, requests } = await watchedPage(browser)
  await page.goto(served.address, { waitUntil: 'networkidle' })
  const foreign = requests.filter(url => !url.startsWith(served.address) && !/^(data|blob):/.test(url))
  expect(requests.length).toBeGreaterThan(1)
  expect(foreign).toEqual([])
})

test('nothing could be asked of any other place', async () => {
  const { page, faults } = await watchedPage(browser)
  await page.goto(served.address)
  const elsewhere = 'http://ellerby-hollow.invalid/'
  await page.evaluate(url => fetch(url).catch(() => null), elsewhere)
  await expect.poll(() => faults).toContain(`policy: connect-src refused ${elsewhere}`)
})

test('the page works under any path', async () => {
  const { page, faults } = await watchedPage(browser)
  // The same files one folder down, as on a server that is shared with others.
  await page.route('**/turf/school/**', async route => {
    const inside = route.request().url().replace('/turf/school/', '/')
    await route.fulfill({ response: await route.fetch({ url: inside }) })
  })
  await page.goto(`${served.address}turf/school/`, { waitUntil: 'networkidle' })
  expect(faults).toEqual([])
  await page
    .getByText(/\d\s(mm|kPa|kg)/)
    .first()
    .waitFor()
})
