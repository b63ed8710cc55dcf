type Question = {
  readonly pressure: (depth: number) => number
  readonly shear: number
  readonly radius: number
  readonly sinkage: number
  /** Depth at which the mat rests far ahead. */
  readonly rest: number
  readonly cells: number
}

/** Far enough for a mat to come to rest: this many contact lengths. */
const FAR = 6
const STEP = 1e-6

/**
 * Load of one side of a roller on a mat, G u″ = p(u) by finite differences with the roller as an obstacle: the total of
 * the pressure, under the roller and ahead of it. Knows nothing of first integrals.
 */
export function loadOfHangingMat({ pressure, shear, radius, sinkage, rest, cells }: Question): number {
  const end = FAR * Math.sqrt(2 * radius * (sinkage - rest))
  const h = end / cells
  const roller = Array.from({ length: cells + 1 }, (_, i) => sinkage - (i * h) ** 2 / (2 * radius))

  /** The free mat from node m, held on the roller there, to the far end, by Newton's method. */
  function freeFrom(m: number): number[] {
    const u = roller.map((z, i) =>
      i <= m ? z : rest + (roller[m]! - rest) * Math.exp((-3 * (i - m)) / (cells / FAR)),
    )
    u[cells] = rest
    for (let turn = 0; turn < 200; turn++) {
      // tridiagonal solve of the linearised equation
      const c: number[] = []
      const d: number[] = []
      for (let i = m + 1; i < cells; i++) {
        const here = u[i]!
        const slope =
          (pressure(here + STEP * sinkage) - pressure(here - STEP * sinkage)) / (2 * STEP * sinkage)
        const k = shear / (h * h)
        const diagonal = -2 * k - slope
        const right = -(k * (u[i - 1]! - 2 * here + u[i + 1]!) - pressure(here))
        const before = c.at(-1) ?? 0
        const w = diagonal - (i === m + 1 ? 0 : k * before)
        c.push(k / w)
        d.push((right - (i === m + 1 ? 0 : k * d.at(-1)!)) / w)
      }
      let step = 0
      let largest = 0
      for (let i = cells - 1; i > m; i--) {
        step = d[i - m - 1]! - (i === cells - 1 ? 0 : c[i - m - 1]! * step)
        u[i] = Math.max(rest, u[i]! + step)
        largest = Math.max(largest, Math.abs(step))
      }
      if (largest < 1e-12 * sinkage) break
    }
    return u
  }

  // the mat leaves where it would otherwise cut into the roller: the first node from which it stays outside
  let low = 0
  let high = Math.floor(cells / FAR)
  while (high - low > 1) {
    const m = Math.floor((low + high) / 2)
    const u = freeFrom(m)
    if (u[m + 1]! < roller[m + 1]!) low = m
    else high = m
  }
  const u = freeFrom(high)
  // between nodes the mat leaves somewhere: trapezoids are as good as the mesh
  return u.reduce((sum, depth, i) => sum + (i === 0 ? 0.5 : 1) * h * pressure(depth), 0)
}
