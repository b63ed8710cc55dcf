import { gaussLegendre } from '../../../packages/model/src/numerics/index.ts'

/**
 * Rigid frictionless cylinder on a linear elastic layer bonded to a rigid base, plane strain, small strain, in units of
 * the half contact: a = 1, R = 1, E* = 1. The Fourier kernel of the layer is exact; the pressure is
 * √(1 − t²) Σ c_m U_2m(t), its half-space part taken by Tricomi's inversion, the rest, which dies as e^(−2kh), by
 * quadrature. The same mathematics as test/reference/generate/elastic_layer.py, written again.
 */
export type OnLayer = {
  /** P R/(E* a²). */
  readonly load: number
  /** δ R/a². */
  readonly sinkage: number
}

/** Surface depth under a wave of pressure of wave number k: 2 L(kh)/(E* k). */
function layerKernel(kh: number, poisson: number): number {
  const kappa = 3 - 4 * poisson
  const e2 = Math.exp(-2 * kh)
  const e4 = e2 * e2
  return (kappa * (1 - e4) - 4 * kh * e2) / (kappa * (1 + e4) + (4 * kh * kh + 1 + kappa * kappa) * e2)
}

/** J_n(x) for n up to `most`, by Miller's backward recurrence, normalised by J₀ + 2 Σ J_2k = 1. */
function besselsUpTo(most: number, x: number): Float64Array {
  const start = 2 * Math.ceil((Math.max(most, x) + 12 * Math.cbrt(Math.max(x, 1)) + 40) / 2)
  const out = new Float64Array(most + 1)
  let after = 0
  let here = 1e-300
  let sum = 0
  for (let n = start; n > 0; n--) {
    const before = ((2 * n) / x) * here - after
    after = here
    here = before
    if (n - 1 <= most) out[n - 1] = here
    if ((n - 1) % 2 === 0) sum += (n === 1 ? 1 : 2) * here
    if (Math.abs(here) > 1e250) {
      here *= 1e-250
      after *= 1e-250
      sum *= 1e-250
      for (let i = 0; i <= most; i++) out[i]! *= 1e-250
    }
  }
  return out.map(value => value / sum)
}

/** Solves A x = b in place, with row exchanges. */
function solve(A: Float64Array[], b: Float64Array): Float64Array {
  const n = b.length
  for (let k = 0; k < n; k++) {
    let pivot = k
    for (let i = k + 1; i < n; i++) if (Math.abs(A[i]![k]!) > Math.abs(A[pivot]![k]!)) pivot = i
    ;[A[k], A[pivot]] = [A[pivot]!, A[k]!]
    ;[b[k], b[pivot]] = [b[pivot]!, b[k]!]
    for (let i = k + 1; i < n; i++) {
      const factor = A[i]![k]! / A[k]![k]!
      for (let j = k; j < n; j++) A[i]![j]! -= factor * A[k]![j]!
      b[i]! -= factor * b[k]!
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) b[i]! -= A[i]![j]! * b[j]!
    b[i]! /= A[i]![i]!
  }
  return b
}

const { nodes, weights } = gaussLegendre(24)
/** Beyond this kh the layer is a half-space to 1e-38. */
const DEAD = 45

export function onBondedLayer(contactOverThickness: number, poisson: number, terms = 18): OnLayer {
  const h = 1 / contactOverThickness
  const end = DEAD / h
  const panels = Math.max(16, Math.ceil(end / 4))
  const orders = Array.from({ length: terms }, (_, m) => 2 * m + 1)
  const places = orders.map((_, i) => Math.cos((Math.PI * (2 * i + 1)) / (4 * terms)))
  const A = places.map(x => Float64Array.from(orders, n => -2 * Math.cos(n * Math.acos(x))))
  const sagging = new Float64Array(terms)
  for (let panel = 0; panel < panels; panel++)
    for (let q = 0; q < nodes.length; q++) {
      const k = ((panel + nodes[q]!) * end) / panels
      const weight = (weights[q]! * end) / panels
      const L = layerKernel(k * h, poisson)
      const J = besselsUpTo(2 * terms, k)
      orders.forEach((n, m) => {
        const transform = ((-1) ** m * Math.PI * n * J[n]!) / k
        places.forEach((x, i) => {
          A[i]![m]! += (2 / Math.PI) * weight * Math.sin(x * k) * (1 - L) * transform
        })
        sagging[m]! += (2 / Math.PI) * ((weight * (L - 1 + Math.exp(-k * h))) / k) * transform
      })
    }
  const c = solve(
    A,
    Float64Array.from(places, x => -x),
  )
  const T = Math.asinh(h)
  let sinkage = 0
  orders.forEach((n, m) => {
    const first = n === 1 ? T : (1 - Math.exp(-(n - 1) * T)) / (n - 1)
    const second = (1 - Math.exp(-(n + 1) * T)) / (n + 1)
    sinkage += c[m]! * ((-1) ** m * (first + second) + sagging[m]!)
  })
  return { load: (Math.PI / 2) * c[0]!, sinkage }
}

/** Modulus of a layer that cannot widen, over E* = E/(1 − ν²). */
export const confined = (poisson: number): number =>
  ((1 - poisson) * (1 - poisson ** 2)) / ((1 + poisson) * (1 - 2 * poisson))
