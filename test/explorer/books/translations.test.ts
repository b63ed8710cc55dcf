import { describe, expect, it } from 'vitest'
import { readBook, retelling, speaksLike } from '../../../packages/explorer/src/book/index.ts'
import { books as german } from '../../../packages/explorer/src/books/german/index.ts'
import { books } from '../../../packages/explorer/src/books/index.ts'
import { toldAs } from '../../../packages/explorer/src/books/told.ts'
import type { BookSpec, EntrySpec } from '../../../packages/explorer/src/entries/kinds.ts'
import { allKinds } from '../entries/firstBook.ts'

/** What of an entry is said to a reader. */
const SAID = ['title', 'text', 'question', 'because', 'notes'] as const

function saysOf(entry: EntrySpec): readonly string[] {
  const { options, table, ...own }: Readonly<Record<string, unknown>> = entry
  const names: string[] = SAID.filter(name => typeof own[name] === 'string' && own[name] !== '')
  if (Array.isArray(options) && options.length > 0) names.push('options')
  if (typeof table === 'string' && table.startsWith('#')) names.push('remarks')
  return names.toSorted()
}

/** A book without a word of prose. */
function bones({ title: _, pages, ...book }: BookSpec): unknown {
  return {
    ...book,
    pages: pages.map(({ title: _, lead: __, notes, entries, ...page }) => ({
      ...page,
      notes: notes !== undefined,
      entries: entries.map(entry => {
        const { options, table, ...own }: Readonly<Record<string, unknown>> = entry
        const silent = Object.entries(own).filter(([name]) => !SAID.some(said => said === name))
        return {
          ...Object.fromEntries(silent),
          ...(Array.isArray(options) ? { options: options.map(one => ({ ...one, text: '' })) } : {}),
          ...(typeof table === 'string' ? { table: table.replace(/^#.*$/gm, '#') } : {}),
        }
      }),
    })),
  }
}

/** Values called in prose, as often as they are called. */
const called = (text: unknown) =>
  typeof text === 'string' ? (text.match(/\{[^}]+\}/g) ?? []).toSorted() : []

describe.each(Object.entries(books))('the book %s in German', (name, { load }) => {
  it('says everything that the English one says, and nothing that is not asked for', async () => {
    const { spec } = await load()
    const told = await german[name]?.()
    expect(told?.pages.length).toBe(spec.pages.length)
    spec.pages.forEach((page, i) => {
      const again = told?.pages[i]
      const wanted = page.entries
        .filter(entry => saysOf(entry).length > 0)
        .map(entry => [toldAs(entry), saysOf(entry)])
      const found = Object.entries(again?.entries ?? {}).map(([id, texts]) => [
        id,
        Object.keys(texts).toSorted(),
      ])
      expect(Object.fromEntries(found)).toEqual(Object.fromEntries(wanted))
      expect(wanted.length).toBe(new Set(wanted.map(([id]) => id)).size)
    })
  })

  it('is the English one but for its prose', async () => {
    const [{ spec }, { spec: told, edition }] = [await load(), await load('de')]
    expect(edition).toBe((await load()).edition)
    expect(bones(told)).toEqual(bones(spec))
    expect(told.title).not.toBe(spec.title)
    spec.pages.forEach((page, i) => {
      const again = told.pages[i]
      expect([again?.title, again?.lead]).not.toContain(page.title)
      page.entries.forEach((entry, k) => {
        const other = again?.entries[k]
        for (const part of saysOf(entry).filter(part => part !== 'options' && part !== 'remarks')) {
          const [a, b] = [entry, other].map(one => (one as Readonly<Record<string, unknown>>)[part])
          expect(b).not.toBe(a)
          expect(called(b)).toEqual(called(a))
        }
      })
    })
  })
})

describe('a book told again', () => {
  const read = async (language: 'en' | 'de') => {
    const { book } = await readBook((await books['heavier-roller'].load(language)).spec, allKinds)
    if (!book) throw new Error('the first book cannot be read')
    return book
  }

  it('is the other book where nothing was changed, and comes back as it was', async () => {
    const [here, there] = [await read('en'), await read('de')]
    expect(retelling(here, there)(here)).toBe(there)
    expect(retelling(there, here)(structuredClone(there))).toEqual(here)
    expect(speaksLike(here, there)).toBe(false)
    expect(speaksLike(here, structuredClone(here))).toBe(true)
  })

  it('keeps what a reader wrote and where they moved it', async () => {
    const [here, there] = [await read('en'), await read('de')]
    const [first, second] = here.pages
    if (!first || !second) throw new Error('there are no two pages')
    const changed = { ...here, pages: [{ ...second, lead: 'Mine.' }, first] }
    const told = retelling(here, there)(changed)
    expect(told.pages[0]?.lead).toBe('Mine.')
    expect(told.pages[0]?.title).toBe(there.pages[1]?.title)
    expect(told.pages[1]).toEqual(there.pages[0])
    expect(told.scenario).toBe(here.scenario)
  })
})
