import { readFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { parseSync, Visitor } from 'vite'
import { describe, expect, test } from 'vitest'
import { filesBelow, repository } from './support/files.ts'

const read = (path: string) => readFileSync(join(repository, path), 'utf8')

const code = [...filesBelow('packages', '.ts', '.js'), ...filesBelow('test', '.ts', '.js')]
const source = code.filter(path => /^packages\/\w+\/src\//.test(path))
const explorer = source.filter(path => path.startsWith('packages/explorer/'))
// Pictures and lockfiles apart, everything a reader of the repository can read.
const prose = filesBelow('', '.md', '.json', '.html', '.css', '.yml', '.cff', '.csv', 'LICENSE', '/run')
const texts = [...code, ...prose]

/** Where a pattern stands, as `path:line: text`. */
function places(paths: readonly string[], pattern: RegExp, text = read): readonly string[] {
  return paths.flatMap(path =>
    text(path)
      .split('\n')
      .flatMap((line, index) =>
        pattern.test(line) ? [`${path}:${index + 1}: ${line.trim().slice(0, 100)}`] : [],
      ),
  )
}

type Shape = 'TSAnyKeyword' | 'TSEnumDeclaration' | 'TSModuleDeclaration' | 'ExportDefaultDeclaration'

/** Where a shape of the language stands, as the bundler's own parser sees it. */
function shapes(paths: readonly string[], ...wanted: readonly Shape[]): readonly string[] {
  return paths.flatMap(path => {
    const text = read(path)
    const found: string[] = []
    const note = ({ start }: { start: number }) =>
      found.push(`${path}:${text.slice(0, start).split('\n').length}`)
    new Visitor(Object.fromEntries(wanted.map(shape => [shape, note]))).visit(parseSync(path, text).program)
    return found
  })
}

/** A word in two halves, so that this file may name what no file may hold. */
const word = (...halves: readonly string[]) => halves.join('')

describe('files', () => {
  const lines = new Map(code.map(path => [path, read(path).split('\n').length - 1]))
  const longerThan = (limit: number, paths: readonly string[]) =>
    paths.filter(path => (lines.get(path) ?? 0) > limit)

  test('are there to be looked at', () => {
    expect(source.length).toBeGreaterThan(20)
    expect(prose).toContain('package-lock.json')
  })

  test('hold at most 400 lines', () => {
    expect(longerThan(400, code)).toEqual([])
  })

  test('hold at most 220 lines, nine in ten', () => {
    const long = longerThan(220, source)
    expect(long.length, long.join('\n')).toBeLessThanOrEqual(source.length / 10)
  })

  test('have a median of at most 90 lines', () => {
    const sorted = source.map(path => lines.get(path) ?? 0).sort((a, b) => a - b)
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(90)
  })

  test('have a name that says what is inside', () => {
    expect(code.filter(path => /(^|\/)(utils?|helpers?|common|managers?|misc)(\/|\.)/i.test(path))).toEqual(
      [],
    )
  })

  test('are named after their main export: camelCase, or kebab-case after the tag of their element', () => {
    const element = /^(?:[a-z][a-z0-9]*-)+[a-z0-9]+\.ts$/
    const plain = /^[a-z][a-zA-Z0-9]*(\.test|\.config)?\.ts$/
    const misnamed = source.filter(path => !element.test(basename(path)) && !plain.test(basename(path)))
    expect(misnamed).toEqual([])
    expect(source.filter(path => element.test(basename(path)) && !path.includes('/explorer/'))).toEqual([])
  })

  test('that define an element are named after its tag, or are the view of their entry', () => {
    const misnamed = explorer.flatMap(path =>
      [...read(path).matchAll(/customElements\.define\(\s*'([^']+)'/g)]
        .map(([, tag]) => tag)
        .filter(tag => basename(path) !== `${tag}.ts` && !/\/entries\/\w+\/view\.ts$/.test(path))
        .map(tag => `${path} defines ${tag}`),
    )
    expect(misnamed).toEqual([])
  })
})

describe('words that stand nowhere', () => {
  test('in code: what switches the type check off', () => {
    const off = new RegExp(`@ts-(${word('ig', 'nore')}|${word('no', 'check')}|expect-error)`)
    expect(places(code, off)).toEqual([])
    expect(shapes(code, 'TSAnyKeyword')).toEqual([])
  })

  test('in code: shapes of the language that the house does without', () => {
    expect(shapes(code, 'TSEnumDeclaration', 'TSModuleDeclaration')).toEqual([])
    const configuration = /\.config\.ts$|closingLine\.ts$/
    expect(
      places(
        code.filter(path => !configuration.test(path)),
        /^export default /,
      ),
    ).toEqual([])
  })

  test('in tests: what passes, waits or leaves out without saying so', () => {
    const tests = code.filter(path => path.startsWith('test/'))
    expect(places(tests, new RegExp(word('toBe', 'CloseTo')))).toEqual([])
    // Leaving a test out is for a peer that this machine has not got, and then by a condition.
    expect(
      places(tests, new RegExp(`\\.(${word('on', 'ly')}|${word('sk', 'ip')}|${word('to', 'do')})\\b\\(?`)),
    ).toEqual([])
  })

  test('in the page: ways round its content policy', () => {
    const built = [
      ...explorer,
      ...filesBelow('packages/explorer/tools', '.ts', '.js'),
      'packages/explorer/index.html',
    ]
    const loosened = new RegExp(
      `${word("'un", 'safe-')}|${word('strict', '-dynamic')}|${word('wasm-', 'unsafe')}`,
    )
    expect(places(built, loosened)).toEqual([])
    expect(
      places(built, /\beval\(|new Function\(|document\.write|\b(inner|outer)HTML\b|insertAdjacentHTML/),
    ).toEqual([])
    expect(places(built, /unsafe(HTML|SVG|MathML|Static)/)).toEqual([])
    expect(places(built, /\sstyle=["'][^$]|\son[a-z]+=["']/)).toEqual([])
  })

  test('in any file: a place on somebody’s machine, or the host of a registry', () => {
    const machine = ['/wo rk/', '/t mp/', '/ho me/', '/Us ers/', '/ro ot/', 'C:\\\\Us ers', 'registry .npmjs']
    for (const place of machine) expect(places(texts, new RegExp(word(...place.split(' '))))).toEqual([])
  })

  test('in any file: words about how it came to be written', () => {
    for (const said of ['trans cript', 'seed docu ment']) {
      expect(places(texts, new RegExp(`\\b${said.replace(/ (?=\w*$)/, '')}`, 'i'))).toEqual([])
    }
  })
})

describe('the search itself', () => {
  test('finds a word and says where it stands', () => {
    expect(places(['a.ts'], /two/, () => 'one\n  two\n')).toEqual(['a.ts:2: two'])
  })

  test('leaves out what is built or fetched', () => {
    expect(texts.filter(path => /(^|\/)(node_modules|dist)\//.test(path))).toEqual([])
    expect(texts.map(dirname)).toContain('test')
  })
})
