import type { Problem, Scenario } from '@swardsink/model'

/** One entry of a page, complete: every setting is there. */
export type Entry = {
  /** Kept for life, so that an answer finds its entry after the page was rearranged. */
  readonly id: string
  readonly kind: string
  /** Stands in the narrow columns beside the entry before it, where there is room. */
  readonly beside: boolean
  readonly settings: object
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
}

export const BOOK_VERSION = 1
