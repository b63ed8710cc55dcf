import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

type Found = {
  readonly id: string
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[]
}

let checker: Promise<string> | undefined

/** Accessibility faults of WCAG 2.2 A and AA that can be found by machine. */
export async function accessFaults(page: Page): Promise<readonly string[]> {
  checker ??= readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
  await page.evaluate(await checker)
  const found = await page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run(options: object): Promise<{ violations: Found[] }> } }
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
    return (await axe.run({ runOnly: { type: 'tag', values: tags } })).violations
  })
  return found.flatMap(({ id, nodes }) =>
    nodes.map(node => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ''}`),
  )
}
