import type { Page } from 'playwright-core'

/** What has the focus, through every shadow tree: its element and its name. */
export const focusedName = (page: Page): Promise<string> =>
  page.evaluate(() => {
    let at = document.activeElement
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement
    if (!at || at === document.body) return ''
    const label =
      at.getAttribute('aria-label') ?? (at as HTMLInputElement).labels?.[0]?.textContent ?? at.textContent
    return `${at.localName} ${(label ?? '').replace(/\s+/g, ' ').trim()}`
  })
