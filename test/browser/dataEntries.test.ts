import { readFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { focusedName } from '../support/focusedName.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { openFirstPage, textOf } from './openFirstPage.ts'

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

const example = new URL('../../docs/examples/ellerby-hollow.json', import.meta.url)
const scenario: unknown = JSON.parse(readFileSync(example, 'utf8'))

type Opened = { readonly table?: string; readonly options?: BrowserContextOptions; readonly fit?: object }

/** A book of one page: readings, their fit and a check, opened as a file. */
async function openData({ table, options, fit = {} }: Opened = {}) {
  const first = await openFirstPage(browser, served.address, options)
  const { page } = first
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write'])
  const entries = [
    { kind: 'readings', ...(table === undefined ? {} : { table }) },
    { kind: 'fit', readings: 'readings', ...fit },
    { kind: 'check', readings: 'readings', fit: 'fit' },
  ]
  const pages = [{ title: 'Fit the readings', lead: 'Invented.', entries }]
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: 'ours.swardsink.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ swardsink: 1, title: 'Ours', scenario, pages })),
    })
  await page.locator('entry-frame[data-entry="readings"] h2').waitFor()
  return first
}

async function pasteByKeyboard(page: Page, text: string): Promise<void> {
  await page.evaluate(value => navigator.clipboard.writeText(value), text)
  await page.keyboard.press('ControlOrMeta+v')
}

const finding = (page: Page, id: string) => page.locator(`entry-frame[data-entry="${id}"] .finding`)

/** As a spreadsheet of a German reader might give it: invented. */
const messy = `\uFEFF# Ellerby Hollow Turf School, invented
Set;Plate diameter (mm);Load (N);Sinkage (mm);Note
orchard;50;6;0,19;
orchard;50;12;0,35;"wet; a wormcast"
orchard;50;24;0,8 mm;
orchard;50;48;1,72;
orchard;50;72;NA;
nursery;50;6;0,22;
nursery;50;12;0,47;
nursery;50;24;1,20;
nursery;50;48;2,75;
Mean;50;24;1,0;
`

describe('readings, by keyboard alone', () => {
  it('come in messy, are mended in their place, and are fitted', async () => {
    const { page, entry, faults } = await openData()
    await page.getByRole('textbox', { name: 'Paste a table here' }).focus()
    await pasteByKeyboard(page, messy)
    await expect.poll(() => finding(page, 'readings').textContent()).toContain('7 readings of 2 sets')
    expect(await finding(page, 'readings').textContent()).toContain('1 row that cannot be read yet')
    expect(await textOf(entry('readings'))).toContain('invented')
    const wrong = page.getByRole('textbox', { name: 'sinkage, mm, row 3' })
    expect(await wrong.getAttribute('aria-invalid')).toBe('true')
    await wrong.focus()
    await page.keyboard.press('ControlOrMeta+a')
    await page.keyboard.type('0,80')
    await page.keyboard.press('Enter')
    await expect.poll(() => finding(page, 'readings').textContent()).toContain('8 readings of 2 sets')
    await expect
      .poll(() => finding(page, 'fit').textContent())
      .toMatch(/softness of 2 sets runs from 0\.\d\d \(orchard\)/)
    await expect.poll(() => textOf(entry('fit'))).toContain('What these readings cannot tell')
    await page.keyboard.press('ControlOrMeta+z')
    expect(faults).toEqual([])
  })

  it('that are none get a sentence that helps, and so does the fit', async () => {
    const { page, entry, faults } = await openData()
    await page.getByRole('textbox', { name: 'Paste a table here' }).focus()
    await pasteByKeyboard(page, 'when,how deep\nTuesday,quite\nFriday,less\n')
    await expect.poll(() => textOf(entry('readings'))).toMatch(/sinkage_mm/)
    await expect.poll(() => textOf(entry('fit'))).toContain('nothing to fit yet')
    expect(await textOf(entry('check'))).toContain('height_mm')
    expect(faults).toEqual([])
  })

  it('are begun by hand in an empty table', async () => {
    const { page, faults } = await openData()
    await page.getByRole('button', { name: 'type them in' }).focus()
    await page.keyboard.press('Enter')
    // The first cell takes the focus when the empty table is there, on a busy machine a little later.
    await expect.poll(() => focusedName(page)).toMatch(/^input /)
    for (const cell of ['A', '50', '20', '0.6']) {
      await page.keyboard.type(cell)
      await page.keyboard.press('Tab')
    }
    await expect.poll(() => finding(page, 'readings').textContent()).toContain('1 reading, 20 to 20')
    expect(faults).toEqual([])
  })
})

const plates = readFileSync(new URL('../../docs/examples/plates.csv', import.meta.url), 'utf8')

describe('a fit', () => {
  it('becomes the turf in hand with one word, and undo takes it back', async () => {
    const { page, entry, faults } = await openData({ table: plates })
    const green = page.locator('present-case').getByRole('combobox', { name: 'green' })
    const before = await green.inputValue()
    await page.getByRole('button', { name: 'use this turf' }).click()
    await expect.poll(() => green.inputValue()).toBe('orchard green')
    expect(await textOf(entry('fit'))).toContain('is now the turf in hand')
    await page.getByRole('button', { name: 'Undo', exact: true }).click()
    await expect.poll(() => green.inputValue()).toBe(before)
    expect(faults).toEqual([])
  })

  it('follows its settings: another law, a number held, other laws beside it', async () => {
    const { page, entry, faults } = await openData({ table: plates })
    await page.getByRole('combobox', { name: 'Law' }).selectOption('linear')
    await expect.poll(() => textOf(entry('fit'))).not.toContain('exponent was estimated')
    await page.getByRole('combobox', { name: 'Law' }).selectOption('power')
    await page.getByRole('combobox', { name: 'exponent', exact: true }).selectOption('held')
    await page.getByRole('textbox', { name: 'exponent, held at' }).fill('0.8')
    await expect.poll(() => textOf(entry('fit'))).toContain('held, not fitted')
    await page.getByRole('button', { name: 'compare the laws' }).click()
    await expect.poll(() => textOf(entry('fit'))).toContain('Least AICc')
    expect(faults).toEqual([])
  })

  it('leaves as a script that names its numbers', async () => {
    const { page, faults } = await openData({ table: plates })
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'save as a script for Python' }).click(),
    ])
    expect(download.suggestedFilename()).toMatch(/\.py$/)
    expect(await readFile((await download.path()) ?? '', 'utf8')).toContain('softness')
    expect(faults).toEqual([])
  })
})

describe('five thousand readings', () => {
  it('are read in the worker, scrolled and typed in', async () => {
    const rows = Array.from(
      { length: 5000 },
      (_, i) =>
        `green ${i % 25},50,${6 * (1 + (i % 9))},${(0.12 * (1 + (i % 9)) + 0.01 * (i % 7)).toFixed(2)}`,
    )
    const table = ['set,plate_diameter_mm,load_N,sinkage_mm', ...rows].join('\n')
    const { page, entry, faults } = await openData({ table, fit: { roles: { softness: 'shared' } } })
    await expect.poll(() => finding(page, 'readings').textContent()).toContain('5000 readings of 25 sets')
    const drawn = await entry('readings').locator('tbody tr.row').count()
    expect(drawn).toBeLessThan(200)
    const first = page.getByRole('textbox', { name: 'load, N, row 1', exact: true })
    await first.focus()
    await page.keyboard.press('ControlOrMeta+End')
    await entry('readings')
      .locator('.scrolls')
      .evaluate(element => element.scrollTo({ top: element.scrollHeight }))
    const last = page.getByRole('textbox', { name: 'sinkage, mm, row 5000', exact: true })
    await last.fill('nought')
    await expect
      .poll(() => finding(page, 'readings').textContent(), { timeout: 8000 })
      .toContain('1 row that cannot be read yet')
    expect(faults).toEqual([])
  })
})

const strips = `${plates.trim()}\n`.replace('moisture_percent,note', 'moisture_percent,note,height_mm')
const withHeights = strips
  .split('\n')
  .map(line => (line.startsWith('#') || line.includes('height_mm') || line === '' ? line : `${line},`))
  .concat([
    'orchard green,1,,,,2025-04-16,21,,2.1',
    'orchard green,2,,,,2025-04-16,21,,2.2',
    'nursery green,1,,,,2025-04-16,27,,9',
  ])
  .filter(line => line !== '')
  .join('\n')

describe('the page with readings, fit and check', () => {
  it.each(['light', 'dark', 'projector'])('has no fault of access on %s paper', async paper => {
    const { page, entry, faults } = await openData({ table: withHeights, fit: { compare: true, next: true } })
    await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
    await expect.poll(() => textOf(entry('fit'))).toContain('Least AICc')
    await entry('check').scrollIntoViewIfNeeded()
    await expect.poll(() => finding(page, 'check').textContent()).toMatch(/strips/)
    await expect.poll(() => textOf(entry('check'))).toContain('too high')
    expect(await accessFaults(page)).toEqual([])
    expect(faults).toEqual([])
  })

  it('fits a phone without scrolling sideways', async () => {
    const options = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true }
    const { page, entry } = await openData({ table: withHeights, options })
    await expect.poll(() => textOf(entry('fit'))).toContain('What these readings cannot tell')
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(over).toBeLessThanOrEqual(0)
  })
})
