import { readFileSync } from 'node:fs'
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core'
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

const example = new URL('../../docs/examples/ellerby-hollow-units.json', import.meta.url)
const scenario: unknown = JSON.parse(readFileSync(example, 'utf8'))

/** A book of one page with these entries, over three invented units, opened as a file. */
async function openWith(kinds: readonly string[], options?: BrowserContextOptions) {
  const first = await openFirstPage(browser, served.address, options)
  const pages = [{ title: 'Ellerby Hollow', lead: 'Invented.', entries: kinds.map(kind => ({ kind })) }]
  await first.page.locator('input[type="file"]').setInputFiles({
    name: 'machine.swardsink.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ swardsink: 1, title: 'Three units', scenario, pages })),
  })
  for (const kind of kinds) await first.page.locator(`entry-frame[data-entry="${kind}"] h2`).waitFor()
  return first
}

const word = (within: Page | Locator, name: string) => within.getByRole('button', { name, exact: true })
const undo = (page: Page) => word(page, 'Undo').click()
const present = (page: Page) => textOf(page.locator('present-case'))

/** Types into the field that has the focus, in place of what stands there. */
async function retype(page: Page, text: string): Promise<void> {
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type(text)
}

describe('the present case', () => {
  it('stays in view, and unit, roller and condition are chosen in it by keyboard', async () => {
    const { page, faults } = await openWith(['rack', 'units'])
    expect(await present(page)).toMatch(/4\.20 mm on the bench cuts 3\.37 mm/)
    const line = page.locator('present-case')
    await line.getByRole('combobox', { name: 'unit', exact: true }).focus()
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => present(page)).toContain('cuts 3.64 mm')
    await line.getByRole('combobox', { name: 'the unit is' }).focus()
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => present(page)).not.toContain('cuts 3.64 mm')
    await page.mouse.wheel(0, 900)
    await expect.poll(async () => (await line.boundingBox())?.y).toBe(0)
    expect(faults).toEqual([])
  })
})

describe('the rack, by keyboard alone', () => {
  it('is opened, renamed, measured with a unit typed behind the number, copied and undone', async () => {
    const { page, entry, faults } = await openWith(['rollers'])
    const rack = entry('rollers')
    await word(rack, 'grooved, built up').focus()
    await page.keyboard.press('Enter')
    await rack.getByRole('textbox', { name: 'Name' }).focus()
    await retype(page, 'grooved')
    await page.keyboard.press('Tab')
    await rack.getByText('“grooved” is the name of another one.').waitFor()
    await rack.getByRole('textbox', { name: 'Name' }).focus()
    await retype(page, 'clogged')
    await page.keyboard.press('Tab')
    await word(rack, 'clogged').waitFor()
    expect(await textOf(rack)).toContain('in front on middle')
    await rack.getByRole('textbox', { name: 'Build-up' }).focus()
    await retype(page, '0,02 in')
    await page.keyboard.press('Tab')
    await expect.poll(() => textOf(rack)).toMatch(/clogged .* 0\.51 /)
    await word(rack, 'copy clogged').focus()
    await page.keyboard.press('Enter')
    await expect.poll(() => focusedName(page)).toBe('input Name')
    await word(rack, 'clogged 2').waitFor()
    for (let step = 0; step < 3; step++) await undo(page)
    await word(rack, 'grooved, built up').waitFor()
    expect(await textOf(rack)).not.toContain('clogged')
    expect(faults).toEqual([])
  })

  it('fits a roller and moves the cut', async () => {
    const { page, entry } = await openWith(['rollers'])
    const rack = entry('rollers')
    await word(rack, 'rear').click()
    await word(rack, 'fit in front').click()
    // 6 mm less in diameter, 45 % of half of that at the edge, and a face that bears on its whole width
    await expect.poll(() => present(page)).toMatch(/2\.85 mm on the bench/)
    expect(await textOf(rack)).toContain('in front on left')
  })

  it('takes an absurd mass, asks about it, and refuses rollers that would touch', async () => {
    const { page, entry } = await openWith(['rollers'])
    const rack = entry('rollers')
    await rack.getByRole('textbox', { name: 'Mass' }).fill('88')
    await rack.getByText(/88\.00.kg is taken as typed, but 0\.00.kg to 60\.00.kg is usual/).waitFor()
    await rack.getByRole('textbox', { name: 'Diameter' }).fill('380')
    await rack.getByText(/Rollers of 380\.0.mm and 52\.0.mm would touch/).waitFor()
    expect(await present(page)).toMatch(/4\.20 mm on the bench/)
  })

  it('reads fractions of an inch from a reader of inches', async () => {
    const { page, entry } = await openWith(['rollers'])
    await page.getByRole('combobox', { name: 'Units' }).selectOption('US')
    const diameter = entry('rollers').getByRole('textbox', { name: 'Diameter' })
    await diameter.fill('2 5/16')
    await page.keyboard.press('Tab')
    expect(await diameter.inputValue()).toBe('2.31')
    await diameter.fill('60 mm')
    await page.keyboard.press('Tab')
    expect(await diameter.inputValue()).toBe('2.36')
  })
})

describe('a green, by keyboard alone', () => {
  it('is given measured points, pasted and typed; wrong ones are told in place', async () => {
    const { page, entry, faults } = await openWith(['turfs'])
    const greens = entry('turfs')
    await greens.getByRole('combobox', { name: 'Law' }).selectOption('measured')
    const cell = (name: string) => greens.getByRole('textbox', { name, exact: true })
    await cell('sinkage, mm, row 1').waitFor()
    const before = await present(page)
    await cell('sinkage, mm, row 1').focus()
    await page.evaluate(text => {
      let at: Element | null = document.activeElement
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement
      const clipboardData = new DataTransfer()
      clipboardData.setData('text/plain', text)
      at?.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true, composed: true }),
      )
    }, 'Pressure (kPa)\tSinkage (mm)\n5\t0,2\n10\t0,4\n20\t0,7\n40\t1,1\n60\t1,4\n')
    await expect.poll(() => present(page)).not.toBe(before)
    expect(await cell('sinkage, mm, row 4').inputValue()).toBe('1,1')
    const pasted = await present(page)
    await cell('sinkage, mm, row 3').focus()
    await page.keyboard.press('ArrowDown')
    expect(await focusedName(page)).toBe('input sinkage, mm, row 4')
    await retype(page, '0.3')
    await page.keyboard.press('Enter')
    await greens.getByText('must both grow from row to row').waitFor()
    expect(await cell('sinkage, mm, row 4').getAttribute('aria-invalid')).toBe('true')
    expect(await present(page)).toBe(pasted)
    await page.keyboard.press('ArrowUp')
    await retype(page, '1.2')
    await page.keyboard.press('Enter')
    await expect.poll(() => present(page)).not.toBe(pasted)
    await undo(page)
    await undo(page)
    await undo(page)
    await expect.poll(() => present(page)).toContain('cuts 3.37 mm')
    expect(faults).toEqual([])
  })

  it('is given a law in the reader’s own words, which is checked before it counts', async () => {
    const { page, entry, faults } = await openWith(['turfs'])
    const greens = entry('turfs')
    await greens.getByRole('combobox', { name: 'Law' }).selectOption('formula')
    const text = greens.getByRole('textbox', { name: /Pressure in Pa/ })
    await text.waitFor()
    const linear = await present(page)
    await text.focus()
    await retype(page, 'k * z + m * z^2')
    await greens.getByText(/Until this is put right the green stays as it was/).waitFor()
    expect(await present(page)).toBe(linear)
    const name = greens.getByRole('textbox', { name: 'name, row 1' })
    await name.focus()
    await page.keyboard.press('Enter')
    await page.keyboard.type('m')
    await page.keyboard.press('Tab')
    await page.keyboard.type('2e10')
    await page.keyboard.press('Tab')
    await expect.poll(() => present(page)).not.toBe(linear)
    expect(await greens.getByText(/Until this is put right/).count()).toBe(0)
    await greens.getByRole('combobox', { name: 'Law' }).selectOption('layered')
    await greens.getByRole('combobox', { name: 'Law of the upper layer' }).selectOption('stiffening')
    await expect.poll(() => textOf(greens)).toContain('Locking depth')
    expect(faults).toEqual([])
  })

  it('is copied, stood on, and taken out again', async () => {
    const { page, entry } = await openWith(['turfs'])
    const greens = entry('turfs')
    await word(greens, 'copy orchard green (invented)').click()
    await greens.getByRole('textbox', { name: 'Softness' }).fill('0.9')
    await greens.getByRole('button', { name: /^stand on it/ }).click()
    await expect.poll(() => present(page)).not.toContain('cuts 3.37')
    await word(greens, 'take out orchard green (invented) 2').click()
    await expect.poll(() => present(page)).toContain('cuts 3.37')
  })
})

describe('a unit on the scales, by keyboard alone', () => {
  it('takes over what two readings come to, in one step, and refuses three that disagree', async () => {
    const { page, entry, faults, field } = await openWith(['unitFromScales'])
    const scales = entry('unitFromScales')
    await field('Whole unit').focus()
    await page.keyboard.type('31,4')
    await field('Front roller').focus()
    await page.keyboard.type('16.2')
    await page.keyboard.press('Tab')
    await expect.poll(() => textOf(scales)).toContain('Of 31.40 kg the front roller carries 16.20 kg')
    await expect.poll(() => present(page)).not.toContain('cuts 3.37')
    const weighed = await present(page)
    await field('Rear roller').focus()
    await page.keyboard.type('16')
    await page.keyboard.press('Tab')
    await scales
      .getByText(/Front and rear come to 32\.20.kg, the whole unit to 31\.40.kg: 0\.80.kg apart/)
      .waitFor()
    expect(await present(page)).toBe(weighed)
    await retypeField(page, field('Rear roller'), '15.3')
    expect(await scales.getByText(/apart, more than scales may be/).count()).toBe(0)
    await undo(page)
    await undo(page)
    await expect.poll(() => present(page)).toContain('cuts 3.37')
    expect(await field('Front roller').inputValue()).toBe('')
    expect(faults).toEqual([])
  })
})

async function retypeField(page: Page, field: Locator, text: string): Promise<void> {
  await field.focus()
  await retype(page, text)
  await page.keyboard.press('Tab')
}

describe('units side by side, by keyboard alone', () => {
  it('are told apart, matched by what the table says, copied and renamed', async () => {
    const { page, entry, faults } = await openWith(['units'])
    const units = entry('units')
    await expect.poll(() => textOf(units)).toMatch(/left to middle \+0\.27 mm not alike/)
    await units.getByRole('button', { name: 'take in hand middle' }).focus()
    await page.keyboard.press('Enter')
    await expect.poll(() => present(page)).toContain('cuts 3.64')
    await retypeField(page, units.getByRole('textbox', { name: 'Bench height' }), '3.93')
    await expect.poll(() => textOf(units)).toMatch(/All 3 cut within 0\.25 mm/)
    await word(units, 'copy middle').focus()
    await page.keyboard.press('Enter')
    await expect.poll(() => textOf(units)).toContain('middle 2')
    await retypeField(page, units.getByRole('textbox', { name: 'Name' }), 'centre')
    await expect.poll(() => textOf(units)).toMatch(/centre ?, in hand/)
    await word(units, 'take out centre').click()
    await expect.poll(() => present(page)).toContain('cuts 3.37')
    expect(faults).toEqual([])
  })
})

describe('the entries of the scenario', () => {
  const all = ['rollers', 'turfs', 'unitFromScales', 'units']

  it.each(['light', 'dark', 'projector'])('have no accessibility fault on %s paper', async paper => {
    const { page, faults } = await openWith(all)
    await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
    expect(await accessFaults(page)).toEqual([])
    expect(faults).toEqual([])
  })

  it('need no scrolling sideways at 320 px', async () => {
    const { page } = await openWith(all, { viewport: { width: 320, height: 640 } })
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(over).toBeLessThanOrEqual(0)
  })
})
