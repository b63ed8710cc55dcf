import { english } from './english/index.ts'

type FirstWords = typeof english
type MoreWords = typeof import('./english/more.ts').more

/** Every sentence of the book in one language. */
export type Words = FirstWords & MoreWords

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

const table: Part = { ...english }

/**
 * The words of this page. Those of kinds that are fetched come with the first of them (fetchMoreWords), and nothing
 * that needs them is drawn before: this cast is the one place that says so.
 */
export const words = table as unknown as Words

let fetched: Promise<void> | null = null

/** The words of kinds of entry that are fetched: awaited before the first of them is drawn. */
export function fetchMoreWords(): Promise<void> {
  fetched ??= import('./english/more.ts').then(
    ({ more }) => pour(table, more),
    (error: unknown) => {
      fetched = null
      throw error
    },
  )
  return fetched
}
