/** Readings that went round in print, by their tables. */

/** Puromycin, treated cells: concentration and rate (Treloar 1974; Bates and Watts 1988, appendix A1.3). */
export const puromycin = {
  x: [0.02, 0.02, 0.06, 0.06, 0.11, 0.11, 0.22, 0.22, 0.56, 0.56, 1.1, 1.1],
  y: [76, 47, 97, 107, 123, 139, 159, 152, 191, 201, 207, 200],
} as const

/** The stack loss of a plant: air flow, water temperature, acid concentration, loss (Brownlee 1965, as in R). */
export const stackLoss: readonly (readonly [number, number, number, number])[] = [
  [80, 27, 89, 42],
  [80, 27, 88, 37],
  [75, 25, 90, 37],
  [62, 24, 87, 28],
  [62, 22, 87, 18],
  [62, 23, 87, 18],
  [62, 24, 93, 19],
  [62, 24, 93, 20],
  [58, 23, 87, 15],
  [58, 18, 80, 14],
  [58, 18, 89, 14],
  [58, 17, 88, 13],
  [58, 18, 82, 11],
  [58, 19, 93, 12],
  [50, 18, 89, 8],
  [50, 18, 86, 7],
  [50, 19, 72, 8],
  [50, 19, 79, 8],
  [50, 20, 80, 9],
  [56, 20, 82, 15],
  [70, 20, 91, 15],
]
