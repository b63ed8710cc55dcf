import { describe, expect, it } from 'vitest'
import { english } from '../../../packages/explorer/src/words/english/index.ts'
import { more as englishMore } from '../../../packages/explorer/src/words/english/more.ts'
import { german } from '../../../packages/explorer/src/words/german/index.ts'
import { more as germanMore } from '../../../packages/explorer/src/words/german/more.ts'
import { fetchMoreWords, fetchWords, readerFor } from '../../../packages/explorer/src/words/index.ts'

/** What both languages call alike, or say with values alone. */
const ALIKE = new Set([
  'Name',
  'name',
  'in',
  '95\u202f%',
  'R',
  'Median',
  'median',
  'linear',
  'mm, kg',
  'in, lb',
  '…',
])
const DIGITS_AND_SIGNS = /^[^a-z]*$/i

/** A value of every name a sentence may ask for. */
const values: unknown = new Proxy({}, { get: (_, name) => `‹${String(name)}›` })

/** Sentences of a table by their place; those that take values are said with values that name themselves. */
function sentences(part: unknown, place: string, into: Map<string, string>): Map<string, string> {
  if (typeof part === 'string') into.set(place, part)
  else if (typeof part === 'function') into.set(`${place}()`, String(part.length))
  else if (typeof part === 'object' && part !== null)
    for (const [name, inner] of Object.entries(part)) sentences(inner, `${place}.${name}`, into)
  return into
}

const tables = [
  ['first words', english, german],
  ['words of kinds that are fetched', englishMore, germanMore],
] as const

describe.each(tables)('the %s', (_, one, other) => {
  const said = sentences(one, '', new Map())
  const again = sentences(other, '', new Map())
  const isListed = (place: string) => !place.startsWith('.books.')

  it('are the same ones in every language', () => {
    expect([...again.keys()].filter(isListed).sort()).toEqual([...said.keys()].filter(isListed).sort())
    const taking = [...said].filter(([place]) => place.endsWith('()'))
    expect(taking.length).toBeGreaterThan(10)
    for (const [place, count] of taking) expect([place, again.get(place)]).toEqual([place, count])
  })

  it('are said in another way in another language', () => {
    // Names of columns are those of files, in every language.
    const same = [...said].filter(
      ([place, text]) =>
        again.get(place) === text &&
        !place.endsWith('()') &&
        !place.startsWith('.readings.offered.') &&
        !ALIKE.has(text) &&
        !DIGITS_AND_SIGNS.test(text),
    )
    expect(same).toEqual([])
  })

  it('hold the same values', () => {
    const asks = (part: unknown): string => {
      if (typeof part !== 'function') return ''
      try {
        const text = JSON.stringify(part(values, values, values))
        return [...new Set(text.match(/‹\w+›/g) ?? [])].sort().join(' ')
      } catch {
        // Counts and lists are no such values.
        return ''
      }
    }
    const walk = (a: unknown, b: unknown, place: string): void => {
      if (typeof a === 'function') expect([place, asks(b)]).toEqual([place, asks(a)])
      else if (typeof a === 'object' && a !== null)
        for (const [name, inner] of Object.entries(a))
          walk(inner, (b as Readonly<Record<string, unknown>>)[name], `${place}.${name}`)
    }
    walk(one, other, '')
  })
})

describe('long tables', () => {
  it('of trust has the same cards in both languages, the glossary no fewer words than a page needs', async () => {
    const [a, b] = [await english.trust(), await german.trust()]
    expect(Object.keys(b)).toEqual(Object.keys(a))
    for (const [name, text] of Object.entries(a)) expect(b[name]).not.toBe(text)
    const words = (await german.glossary()).map(({ word }) => word)
    expect(words.length).toBeGreaterThan(30)
    expect(words).toEqual(words.toSorted((x, y) => x.localeCompare(y, 'de')))
  })
})

describe('a German reader', () => {
  it('is told numbers with a decimal comma once the words are here', async () => {
    await fetchMoreWords()
    expect(readerFor({ language: 'de', units: 'metric', figureText: 13 }).locale).toBe('en')
    await fetchWords('de')
    const { format, locale, words } = readerFor({ language: 'de', units: 'metric', figureText: 13 })
    expect(locale).toBe('de')
    expect(format(0.00302, 'height')).toBe('3,02\u202fmm')
    expect(format(Number.NaN, 'height')).toBe('nicht bekannt')
    expect(words.percent(0.125)).toBe('13\u202f%')
    expect(words.list(['vorn', 'hinten'])).toBe('vorn und hinten')
    expect(words.fit.counted(2)).toBe('2 Messwerte')
  })
})
