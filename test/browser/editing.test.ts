import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { focusedName } from '../support/focusedName.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { WORK_ENTRIES } from '../support/workBook.ts'
import { textOf } from './openFirstPage.ts'
import { openWorkBook } from './openWorkBook.ts'

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

const entries = (page: Page) =>
  page.locator('entry-frame').evaluateAll(frames => frames.map(frame => frame.getAttribute('data-entry')))
const word = (page: Page, name: string) => page.getByRole('button', { name, exact: true })
/** The word of an entry: what it acts on is said after it. */
const wordOf = (page: Page, id: string, act: string) =>
  page
    .locator(`entry-frame[data-entry="${id}"] entry-editor`)
    .getByRole('button', { name: new RegExp(`^${act}`) })

async function edit(page: Page): Promise<void> {
  await word(page, 'Edit this page').click()
  await word(page, 'Done').waitFor()
  await word(page, 'add an entry').waitFor()
}

const FIRST = WORK_ENTRIES
/** The page that the address names. */
const pageOf = (page: Page) => new URLSearchParams(new URL(page.url()).hash.slice(1)).get('page') ?? '1'

describe('editing by keyboard alone', () => {
  it('adds, fills, titles, moves, copies and takes out an entry, and undoes all of it', async () => {
    const { page, faults, entry } = await openWorkBook(browser, served.address)
    const { keyboard } = page
    await word(page, 'Edit this page').focus()
    await keyboard.press('Enter')
    await word(page, 'add an entry').focus()
    await keyboard.press('Enter')
    await word(page, 'In words').focus()
    await keyboard.press('Enter')
    await expect.poll(() => focusedName(page)).toBe('textarea Paragraphs')
    await keyboard.type('The edge goes down {drop} here.')
    await expect.poll(() => textOf(entry('text-2'))).toContain('The edge goes down 0.75 mm here.')
    const most = 8
    for (let step = 0; step < most && (await focusedName(page)) !== 'input Title'; step++)
      await keyboard.press('Shift+Tab')
    expect(await focusedName(page)).toBe('input Title')
    await keyboard.type('What I saw')
    await expect.poll(() => entry('text-2').getByRole('heading').textContent()).toContain('What I saw')

    await wordOf(page, 'text-2', 'earlier').focus()
    await keyboard.press('Enter')
    await expect.poll(() => focusedName(page)).toBe('button earlier What I saw')
    expect(await entries(page)).toEqual([...FIRST.slice(0, 4), 'text-2', ...FIRST.slice(4)])
    await wordOf(page, 'text-2', 'copy').focus()
    await keyboard.press('Enter')
    await expect.poll(() => focusedName(page)).toBe('textarea Paragraphs')
    expect(await entries(page)).toContain('text-3')
    await wordOf(page, 'text-2', 'take out').focus()
    await keyboard.press('Enter')
    await expect.poll(() => focusedName(page)).toBe('button take out What I saw')
    expect(await entries(page)).not.toContain('text-2')

    await word(page, 'Done').focus()
    const steps = 40
    for (let step = 0; step < steps && (await word(page, 'Undo').isEnabled()); step++)
      await keyboard.press('Control+z')
    expect(await entries(page)).toEqual(FIRST)
    await keyboard.press('Control+y')
    await keyboard.press('Control+Shift+Z')
    expect(await entries(page)).toEqual([...FIRST, 'text-2'])
    expect(faults).toEqual([])
  })

  it('leaves undo in a text to the browser as long as something was typed there', async () => {
    const { page, entry } = await openWorkBook(browser, served.address)
    await edit(page)
    const prose = entry('text').getByRole('textbox', { name: 'Paragraphs' })
    const before = await prose.inputValue()
    await prose.focus()
    await page.keyboard.press('Control+End')
    await page.keyboard.type('x')
    await page.keyboard.press('Control+z')
    expect(await prose.inputValue()).toBe(before)
    expect(await entries(page)).toEqual(FIRST)
    // Nothing typed since it came into the field: the book's own undo.
    await wordOf(page, 'rack', 'take out').click()
    await prose.focus()
    await page.keyboard.press('Control+z')
    await expect.poll(() => entries(page)).toEqual(FIRST)
  })

  it('closes the list with Escape and goes back to the word that opened it', async () => {
    const { page } = await openWorkBook(browser, served.address)
    await edit(page)
    await word(page, 'add an entry').press('Enter')
    await word(page, 'Rack').focus()
    await page.keyboard.press('Escape')
    await expect.poll(() => focusedName(page)).toBe('button add an entry')
    expect(await page.getByRole('list', { name: 'Add an entry' }).count()).toBe(0)
  })
})

describe('pages', () => {
  it('are added, titled, turned by words, list and address, and the browser goes back', async () => {
    const { page, faults, field, entry } = await openWorkBook(browser, served.address)
    await edit(page)
    await word(page, 'add a page').click()
    await expect.poll(() => focusedName(page)).toBe('input Title of the page')
    await page.keyboard.type('Wet turf')
    expect(pageOf(page)).toBe('2')
    await page.getByRole('textbox', { name: 'Its one sentence' }).fill('What rain does.')
    await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe('What rain does.')
    await page.getByRole('link', { name: 'earlier page' }).click()
    await expect.poll(() => entries(page)).toEqual(FIRST)
    await expect.poll(() => focusedName(page)).toContain('h1 What is set on the bench')
    await page.getByRole('link', { name: 'Wet turf' }).click()
    await expect.poll(() => page.getByText('This page is empty.').count()).toBe(1)
    await page.goBack()
    await expect.poll(() => entries(page)).toEqual(FIRST)
    await page.goForward()
    await page.reload()
    await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).toBe('What rain does.')
    // A value is set on the other page: the prose leads there.
    await edit(page)
    await word(page, 'add an entry').click()
    await word(page, 'In words').click()
    await expect.poll(() => focusedName(page)).toBe('textarea Paragraphs')
    await page.keyboard.type('{unit.benchHeight}')
    await entry('text-2').getByRole('button', { name: '3.40' }).click()
    await expect.poll(() => pageOf(page)).toBe('1')
    await expect.poll(() => focusedName(page)).toBe('input Bench height')
    expect(await field('Bench height').inputValue()).toBe('3.40')
    expect(faults).toEqual([])
  })

  it('move, are copied and taken out, and one always stays', async () => {
    const { page } = await openWorkBook(browser, served.address)
    await edit(page)
    const pageWord = (act: string) =>
      page.locator('page-editor').getByRole('button', { name: new RegExp(`^${act}`) })
    expect(await pageWord('take out').isDisabled()).toBe(true)
    await pageWord('copy').click()
    await expect
      .poll(() => entries(page))
      .toEqual(FIRST.map(id => (/\d$/.test(id) || id === 'setting' ? expect.any(String) : `${id}-2`)))
    await pageWord('earlier').click()
    await expect.poll(() => focusedName(page)).toBe('button later This page')
    await pageWord('take out').click()
    await expect.poll(() => entries(page)).toEqual(FIRST)
    expect(await pageWord('take out').isDisabled()).toBe(true)
  })

  it('hand an entry on from the foot of one to the head of the next, with the focus', async () => {
    const { page } = await openWorkBook(browser, served.address)
    await edit(page)
    await word(page, 'add a page').click()
    await page.getByRole('link', { name: 'earlier page' }).click()
    await expect.poll(() => entries(page)).toEqual(FIRST)
    await wordOf(page, 'setting', 'later').click()
    await expect.poll(() => entries(page)).toEqual(['setting', 'setting-2', 'setting-3'])
    await expect.poll(() => focusedName(page)).toMatch(/^button .+ The front roller$/)
    expect(pageOf(page)).toBe('2')
  })
})

describe('editing by pointer and by touch', () => {
  it('chooses what can be set in an entry, and takes an entry beside another', async () => {
    const { page, entry, field, faults } = await openWorkBook(browser, served.address)
    await edit(page)
    await entry('setting').getByText('what else could be set here').click()
    await entry('setting')
      .getByRole('checkbox', { name: /^Bench height/ })
      .check()
    await expect.poll(() => field('Bench height').count()).toBe(2)
    await entry('setting').getByRole('checkbox', { name: 'Surface', exact: true }).uncheck()
    await expect.poll(() => entry('setting').getByRole('radio').count()).toBe(0)
    const tick = entry('rack').getByRole('checkbox', { name: /^beside the entry/ })
    await tick.check()
    await expect.poll(() => focusedName(page)).toMatch(/^input beside the entry/)
    await tick.uncheck()
    expect(faults).toEqual([])
  })

  it('works under a finger, with targets to hit', async () => {
    const { page, entry, faults } = await openWorkBook(browser, served.address, {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    })
    await word(page, 'Edit this page').tap()
    await word(page, 'add an entry').tap()
    await word(page, 'Settings').tap()
    await entry('setting-4').waitFor()
    await wordOf(page, 'setting-4', 'earlier').tap()
    await expect.poll(async () => (await entries(page)).indexOf('setting-4')).toBe(4)
    await wordOf(page, 'setting-4', 'take out').tap()
    await expect.poll(() => entries(page)).toEqual(FIRST)
    const small = await page.evaluate(() => {
      const deep = (root: ParentNode): Element[] =>
        [...root.querySelectorAll('*')].flatMap(element => [
          element,
          ...(element.shadowRoot ? deep(element.shadowRoot) : []),
        ])
      return deep(document)
        .filter(element => element.matches('button.word, a.word, input.field, textarea, label.tick, summary'))
        .map(element => ({ text: element.textContent, box: element.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && box.height < 44)
        .map(({ text, box }) => `${text?.trim().slice(0, 30)} ${box.height}`)
    })
    expect(small).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    await word(page, 'Done').tap()
    expect(faults).toEqual([])
  })
})

describe('a page that is edited, for everyone', () => {
  it.each(['light', 'dark', 'projector'])('has no accessibility fault on %s paper', async paper => {
    const { page, entry } = await openWorkBook(browser, served.address, {
      viewport: { width: 1440, height: 900 },
    })
    await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
    await edit(page)
    await word(page, 'add a page').click()
    await page.getByRole('link', { name: 'earlier page' }).click()
    await entry('setting').getByText('what else could be set here').click()
    await word(page, 'add an entry').click()
    await word(page, 'A link to these values').click()
    await page.getByRole('img', { name: 'The link as a code for a camera' }).waitFor()
    await entry('map').getByRole('button', { name: 'As a table' }).click()
    expect(await accessFaults(page)).toEqual([])
  })
})
