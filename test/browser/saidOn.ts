import type { Page } from 'playwright-core'

/** Everything that a reader could read on the page or hear of it: texts, names, values, hints. */
export const saidOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const spoken = ['aria-label', 'aria-valuetext', 'aria-description', 'title', 'placeholder', 'alt']
    const said = new Set<string>()
    const put = (text: string | null) => {
      const plain = (text ?? '').replace(/\s+/g, ' ').trim()
      if (plain !== '') said.add(plain)
    }
    const walk = (node: Node): void => {
      if (node.nodeType === Node.TEXT_NODE) put(node.textContent)
      if (node instanceof Element) {
        if (['style', 'script', 'noscript'].includes(node.localName)) return
        for (const name of spoken) put(node.getAttribute(name))
        for (const child of node.shadowRoot?.childNodes ?? []) walk(child)
      }
      for (const child of node.childNodes) walk(child)
    }
    walk(document.body)
    put(document.title)
    return [...said]
  })

/** What can be folded out under an entry, one after the other. */
export const FOLDS = ['table', 'worked out', 'trust'] as const

/** The same with everything folded out that a page has. */
export async function saidUnfolded(page: Page): Promise<readonly string[]> {
  const said = new Set<string>()
  for (const fold of [...FOLDS, null]) {
    await page.evaluate(open => {
      const shown = document.querySelector('sward-book')?.shadowRoot?.querySelector('sward-page')
      for (const frame of shown?.shadowRoot?.querySelectorAll('entry-frame') ?? [])
        Object.assign(frame, { open })
    }, fold)
    await page.waitForTimeout(FOLDED)
    for (const text of await saidOn(page)) said.add(text)
  }
  return [...said]
}

/** Long tables of sentences are fetched when they are folded out. */
const FOLDED = 120
