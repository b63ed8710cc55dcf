import { readFile } from 'node:fs/promises'
import { pathToFileURL } from 'node:url'
import type { Browser, Download, Locator, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser } from '../support/browser.ts'
import { repository } from '../support/files.ts'
import { buildStale, type ServedPage, servePage } from '../support/servedPage.ts'
import { openFirstPage } from './openFirstPage.ts'

let browser: Browser
let served: ServedPage

beforeAll(async () => {
  ;[browser, served] = await Promise.all([openBrowser(), servePage(), buildStale('file')])
})
afterEach(async () => {
  await Promise.all(browser.contexts().map(context => context.close()))
})
afterAll(async () => {
  await browser?.close()
  await served?.close()
})

async function saved(page: Page, entry: Locator, name: string): Promise<Download> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    entry.getByRole('button', { name, exact: true }).click(),
  ])
  return download
}
const textOf = async (download: Download) => readFile(await download.path(), 'utf8')

/** Draws a saved figure in an empty page that has none of our sheets: what of it is seen. */
async function seen(
  svg: string,
): Promise<{ readonly width: number; readonly height: number; readonly colours: number }> {
  const page = await (await browser.newContext()).newPage()
  const found = await page.evaluate(async text => {
    const image = new Image()
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = image.naturalWidth
    canvas.height = image.naturalHeight
    const context = canvas.getContext('2d')
    context?.drawImage(image, 0, 0)
    const pixels = context?.getImageData(0, 0, canvas.width, canvas.height).data ?? []
    const colours = new Set<number>()
    for (let at = 0; at < pixels.length; at += 4)
      colours.add(((pixels[at] ?? 0) << 16) | ((pixels[at + 1] ?? 0) << 8) | (pixels[at + 2] ?? 0))
    return { width: canvas.width, height: canvas.height, colours: colours.size }
  }, svg)
  await page.context().close()
  return found
}

describe('a figure saved as a drawing', () => {
  it.each(['sideView', 'map', 'rack'])('stands by itself: %s', async id => {
    const { page, entry, faults } = await openFirstPage(browser, served.address)
    await entry(id).getByRole('button', { name: 'As a table' }).click()
    const download = await saved(page, entry(id), 'save the figure (SVG)')
    expect(download.suggestedFilename()).toMatch(/^[a-z0-9-]+\.svg$/)
    const text = await textOf(download)
    expect(text).not.toMatch(/class=|var\(|\sstyle=|NaN|tabindex|<!--/)
    expect(text).toMatch(/<title>.+<\/title>/)
    expect(text).toContain('font-family="sans-serif"')
    const picture = await seen(text)
    expect(picture.width).toBeGreaterThan(300)
    // Ink, paper, tones and their edges: a drawing that lost its looks would be black on white.
    expect(picture.colours).toBeGreaterThan(20)
    expect(faults).toEqual([])
  })

  it('is in the paper that is chosen, or in dark ink on white for print', async () => {
    const { page, entry } = await openFirstPage(browser, served.address, { colorScheme: 'dark' })
    await entry('map').getByRole('button', { name: 'As a table' }).click()
    const dark = await textOf(await saved(page, entry('map'), 'save the figure (SVG)'))
    const print = await textOf(await saved(page, entry('map'), 'save the figure for print (SVG)'))
    const paper = (text: string) => /<rect [^>]*fill="([^"]+)"/.exec(text)?.[1]
    expect(paper(dark)).toMatch(/^rgb\(\d\d, /)
    expect(paper(print)).toBe('rgb(255, 255, 255)')
    // The page itself is as it was.
    expect(await page.evaluate(() => document.documentElement.getAttribute('data-theme'))).toBe(null)
  })

  it('carries the words of a table that its drawings stand in', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    await entry('rack').getByRole('button', { name: 'As a table' }).click()
    const text = await textOf(await saved(page, entry('rack'), 'save the figure (SVG)'))
    const said = [...text.matchAll(/<text[^>]*>([^<]+)/g)].map(([, words]) => words)
    expect(said).toEqual(expect.arrayContaining(['peg 2, smooth', 'effective height, mm', '9.40']))
    expect(said).not.toContain('fit it')
  })
})

describe('a figure saved as a picture', () => {
  it('is twice as fine as the drawing', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    await entry('map').getByRole('button', { name: 'As a table' }).click()
    const svg = await textOf(await saved(page, entry('map'), 'save the figure (SVG)'))
    const png = await readFile(await (await saved(page, entry('map'), 'save the figure (PNG)')).path())
    expect(png.subarray(1, 4).toString()).toBe('PNG')
    const { width, height } = await seen(svg)
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2 * width, 2 * height])
  })
})

describe('a table saved', () => {
  it('has a row of names, one of units, and numbers as machines read them', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    await entry('rack').getByRole('button', { name: 'As a table' }).click()
    const download = await saved(page, entry('rack'), 'save the table (CSV)')
    expect(download.suggestedFilename()).toMatch(/\.csv$/)
    const lines = (await textOf(download)).replace('\uFEFF', '').split('\r\n')
    expect(lines[0]).toMatch(/^roller,mass,load,/)
    expect(lines[1]).toMatch(/^,kg,N,mm,kPa,/)
    expect(lines.find(line => line.includes('peg 5'))).toMatch(/,-0\.23,/)
    expect(lines.at(-1)).toBe('')
  })
})

describe('the one file', () => {
  it('saves pictures and tables, and gives its values as text that the page opens', async () => {
    const file = pathToFileURL(`${repository}/dist/swardsink.html`).href
    const { page, entry, field, faults } = await openFirstPage(browser, file)
    await entry('map').getByRole('button', { name: 'As a table' }).click()
    const png = await readFile(await (await saved(page, entry('map'), 'save the figure (PNG)')).path())
    expect(png.length).toBeGreaterThan(5000)
    expect(await textOf(await saved(page, entry('map'), 'save the table (CSV)'))).toContain('softness')
    await field('Bench height').fill('4.15')
    await page.getByRole('button', { name: 'These values as text' }).click()
    const text = page.getByRole('textbox', { name: 'The values, as a scenario file holds them' })
    await expect.poll(() => text.inputValue()).toContain('"benchHeight": 0.00415')
    const values = await text.inputValue()
    await page.getByRole('button', { name: 'Back to this book’s values' }).click()
    await page.locator('input[type="file"]').setInputFiles({
      name: 'values.json',
      mimeType: 'application/json',
      buffer: Buffer.from(values),
    })
    await expect.poll(() => field('Bench height').inputValue()).toBe('4.15')
    expect(faults).toEqual([])
  })
})
