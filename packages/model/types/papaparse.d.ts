/**
 * The part of papaparse that the reader of tables uses. Its published types bring those of Node with them, and the
 * model must not see them: it runs anywhere.
 */
type Step = {
  readonly data: string[]
  readonly errors: readonly { readonly code: string }[]
  /** Where the next row starts. */
  readonly meta: { readonly cursor: number }
}

declare const Papa: {
  parse(
    text: string,
    options: {
      readonly delimiter: string
      readonly newline: string
      readonly comments: string
      readonly step: (step: Step, parser: { abort(): void }) => void
    },
  ): void
}

export = Papa
