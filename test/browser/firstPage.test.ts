import type { Browser } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser } from '../support/browser.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { openFirstPage, settledMap, textOf } from './openFirstPage.ts'

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

const FOLLOWING = ['sideView', 'map', 'text', 'rack', 'setting', 'setting-3']

describe('the first page', () => {
  it('opens without a fault, with both numbers and a fine map from the worker', async () => {
    const { faults, entry } = await openFirstPage(browser, served.address)
    expect(await textOf(entry('sideView'))).toMatch(/set on the bench 3\.40 mm cut here 2\.\d\d mm/)
    expect(faults).toEqual([])
  })

  it('has the map in view on a laptop', async () => {
    const { entry } = await openFirstPage(browser, served.address, { viewport: { width: 1440, height: 900 } })
    const box = await entry('map').locator('svg.sinkage-map').boundingBox()
    expect(box?.y).toBeLessThan(900)
  })

  it('shows a new mass in every entry within one frame of the event', async () => {
    // Tall enough to hold the page: what is far from view follows when it comes near.
    const { page, entry, faults } = await openFirstPage(browser, served.address, {
      viewport: { width: 1440, height: 2400 },
    })
    const before = await Promise.all(FOLLOWING.map(id => textOf(entry(id))))
    const seen = await page.evaluate(async () => {
      const deep = (root: ParentNode): Element[] =>
        [...root.querySelectorAll('*')].flatMap(element => [
          element,
          ...(element.shadowRoot ? deep(element.shadowRoot) : []),
        ])
      const range = deep(document).find(
        element => element instanceof HTMLInputElement && element.type === 'range',
      ) as HTMLInputElement
      range.value = '0.7'
      range.dispatchEvent(new InputEvent('input', { bubbles: true }))
      await new Promise(resolve => requestAnimationFrame(resolve))
      const read = (node: Node): string => {
        if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? ''
        const inside = node instanceof Element && node.shadowRoot ? node.shadowRoot : node
        return [...inside.childNodes].map(read).join(' ')
      }
      return Object.fromEntries(
        deep(document)
          .filter(element => element.localName === 'entry-frame')
          .map(frame => [frame.getAttribute('data-entry'), read(frame).replace(/\s+/g, ' ').trim()]),
      )
    })
    expect(FOLLOWING.filter((id, i) => seen[id] === before[i])).toEqual([])
    expect(seen.text).toContain('At 9.00 kg')
    expect(seen.rack).toContain('9.00')
    // Nothing was still on its way: what stood there in that frame is what stands there now.
    for (const id of FOLLOWING) expect(await textOf(entry(id))).toBe(seen[id])
    expect(faults).toEqual([])
  })

  it('moves by one printed digit with an arrow key and by ten with a page key', async () => {
    const { page, line, field } = await openFirstPage(browser, served.address)
    await line('Mass of the front roller').focus()
    await page.keyboard.press('ArrowRight')
    expect(await field('Mass of the front roller').inputValue()).toBe('6.21')
    await page.keyboard.press('PageUp')
    expect(await field('Mass of the front roller').inputValue()).toBe('6.31')
    expect(await line('Mass of the front roller').getAttribute('aria-valuetext')).toBe('6.31\u202fkg')
    await page.keyboard.press('End')
    expect(await field('Mass of the front roller').inputValue()).toBe('12.00')
  })

  it('takes a number with a decimal comma, typed with the unit behind it', async () => {
    const { page, field, entry } = await openFirstPage(browser, served.address)
    await field('Mass of the front roller').fill('9,5 kg')
    await page.keyboard.press('Tab')
    expect(await field('Mass of the front roller').inputValue()).toBe('9.50')
    expect(await textOf(entry('text'))).toContain('At 9.50 kg')
  })

  it('follows the pointer on the map, and undoes the whole drag at once', async () => {
    const { page, entry, field, faults } = await openFirstPage(browser, served.address)
    const mark = entry('map').locator('[data-handle="mark"]')
    await mark.scrollIntoViewIfNeeded()
    const box = await mark.boundingBox()
    if (!box) throw new Error('the mark is not drawn')
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    for (let step = 1; step <= 5; step++) await page.mouse.move(x + 20 * step, y - 10 * step)
    await page.mouse.up()
    const mass = Number(await field('Mass of the front roller').inputValue())
    const softness = Number(await field('Softness of the turf').inputValue())
    expect(mass).toBeGreaterThan(6.2)
    expect(softness).toBeGreaterThan(0.3)
    expect(await textOf(entry('text'))).toContain(`At ${mass.toFixed(2)} kg`)
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await field('Mass of the front roller').inputValue()).toBe('6.20')
    expect(await field('Softness of the turf').inputValue()).toBe('0.30')
    expect(faults).toEqual([])
  })

  it.each([
    ['edge', 'Bench height', '3.40', -20, 'more'],
    ['front', 'Mass of the front roller', '6.20', 20, 'more'],
    ['front', 'Mass of the front roller', '6.20', -20, 'less'],
  ] as const)('sets a value by dragging the %s of the drawing', async (handle, name, was, by, way) => {
    const { page, entry, field } = await openFirstPage(browser, served.address)
    const box = await entry('sideView').locator(`[data-handle="${handle}"]`).boundingBox()
    if (!box) throw new Error('the handle is not drawn')
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    for (const part of [0.5, 1]) await page.mouse.move(x, y + part * by)
    await page.mouse.up()
    const now = Number(await field(name).inputValue())
    if (way === 'more') expect(now).toBeGreaterThan(Number(was))
    else expect(now).toBeLessThan(Number(was))
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await field(name).inputValue()).toBe(was)
  })

  it('moves the mark of the map with the arrow keys', async () => {
    const { page, entry, field } = await openFirstPage(browser, served.address)
    await entry('map').locator('[data-handle="mark"]').focus()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('ArrowUp')
    expect(await field('Mass of the front roller').inputValue()).toBe('6.21')
    expect(await field('Softness of the turf').inputValue()).toBe('0.31')
    await page.keyboard.press('ArrowDown')
    expect(await field('Softness of the turf').inputValue()).toBe('0.30')
    const focused = await entry('map')
      .locator('[data-handle="mark"]')
      .evaluate(mark => mark.matches(':focus'))
    expect(focused).toBe(true)
  })

  it('draws a quick map in the frame of a change and the fine one after it', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    const field = await entry('map').locator('svg.sinkage-map path[class^="sink-"]').first().getAttribute('d')
    await page.getByRole('radio', { name: 'grooved' }).check()
    await expect
      .poll(() => entry('map').locator('svg.sinkage-map path[class^="sink-"]').first().getAttribute('d'))
      .not.toBe(field)
    await settledMap(page)
    expect(await page.getByRole('textbox', { name: 'Pitch' }).inputValue()).toBe('12.0')
  })

  it('fits another roller from the rack', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    await page.getByRole('button', { name: 'fit it peg 3' }).click()
    expect(await textOf(entry('rack'))).toMatch(/peg 3 ?, land 5\.0 of 12\.0 mm ?, fitted/)
    expect(await page.getByRole('textbox', { name: 'Mass of the front roller' }).inputValue()).toBe('5.10')
  })

  it('sorts the rack by any column, either way', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    const names = () => entry('rack').locator('tbody tr th .name').allTextContents()
    await page.getByRole('button', { name: 'mass', exact: true }).click()
    expect((await names())[0]).toContain('peg 2')
    await page.getByRole('button', { name: 'mass', exact: true }).click()
    expect((await names())[0]).toContain('peg 5')
  })

  it('tells the same unit in inches and pounds', async () => {
    const { page, field, entry } = await openFirstPage(browser, served.address)
    await page.getByRole('combobox', { name: 'Units' }).selectOption('US')
    expect(await field('Mass of the front roller').inputValue()).toBe('13.67')
    expect(await textOf(entry('sideView'))).toMatch(/set on the bench 0\.134 in/)
    expect(await textOf(entry('text'))).toContain('2.20 lb more in front')
    await page.reload()
    expect(await field('Mass of the front roller').inputValue()).toBe('13.67')
  })

  it('keeps what was changed, and goes back to the book’s own values', async () => {
    const { page, field } = await openFirstPage(browser, served.address)
    await field('Mass of the front roller').fill('9.1')
    await page.keyboard.press('Tab')
    await page.reload()
    expect(await field('Mass of the front roller').inputValue()).toBe('9.10')
    await page.getByRole('button', { name: 'Back to this book’s values' }).click()
    expect(await field('Mass of the front roller').inputValue()).toBe('6.20')
    await page.reload()
    expect(await field('Mass of the front roller').inputValue()).toBe('6.20')
  })

  it('opens with the values of a link', async () => {
    const first = await openFirstPage(browser, served.address)
    await first.field('Softness of the turf').fill('0.45')
    await first.page.getByRole('button', { name: 'A link to these values' }).click()
    const text = first.page.getByRole('textbox', { name: 'The link' })
    await expect.poll(() => text.inputValue()).toContain('#scenario=')
    const link = await text.inputValue()
    const second = await openFirstPage(browser, link)
    expect(await second.field('Softness of the turf').inputValue()).toBe('0.45')
    const torn = await openFirstPage(browser, link.slice(0, served.address.length + 120))
    expect(await torn.page.getByRole('alert').textContent()).toContain('a whole link')
    expect(await torn.field('Softness of the turf').inputValue()).toBe('0.30')
  })

  it('saves a file that opens again, and says what is wrong with a damaged one', async () => {
    const { page, field } = await openFirstPage(browser, served.address)
    await field('Bench height').fill('4.15')
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('why-a-heavier-roller-cuts-lower.swardsink.json')
    const path = await download.path()
    await page.getByRole('button', { name: 'Back to this book’s values' }).click()
    expect(await field('Bench height').inputValue()).toBe('3.40')
    await page.locator('input[type="file"]').setInputFiles(path)
    await expect.poll(() => field('Bench height').inputValue()).toBe('4.15')
    await page.locator('input[type="file"]').setInputFiles({
      name: 'torn.swardsink.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{ "swardsink": 1, "pages": [] }'),
    })
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('scenario')
    expect(await field('Bench height').inputValue()).toBe('4.15')
  })

  it('leads from a value in the prose to where it is set', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    await entry('text').getByRole('button', { name: '6.20' }).click()
    const focused = await page.evaluate(() => {
      let at = document.activeElement
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement
      return at instanceof HTMLInputElement ? at.value : null
    })
    expect(focused).toBe('6.20')
  })

  it('shows how each number is worked out, and the figure as a table', async () => {
    const { entry } = await openFirstPage(browser, served.address)
    await entry('sideView').getByRole('button', { name: 'How this is worked out' }).click()
    expect(await textOf(entry('sideView'))).toContain('h e = h b − drop')
    await entry('sideView').getByRole('button', { name: 'As a table' }).click()
    expect(await textOf(entry('sideView'))).toContain('load on the rear roller')
    await entry('map').getByRole('button', { name: 'As a table' }).click()
    expect(await entry('map').locator('data-table tbody tr').count()).toBe(6)
  })

  it('shows another quantity on the map', async () => {
    const { page, entry } = await openFirstPage(browser, served.address)
    await entry('map').getByRole('button', { name: 'effective height' }).click()
    expect(await textOf(entry('map'))).toContain('Effective height of cut')
    await settledMap(page)
    expect(await textOf(entry('map'))).toMatch(/2\.\d\d mm here/)
  })
})
