import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { lectureFile } from '../support/lectureBook.ts'
import { pdfText } from '../support/pdfText.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { tabWalk } from '../support/tabWalk.ts'
import { watchedPage } from '../support/watchedPage.ts'

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

async function opened(sheet: string, width = 1280): Promise<{ page: Page; faults: readonly string[] }> {
  const { page, faults } = await watchedPage(browser, { viewport: { width, height: 800 } })
  page.setDefaultTimeout(10_000)
  await page.goto(served.address)
  await page.getByLabel('Open a file').setInputFiles(lectureFile)
  await page.getByText('What is set is not what is cut.').waitFor()
  await page.getByRole('button', { name: sheet, exact: true }).click()
  await page.getByRole('button', { name: 'Print this sheet' }).waitFor()
  return { page, faults }
}

const PAPERS = ['A4', 'Letter'] as const

describe('the set-up sheet', () => {
  it('is one page of A4 or Letter, from a phone as well, with what to set in both units, turns and cautions', async () => {
    for (const width of [1280, 390]) {
      const { page, faults } = await opened('Set-up sheet', width)
      await page.getByRole('textbox', { name: 'Height wanted' }).fill('2.90')
      await page.getByRole('textbox', { name: 'Adjuster, a whole turn' }).fill('1.25')
      await page.getByText('front roller down').waitFor()
      await page.getByRole('img', { name: 'This very case as a code for a camera' }).waitFor()
      for (const format of PAPERS) {
        const { pages, text } = pdfText(await page.pdf({ format }))
        expect(pages).toBe(1)
        // What is wanted, in both units; what is set follows from it.
        for (const said of [
          '2.90 mm',
          '0.114 in',
          'Turns of the adjuster',
          'Wear cut-resistant',
          'ends within',
        ])
          expect(text).toContain(said)
      }
      expect(faults).toEqual([])
    }
  })

  it('tells turns by how far a turn goes, and the book keeps that', async () => {
    const { page } = await opened('Set-up sheet')
    await page.getByRole('textbox', { name: 'Height wanted' }).fill('2.90')
    const adjuster = page.getByRole('textbox', { name: 'Adjuster, a whole turn' })
    await adjuster.fill('1')
    const turns = page.locator('set-up-sheet .number', { hasText: 'Turns of the adjuster' }).locator('.size')
    const [one] = [Number(await turns.textContent())]
    await adjuster.fill('2')
    await expect.poll(async () => Number(await turns.textContent())).toBeLessThanOrEqual(one / 2 + 0.005)
    expect(Number(await turns.textContent())).toBeGreaterThanOrEqual(one / 2 - 0.005)
    await page.reload()
    await adjuster.waitFor()
    expect(await adjuster.inputValue()).toBe('2.00')
  })

  it('says why there is no setting where there is none', async () => {
    const { page } = await opened('Set-up sheet')
    await page.getByRole('textbox', { name: 'Bench height' }).fill('0.60')
    await page.getByText(/No setting of the bench cuts/).waitFor()
  })
})

describe('the hand-in', () => {
  it('has what was said, what came of it and the signed error on one page', async () => {
    const { page, faults } = await opened('Hand-in')
    await page.getByText('not said yet').waitFor()
    await page.getByRole('button', { name: 'back to the book' }).click()
    await page.getByRole('link', { name: 'later page' }).click()
    await page.getByRole('textbox', { name: 'Your prediction' }).fill('2')
    await page.getByRole('button', { name: 'Lock it' }).click()
    await page.getByRole('button', { name: 'Show me' }).click()
    await page.getByRole('button', { name: 'Hand-in', exact: true }).click()
    await page.getByRole('cell', { name: '2.00\u202fmm', exact: true }).waitFor()
    await page.getByRole('cell', { name: /^\+1\.\d\d\smm$/ }).waitFor()
    for (const format of PAPERS) {
      const { pages, text } = pdfText(await page.pdf({ format }))
      expect(pages).toBe(1)
      expect(text).toContain('How deep does the front roller sink?')
      expect(text).toContain('2.00 mm')
    }
    expect(faults).toEqual([])
  })
})

describe('the teacher’s sheet on paper', () => {
  it('has every page with its minutes, its notes and what it asks', async () => {
    const { page, faults } = await opened('Teacher’s sheet')
    const { text } = pdfText(await page.pdf({ format: 'A4' }))
    for (const said of [
      '20 min in all',
      'Bring the invented unit and a pad.',
      'Wait until everybody has written a number down.',
      'How deep does the front roller sink?',
    ])
      expect(text).toContain(said)
    expect(faults).toEqual([])
  })
})

describe('a page of a book on paper', () => {
  it('has its figures whole, dark on white, and no controls', async () => {
    const { page } = await watchedPage(browser, {
      viewport: { width: 1440, height: 900 },
      colorScheme: 'dark',
    })
    await page.goto(served.address)
    await page.getByText('cut here', { exact: true }).waitFor()
    const drawn = page.locator('svg.side-view')
    expect(await drawn.getAttribute('width')).toBe('792')
    const widths = await drawn.evaluateHandle(svg => {
      const seen: (string | null)[] = []
      new MutationObserver(() => seen.push(svg.getAttribute('width'))).observe(svg, { attributes: true })
      return seen
    })
    await page.pdf({ format: 'A4' })
    expect(await widths.jsonValue()).toContain('680')
    await expect.poll(() => drawn.getAttribute('width')).toBe('792')
    await page.emulateMedia({ media: 'print' })
    await page.setViewportSize({ width: 680, height: 1000 })
    await page.waitForTimeout(500)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(680)
    const { text } = pdfText(await page.pdf({ format: 'A4' }))
    expect(text).toContain('Before you reach under a unit')
    expect(text).not.toContain('Edit this page')
  })
})

describe('every sheet', () => {
  it.each(['Set-up sheet', 'Hand-in', 'Teacher’s sheet'])('can be used by everyone: %s', async name => {
    const { page } = await opened(name)
    for (const paper of ['light', 'dark', 'projector']) {
      await page.evaluate(theme => document.documentElement.setAttribute('data-theme', theme), paper)
      expect(await accessFaults(page)).toEqual([])
    }
    expect(await tabWalk(page)).toMatchObject({ missed: [], round: true })
    for (const width of [320, 390, 768]) {
      await page.setViewportSize({ width, height: 640 })
      await expect
        .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
        .toBeLessThanOrEqual(width)
    }
  })
})
