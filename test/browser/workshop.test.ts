import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { tabWalk } from '../support/tabWalk.ts'
import { openFirstPage } from './openFirstPage.ts'

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

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }

async function workshop() {
  const first = await openFirstPage(browser, served.address, phone)
  await first.page.getByRole('button', { name: 'Workshop view' }).tap()
  await first.page.getByRole('button', { name: 'Mass of the front roller, more' }).waitFor()
  return first
}

/** A finger that stays down for so long, ms. */
async function hold(page: Page, target: Locator, long: number): Promise<void> {
  await target.dispatchEvent('pointerdown', { button: 0, pointerType: 'touch' })
  await page.waitForTimeout(long)
  await target.dispatchEvent('pointerup', { button: 0, pointerType: 'touch' })
}

describe('the workshop view, on a phone beside a machine', () => {
  it('has targets of 44 px at least, and nothing that has to be dragged', async () => {
    const { page } = await workshop()
    const found = await page.evaluate(() => {
      const deep = (root: ParentNode): Element[] =>
        [...root.querySelectorAll('*')].flatMap(element => [
          element,
          ...(element.shadowRoot ? deep(element.shadowRoot) : []),
        ])
      const all = deep(document).filter(element => element.getBoundingClientRect().width > 0)
      return {
        small: all
          .filter(element => element.matches('button, select, input.field, label:has(input[type="radio"])'))
          .filter(element => !element.matches('.settable'))
          .filter(element => element.getBoundingClientRect().height < 44)
          .map(element => `${element.localName} ${element.textContent?.trim()}`),
        lines: all.filter(element => element.matches('input[type="range"]')).length,
        steppers: all.filter(element => element.localName === 'step-word').length,
        wide: document.documentElement.scrollWidth,
      }
    })
    expect(found).toMatchObject({ small: [], lines: 0 })
    expect(found.steppers).toBeGreaterThan(3)
    expect(found.wide).toBeLessThanOrEqual(390)
  })

  it('steps by one printed digit for a tap, and goes on while it is held', async () => {
    const { page, field } = await workshop()
    const mass = field('Mass of the front roller')
    const more = page.getByRole('button', { name: 'Mass of the front roller, more' })
    await more.tap()
    expect(await mass.inputValue()).toBe('6.21')
    await page.getByRole('button', { name: 'Mass of the front roller, less' }).tap()
    expect(await mass.inputValue()).toBe('6.20')
    await hold(page, more, 1500)
    const held = Number(await mass.inputValue())
    expect(held).toBeGreaterThan(6.24)
    await page.waitForTimeout(300)
    expect(Number(await mass.inputValue())).toBe(held)
    // One hold is one step back.
    await page.getByRole('button', { name: 'Undo' }).tap()
    expect(await mass.inputValue()).toBe('6.20')
  })

  it('steps by keys as well', async () => {
    const { page, field } = await workshop()
    await page.getByRole('button', { name: 'Mass of the front roller, more' }).focus()
    await page.keyboard.press('Enter')
    await page.keyboard.press('Space')
    expect(await field('Mass of the front roller').inputValue()).toBe('6.22')
  })

  it('keeps what is set and what is cut in view, in large digits', async () => {
    const { page, field, faults } = await workshop()
    const result = page.locator('present-case .height')
    await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight))
    const box = await result.boundingBox()
    expect(box?.y).toBeGreaterThanOrEqual(0)
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(200)
    const before = await result.textContent()
    await field('Mass of the front roller').fill('9.9')
    await expect.poll(() => result.textContent()).not.toBe(before)
    const size = await result.evaluate(element => Number.parseFloat(getComputedStyle(element).fontSize))
    expect(size).toBeGreaterThanOrEqual(20)
    expect(faults).toEqual([])
  })

  it('stays what was chosen on the next visit', async () => {
    const { page } = await workshop()
    await page.reload()
    await page.getByRole('button', { name: 'Mass of the front roller, more' }).waitFor()
  })

  it('can be used by everyone', async () => {
    const { page } = await workshop()
    expect(await accessFaults(page)).toEqual([])
    expect(await tabWalk(page)).toMatchObject({ missed: [], round: true })
    await page.setViewportSize({ width: 320, height: 640 })
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
      .toBeLessThanOrEqual(320)
  })
})
