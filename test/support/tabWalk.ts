import type { Page } from 'playwright-core'

export type TabWalk = {
  /** Controls that the Tab key never came to. */
  readonly missed: readonly string[]
  readonly steps: number
  /** The walk came round to where it began. */
  readonly round: boolean
}

/** Presses Tab until it has gone all the way round, and says which controls were left out. */
export async function tabWalk(page: Page, most = 400): Promise<TabWalk> {
  await page.evaluate(() => {
    const deep = (root: ParentNode): HTMLElement[] =>
      [...root.querySelectorAll<HTMLElement>('*')].flatMap(element => [
        element,
        ...(element.shadowRoot ? deep(element.shadowRoot) : []),
      ])
    const reachable = 'a[href], button, input, select, textarea, summary, [tabindex="0"]'
    const walk = {
      expected: deep(document).filter(
        element =>
          element.matches(reachable) &&
          !element.matches(':disabled, [tabindex="-1"]') &&
          element.checkVisibility({ visibilityProperty: true }) &&
          // Of radio buttons the keyboard comes to the chosen one; arrow keys go on from there.
          !(element instanceof HTMLInputElement && element.type === 'radio' && !element.checked),
      ),
      met: new Set<Element>(),
      active(): Element | null {
        let at = document.activeElement
        while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement
        return at
      },
    }
    Object.assign(window, { walk })
    const at = walk.active()
    if (at instanceof HTMLElement) at.blur()
    document.body.tabIndex = -1
    document.body.focus()
  })
  let steps = 0
  let round = false
  for (; steps < most && !round; steps++) {
    await page.keyboard.press('Tab')
    round = await page.evaluate(() => {
      const { walk } = window as unknown as { walk: { met: Set<Element>; active(): Element | null } }
      const at = walk.active()
      if (!at || at === document.body || walk.met.has(at)) return true
      walk.met.add(at)
      return false
    })
  }
  const missed = await page.evaluate(() => {
    const { walk } = window as unknown as { walk: { expected: HTMLElement[]; met: Set<Element> } }
    return walk.expected
      .filter(element => element.isConnected && !walk.met.has(element))
      .map(element => `${element.localName}.${element.className} ${element.textContent?.trim().slice(0, 40)}`)
  })
  return { missed, steps, round }
}
