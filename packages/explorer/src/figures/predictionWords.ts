/** What the scale of a prediction says inside itself. */
export type PredictionWords = {
  readonly title: string
  readonly now: (value: string) => string
  readonly yours: (value: string) => string
  readonly model: (value: string) => string
  readonly front: string
  readonly rear: string
  /** What the movable mark is. */
  readonly handle: string
  readonly axis: (q: { readonly what: string; readonly unit: string }) => string
}
