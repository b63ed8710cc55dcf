import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { accessFaults } from '../support/accessFaults.ts'
import { openBrowser } from '../support/browser.ts'
import { focusedName } from '../support/focusedName.ts'
import { type ServedPage, servePage } from '../support/servedPage.ts'
import { openFirstPage } from './openFirstPage.ts'

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

async function paper(page: Page, name: string): Promise<void> {
  await page.getByRole('combobox', { name: 'Paper' }).selectOption(name)
}

describe('the first page for everyone', () => {
  it.each(['light', 'dark', 'projector'])('has no accessibility fault on %s paper', async name => {
    const { page } = await openFirstPage(browser, served.address, { viewport: { width: 1440, height: 900 } })
    await paper(page, name)
    expect(await accessFaults(page)).toEqual([])
  })

  it('has none on a phone, with everything folded out and a value that cannot be taken', async () => {
    const { page, field } = await openFirstPage(browser, served.address, {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
    })
    for (const words of await page.getByRole('button', { name: 'As a table' }).all()) await words.click()
    await page.getByRole('button', { name: 'fit it peg 3' }).click()
    await field('Land').fill('14')
    expect(await accessFaults(page)).toEqual([])
  })

  it('has none in the text of how things are worked out', async () => {
    const { page } = await openFirstPage(browser, served.address)
    for (const words of await page.getByRole('button', { name: 'How this is worked out' }).all())
      await words.click()
    expect(await accessFaults(page)).toEqual([])
  })

  it('lets the keyboard alone reach every control, in the order of the page', async () => {
    const { page } = await openFirstPage(browser, served.address, { viewport: { width: 1440, height: 900 } })
    await page.getByRole('button', { name: 'fit it peg 3' }).click()
    await page.evaluate(() => {
      let at = document.activeElement
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement
      if (at instanceof HTMLElement) at.blur()
      window.scrollTo(0, 0)
    })
    await page.getByRole('combobox', { name: 'Units' }).focus()
    const walked: string[] = [await focusedName(page)]
    const longest = 120
    for (let step = 0; step < longest; step++) {
      await page.keyboard.press('Tab')
      const at = await focusedName(page)
      if (at === '' || at === walked[0]) break
      walked.push(at)
    }
    const reached = walked.join('\n')
    for (const words of [
      /select Units/,
      /select Paper/,
      /input Mass of the front roller, on the line/,
      /input Softness of the turf/,
      /g The present case/,
      /button 5\.10/,
      /button effective height/,
      /button fit it peg 1/,
      /button mass/,
      /input smooth|input grooved/,
      /input Pitch/,
      /input Land, on the line/,
      /input Depth of the grooves/,
      /input Locking depth/,
      /input Spread/,
      /input standing/,
      /input Whole unit on the scales/,
      /input Front roller on the scales/,
      /input Bench height/,
      /input Edge behind front axis/,
      /input Rear axis behind front/,
      /button As a table/,
      /button How this is worked out/,
      /button A link to these values/,
      /button Edit this page/,
      /button Save as a file/,
      /input Open a file/,
    ])
      expect(reached).toMatch(words)
    expect(walked.indexOf(walked.find(at => at.includes('Mass of the front roller')) ?? '')).toBeLessThan(
      walked.findIndex(at => at.includes('The present case')),
    )
  })

  it.each([320, 360, 390, 560, 768, 1024, 1264, 1440, 1920])(
    'does not scroll sideways at %d px',
    async width => {
      const { page } = await openFirstPage(browser, served.address, { viewport: { width, height: 800 } })
      const wide = await page.evaluate(() => document.documentElement.scrollWidth)
      expect(wide).toBeLessThanOrEqual(width)
      await page.getByRole('button', { name: 'fit it peg 5' }).click()
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
    },
  )

  it('reads at a zoom of 400 % on a screen of 1280 px, which leaves it 320', async () => {
    const { field, entry } = await openFirstPage(browser, served.address, {
      viewport: { width: 320, height: 256 },
      deviceScaleFactor: 4,
    })
    await field('Mass of the front roller').fill('8.8')
    await entry('sideView').locator('svg.side-view').scrollIntoViewIfNeeded()
    const box = await entry('sideView').locator('svg.side-view').boundingBox()
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(320)
  })

  it('is whole without motion and in forced colours', async () => {
    const { page, faults, field, entry } = await openFirstPage(browser, served.address, {
      reducedMotion: 'reduce',
      forcedColors: 'active',
    })
    await field('Mass of the front roller').fill('8.8')
    expect(await entry('text').getByRole('button').textContent()).toContain('8.80')
    expect(faults).toEqual([])
    expect(await accessFaults(page)).toEqual([])
  })

  it('prints ink on white without its controls, with the cautions', async () => {
    const { page } = await openFirstPage(browser, served.address, { colorScheme: 'dark' })
    await page.emulateMedia({ media: 'print' })
    expect(await page.getByRole('button', { name: 'Undo' }).isVisible()).toBe(false)
    expect(await page.getByText('Before you reach under a unit').isVisible()).toBe(true)
    const background = await page.evaluate(() => getComputedStyle(document.body).backgroundColor)
    expect(background).toBe('rgb(255, 255, 255)')
  })

  it('has no target smaller than 24 px, and none smaller than 44 px under a finger but words in prose', async () => {
    for (const [hasTouch, least] of [
      [false, 24],
      [true, 44],
    ] as const) {
      const { page } = await openFirstPage(browser, served.address, {
        hasTouch,
        isMobile: hasTouch,
        viewport: { width: 800, height: 900 },
      })
      const small = await page.evaluate(least => {
        const deep = (root: ParentNode): Element[] =>
          [...root.querySelectorAll('*')].flatMap(element => [
            element,
            ...(element.shadowRoot ? deep(element.shadowRoot) : []),
          ])
        return deep(document)
          .filter(element =>
            element.matches('button, select, input.field, input[type="range"], label:has(input)'),
          )
          .filter(element => !element.matches('.settable'))
          .map(element => ({ element, box: element.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < least || box.width < 24))
          .map(
            ({ element, box }) =>
              `${element.localName} ${element.textContent?.trim().slice(0, 30)} ${box.width}×${box.height}`,
          )
      }, least)
      expect(small).toEqual([])
    }
  })
})

describe('elements of the page', () => {
  it('redraw when a property is set', async () => {
    const { page } = await openFirstPage(browser, served.address)
    const drawn = await page.evaluate(async () => {
      const found = document.createElement('problem-list')
      const book = document.querySelector('sward-book')?.shadowRoot?.querySelector('problem-list')
      if (!book || !('reader' in book)) return null
      Object.assign(found, { reader: book.reader, problems: [] })
      document.body.append(found)
      await new Promise(requestAnimationFrame)
      const before = found.shadowRoot?.textContent?.trim()
      Object.assign(found, { problems: [{ path: 'unit.edge_mm', expected: 'a number', received: '"x"' }] })
      await new Promise(requestAnimationFrame)
      return { before, after: found.shadowRoot?.textContent ?? '' }
    })
    expect(drawn?.before).toBe('')
    expect(drawn?.after).toContain('unit.edge_mm')
  })
})
