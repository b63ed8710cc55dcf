import { type Problem, readScenario, type Scenario } from '@swardsink/model'
import { BOOK_VERSION, type Book, type Entry, type Page, type ReadBook } from './book.ts'
import { type Fields, fieldsOf, isRecord, received } from './fields.ts'
import type { Kind, KindShelf, Kinds } from './kind.ts'
import { mendJson } from './mendJson.ts'

function problem(path: string, expected: string, value: unknown): Problem {
  return { path, expected, received: received(value) }
}

type Reading = {
  readonly kinds: Kinds
  /** Every kind there is, here yet or not. */
  readonly names: readonly string[]
  readonly taken: Set<string>
  readonly problems: Problem[]
}

function settingsOf(
  raw: Readonly<Record<string, unknown>>,
  q: { readonly kind: Kind; readonly path: string; readonly problems: Problem[] },
): object {
  const own = Object.fromEntries(Object.entries(raw).filter(([name]) => !OF_EVERY_ENTRY.includes(name)))
  const fields = fieldsOf(own, q.path, q.problems)
  const settings = q.kind.read(fields)
  fields.rest()
  return settings
}

/** What any entry may say; the rest is its kind's. */
const OF_EVERY_ENTRY = ['kind', 'id', 'beside', 'title', 'after', 'notes', 'minutes']

/** What a lecture knows of a page or an entry. */
function lectureOf(fields: Fields): Pick<Page, 'notes' | 'minutes'> {
  const notes = fields.text('notes', '')
  const minutes = fields.number('minutes', 0)
  if (minutes < 0) fields.problem('minutes', 'a number of minutes, 0 or more')
  return { ...(notes ? { notes } : {}), ...(minutes > 0 ? { minutes } : {}) }
}

const kindNamed = (kinds: Kinds, name: string): Kind | undefined =>
  Object.hasOwn(kinds, name) ? kinds[name] : undefined

function readEntry(raw: unknown, path: string, { kinds, names, taken, problems }: Reading): Entry | null {
  if (!isRecord(raw)) {
    problems.push(problem(path, 'an entry', raw))
    return null
  }
  const name = typeof raw.kind === 'string' ? raw.kind : ''
  if (!names.includes(name)) problems.push(problem(`${path}.kind`, `one of ${names.join(', ')}`, raw.kind))
  const fields = fieldsOf(raw, path, problems)
  const beside = fields.flag('beside', false)
  const title = fields.text('title', '')
  const after = fields.text('after', '')
  const lecture = lectureOf(fields)
  const asked = fields.text('id', name)
  let id = asked
  for (let again = 2; taken.has(id); again++) id = `${asked}-${again}`
  taken.add(id)
  const entry = {
    id,
    kind: name,
    beside,
    ...(title ? { title } : {}),
    ...(after ? { after } : {}),
    ...lecture,
  }
  const kind = kindNamed(kinds, name)
  if (!kind) return { ...entry, settings: {}, asWritten: raw }
  return { ...entry, settings: settingsOf(raw, { kind, path, problems }) }
}

function readPage(raw: unknown, path: string, reading: Reading): Page | null {
  const { problems } = reading
  if (!isRecord(raw)) {
    problems.push(problem(path, 'a page', raw))
    return null
  }
  const fields = fieldsOf(raw, path, problems)
  const title = fields.text('title', '')
  const lead = fields.text('lead', '')
  const lecture = lectureOf(fields)
  const list = fields.raw('entries')
  fields.rest()
  if (!Array.isArray(list)) problems.push(problem(`${path}.entries`, 'a list of entries', list))
  const entries = (Array.isArray(list) ? list : []).flatMap((entry: unknown, index) => {
    const read = readEntry(entry, `${path}.entries[${index}]`, reading)
    return read ? [read] : []
  })
  return { title, lead, ...lecture, entries }
}

const MM_A_METRE = 1000

/** The kinds that the entries of these pages name, whatever else is wrong with them. */
function kindsNamed(pages: readonly unknown[]): readonly string[] {
  const entries = pages.flatMap(page => (isRecord(page) && Array.isArray(page.entries) ? page.entries : []))
  return entries.flatMap(entry => (isRecord(entry) && typeof entry.kind === 'string' ? [entry.kind] : []))
}

async function readValues(raw: unknown, problems: Problem[]): Promise<Scenario | null> {
  if (!isRecord(raw)) {
    problems.push(problem('scenario', 'a scenario', raw))
    return null
  }
  const read = await readScenario(raw)
  if (!read.ok) problems.push(...read.problems.map(found => ({ ...found, path: `scenario.${found.path}` })))
  return read.ok ? read.scenario : null
}

export type ReadingOptions = {
  /** The book the reader has: lends its values to pages without any, and its pages to values without any. */
  readonly present?: Book
  /** False: entries of kinds that are not here yet are kept as they stand, and completed by `completeBook`. */
  readonly fetch?: boolean
}

/**
 * A book from what a file says: loose in, complete inside, every problem with its path. Entries of an unknown kind
 * are kept as they came; without a scenario there is no book, unless the present one lends its own.
 */
export async function readBook(
  raw: unknown,
  shelf: KindShelf,
  options: ReadingOptions = {},
): Promise<ReadBook> {
  const { present, fetch = true } = options
  const problems: Problem[] = []
  if (!isRecord(raw)) return { book: null, problems: [problem('book', 'a sward book', raw)] }
  const version = raw.swardsink
  if (typeof version === 'number' && version > BOOK_VERSION)
    return { book: null, problems: [], newer: version }
  // A scenario by itself, as the command line reads it.
  const bare = present && version === undefined && raw.pages === undefined && raw.unit !== undefined
  if (bare) {
    const scenario = await readValues(raw, problems)
    return { book: scenario && { ...present, scenario }, problems }
  }
  const fields = fieldsOf(raw, 'book', problems)
  if (fields.raw('swardsink') !== BOOK_VERSION)
    problems.push(problem('swardsink', `the number ${BOOK_VERSION}`, version))
  const title = fields.text('title', present?.title ?? '')
  const scenario = (await readValues(fields.raw('scenario'), problems)) ?? present?.scenario
  const adjuster_mm = fields.number('adjuster_mm', 0)
  if (adjuster_mm < 0) fields.problem('adjuster_mm', 'a number of mm a turn, more than 0')
  const adjuster = adjuster_mm > 0 ? { adjuster: adjuster_mm / MM_A_METRE } : {}
  const listed = fields.raw('pages')
  fields.rest()
  if (!Array.isArray(listed)) problems.push(problem('pages', 'a list of pages', listed))
  const list: readonly unknown[] = Array.isArray(listed) ? listed : []
  if (fetch) problems.push(...(await unfetched(list, shelf)))
  const reading = { kinds: shelf.items, names: shelf.names, taken: new Set<string>(), problems }
  const pages = list.flatMap((page, index) => {
    const read = readPage(page, `pages[${index}]`, reading)
    return read ? [read] : []
  })
  const lent = scenario === present?.scenario ? undefined : present?.pages
  const shown = pages.length > 0 ? pages : lent
  // Neither values nor pages of its own: that would be the present book under another name.
  if (!scenario || !shown) return { book: null, problems }
  return { book: { swardsink: BOOK_VERSION, title, scenario, ...adjuster, pages: shown }, problems }
}

/** Fetches what these pages name, and says what could not be had. */
async function unfetched(pages: readonly unknown[], shelf: KindShelf): Promise<readonly Problem[]> {
  const missing = await shelf.fetch(kindsNamed(pages).filter(name => shelf.names.includes(name)))
  return missing.map(name => ({
    path: 'book',
    expected: `what draws an entry of kind ${name}, fetched`,
    received: 'no connection',
  }))
}

/** Completes those entries whose kind has come since the book was read. The same book when there are none. */
export function completeBook(
  book: Book,
  kinds: Kinds,
): { readonly book: Book; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  let completed = false
  const pages = book.pages.map((page, at) => {
    const entries = page.entries.map((entry, index): Entry => {
      const { asWritten, ...rest } = entry
      const kind = asWritten && kindNamed(kinds, entry.kind)
      if (!asWritten || !kind) return entry
      completed = true
      const path = `pages[${at}].entries[${index}]`
      return { ...rest, settings: settingsOf(asWritten, { kind, path, problems }) }
    })
    return { ...page, entries }
  })
  return { book: completed ? { ...book, pages } : book, problems }
}

/** A book from the text of a file. A text that breaks off is read as far as it is whole. */
export async function parseBook(
  text: string,
  shelf: KindShelf,
  options: ReadingOptions = {},
): Promise<ReadBook> {
  try {
    // Some editors begin a text with a mark of their own.
    return await readBook(JSON.parse(text.replace(/^\uFEFF/, '')), shelf, options)
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
    const mended = mendJson(text)
    const fault = {
      path: 'book',
      expected: 'JSON to its end',
      received: mended ? `a fault after line ${mended.line}` : 'no JSON',
    }
    const read = mended ? await readBook(mended.value, shelf, options) : { book: null, problems: [] }
    return { ...read, problems: [fault, ...read.problems] }
  }
}
