import { type Problem, readScenario } from '@swardsink/model'
import { BOOK_VERSION, type Entry, type Page, type ReadBook } from './book.ts'
import { fieldsOf, isRecord, received } from './fields.ts'
import type { KindShelf, Kinds } from './kind.ts'

function problem(path: string, expected: string, value: unknown): Problem {
  return { path, expected, received: received(value) }
}

function readEntry(
  q: { readonly raw: unknown; readonly path: string; readonly kinds: Kinds; readonly taken: Set<string> },
  problems: Problem[],
): Entry | null {
  const { raw, path, kinds, taken } = q
  if (!isRecord(raw)) {
    problems.push(problem(path, 'an entry', raw))
    return null
  }
  const kind = typeof raw.kind === 'string' && Object.hasOwn(kinds, raw.kind) ? kinds[raw.kind] : undefined
  if (!kind) {
    problems.push(problem(`${path}.kind`, `one of ${Object.keys(kinds).join(', ')}`, raw.kind))
    return null
  }
  const fields = fieldsOf(raw, path, problems)
  fields.text('kind', kind.kind)
  const beside = fields.flag('beside', false)
  const asked = fields.text('id', kind.kind)
  let id = asked
  for (let again = 2; taken.has(id); again++) id = `${asked}-${again}`
  taken.add(id)
  const settings = kind.read(fields)
  fields.rest()
  return { id, kind: kind.kind, beside, settings }
}

function readPage(
  q: { readonly raw: unknown; readonly path: string; readonly kinds: Kinds; readonly taken: Set<string> },
  problems: Problem[],
): Page | null {
  const { raw, path, kinds, taken } = q
  if (!isRecord(raw)) {
    problems.push(problem(path, 'a page', raw))
    return null
  }
  const fields = fieldsOf(raw, path, problems)
  const title = fields.text('title', '')
  const lead = fields.text('lead', '')
  if (!Array.isArray(raw.entries)) problems.push(problem(`${path}.entries`, 'a list of entries', raw.entries))
  const list: readonly unknown[] = Array.isArray(raw.entries) ? raw.entries : []
  const entries = list.flatMap((entry, index) => {
    const complete = readEntry({ raw: entry, path: `${path}.entries[${index}]`, kinds, taken }, problems)
    return complete ? [complete] : []
  })
  return { title, lead, entries }
}

/** The kinds that the entries of these pages name, whatever else is wrong with them. */
function kindsNamed(pages: readonly unknown[]): readonly string[] {
  const entries = pages.flatMap(page => (isRecord(page) && Array.isArray(page.entries) ? page.entries : []))
  return entries.flatMap(entry => (isRecord(entry) && typeof entry.kind === 'string' ? [entry.kind] : []))
}

/**
 * A book from what a file says: loose in, complete inside, every problem with its path. Entries that cannot be
 * read are left out and named; without a scenario there is no book.
 */
export async function readBook(raw: unknown, shelf: KindShelf): Promise<ReadBook> {
  const problems: Problem[] = []
  if (!isRecord(raw)) return { book: null, problems: [problem('book', 'a sward book', raw)] }
  if (raw.swardsink !== BOOK_VERSION)
    problems.push(problem('swardsink', `the number ${BOOK_VERSION}`, raw.swardsink))
  const read = await readScenario(raw.scenario)
  if (!read.ok) problems.push(...read.problems.map(found => ({ ...found, path: `scenario.${found.path}` })))
  if (!Array.isArray(raw.pages)) problems.push(problem('pages', 'a list of pages', raw.pages))
  const list: readonly unknown[] = Array.isArray(raw.pages) ? raw.pages : []
  const taken = new Set<string>()
  const unfetched = await shelf.fetch(kindsNamed(list).filter(name => shelf.names.includes(name)))
  for (const name of unfetched)
    problems.push(problem('book', `what draws an entry of kind ${name}, fetched`, 'no connection'))
  const kinds = shelf.items
  const pages = list.flatMap((page, index) => {
    const complete = readPage({ raw: page, path: `pages[${index}]`, kinds, taken }, problems)
    return complete ? [complete] : []
  })
  const title = fieldsOf(raw, 'book', problems).text('title', '')
  if (!read.ok) return { book: null, problems }
  if (pages.length === 0) return { book: null, problems }
  return { book: { swardsink: BOOK_VERSION, title, scenario: read.scenario, pages }, problems }
}

/** A book from the text of a file; text that is not JSON is one problem. */
export async function parseBook(text: string, shelf: KindShelf): Promise<ReadBook> {
  let raw: unknown
  try {
    raw = JSON.parse(text)
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    return { book: null, problems: [{ path: 'book', expected: 'JSON', received: why }] }
  }
  return readBook(raw, shelf)
}
