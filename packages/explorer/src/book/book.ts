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
  /** Id of a question that a reader answers first: until then this is held back. */
  readonly after?: string
  /** For whoever teaches from it: told on the teacher's sheet, never on the page. */
  readonly notes?: string
  /** How long it takes in a lecture; absent: not planned. */
  readonly minutes?: number
  readonly settings: object
  /** What a file says of a kind that is not known, or not here yet: kept, and written back as it stood. */
  readonly asWritten?: Readonly<Record<string, unknown>>
}

export type Page = {
  readonly title: string
  /** The page's one sentence. */
  readonly lead: string
  /** For whoever teaches from it: told on the teacher's sheet, never on the page. */
  readonly notes?: string
  /** How long the whole of it takes in a lecture; absent: as long as its entries. */
  readonly minutes?: number
  readonly entries: readonly Entry[]
}

/** A sward book as the program holds it: complete, typed, SI. */
export type Book = {
  readonly swardsink: 1
  readonly title: string
  readonly scenario: Scenario
  /** How far the adjuster of a roller moves it for a whole turn, m; absent: not known. */
  readonly adjuster?: number
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
