/** What curves of load or pressure against sinkage say inside themselves. */
export type CurvesWords = {
  readonly title: string
  /** "load on the roller, N" and "sinkage, mm" */
  readonly across: string
  readonly down: string
  readonly turf: string
  /** At the case in hand: "149 N: 0.52 mm". */
  readonly here: (values: { readonly x: string; readonly sinkage: string }) => string
  /** At the lines that define softness. */
  readonly softness: (softness: string) => string
  /** Over the stipple. */
  readonly unknown: string
  /** Behind the name of a curve that ends before the axis does. */
  readonly bottomsOut: (name: string) => string
}
