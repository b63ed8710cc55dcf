import {
  acrossGrooves,
  compareRollers,
  type PressureLaw,
  press,
  type Roller,
  settle,
  sinkageMap,
  type Unit,
  withSoftness,
} from '@swardsink/model'
import { lawJobs, lawReport } from './lawBench.ts'
import { interleaved, type Job, type Timing } from './measure.ts'
import { patchJobs, patchReport } from './patchBench.ts'

const mm = 1e-3
const smooth: Roller = { mass: 6.2, diameter: 58 * mm, length: 0.55, surface: { kind: 'smooth' } }
const grooved: Roller = {
  ...smooth,
  mass: 5.4,
  surface: { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 5 * mm },
}
const discs: Roller = {
  ...smooth,
  mass: 4.6,
  surface: { kind: 'grooved', pitch: 32 * mm, land: 7 * mm, depth: 9 * mm },
}
const unit: Unit = {
  wheelbase: 0.19,
  edge: 0.105,
  benchHeight: 3.4 * mm,
  frontRoller: grooved,
  rearRoller: { ...smooth, mass: 4.3, diameter: 51 * mm },
  body: { mass: 18.3, at: 0.09, height: 0.07 },
}
const laws: PressureLaw[] = [
  { kind: 'linear', softness: 0.6 * mm },
  { kind: 'power', softness: 0.6 * mm, exponent: 0.8 },
  { kind: 'stiffening', softness: 0.6 * mm, lockingDepth: 6 * mm },
  { kind: 'logarithmic', softness: 0.6 * mm, lockingDepth: 6 * mm },
]
const turf = { law: laws[2]!, spread: 2 * mm }
const standing = { kind: 'standing' } as const

const evenly = (low: number, high: number, count: number) =>
  Float64Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1))
const logarithmically = (low: number, high: number, count: number) =>
  evenly(Math.log(low), Math.log(high), count).map(Math.exp)

const pageMap = (side: number, of: Unit = unit) =>
  sinkageMap({
    unit: of,
    turf,
    condition: standing,
    quantity: 'sinkage',
    masses: evenly(2, 10, side),
    softnesses: logarithmically(0.04 * mm, 2 * mm, side),
  })

/** Cells of the page's map by settle, a sample spread over it. */
function oneByOne(): number {
  const masses = evenly(2, 10, 12)
  const softnesses = logarithmically(0.04 * mm, 2 * mm, 12)
  for (const softness of softnesses)
    for (const mass of masses)
      settle({
        unit: { ...unit, frontRoller: { ...grooved, mass } },
        turf: withSoftness(turf, softness),
        condition: standing,
      })
  return masses.length * softnesses.length
}

const times = (count: number, one: (i: number) => unknown) => () => {
  for (let i = 0; i < count; i++) one(i)
  return count
}

const jobs: Job[] = [
  ...laws.map(law => ({
    name: `press, smooth, ${law.kind}, no spread`,
    per: 'press',
    run: times(1000, i => press({ roller: smooth, turf: { law }, load: 100 + i * 0.1, condition: standing })),
  })),
  ...laws.map(law => ({
    name: `press, smooth, ${law.kind}, spread`,
    per: 'press',
    run: times(500, i =>
      press({ roller: smooth, turf: { law, spread: 2 * mm }, load: 100 + i * 0.1, condition: standing }),
    ),
  })),
  ...laws.map(law => ({
    name: `press, grooved, ${law.kind}, spread`,
    per: 'press',
    run: times(50, i =>
      press({ roller: grooved, turf: { law, spread: 2 * mm }, load: 100 + i, condition: standing }),
    ),
  })),
  {
    name: 'across the grooves, stiffening',
    per: 'sinkage',
    run: times(500, i => acrossGrooves({ surface: grooved.surface, turf, sinkage: (0.5 + i * 0.001) * mm })),
  },
  {
    name: 'settle, grooved on stiffening turf',
    per: 'unit',
    run: times(50, i =>
      settle({
        unit: { ...unit, frontRoller: { ...grooved, mass: 4 + i * 0.05 } },
        turf,
        condition: standing,
      }),
    ),
  },
  {
    name: 'compare three rollers',
    per: 'roller',
    run: () =>
      compareRollers({ unit, rollers: { smooth, grooved, discs }, turf, condition: standing }).length,
  },
  { name: 'map of the page, cells one by one', per: 'cell', run: oneByOne },
  { name: 'map of the page, 200 × 200', per: 'cell', run: () => pageMap(200).values.length },
  { name: 'map of the page, 48 × 48 draft', per: 'cell', run: () => pageMap(48).values.length },
  {
    name: 'map, smooth rollers, 200 × 200',
    per: 'cell',
    run: () => pageMap(200, { ...unit, frontRoller: smooth }).values.length,
  },
  {
    name: 'map, discs, 200 × 200',
    per: 'cell',
    run: () => pageMap(200, { ...unit, frontRoller: discs }).values.length,
  },
]

const everyJob = [...jobs, ...lawJobs, ...patchJobs]

const US_PER_MS = 1e3

function report(timings: readonly Timing[]): string {
  const find = (name: string) => timings.find(timing => timing.name === name)!
  const single = find('map of the page, cells one by one').median_us
  const width = Math.max(...timings.map(({ name }) => name.length))
  const lines = timings.map(({ name, per, median_us, spread_us, pieces }) => {
    const whole = (median_us * pieces) / US_PER_MS
    const each = `${median_us.toFixed(2).padStart(9)} ± ${spread_us.toFixed(2).padStart(6)} µs a ${per}`
    return `${name.padEnd(width)}  ${each.padEnd(32)}  ${whole.toFixed(1).padStart(7)} ms in all`
  })
  const page = find('map of the page, 200 × 200')
  const draft = find('map of the page, 48 × 48 draft')
  const ms = ({ median_us, pieces }: Timing) => (median_us * pieces) / US_PER_MS
  return [
    ...lines,
    '',
    `map 200 × 200: ${ms(page).toFixed(1)} ms of one thread (bar 100), ${(single / page.median_us).toFixed(0)} times faster than its cells one by one`,
    `map 48 × 48 draft: ${ms(draft).toFixed(1)} ms (bar 16), ${(single / draft.median_us).toFixed(0)} times faster`,
    lawReport(timings),
    patchReport(timings),
  ].join('\n')
}

const timings = interleaved(everyJob)
process.stdout.write(
  process.argv.includes('--json') ? `${JSON.stringify(timings, null, 2)}\n` : `${report(timings)}\n`,
)
