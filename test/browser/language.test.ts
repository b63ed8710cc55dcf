import { fileURLToPath, pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { books } from '../../packages/explorer/src/books/index.ts'
import { openBrowser } from '../support/browser.ts'
import { buildStale, type ServedPage, servePage } from '../support/servedPage.ts'
import { watchedPage } from '../support/watchedPage.ts'
import { openFirstPage } from './openFirstPage.ts'
import { saidOn, saidUnfolded } from './saidOn.ts'
import { settledPage } from './walkBook.ts'

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

const PATIENCE = 240_000

async function speak(page: Page, language: 'en' | 'de'): Promise<void> {
  await page.locator('running-head select:has(option[value="de"])').selectOption(language)
  await page.waitForFunction(wanted => document.documentElement.lang === wanted, language)
}

/** Every question answered, so that nothing is held back. */
const answerAll = (page: Page) =>
  page.evaluate(() => {
    const shown = document.querySelector('sward-book')?.shadowRoot?.querySelector('sward-page')
    for (const frame of shown?.shadowRoot?.querySelectorAll('entry-frame') ?? []) {
      const { entry } = frame as unknown as {
        readonly entry: {
          readonly id: string
          readonly kind: string
          readonly settings: { options?: unknown[] }
        }
      }
      if (entry.kind !== 'question') continue
      const prediction = (entry.settings.options?.length ?? 0) > 0 ? 1 : 0.002
      const detail = { id: entry.id, settings: { state: 'revealed', prediction } }
      frame.dispatchEvent(new CustomEvent('sward-rearrange', { detail, bubbles: true, composed: true }))
    }
  })

/** Of readers and books, of files and formulas, of languages: names, which stay what they are. */
const NAMES = [
  'bank green after rain',
  'bank green after ra…',
  'bank green',
  'chapel green',
  'close grooves',
  'wide grooves',
  'smooth, three pieces',
  'foam pad',
  'mill green',
  'garden green',
  'guessed',
  'wormcast brushed aside',
  'foot slipped off the cord',
  'smooth',
  'grooved',
  'light',
  'heavy',
  'left',
  'middle',
  'right',
  'peg',
  'seat',
  'English',
  'Deutsch',
  'Swardsink',
]
/** Words and signs that are the same in both languages: units, equations, laws. */
const ALIKE = /\b(kPa|psi|cos|var|AICc|linear|Name|Median|Huber|exp|sqrt|CSV|min|log|doi|sd|max)\b/g
/** Names of values and of columns, as formulas and files have them. */
const CALLED = /^drop$|\{\w+\}|\b[a-zA-Z]+(?:[._][a-zA-Z0-9]+)+\b|\b[a-z]+[A-Z]\w*\b/g

/** What is left of a text when names and what both languages share is taken out. */
function ownWords(text: string): string {
  let rest = text
  for (const name of NAMES) rest = rest.replaceAll(name, '')
  return rest.replace(CALLED, '').replace(ALIKE, '').trim()
}

const ENGLISH = /\b(the|and|with|which|than|would|is|are|not|from|at)\b/
const POINT = /\d\.\d+[\s\u202f]?(mm|kg|N|kPa|%|in|s)\b/

/** What of a page is not German: said alike in English, or in English words, or with a decimal point. */
function untranslated(english: readonly string[], german: readonly string[]): readonly string[] {
  const before = new Set(english)
  return german.filter(text => {
    const rest = ownWords(text)
    return (before.has(text) && /[a-zäöü]{3}/i.test(rest)) || ENGLISH.test(rest) || POINT.test(rest)
  })
}

describe.each(Object.entries(books))('the book %s', (name, { load }) => {
  it(
    'changes every word on every page, and back',
    async () => {
      const { pages } = (await load()).spec
      const { page, faults } = await watchedPage(browser)
      const left: string[] = []
      for (const number of pages.keys()) {
        await page.goto(`${served.address}#book=${name}&page=${number + 1}`)
        await page.locator('entry-frame').first().waitFor()
        await speak(page, 'en')
        await answerAll(page)
        await settledPage(page)
        const english = await saidUnfolded(page)
        await speak(page, 'de')
        await settledPage(page)
        const german = await saidUnfolded(page)
        expect(german.length).toBeGreaterThan(english.length / 2)
        left.push(...untranslated(english, german).map(text => `page ${number + 1}: ${text}`))
        await speak(page, 'en')
        await settledPage(page)
        expect((await saidUnfolded(page)).toSorted()).toEqual(english.toSorted())
      }
      expect(left.join('\n')).toBe('')
      expect(faults).toEqual([])
    },
    PATIENCE,
  )
})

describe('beside the pages', () => {
  it.each([
    ['#book=weight-or-surface&view=lecture'],
    ['#book=weight-or-surface&view=teachers-sheet'],
    ['#book=choose-fit-reset&page=7&view=set-up-sheet'],
    ['#view=hand-in'],
    ['#books'],
  ])('every word is German at %s', async hash => {
    const { page, faults } = await openFirstPage(browser, served.address)
    const saidAt = async (language: 'en' | 'de') => {
      await page.goto(`${served.address}#page=1`)
      await page.locator('running-head').waitFor()
      await speak(page, language)
      await page.goto(`${served.address}${hash}`)
      await page.waitForTimeout(800)
      return saidOn(page)
    }
    const english = await saidAt('en')
    const german = await saidAt('de')
    expect(german.length).toBeGreaterThan(10)
    expect(untranslated(english, german).join('\n')).toBe('')
    expect(faults).toEqual([])
  })

  it('every word is German while a page is edited, and in the list of what can be added', async () => {
    const { page } = await openFirstPage(browser, served.address)
    await page.getByRole('button', { name: 'Edit this page' }).click()
    await page.getByRole('button', { name: 'add an entry' }).first().click()
    const english = await saidOn(page)
    await speak(page, 'de')
    await page.getByRole('button', { name: 'Fertig' }).waitFor()
    expect(untranslated(english, await saidOn(page)).join('\n')).toBe('')
  })
})

describe('a reader’s language', () => {
  it('is kept, with what they changed, and undone as it was done', async () => {
    const { page, field } = await openFirstPage(browser, served.address)
    await field('Mass of the front roller').fill('7.7')
    await field('Mass of the front roller').blur()
    await speak(page, 'de')
    const mass = page.getByRole('textbox', { name: 'Masse der Vorderwalze', exact: true }).first()
    expect(await mass.inputValue()).toBe('7,70')
    await page.waitForTimeout(600)
    await page.reload()
    await expect.poll(() => mass.inputValue()).toBe('7,70')
    expect(await page.title()).toContain('Warum eine schwerere Walze')
    await speak(page, 'en')
    expect(await field('Mass of the front roller').first().inputValue()).toBe('7.70')
    await page.getByRole('heading', { level: 1, name: /The height of cut is set on a bench/ }).waitFor()
  })

  it('takes what it types with a decimal comma', async () => {
    const { page } = await openFirstPage(browser, served.address)
    await speak(page, 'de')
    const mass = page.getByRole('textbox', { name: 'Masse der Vorderwalze', exact: true }).first()
    await mass.fill('8,25')
    await mass.blur()
    expect(await mass.inputValue()).toBe('8,25')
    const line = page.getByRole('slider', { name: 'Masse der Vorderwalze, auf der Skala' })
    expect(await line.getAttribute('aria-valuetext')).toBe('8,25\u202fkg')
  })

  it('begins with the browser’s, and stays English where German cannot be fetched', async () => {
    const { page } = await watchedPage(browser, { locale: 'de-AT' })
    await page.goto(served.address)
    await page.getByText('hier geschnitten', { exact: true }).waitFor()
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de')
    const without = await openFirstPage(browser, served.address)
    await without.page.context().setOffline(true)
    await without.page.locator('running-head select:has(option[value="de"])').selectOption('de')
    await without.page.getByText('The words of Deutsch could not be fetched').waitFor()
    expect(await without.page.evaluate(() => document.documentElement.lang)).toBe('en')
  })

  it(
    'is changed in the one file as well, opened from disk',
    async () => {
      await buildStale('file')
      const file = fileURLToPath(new URL('../../dist/swardsink.html', import.meta.url))
      const { page, faults } = await watchedPage(browser)
      await page.goto(pathToFileURL(file).href)
      await page.getByText('cut here', { exact: true }).waitFor()
      await speak(page, 'de')
      await page.getByText('hier geschnitten', { exact: true }).waitFor()
      expect(faults).toEqual([])
    },
    PATIENCE,
  )
})
