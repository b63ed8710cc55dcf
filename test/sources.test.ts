import { describe, expect, test } from 'vitest'
import { citationsIn } from './checks/citations.ts'
import { readTexts } from './checks/readTexts.ts'
import { sourceProblems, sourceRows } from './checks/sourceProblems.ts'

test('every source of the documents has a test that names it, and every source of a test a row', () => {
  const texts = readTexts()
  expect(sourceRows(texts.sources).length).toBeGreaterThan(50)
  expect(sourceProblems(texts)).toEqual([])
})

describe('the check of sources', () => {
  const sound = {
    physics: 'a mat (Pasternak 1954)',
    sources:
      '| Pasternak 1954 | mat | 1e-7 | test/a.test.ts |\n| Wong, table 2.3 | soil | printed | test/b.test.ts |',
    tests: new Map([
      ['test/a.test.ts', '// after Pasternak 1954'],
      ['test/b.test.ts', "import '../support/soils.ts'"],
      ['test/support/soils.ts', '// Source: Wong, table 2.3'],
    ]),
  }
  const changed = (path: string, text: string) => ({
    ...sound,
    tests: new Map([...sound.tests, [path, text]]),
  })

  test('is content with sources that go both ways, by way of a file of numbers too', () => {
    expect(sourceProblems(sound)).toEqual([])
  })

  test('finds a source of the physics that no row has', () => {
    const physics = `${sound.physics}, springs (Winkler 1867)`
    expect(sourceProblems({ ...sound, physics })).toEqual([
      'docs/physics.md names Winkler 1867, which no row of docs/sources.md has',
    ])
  })

  test('finds a test that does not name what its row says', () => {
    expect(sourceProblems(changed('test/a.test.ts', ''))).toEqual([
      'docs/sources.md says that test/a.test.ts compares with Pasternak 1954, which it does not name',
    ])
  })

  test('finds a row whose test is gone', () => {
    const sources = `${sound.sources}\n| Volk 1972 | greens | printed | test/gone.test.ts |`
    expect(sourceProblems({ ...sound, sources })).toEqual([
      'docs/sources.md names test/gone.test.ts, which is not there',
    ])
  })

  test('finds a source that a test names and no row', () => {
    expect(sourceProblems(changed('test/c.test.ts', '// Huber 1981'))).toEqual([
      'test/c.test.ts names Huber 1981, and no row of docs/sources.md says so',
    ])
  })

  test('reads one work under the ways of citing it, over the end of a line too', () => {
    const ways = ['May, Morris and Atack 1959', 'May, Morris,\n * Atack 1959', 'May et al. (1959)']
    for (const way of ways) expect([...citationsIn(`x ${way}, p`)]).toEqual(['May 1959'])
    expect([...citationsIn("referenceTable('patch') and test/reference/data/patch.csv")]).toEqual([
      'data/patch.csv',
    ])
  })

  test('takes neither a number nor a date for a citation', () => {
    expect([...citationsIn('made on 2024-05-01; Section of 2024-05-01')]).toEqual([])
    expect([...citationsIn('seed 2025 and 1.1931471806')]).toEqual([])
  })
})
