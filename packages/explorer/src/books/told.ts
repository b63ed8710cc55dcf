import type { BookSpec, EntrySpec } from '../entries/kinds.ts'

/** What an entry says that a translator has to say again; `remarks` are the lines of a table that begin with #. */
export type ToldEntry = {
  readonly title?: string
  readonly text?: string
  readonly question?: string
  readonly because?: string
  readonly notes?: string
  readonly options?: readonly string[]
  readonly remarks?: readonly string[]
}

export type ToldPage = {
  readonly title: string
  readonly lead: string
  readonly notes?: string
  /** By the entry's id, or by its kind where it has none. */
  readonly entries: Readonly<Record<string, ToldEntry>>
}

/** A book in another language: its sentences alone. Values, entries and settings stay those of the English one. */
export type ToldBook = { readonly title: string; readonly pages: readonly ToldPage[] }

/** What a translation calls an entry by. */
export const toldAs = ({ id, kind }: EntrySpec): string => (typeof id === 'string' ? id : kind)

function withRemarks(table: string, remarks: readonly string[]): string {
  const left = [...remarks]
  const lines = table.split('\n').map(line => (line.startsWith('#') ? `# ${left.shift() ?? ''}` : line))
  return lines.join('\n')
}

function tellEntry(entry: EntrySpec, told: ToldEntry | undefined): EntrySpec {
  if (!told) return entry
  const { options, remarks, ...texts } = told
  const { options: choices, table }: Readonly<Record<string, unknown>> = entry
  const said = {
    ...entry,
    ...texts,
    ...(options && Array.isArray(choices)
      ? { options: choices.map((choice: object, i) => ({ ...choice, text: options[i] })) }
      : {}),
    ...(remarks && typeof table === 'string' ? { table: withRemarks(table, remarks) } : {}),
  }
  // The same entry with other sentences: what they are sentences of, the test of translations looks after.
  return said as EntrySpec
}

/** A book with the sentences of a translation in place of its own. */
export function tellBook(book: BookSpec, told: ToldBook): BookSpec {
  return {
    ...book,
    title: told.title,
    pages: book.pages.map((page, i) => {
      const { entries = {}, ...texts }: Partial<ToldPage> = told.pages[i] ?? {}
      return {
        ...page,
        ...texts,
        entries: page.entries.map(entry => tellEntry(entry, entries[toldAs(entry)])),
      }
    }),
  }
}
