import type { Browser, BrowserContextOptions, Page } from 'playwright-core'

/** A page and what went wrong on it: errors on the console, uncaught errors, breaches of its content policy. */
export type WatchedPage = {
  readonly page: Page
  readonly faults: readonly string[]
  readonly requests: readonly string[]
}

export async function watchedPage(browser: Browser, options?: BrowserContextOptions): Promise<WatchedPage> {
  // A page that keeps itself would answer for the network that some of these tests take away.
  const context = await browser.newContext({ serviceWorkers: 'block', ...options })
  const page = await context.newPage()
  const faults: string[] = []
  const requests: string[] = []
  page.on('console', message => {
    if (message.text().startsWith('Service Worker registration blocked')) return
    if (message.type() === 'error' || message.type() === 'warning') faults.push(`console: ${message.text()}`)
  })
  page.on('pageerror', error => faults.push(`uncaught: ${error.message}`))
  page.on('requestfailed', request => faults.push(`not loaded: ${request.url()}`))
  context.on('request', request => requests.push(request.url()))
  await page.exposeFunction('reportBreach', (breach: string) => faults.push(`policy: ${breach}`))
  await page.addInitScript(() => {
    const { reportBreach } = window as unknown as { reportBreach(breach: string): void }
    addEventListener('securitypolicyviolation', event =>
      reportBreach(`${event.effectiveDirective} refused ${event.blockedURI}`),
    )
  })
  return { page, faults, requests }
}
