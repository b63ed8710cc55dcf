/** A set of NIST's nonlinear regression collection with its certified answer. */
export type NistSet = {
  readonly name: string
  /** The value at a row's predictors. */
  readonly model: (x: readonly number[], b: readonly number[]) => number
  readonly starts: readonly (readonly number[])[]
  /** Certified values, their standard deviations and the residual sum of squares, as printed. */
  readonly certified: readonly number[]
  readonly deviations: readonly number[]
  readonly sumOfSquares: number
}

const { exp } = Math
export const rise = (x: number, [a = 0, b = 0]: readonly number[]) => a * (1 - exp(-b * x))
export const decay = (x: number, [a = 0, b = 0, c = 0]: readonly number[]) => exp(-a * x) / (b + c * x)
export const threeDecays = (x: number, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[]) =>
  a * exp(-b * x) + c * exp(-d * x) + e * exp(-f * x)
export const twoPeaks = (
  x: number,
  [a = 0, b = 0, c = 0, d = 0, e = 1, f = 0, g = 0, h = 1]: readonly number[],
) => a * exp(-b * x) + c * exp(-(((x - d) / e) ** 2)) + f * exp(-(((x - g) / h) ** 2))
export const cubics = (x: number, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0]: readonly number[]) =>
  (a + x * (b + x * (c + x * d))) / (1 + x * (e + x * (f + x * g)))

export const one =
  (f: (x: number, b: readonly number[]) => number): NistSet['model'] =>
  (x, b) =>
    f(x[0]!, b)
