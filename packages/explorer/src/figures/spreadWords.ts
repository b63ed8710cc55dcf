/** What the figures of a height that scatters say inside themselves. */
export type SpreadWords = {
  readonly title: string
  readonly axis: string
  readonly often: string
  readonly low: (value: string) => string
  readonly middle: (value: string) => string
  readonly high: (value: string) => string
  readonly present: (value: string) => string
  readonly wanted: (q: { readonly height: string; readonly tolerance: string }) => string
  readonly shares: string
  readonly share: (share: number) => string
  readonly together: string
}
