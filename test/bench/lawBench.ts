import { formulaLaw, type PressureLaw, press, type Roller } from '@swardsink/model'
import { curveOf } from '../../packages/model/src/turf/index.ts'
import type { Job, Timing } from './measure.ts'

const mm = 1e-3
const softness = 0.6 * mm
const lockingDepth = 6 * mm
const stiffness = (10e3 * (1 - softness / lockingDepth)) / softness

const read = await formulaLaw({
  expression: 'k * z / (1 - z / H)',
  values: { k: stiffness, H: lockingDepth },
  deepest: 0.8 * lockingDepth,
})
if (!read.ok) throw new Error(read.problems.map(({ path, expected }) => `${path}: ${expected}`).join('\n'))
const written: PressureLaw = read.law
const builtIn: PressureLaw = { kind: 'stiffening', softness, lockingDepth }
const layered: PressureLaw = {
  kind: 'layered',
  upper: { kind: 'stiffening', softness: 0.4 * mm, lockingDepth: 4 * mm },
  lower: { kind: 'linear', softness: 0.2 * mm },
}
const measured: PressureLaw = {
  kind: 'measured',
  points: [0.2, 0.5, 1, 2, 3.5].map(z => ({ sinkage: z * mm, pressure: (stiffness * z * mm) / (1 - z / 6) })),
}

const roller: Roller = { mass: 6.2, diameter: 58 * mm, length: 0.55, surface: { kind: 'smooth' } }
const standing = { kind: 'standing' } as const
const pressing = (name: string, law: PressureLaw): Job => ({
  name: `press, smooth, ${name}, no spread`,
  per: 'press',
  run: () => {
    const count = 100
    for (let i = 0; i < count; i++) press({ roller, turf: { law }, load: 100 + i, condition: standing })
    return count
  },
})

/** Depths at which the pressures are asked: what one arc asks of a law. */
const depths = Float64Array.from({ length: 64 }, (_, i) => ((i + 0.5) / 64) * 3 * mm)
const pressures = new Float64Array(depths.length)
const REPEATS = 2000

const asked = (name: string, fill: () => void): Job => ({
  name,
  per: 'depth',
  run: () => {
    for (let i = 0; i < REPEATS; i++) fill()
    return REPEATS * depths.length
  },
})

const WRITTEN = 'pressure, written law, depth by depth'
const COLUMN = 'pressure, written law, a column'
const NATIVE = 'pressure, native closure'
const curve = curveOf(written)
const native = (z: number) => (stiffness * z) / (1 - z / lockingDepth)
const each = (pressure: (z: number) => number) => () => {
  for (let i = 0; i < depths.length; i++) pressures[i] = pressure(depths[i]!)
}
const slopes = new Float64Array(depths.length)
const column = () => curve.column?.(depths, depths.length, pressures, slopes)

export const lawJobs: readonly Job[] = [
  pressing('written', written),
  pressing('layered', layered),
  pressing('measured', measured),
  pressing('stiffening again', builtIn),
  asked(WRITTEN, each(curve.pressure)),
  asked(COLUMN, column),
  asked(NATIVE, each(native)),
]

/** The written law against the same law as a native closure, and against the built-in law it spells. */
export function lawReport(timings: readonly Timing[]): string {
  const median = (name: string) => timings.find(timing => timing.name === name)?.median_us ?? Number.NaN
  const pressRatio =
    median('press, smooth, written, no spread') / median('press, smooth, stiffening again, no spread')
  return `written law: ${(median(WRITTEN) / median(NATIVE)).toFixed(0)} times a native closure a depth (${(median(COLUMN) / median(NATIVE)).toFixed(1)} times in a column, with its slope), ${pressRatio.toFixed(1)} times the built-in law a press`
}
