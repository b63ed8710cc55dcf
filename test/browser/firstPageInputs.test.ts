import type { Browser } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser } from '../support/browser.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { type FirstPage, openFirstPage, textOf } from './openFirstPage.ts'

let browser: Browser
let served: ServedPage

beforeAll(async () => {
  ;[browser, served] = await Promise.all([openBrowser(), servePage()])
})
// A page left open goes on working beside the next one.
afterEach(async () => {
  await Promise.all(browser.contexts().map(context => context.close()))
})
afterAll(async () => {
  await browser?.close()
  await served?.close()
})

const drawing = (page: FirstPage) => page.entry('sideView').locator('svg.side-view')
const pale = (page: FirstPage) => drawing(page).evaluate(svg => getComputedStyle(svg).opacity)

/** What cannot be taken: the sentence stands beside the field, and the last good figure stays, pale. */
const refused: readonly {
  readonly what: string
  readonly name: string
  readonly text: string
  readonly sentence: RegExp
  readonly before?: (page: FirstPage) => Promise<void>
}[] = [
  { what: 'a negative mass', name: 'Mass of the front roller', text: '-2', sentence: /more than 0/ },
  {
    what: 'a land wider than its pitch',
    name: 'Land',
    text: '14',
    sentence: /A land of 14\.0\u202fmm leaves no gap in a pitch of 12\.0\u202fmm/,
    before: ({ page }) => page.getByRole('button', { name: 'fit it peg 3' }).click(),
  },
  {
    what: 'a locking depth below the softness',
    name: 'Locking depth',
    text: '0.2',
    sentence: /locks at 0\.20\u202fmm cannot sink 0\.30\u202fmm/,
  },
  {
    what: 'an edge outside the wheelbase',
    name: 'Edge behind front axis',
    text: '200',
    sentence: /200\.0\u202fmm .+ not between the rollers, which are 190\.0\u202fmm apart/,
  },
  {
    what: 'a roller heavier than its scale reading',
    name: 'Front roller on the scales',
    text: '4',
    sentence: /read 4\.00\u202fkg, but the front roller alone weighs 6\.20\u202fkg/,
  },
  { what: 'no number at all', name: 'Bench height', text: 'low', sentence: /“low” is no number/ },
]

describe('input that cannot be taken', () => {
  it.each(refused)('$what has its sentence, and the last good figure stays, pale', async q => {
    const first = await openFirstPage(browser, served.address)
    await q.before?.(first)
    const field = first.field(q.name)
    const good = await field.inputValue()
    const drawn = await drawing(first).innerHTML()
    await field.fill(q.text)
    await first.page.keyboard.press('Tab')
    expect(await field.inputValue()).toBe(q.text)
    expect(await field.getAttribute('aria-invalid')).toBe('true')
    await first.page.getByText(q.sentence).waitFor()
    expect(await drawing(first).innerHTML()).toBe(drawn)
    expect(await pale(first)).toBe('0.4')
    expect(await textOf(first.entry('rack'))).toContain('still for')
    await field.fill(good)
    expect(await first.page.getByText(q.sentence).count()).toBe(0)
    expect(await pale(first)).toBe('1')
    expect(first.faults).toEqual([])
  })

  it('a load that bottoms the turf out is told on every entry that hangs on it', async () => {
    const first = await openFirstPage(browser, served.address)
    const drawn = await drawing(first).innerHTML()
    await first.field('Locking depth').fill('0.35')
    const side = await textOf(first.entry('sideView'))
    expect(side).toMatch(
      /bottoms out under the front roller: \d+ N would press it to its locking depth of 0\.35 mm/,
    )
    expect(side).toContain('still for')
    expect(await drawing(first).innerHTML()).toBe(drawn)
    expect(await pale(first)).toBe('0.4')
    expect(await textOf(first.entry('rack'))).toContain('bottoms out')
    expect(await textOf(first.entry('map'))).toContain('no answer here')
    await first.field('Locking depth').fill('4')
    expect(await pale(first)).toBe('1')
    expect(await textOf(first.entry('sideView'))).not.toContain('bottoms out')
    expect(first.faults).toEqual([])
  })

  it('a number on its way says nothing yet', async () => {
    const { page, field } = await openFirstPage(browser, served.address)
    const mass = field('Mass of the front roller')
    await mass.fill('')
    await mass.pressSequentially('-')
    expect(await mass.getAttribute('aria-invalid')).toBe('false')
    await page.keyboard.press('Tab')
    expect(await mass.getAttribute('aria-invalid')).toBe('true')
  })

  it('a value held against its neighbour is taken when the neighbour gives way', async () => {
    const first = await openFirstPage(browser, served.address)
    await first.page.getByRole('button', { name: 'fit it peg 3' }).click()
    await first.field('Land').fill('14')
    await first.field('Pitch').fill('20')
    await first.page.keyboard.press('Tab')
    expect(await first.field('Land').getAttribute('aria-invalid')).toBe('false')
    expect(await textOf(first.entry('rack'))).toMatch(/peg 3 ?, land 14\.0 of 20\.0 mm ?, fitted/)
    expect(await pale(first)).toBe('1')
  })
})
