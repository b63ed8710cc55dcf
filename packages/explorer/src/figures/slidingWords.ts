/** What the profile of sliding says inside itself. */
export type SlidingWords = {
  readonly title: string
  /** "sliding, mm/m" and "place along the roller, mm from its middle" */
  readonly up: string
  readonly across: string
  readonly inner: string
  readonly outer: string
  readonly mean: (value: string) => string
  readonly rootMeanSquare: (value: string) => string
  /** At the line that does not slide, or that slides least where two axles slide crossways. */
  readonly still: string
  readonly least: string
  /** At the profile of the same roller in one piece. */
  readonly whole: string
}
