import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { heavierRoller } from '../../packages/explorer/src/books/heavierRoller.ts'
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

const { scenario } = heavierRoller

/** A book of one page with these entries, over the values of the first book, opened as a file. */
async function openWith(entries: readonly { readonly kind: string }[], options?: BrowserContextOptions) {
  const first = await openFirstPage(browser, served.address, options)
  const pages = [
    { title: 'Ellerby Hollow', lead: 'Invented.', entries: [{ kind: 'text', text: 'Look.' }, ...entries] },
  ]
  await first.page.locator('input[type="file"]').setInputFiles({
    name: 'asking.swardsink.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ swardsink: 1, title: 'Asking', scenario, pages })),
  })
  for (const { kind } of entries) await first.page.locator(`entry-frame[data-entry="${kind}"] h2`).waitFor()
  return first
}

const word = (within: Page | Locator, name: string | RegExp) => within.getByRole('button', { name })
const undo = (page: Page) => word(page, /^Undo$/).click()
const twice = { kind: 'question', change: { name: 'frontRoller.mass', times: 2 } } as const

describe('a question, by keyboard alone', () => {
  it('is said, moved, locked, revealed with its signed error, and undone', async () => {
    const { page, entry, faults } = await openWith([twice])
    const question = entry('question')
    const mark = question.getByRole('slider', { name: 'Your prediction' })
    expect(await word(question, 'Lock it').isDisabled()).toBe(true)
    await question.getByRole('textbox', { name: 'Your prediction' }).focus()
    await page.keyboard.type('1,24')
    expect(await mark.getAttribute('aria-valuetext')).toBe('1.24\u202fmm')
    await mark.focus()
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => mark.getAttribute('aria-valuetext')).toBe('1.25\u202fmm')
    expect(await textOf(question)).not.toContain('model 0')
    await word(question, 'Lock it').focus()
    await page.keyboard.press('Enter')
    await expect.poll(() => focusedName(page)).toBe('button Show me')
    expect(await mark.count()).toBe(0)
    await page.keyboard.press('Enter')
    await expect
      .poll(() => textOf(question))
      .toMatch(/You said 1\.25 mm, the model says 0\.9\d mm: \+0\.3\d mm, 3\d % too deep\./)
    await undo(page)
    await undo(page)
    await expect.poll(() => mark.getAttribute('aria-valuetext')).toBe('1.25\u202fmm')
    expect(faults).toEqual([])
  })

  it('takes the guesses of a room, and is kept in the file', async () => {
    const { page, entry, faults } = await openWith([{ ...twice, room: true } as typeof twice])
    const question = entry('question')
    await question.getByRole('textbox', { name: 'Guesses of the room' }).focus()
    await page.keyboard.type('0.8 ×3 1.1 about')
    await expect.poll(() => question.locator('circle.dot').count()).toBe(4)
    await question.getByText('“about” is no number').waitFor()
    await word(question, 'Lock it').click()
    await word(question, 'Show me').click()
    await expect.poll(() => textOf(question)).toMatch(/4 guesses of the room .+: 1 above .+, 3 below/)
    const [file] = await Promise.all([page.waitForEvent('download'), word(page, 'Save as a file').click()])
    const saved = JSON.parse(
      await (await file.createReadStream()).toArray().then(parts => Buffer.concat(parts).toString()),
    )
    const kept = saved.pages[0].entries.find(({ kind }: { kind: string }) => kind === 'question')
    expect(kept).toMatchObject({ state: 'revealed', guesses: [8e-4, 8e-4, 8e-4, 1.1e-3] })
    expect(faults).toEqual([])
  })

  it('is put with a pointer where the reader thinks, until it is locked', async () => {
    const { entry, page, faults } = await openWith([twice])
    const figure = entry('question').locator('svg.prediction-scale')
    const box = await figure.boundingBox()
    if (!box) throw new Error('no figure')
    await page.mouse.click(box.x + box.width / 2, box.y + box.height * 0.6)
    const mark = entry('question').getByRole('slider', { name: 'Your prediction' })
    const said = await mark.getAttribute('aria-valuetext')
    expect(said).toMatch(/^[01]\.\d\d\u202fmm$/)
    await word(entry('question'), 'Lock it').click()
    await page.mouse.click(box.x + box.width / 2, box.y + box.height * 0.9)
    expect(await textOf(entry('question'))).toContain(`${said?.replace('\u202f', ' ')}, locked`)
    expect(faults).toEqual([])
  })

  it.each(['light', 'dark', 'projector'])(
    'has no accessibility fault on %s paper, nor moves where motion is not wanted',
    async paper => {
      const { page, entry, faults } = await openWith([twice], { reducedMotion: 'reduce' })
      await page.getByRole('combobox', { name: 'Paper' }).selectOption(paper)
      await entry('question').getByRole('textbox', { name: 'Your prediction' }).fill('1')
      expect(await accessFaults(page)).toEqual([])
      await word(entry('question'), 'Lock it').click()
      await word(entry('question'), 'Show me').click()
      const figure = entry('question').locator('svg.prediction-scale')
      const atOnce = await figure.innerHTML()
      expect(await textOf(entry('question'))).toContain('the model says')
      // Longer than the reveal takes.
      await page.waitForTimeout(400)
      expect(await figure.innerHTML()).toBe(atOnce)
      expect(await accessFaults(page)).toEqual([])
      expect(faults).toEqual([])
    },
  )
})

describe('a formula, by keyboard alone', () => {
  const perLength = {
    kind: 'formula',
    name: 'perLength',
    from: 'front.load / frontRoller.length',
    in: 'N/mm',
  }

  it('is typed, says what is wrong with it and what would be right, and takes a name from the list', async () => {
    const { page, entry, faults } = await openWith([perLength])
    const formula = entry('formula')
    await expect.poll(() => textOf(formula)).toMatch(/perLength ?: 0\.26\d\d N\/mm/)
    const from = formula.getByRole('textbox', { name: 'worked from' })
    await from.focus()
    await page.keyboard.press('ControlOrMeta+a')
    await page.keyboard.type('drp / 1.25 mm')
    await formula.getByText('Nothing here is called “drp”; did you mean drop?').waitFor()
    expect(await from.getAttribute('aria-invalid')).toBe('true')
    await page.keyboard.press('ControlOrMeta+a')
    await page.keyboard.press('Delete')
    await formula.getByText('Names that can be used here').focus()
    await page.keyboard.press('Enter')
    await word(formula, /^drop$/).focus()
    await page.keyboard.press('Enter')
    await expect.poll(() => focusedName(page)).toBe('input worked from')
    await page.keyboard.type(' / 1.25 mm')
    await formula.getByRole('textbox', { name: 'in', exact: true }).fill('')
    await expect.poll(() => textOf(formula)).toMatch(/perLength ?: 0\.6\d+/)
    expect(await accessFaults(page)).toEqual([])
    expect(faults).toEqual([])
  })
})

describe('what the worker works out', () => {
  it('is drawn by the quick model first, then in full, the last full one pale meanwhile', async () => {
    const { page, entry, faults } = await openWith([
      { kind: 'patch' },
      { kind: 'setting', of: ['frontRoller.mass'] } as { kind: string },
    ])
    await expect.poll(() => textOf(entry('patch')), { timeout: 20_000 }).toContain('For want of finer cells')
    // Noted on the element itself: the full solution may have come before anyone can look.
    const figure = entry('patch').locator('patch-entry .drawn')
    await figure.evaluate(drawn => {
      const note = () => drawn.classList.contains('pale') && drawn.setAttribute('data-paled', 'yes')
      new MutationObserver(note).observe(drawn, { attributes: true, attributeFilter: ['class'] })
    })
    await page.getByRole('textbox', { name: 'Mass of the front roller' }).fill('7.4')
    await expect.poll(() => figure.getAttribute('data-paled')).toBe('yes')
    await expect
      .poll(() => textOf(entry('patch')), { timeout: 20_000 })
      .toMatch(/presses hardest below its axis/)
    expect(await figure.getAttribute('class')).not.toContain('pale')
    expect(await accessFaults(page)).toEqual([])
    expect(faults).toEqual([])
  })

  it('tells what a height may be, first about and then by draws', async () => {
    const { page, entry, faults } = await openWith([{ kind: 'uncertainty' }])
    await expect
      .poll(() => textOf(entry('uncertainty')), { timeout: 20_000 })
      .toMatch(
        / 95 of 100 such units cut between 2\.\d\d mm and 2\.\d\d mm; softness of the turf alone makes \d+ %/,
      )
    await entry('uncertainty')
      .getByRole('textbox', { name: /^Softness/ })
      .fill('0')
    await expect
      .poll(() => textOf(entry('uncertainty')), { timeout: 20_000 })
      .toMatch(/ 95 of 100 .+ setting on the bench alone makes/)
    expect(await accessFaults(page)).toEqual([])
    expect(faults).toEqual([])
  })
})
