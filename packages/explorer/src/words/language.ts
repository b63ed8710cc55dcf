import { english } from './english/index.ts'

type FirstWords = typeof english
type MoreWords = typeof import('./english/more.ts').more

/** Every sentence of the book in one language. */
export type Words = FirstWords & MoreWords

/** The languages there are, each by the name it has for itself. */
export const LANGUAGES = { en: 'English', de: 'Deutsch' } as const
export type Language = keyof typeof LANGUAGES
export const LANGUAGE_NAMES = Object.keys(LANGUAGES) as readonly Language[]

type Shelf = { readonly first: () => Promise<FirstWords>; readonly more: () => Promise<MoreWords> }

/** A language is a folder of this one: its first words, and those of kinds of entry that are fetched. */
const shelves: Readonly<Record<Language, Shelf>> = {
  en: {
    first: async () => english,
    more: async () => (await import('./english/more.ts')).more,
  },
  de: {
    first: async () => (await import('./german/index.ts')).german,
    more: async () => (await import('./german/more.ts')).more,
  },
}

type Part = Record<string, unknown>

const isPart = (value: unknown): value is Part =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Puts more sentences among those that are there; tables of them grow. */
function pour(into: Part, more: Part): void {
  for (const [name, value] of Object.entries(more)) {
    const there = into[name]
    if (isPart(there) && isPart(value)) {
      const grown = { ...there }
      pour(grown, value)
      into[name] = grown
    } else into[name] = value
  }
}

/** English is at hand: it is what the page says when another language cannot be fetched. */
const atHand: Part = { ...english }
const tables = new Map<Language, Part>([['en', atHand]])
let moreWanted = false

/**
 * The words of a language that is here, else the English ones. Those of kinds that are fetched come with the first of
 * them (fetchMoreWords), and nothing that needs them is drawn before: this cast is the one place that says so.
 */
export function wordsIn(language: Language): Words {
  return (tables.get(language) ?? atHand) as unknown as Words
}

/** What is asked for again while it comes, comes once; what could not be had may be asked for again. */
function once<Item>(fetch: (language: Language) => Promise<Item>): (language: Language) => Promise<Item> {
  const coming = new Map<Language, Promise<Item>>()
  return language => {
    const item =
      coming.get(language) ??
      fetch(language).catch((error: unknown) => {
        coming.delete(language)
        throw error
      })
    coming.set(language, item)
    return item
  }
}

const firstTable = once(
  async (language): Promise<Part> => tables.get(language) ?? { ...(await shelves[language].first()) },
)
const fetchMore = once(async language => {
  const [table, more] = await Promise.all([firstTable(language), shelves[language].more()])
  pour(table, more)
})

/** The words of kinds of entry that are fetched: awaited before the first of them is drawn. */
export async function fetchMoreWords(): Promise<void> {
  moreWanted = true
  await Promise.all([...tables.keys()].map(fetchMore))
}

/** All words of a language that this page needs so far: awaited before a reader is given them. */
export async function fetchWords(language: Language): Promise<void> {
  const table = await firstTable(language)
  if (moreWanted) await fetchMore(language)
  tables.set(language, table)
}
