import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readScenario } from '@swardsink/model'
import { beforeAll, describe, expect, test } from 'vitest'
import { type Fence, fencesOf } from './support/fences.ts'
import { filesBelow, repository } from './support/files.ts'
import { buildStale } from './support/servedPage.ts'

type Example = Fence & { readonly where: string }

const documents = ['README.md', 'DEVELOPERS.md', ...filesBelow('docs', '.md')]
const examples: readonly Example[] = documents.flatMap(path =>
  fencesOf(readFileSync(join(repository, path), 'utf8')).map(fence => ({
    ...fence,
    where: `${path}:${fence.line}`,
  })),
)
const scripts = examples.filter(({ language }) => language === 'js')
const calls = examples.filter(({ text }) => text.startsWith('npx swardsink '))
const launcher = 'packages/model/bin/swardsink.js'

/** Runs Node at the top of the repository, where a reader is asked to run it. */
function run(words: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, words, {
    cwd: repository,
    encoding: 'utf8',
    input,
  })
  return { status, said: `${stdout}${stderr}` }
}

/** An editor may turn the narrow space before a unit into an ordinary one. */
const plain = (text: string) => text.replaceAll('\u202f', ' ').trimEnd()

beforeAll(() => buildStale('model'), 120_000)

test('the README shows the model and the command line at work', () => {
  const inReadme = (list: readonly Example[]) => list.filter(({ where }) => where.startsWith('README.md'))
  expect(inReadme(scripts)).toHaveLength(1)
  expect(inReadme(calls).length).toBeGreaterThan(1)
})

test.each(scripts)('the script at $where runs, and prints what stands under it', ({ text, output }) => {
  const { status, said } = run(['--input-type=module', '--eval', text])
  expect(status, said).toBe(0)
  expect(plain(said)).toBe(plain(output ?? ''))
})

test.each(calls)('the call at $where prints what stands under it', ({ text, output }) => {
  const words = text.trim().split(/\s+/).slice(2)
  expect(plain(run([launcher, ...words]).said)).toBe(plain(output ?? ''))
})

describe('the invented scenarios', () => {
  const files = filesBelow('docs/examples', '.json')

  test('are there', () => {
    expect(files).not.toEqual([])
  })

  test.each(files)('%s reads without a problem, dry and wet, and says that it is invented', async path => {
    const text = readFileSync(join(repository, path), 'utf8')
    const reading = await readScenario(JSON.parse(text))
    expect(reading).toMatchObject({ ok: true })
    for (const name of Object.keys(reading.ok ? reading.scenario.turfs : {}))
      expect(name).toContain('(invented)')
  })
})

describe('the search for examples', () => {
  test('takes a text block for an output only right under its script', () => {
    const [first, , third] = fencesOf(
      '```js\na\n```\n\n```text\nout\n```\nwords\n\n```sh\nb\n```\nwords\n```text\nno\n```\n',
    )
    expect(first).toEqual({ language: 'js', text: 'a\n', line: 1, output: 'out\n' })
    expect(third).toEqual({ language: 'sh', text: 'b\n', line: 10 })
  })

  test('would see a number that has changed', () => {
    const { said } = run(['--input-type=module', '--eval', "console.log('0.81 mm')"])
    expect(plain(said)).not.toBe('0.82 mm')
  })
})
