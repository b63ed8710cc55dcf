import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { Browser, BrowserContextOptions } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { heavierRoller } from '../../packages/explorer/src/books/heavierRoller.ts'
import type { BookSpec } from '../../packages/explorer/src/entries/kinds.ts'
import { openBrowser } from '../support/browser.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { type FirstPage, openFirstPage, textOf } from './openFirstPage.ts'

/** A book of the figures that are fetched when one names them. */
const book: BookSpec = {
  ...heavierRoller,
  title: 'Figures',
  pages: [
    {
      title: 'Figures',
      lead: 'Section, curves, headland, rack.',
      entries: [
        { kind: 'section' },
        { kind: 'curves' },
        { kind: 'headland' },
        { kind: 'rack', headlandRadius: 4 },
      ],
    },
  ],
}

let browser: Browser
let served: ServedPage
let axe: string

beforeAll(async () => {
  ;[browser, served] = await Promise.all([openBrowser(), servePage()])
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
})
afterEach(async () => {
  await Promise.all(browser.contexts().map(context => context.close()))
})
afterAll(async () => {
  await browser?.close()
  await served?.close()
})

async function openFigures(options?: BrowserContextOptions): Promise<FirstPage> {
  const opened = await openFirstPage(browser, served.address, options)
  await opened.page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'figures.swardsink.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(book)),
    })
  await opened.entry('headland').locator('svg.sliding-profile').waitFor()
  return opened
}

describe('the figures that a book names', () => {
  it('are all drawn, without a fault, and each says what it found', async () => {
    const { entry, faults } = await openFigures()
    const drawn = {
      section: 'svg.groove-section',
      curves: 'svg.sinkage-curves',
      headland: 'svg.sliding-profile',
    }
    for (const [id, figure] of Object.entries(drawn)) await entry(id).locator(figure).waitFor()
    expect(await textOf(entry('section'))).toMatch(/presses evenly: \d+\.\d.kPa/)
    expect(await textOf(entry('curves'))).toMatch(/Under \d+.N the one fitted sinks 0\.\d\d.mm/)
    expect(await textOf(entry('headland'))).toMatch(/On a turn of 3\.00.m its ends slide 93\.3.mm\/m/)
    expect(await textOf(entry('rack'))).toMatch(/on a turn of 4\.00.m/)
    expect(faults).toEqual([])
  })

  it('follow what is set: grooves by pointer, the turn by keyboard, with undo', async () => {
    const { page, entry, faults } = await openFigures()
    await entry('section').getByRole('radio', { name: 'grooved' }).check()
    await expect.poll(() => textOf(entry('section'))).toMatch(/Lands are 42.% of its face/)

    await page.getByRole('slider', { name: 'Radius of the turn, on the line' }).focus()
    await page.keyboard.press('ArrowRight')
    await expect.poll(() => textOf(entry('headland'))).toMatch(/On a turn of 3\.01.m/)
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(() => textOf(entry('headland'))).toMatch(/On a turn of 3\.00.m/)

    const field = page.getByRole('textbox', { name: 'Radius of the turn', exact: true })
    await field.fill('-1')
    await expect.poll(() => textOf(entry('headland'))).toContain('more than 0')
    await field.fill('6')
    await expect.poll(() => textOf(entry('headland'))).toMatch(/its ends slide 46\.7.mm/)
    expect(faults).toEqual([])
  })

  it('show what is chosen in words: pressure, laws, the rear', async () => {
    const { entry, faults } = await openFigures()
    await entry('curves').getByRole('button', { name: 'pressure' }).press('Enter')
    await expect.poll(() => textOf(entry('curves'))).toContain('that is the softness')
    await entry('curves').getByRole('button', { name: 'laws of equal softness' }).press('Enter')
    await expect.poll(() => textOf(entry('curves'))).toContain('logarithmic')
    await entry('section').getByRole('button', { name: 'the rear roller' }).press('Enter')
    await expect.poll(() => textOf(entry('section'))).toContain('Across the rear roller')
    await entry('rack').getByRole('button', { name: 'the rear roller' }).press('Enter')
    await expect.poll(() => textOf(entry('rack'))).toContain('at the rear of this unit')
    expect(faults).toEqual([])
  })
})

type Found = { readonly id: string; readonly nodes: readonly { readonly target: unknown }[] }

describe('the checker of accessibility', () => {
  it.each(['light', 'dark', 'projector'])('finds nothing in the %s theme', async paper => {
    const { page } = await openFigures()
    await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
    await page.evaluate(axe)
    const found = await page.evaluate(async () => {
      const { axe: checker } = window as unknown as {
        axe: { run(options: object): Promise<{ violations: Found[] }> }
      }
      const { violations } = await checker.run({
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
      })
      return violations.map(({ id, nodes }) => `${id}: ${JSON.stringify(nodes.map(({ target }) => target))}`)
    })
    expect(found).toEqual([])
  })

  it('has nothing to scroll sideways at 320 px, the page itself', async () => {
    const { page } = await openFigures({ viewport: { width: 320, height: 800 } })
    const wide = await page.evaluate(() => document.documentElement.scrollWidth)
    expect(wide).toBeLessThanOrEqual(320)
  })
})
