import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { cautionWords, laws } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { fencesOf } from './support/fences.ts'
import { filesBelow, repository } from './support/files.ts'

const read = (path: string) => readFileSync(join(repository, path), 'utf8')

const documents = [
  'README.md',
  'DEVELOPERS.md',
  'CHANGELOG.md',
  ...filesBelow('docs', '.md'),
  ...filesBelow('test', '.md'),
]
const code = ['packages/model/src', 'packages/model/bin', 'packages/explorer/src', 'test'].flatMap(folder =>
  filesBelow(folder, '.ts', '.js'),
)

/** A document without its fenced blocks, in which brackets mean something else. */
const proseOf = (text: string) => fencesOf(text).reduce((rest, fence) => rest.replace(fence.text, ''), text)

/** The part of an address that leads to a heading, as the usual places that show Markdown make it. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replaceAll(' ', '-')

const headingsOf = (text: string) =>
  [...proseOf(text).matchAll(/^#+ (.+)$/gm)].map(([, heading]) => heading ?? '')

/** Relative links of a document that lead nowhere. */
function brokenLinks(path: string, text: string): readonly string[] {
  return [...proseOf(text).matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target]) => target ?? '')
    .filter(target => !/^[a-z]+:/.test(target))
    .filter(target => {
      const [file = '', anchor] = target.split('#')
      const found = file === '' ? path : join(dirname(path), file)
      if (!existsSync(join(repository, found))) return true
      return anchor !== undefined && !headingsOf(read(found)).map(anchorOf).includes(anchor)
    })
    .map(target => `${path}: ${target}`)
}

/** Numbers of the sections of docs/physics.md. */
const sections = new Set(
  headingsOf(read('docs/physics.md')).flatMap(heading => /^(\d(?:\.\d+)?)\.? /.exec(heading)?.[1] ?? []),
)

/** Sections a text refers to: `docs/physics.md §2.3, §4`, `§3.1 to 3.3`, and those of a kind of entry. */
function referencesIn(text: string): readonly string[] {
  const named = [...text.matchAll(/physics\.md (§[\d.]+(?:(?:, | and | to )§?[\d.]+)*)/g)]
  const ofKinds = [...text.matchAll(/section: '(§[\d.]+)'/g)]
  return [...named, ...ofKinds].flatMap(([, list = '']) =>
    [...list.matchAll(/\d(?:\.\d+)?/g)].map(([number]) => number),
  )
}

test.each(documents)('every link of %s leads somewhere', path => {
  expect(brokenLinks(path, read(path))).toEqual([])
})

describe('references to docs/physics.md', () => {
  test('are many', () => {
    expect(code.flatMap(path => referencesIn(read(path))).length).toBeGreaterThan(20)
    expect(sections.size).toBeGreaterThan(10)
  })

  test('in code and in documents name sections that exist', () => {
    const lost = [...code, ...documents].flatMap(path =>
      referencesIn(read(path))
        .filter(section => !sections.has(section))
        .map(section => `${path}: §${section}`),
    )
    expect(lost).toEqual([])
  })

  test('inside it name sections that exist', () => {
    const inside = [...read('docs/physics.md').matchAll(/§(\d(?:\.\d+)?)/g)].map(([, number]) => number)
    expect(inside.filter(number => number && !sections.has(number))).toEqual([])
  })
})

test('every caution is told in the section on trust', () => {
  const [, trust = ''] = read('docs/physics.md').split(/^## 5\. .*$|^## 6\. .*$/m)
  const untold = Object.keys(cautionWords).filter(kind => !trust.includes(`_${kind}_`))
  expect(untold).toEqual([])
})

test('every law of pressure against sinkage has its row', () => {
  const rows = [...read('docs/physics.md').matchAll(/^\| (\w+) +\| /gm)].map(([, name]) => name)
  expect(Object.keys(laws).filter(name => !rows.includes(name))).toEqual([])
})

test('tests that documents name exist', () => {
  const lost = documents.flatMap(path =>
    [...read(path).matchAll(/\btest\/[\w/.-]+\.(?:ts|js|md|csv|py)\b/g)]
      .map(([named]) => named)
      .filter(named => !existsSync(join(repository, named)))
      .map(named => `${path}: ${named}`),
  )
  expect(lost).toEqual([])
})

test('commands that documents name are in package.json', () => {
  const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> }
  const named = documents.flatMap(path =>
    [...read(path).matchAll(/npm run ([\w:-]+)/g)].map(([, name]) => name),
  )
  expect(named).not.toEqual([])
  expect(named.filter(name => name && !Object.hasOwn(scripts, name))).toEqual([])
})

test('the README gives the two commands that are all a reader needs', () => {
  const blocks = fencesOf(read('README.md'))
    .filter(({ language }) => language === 'sh')
    .map(({ text }) => text.trim())
  expect(blocks).toContain('npm ci && npm start')
  expect(blocks).toContain('npm ci && npm test')
})

describe('decisions', () => {
  const records = filesBelow('docs/decisions', '.md')

  test('are numbered without a gap', () => {
    const numbers = records.map(path => Number(/(\d{4})-[a-z0-9-]+\.md$/.exec(path)?.[1]))
    expect(numbers).toEqual(records.map((_, i) => i + 1))
  })

  test.each(records)('%s says context, decision and consequence', path => {
    const text = read(path)
    const number = Number(/(\d{4})-/.exec(path)?.[1])
    expect(text.split('\n')[0]).toMatch(new RegExp(`^# ${number}\\. \\S`))
    expect(headingsOf(text).slice(1)).toEqual(['Context', 'Decision', 'Consequence'])
  })
})

describe('the search itself', () => {
  test('finds a link to a file, and to a heading, that is not there', () => {
    const text = '[a](LICENSE) [b](NOWHERE.md) [c](docs/physics.md#2-turf) [d](docs/physics.md#9-nothing)'
    expect(brokenLinks('README.md', text)).toEqual([
      'README.md: NOWHERE.md',
      'README.md: docs/physics.md#9-nothing',
    ])
  })

  test('reads a row of sections', () => {
    expect(referencesIn('see docs/physics.md §2.3, §4 and docs/physics.md §3.1 to 3.3')).toEqual([
      '2.3',
      '4',
      '3.1',
      '3.3',
    ])
  })
})
