import type { Book, Page } from './book.ts'

/** One step of a lecture: an entry by itself, or a page that has none. */
export type Step = {
  /** From 0. */
  readonly page: number
  readonly entry: string | null
  /** The first of its page: it says the page's sentence. */
  readonly opens: boolean
  /** Minutes of the plan for all steps after this one. */
  readonly minutesAfter: number
}

export type Plan = {
  readonly steps: readonly Step[]
  /** Minutes of the whole; 0 where none are planned. */
  readonly minutes: number
}

const sum = (parts: readonly { readonly minutes?: number }[]): number =>
  parts.reduce((total, { minutes = 0 }) => total + minutes, 0)

/** A page's own minutes, else those of its entries. */
const minutesOf = (page: Page): number => page.minutes ?? sum(page.entries)

/** The steps of a book in the order a lecture takes them, with what of the plan is still to come after each. */
export function lecturePlan({ pages }: Book): Plan {
  const steps = pages.flatMap((page, index): readonly Step[] => {
    const later = pages.slice(index + 1).reduce((total, next) => total + minutesOf(next), 0)
    if (page.entries.length === 0) return [{ page: index, entry: null, opens: true, minutesAfter: later }]
    return page.entries.map((entry, at) => ({
      page: index,
      entry: entry.id,
      opens: at === 0,
      // Entries of a page that plans less for the whole take no more than that.
      minutesAfter: later + Math.min(minutesOf(page), sum(page.entries.slice(at + 1))),
    }))
  })
  return { steps, minutes: pages.reduce((total, page) => total + minutesOf(page), 0) }
}
