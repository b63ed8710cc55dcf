import type { Browser, BrowserContextOptions, Page } from 'playwright-core'

/** A page and what went wrong on it: errors on the console, uncaught errors, breaches of its content policy. */
export type WatchedPage = {
  readonly page: Page
  readonly faults: readonly string[]
  readonly requests: readonly string[]
}

export async function watchedPage(browser: Browser, options?: BrowserContextOptions): Promise<WatchedPage> {
  const context = await browser.newContext(options)
  const page = await context.newPage()
  const faults: string[] = []
  const requests: string[] = []
  page.on('console', message => {
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
