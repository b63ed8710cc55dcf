import type { Problem, Scenario } from '@swardsink/model'

/** One entry of a page, complete: every setting is there. */
export type Entry = {
  /** Kept for life, so that an answer finds its entry after the page was rearranged. */
  readonly id: string
  readonly kind: string
  /** Stands in the narrow columns beside the entry before it, where there is room. */
  readonly beside: boolean
  /** A reader's own title, in place of the kind's. */
  readonly title?: string
  readonly settings: object
  /** What a file says of a kind that is not known, or not here yet: kept, and written back as it stood. */
  readonly asWritten?: Readonly<Record<string, unknown>>
}

export type Page = {
  readonly title: string
  /** The page's one sentence. */
  readonly lead: string
  readonly entries: readonly Entry[]
}

/** A sward book as the program holds it: complete, typed, SI. */
export type Book = {
  readonly swardsink: 1
  readonly title: string
  readonly scenario: Scenario
  readonly pages: readonly Page[]
}

/** What reading gives: as much of the book as could be read, and everything that was wrong. */
export type ReadBook = {
  readonly book: Book | null
  readonly problems: readonly Problem[]
  /** The version of a file that a later program wrote: nothing of it is read, for nobody knows what it means. */
  readonly newer?: number
}

export const BOOK_VERSION = 1
