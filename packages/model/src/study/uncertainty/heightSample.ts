import type { Random } from '../../numerics/index.ts'
import type { FitSpread } from './fitSpread.ts'
import type { HeightInput, Parts } from './heightInput.ts'
import { type Layout, latinColumns } from './latinColumns.ts'
import { type Scatter, scatterAbout } from './scatter.ts'

/** An input that varies: by a scatter of its own, as a parameter of the fit, or both. */
export type VariedInput = {
  readonly input: HeightInput
  readonly scatter?: Scatter
  /** Which parameter of the fit it is. */
  readonly fitted?: number
}

/** A height's question as inputs that vary about nominal parts. */
export type Varied = {
  readonly parts: Parts
  /** In the order they are put in. */
  readonly inputs: readonly VariedInput[]
  readonly fit?: FitSpread
}

/** Variates behind one source of scatter: one column, or as many as a fit has parameters. */
export type Source = {
  readonly name: string
  readonly kind: 'normal' | 'uniform' | 'fit'
  readonly columns: readonly Float64Array[]
}

export type HeightSample = {
  readonly layout: Layout
  /** Values of each varied input. */
  readonly values: readonly Float64Array[]
  readonly sources: readonly Source[]
}

/**
 * A standard gamma variate of shape a.
 *
 * Source  Marsaglia and Tsang 2000, ACM Transactions on Mathematical Software 26:363-372; below shape 1 by their
 *         Γ(a) = Γ(a + 1) U^(1/a)
 */
function gammaVariate(random: Random, shape: number): number {
  if (shape < 1) return gammaVariate(random, shape + 1) * random.uniform() ** (1 / shape)
  const d = shape - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const x = random.normal()
    const v = (1 + c * x) ** 3
    if (v > 0 && Math.log(1 - random.uniform()) < (x * x) / 2 + d * (1 - v + Math.log(v))) return d * v
  }
}

/** Normal variates turned into Student's t, all of a draw by the same chance: what is not known of the noise is one number. */
function widen(columns: readonly Float64Array[], degreesOfFreedom: number, random: Random): void {
  const count = columns[0]?.length ?? 0
  for (let i = 0; i < count; i++) {
    const factor = Math.sqrt(degreesOfFreedom / (2 * gammaVariate(random, degreesOfFreedom / 2)))
    for (const column of columns) column[i] = column[i]! * factor
  }
}

/** Values of a parameter of the fit at the variates of all of them. */
function fittedColumn(fit: FitSpread, parameter: number, columns: readonly Float64Array[]): Float64Array {
  const size = fit.names.length
  const centre = fit.values[parameter]!
  const shift = new Float64Array(columns[0]!.length)
  for (let k = 0; k <= parameter; k++) {
    const part = fit.factor[parameter * size + k]!
    const column = columns[k]!
    if (part !== 0) for (let i = 0; i < shift.length; i++) shift[i] = shift[i]! + part * column[i]!
  }
  const inLog = fit.inLog[parameter]!
  for (let i = 0; i < shift.length; i++) shift[i] = inLog ? centre * Math.exp(shift[i]!) : centre + shift[i]!
  return shift
}

/** Draws of everything that varies, laid out in blocks. */
export function drawSample(varied: Varied, layout: Layout, random: Random): HeightSample {
  const { inputs, fit } = varied
  const scattering = inputs.flatMap(({ input, scatter }) => (scatter ? [{ input, scatter }] : []))
  const isUniform = ({ kind }: Scatter) => kind === 'uniform'
  const uniforms = scattering.filter(({ scatter }) => isUniform(scatter)).length
  const columns = latinColumns(random, layout, {
    normal: scattering.length - uniforms + (fit?.names.length ?? 0),
    uniform: uniforms,
  })
  const own = new Map(
    scattering.map(({ input, scatter }): [string, Source] => {
      const kind = isUniform(scatter) ? 'uniform' : 'normal'
      return [input.name, { name: input.name, kind, columns: [columns[kind].shift()!] }]
    }),
  )
  const together = fit ? columns.normal : []
  if (fit && fit.degreesOfFreedom !== null) widen(together, fit.degreesOfFreedom, random)
  const values = inputs.map(({ input, scatter, fitted }) => {
    const column =
      fit && fitted !== undefined
        ? fittedColumn(fit, fitted, together)
        : new Float64Array(layout.blocks * layout.size).fill(input.nominal)
    const source = own.get(input.name)
    if (scatter && source) scatterAbout(column, scatter, source.columns[0]!)
    return column
  })
  return {
    layout,
    values,
    sources: [...own.values(), ...(fit ? [{ name: 'fit', kind: 'fit' as const, columns: together }] : [])],
  }
}
