/** What a fit says inside its figure; a list of lines where a name may take two. */
export type FitWords = {
  readonly title: string
  readonly across: string
  readonly down: string
  readonly turf: string
  readonly fit: string
  /** 95 % of the curve, and of one more reading. */
  readonly curve: readonly string[]
  readonly oneMore: readonly string[]
  /** Over the stipple. */
  readonly unknown: string
  readonly here: (values: { readonly x: string; readonly sinkage: string }) => readonly string[]
  readonly residual: string
  readonly shallower: string
  readonly deeper: string
  readonly twoS: (value: string) => string
}
