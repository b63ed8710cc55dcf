import type { Problem, Scenario } from '@swardsink/model'
import {
  type Book,
  completeBook,
  forget,
  freeName,
  type KindShelf,
  keepOpened,
  kept,
  keptBooks,
  keptOpened,
  readAddress,
  readBook,
  readLink,
  retelling,
  type Shelf,
  type Store,
  speaksLike,
} from '../book/index.ts'
import type { View } from '../entries/view.ts'
import type { Refiner } from '../flow/index.ts'
import { fetchWords, LANGUAGE_NAMES, type Language } from '../words/index.ts'
import { OWN_EDITION } from './keeper.ts'
import type { Notice } from './notices.ts'
import { readPreferences } from './preferences.ts'

/** A book that ships: what a list says of it, and itself when it is asked for. */
export type Shipped = {
  readonly title: string
  /** One sentence: for whom it is, and what it does for them. */
  readonly about: string
  load(language?: Language): Promise<{ readonly spec: unknown; readonly edition: string }>
}

/** Everything a book is opened with, whichever it is. */
export type House = {
  readonly shipped: Readonly<Record<string, Shipped>>
  /** The shipped book that an address without a name means. */
  readonly first: string
  readonly kinds: KindShelf
  readonly views: Shelf<View>
  readonly refiner: Refiner
  readonly store: Store
}

/** A book, ready to be shown. Entries of kinds that are not here yet are completed when they come. */
export type Opening = {
  readonly house: House
  readonly name: string
  readonly language: Language
  readonly edition: string
  readonly book: Book
  /** The book's own values, whatever the reader has changed. */
  readonly own: Book
  /** Values that the address carries, to be laid over the book's. */
  readonly linked: Scenario | null
  readonly problems: readonly Problem[]
  readonly notices: readonly Notice[]
}

type Found = {
  readonly name: string
  readonly edition: string
  readonly own: Book
  readonly problems: readonly Problem[]
}

type Told = { readonly house: House; readonly language: Language }

const quick = { fetch: false }

/** A book that ships, in a language; null when none of that name does. */
export async function findShipped(
  name: string,
  { house: { shipped, kinds }, language }: Told,
): Promise<Found | null> {
  const book = Object.hasOwn(shipped, name) ? shipped[name] : undefined
  if (!book) return null
  const { spec, edition } = await book.load(language)
  const read = await readBook(spec, kinds, quick)
  if (!read.book) {
    const found = read.problems.map(({ path, expected, received }) => `${path}: ${expected}, not ${received}`)
    throw new Error(`the book ${name} cannot be read: ${found.join('; ')}`)
  }
  return { name, edition, own: read.book, problems: read.problems }
}

async function findOwn(name: string, { store, kinds }: House): Promise<Found | null> {
  const read = await keptOpened({ store, name, kinds, ...quick })
  return read?.book ? { name, edition: OWN_EDITION, own: read.book, problems: read.problems } : null
}

/**
 * The book an address names, in a language (the reader's, unless one is asked for): its own values, else what the reader kept of it, and over them what the address
 * carries. Damage in any of these is told, and never keeps the book from opening.
 */
export async function openBook(house: House, hash: string, asked?: Language): Promise<Opening> {
  const { store, kinds } = house
  const language = await spoken(asked ?? readPreferences(store).language)
  const told = { house, language }
  const address = readAddress(hash)
  const wanted = address.book ?? house.first
  const notices: Notice[] = address.foreign.map(text => ({ kind: 'foreign address', text }))
  const asFound = (await findShipped(wanted, told)) ?? (await findOwn(wanted, house))
  if (!asFound) notices.push({ kind: 'no such book', name: wanted })
  const found = asFound ?? (await findShipped(house.first, told))
  if (!found) throw new Error(`there is no book ${house.first}`)
  const { name, edition, own } = found
  const problems: Problem[] = [...found.problems]
  const saved = await kept({ store, name, kinds, present: own, ...quick })
  let book = own
  if (saved?.edition === edition) {
    problems.push(...saved.read.problems)
    book = saved.read.book ? await retold(saved.read.book, { own, name, told }) : own
  } else if (saved?.read.book) notices.push(setAside(saved.read.book, { name, house }))
  const link = await readLink(hash)
  if (link.kind === 'damaged') problems.push(...link.problems)
  const linked = link.kind === 'scenario' ? link.scenario : null
  return { house, name, language, edition, book, own, linked, problems, notices }
}

/** The language to speak: the reader's, or the one at hand where that cannot be fetched. */
async function spoken(language: Language): Promise<Language> {
  try {
    await fetchWords(language)
    return language
  } catch {
    return 'en'
  }
}

/** What was kept of a book that ships, in the language it is opened in: it may have been kept in another. */
async function retold(
  book: Book,
  { own, name, told }: { readonly own: Book; readonly name: string; readonly told: Told },
): Promise<Book> {
  if (speaksLike(book, own)) return book
  for (const language of LANGUAGE_NAMES) {
    const there = language === told.language ? null : await findShipped(name, { ...told, language })
    if (there && speaksLike(book, there.own)) return retelling(there.own, own)(book)
  }
  return book
}

/** Keeps a book under a name of its own, beside the others of this browser; the name, or null where nothing is kept. */
export function keepAsOwn(
  book: Book,
  { store, shipped }: House,
): { readonly name: string; readonly kept: boolean } {
  const taken = [...Object.keys(shipped), ...keptBooks(store).map(listed => listed.name)]
  const name = freeName(book.title, taken)
  return { name, kept: keepOpened({ store, name, book, when: new Date().toISOString() }) }
}

/** What was changed in an older edition is not poured into a newer one, and not lost: it becomes a book of its own. */
function setAside(book: Book, q: { readonly name: string; readonly house: House }): Notice {
  const { name, kept: isKept } = keepAsOwn(book, q.house)
  if (isKept) forget({ store: q.house.store, name: q.name })
  return { kind: 'earlier edition', name, title: book.title }
}

/** A book from a file becomes one of the reader's own, under a name that is free. */
export function adoptBook(book: Book, { house, language }: Told): Opening {
  const { name } = keepAsOwn(book, house)
  return {
    house,
    name,
    language,
    edition: OWN_EDITION,
    book,
    own: book,
    linked: null,
    problems: [],
    notices: [],
  }
}

/** Fetches what is still missing of these books, and completes them. Answers what could not be had. */
export async function fetchRest(
  books: readonly Book[],
  { kinds, views }: House,
): Promise<{
  readonly complete: (book: Book) => Book
  readonly problems: readonly Problem[]
  readonly missing: readonly string[]
}> {
  const named = books.flatMap(({ pages }) => pages.flatMap(page => page.entries.map(entry => entry.kind)))
  const known = [...new Set(named)].filter(name => kinds.names.includes(name))
  const missing = (await Promise.all([kinds.fetch(known), views.fetch(known)])).flat()
  const done = new Map<Book, Book>()
  const problems: Problem[] = []
  return {
    missing: [...new Set(missing)],
    problems,
    complete(book) {
      const before = done.get(book)
      if (before) return before
      const { book: after, problems: found } = completeBook(book, kinds.items)
      for (const problem of found)
        if (!problems.some(({ path, received }) => path === problem.path && received === problem.received))
          problems.push(problem)
      done.set(book, after)
      return after
    },
  }
}
