import { readdir, readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { beforeAll, expect, test } from 'vitest'
import { buildStale } from '../support/servedPage.ts'

const assets = new URL('../../packages/explorer/dist/assets/', import.meta.url)

let files: ReadonlyMap<string, string>

beforeAll(async () => {
  await buildStale('page')
  const names = (await readdir(fileURLToPath(assets))).filter(name => name.endsWith('.js'))
  files = new Map(
    await Promise.all(
      names.map(async name => [name, await readFile(new URL(name, assets), 'utf8')] as const),
    ),
  )
})

/** The files of the build that a worker is started from, and everything those import. */
function workerFiles(): readonly string[] {
  const names = [...files.keys()]
  const started = names.filter(name => [...files.values()].some(code => startsWorkerFrom(code, name)))
  const reached = new Set(started)
  for (const name of reached) {
    for (const other of names) if (files.get(name)?.includes(`./${other}`)) reached.add(other)
  }
  return [...reached]
}

const startsWorkerFrom = (code: string, name: string) =>
  code
    .split('new Worker(')
    .slice(1)
    .some(rest => rest.slice(0, 200).includes(name))

test('a worker is built, and no element is in it', () => {
  const found = workerFiles()
  expect(found).not.toEqual([])
  // Only the words are compared: the whole bundle in a failure would hide what it says.
  const ofElements = /customElements|HTMLElement|adoptedStyleSheets/g
  expect(found.flatMap(name => files.get(name)?.match(ofElements) ?? [])).toEqual([])
})

test('the page itself does hold elements, so that the search above could find one', () => {
  const rest = [...files].filter(([name]) => !workerFiles().includes(name))
  expect(rest.some(([, code]) => code.includes('customElements'))).toBe(true)
})
