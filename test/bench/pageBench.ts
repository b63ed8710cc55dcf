import type { Browser, Page } from 'playwright-core'
import { openBrowser } from '../support/browser.ts'
import { servePage } from '../support/servedPage.ts'
import { type BenchBook, tenLiveEntries, twoHundredEntries } from './benchBooks.ts'
import { type TraceEvent, workPerMark } from './mainThread.ts'

// npm run bench:page: what a key costs with ten live entries on the page, and how long a large book takes to open.

const KEYS = 120
const ROUNDS = 3
const OPENINGS = 7
const PAUSE_ms = 60
const FRAME_ms = 16.7
const OPEN_ms = 1000
const laptop = { viewport: { width: 1440, height: 900 } }

type Row = {
  readonly what: string
  readonly median: number
  /** Half the spread of the middle half. */
  readonly spread: number
  readonly p95: number
  readonly bar: number | null
  readonly pieces: number
}

const quantile = (values: readonly number[], q: number): number => {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN
}

const rowOf = (what: string, values: readonly number[], bar: number | null): Row => ({
  what,
  median: quantile(values, 0.5),
  spread: (quantile(values, 0.75) - quantile(values, 0.25)) / 2,
  p95: quantile(values, 0.95),
  bar,
  pieces: values.length,
})

async function opened(browser: Browser, address: string, book: BenchBook): Promise<Page> {
  const page = await (await browser.newContext(laptop)).newPage()
  await page.goto(address)
  await page.locator('entry-frame').first().waitFor()
  await page.locator('input[type="file"]').setInputFiles({
    name: 'bench.swardsink.json',
    mimeType: 'application/json',
    buffer: Buffer.from(book.text),
  })
  await page.getByRole('heading', { level: 1, name: book.title }).waitFor()
  await settled(page)
  return page
}

/** Until nothing is being worked out any more. */
async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const root = document.querySelector('sward-book')?.shadowRoot?.querySelector('sward-page')?.shadowRoot
    const frames = [...(root?.querySelectorAll('entry-frame') ?? [])]
    return frames.every(frame => !('near' in frame && frame.near) || !/working|waiting/.test(statusOf(frame)))
    function statusOf(frame: Element): string {
      const state: unknown = 'state' in frame ? frame.state : null
      return typeof state === 'object' && state !== null && 'status' in state
        ? String(state.status)
        : 'waiting'
    }
  })
}

/** Work of the main thread for each arrow key on the line of the roller's mass. */
async function keys(browser: Browser, page: Page): Promise<ReturnType<typeof workPerMark>> {
  await page.getByRole('slider', { name: 'Mass of the front roller, on the line' }).first().focus()
  await page.evaluate(() =>
    addEventListener('keydown', () => performance.mark('swardsink key'), { capture: true }),
  )
  const press = async (key: string) => {
    await page.keyboard.press(key)
    await page.waitForTimeout(PAUSE_ms)
  }
  const warm = 20
  for (let key = 0; key < warm; key++) await press('ArrowRight')
  // No more than is read: every kind of event that is written down costs the thread that is measured.
  const categories = ['toplevel', 'devtools.timeline', 'blink.user_timing']
  await browser.startTracing(page, { categories })
  for (let key = 0; key <= KEYS; key++) await press(key % 2 === 0 ? 'ArrowRight' : 'PageUp')
  const trace: { traceEvents: readonly TraceEvent[] } = JSON.parse((await browser.stopTracing()).toString())
  return workPerMark(trace.traceEvents, 'swardsink key')
}

/** Milliseconds from the start of loading until the first figure is drawn, and the readings under it, the book being kept here. */
async function openings(browser: Browser, address: string, book: BenchBook) {
  const page = await opened(browser, address, book)
  const drawn: number[] = []
  const whole: number[] = []
  const warm = 1
  for (let opening = -warm; opening < OPENINGS; opening++) {
    await page.reload({ waitUntil: 'commit' })
    const [first, readings] = await page.evaluate(
      title =>
        new Promise<readonly [number, number]>(resolve => {
          let shown = 0
          const look = () => {
            const root = document
              .querySelector('sward-book')
              ?.shadowRoot?.querySelector('sward-page')?.shadowRoot
            const frames = [...(root?.querySelectorAll('entry-frame') ?? [])].slice(0, 2)
            const are = frames.map(one => one.shadowRoot?.querySelector('.drawn') instanceof Element)
            const isHere = root?.querySelector('h1')?.textContent === title
            if (isHere && are[0] && shown === 0) shown = performance.now()
            // After the frame that shows it.
            if (isHere && are[0] && are[1])
              requestAnimationFrame(() => setTimeout(() => resolve([shown, performance.now()])))
            else requestAnimationFrame(look)
          }
          look()
        }),
      book.title,
    )
    if (opening < 0) continue
    drawn.push(first)
    whole.push(readings)
  }
  await page.context().close()
  return { drawn, whole }
}

/** Longest frames while the wheel goes through the book, ms between one and the next. */
async function scrolled(browser: Browser, address: string, book: BenchBook): Promise<readonly number[]> {
  const page = await opened(browser, address, book)
  await page.mouse.move(700, 450)
  await page.evaluate(() => {
    const gaps: number[] = []
    let last = performance.now()
    const tick = (now: number) => {
      gaps.push(now - last)
      last = now
      requestAnimationFrame(tick)
    }
    requestAnimationFrame(tick)
    Object.assign(window, { gaps })
  })
  const turns = 120
  for (let turn = 0; turn < turns; turn++) {
    await page.mouse.wheel(0, 240)
    await page.waitForTimeout(PAUSE_ms / 2)
  }
  const gaps = await page.evaluate(() => (window as unknown as { gaps: number[] }).gaps.slice(1))
  await page.context().close()
  return gaps
}

const [browser, served] = await Promise.all([openBrowser(), servePage()])
try {
  const ten = tenLiveEntries()
  const many = twoHundredEntries()
  const works = []
  for (let round = 0; round < ROUNDS; round++) {
    const page = await opened(browser, served.address, ten)
    works.push(...(await keys(browser, page)))
    await page.context().close()
  }
  const { drawn, whole } = await openings(browser, served.address, many)
  const rows: readonly Row[] = [
    rowOf(
      'a key, to the frame that shows it',
      works.map(work => work.toFrame_ms),
      FRAME_ms,
    ),
    rowOf(
      'a key, all that follows',
      works.map(work => work.all_ms),
      null,
    ),
    rowOf('a large book, until it is drawn', drawn, OPEN_ms),
    rowOf('a large book, until its readings are there', whole, OPEN_ms),
    rowOf('a turn of the wheel in it, frame to frame', await scrolled(browser, served.address, many), null),
  ]
  if (process.argv.includes('--json'))
    console.log(JSON.stringify({ ten: ten.says, many: many.says, rows }, null, 2))
  else {
    console.log(`Ten live entries: ${ten.says}.`)
    console.log(`A large book: ${many.entries} entries on one page, ${many.says}.\n`)
    console.log(
      `${'ms'.padEnd(44)}${'median'.padStart(8)}${'±'.padStart(8)}${'95 %'.padStart(8)}${'bar'.padStart(8)}`,
    )
    for (const { what, median, spread, p95, bar } of rows)
      console.log(
        what.padEnd(44) +
          [median, spread, p95].map(value => value.toFixed(1).padStart(8)).join('') +
          (bar === null ? '' : bar.toFixed(1).padStart(8)),
      )
  }
} finally {
  await browser.close()
  await served.close()
}
