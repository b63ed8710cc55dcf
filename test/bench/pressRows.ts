import { acrossGrooves, press, pressColumn } from '@swardsink/model'
import { beta, randomFrom } from '../../packages/model/src/numerics/index.ts'
import { newLnReading, sideMaker } from '../../packages/model/src/study/uncertainty/sideMaker.ts'
import {
  column,
  even,
  evenly,
  laws,
  lockingDepth,
  mm,
  nativePressure,
  smooth,
  softness,
  standing,
  stiffening,
  sum,
  surface,
} from './cases.ts'
import { type Row, timed } from './measure.ts'
import { type Peers, peerSide } from './peers.ts'
import { sideLoad, sinkageUnder } from './straightforward/side.ts'

const radius = smooth.diameter / 2
const plainRoller = { radius, length: smooth.length }
const REFERENCE = 10e3
/** Random cases that a fast path is set against 64 nodes over. */
const CASES = 10_000

const MANY = 65_536
const loads = column(MANY, i => 100 * (1 + 9 * even(i, 0)))
const softnesses = column(MANY, i => 0.2 * mm + mm * even(i, 1))
const exponents = column(MANY, i => 0.4 + 0.8 * even(i, 2))
const diameters = new Float64Array(MANY).fill(smooth.diameter)
const sinkages = new Float64Array(MANY)

/** The kernel of uncertain heights for one roller: the power law, every number of it another in each. */
function powerKernel(): { pieces: number; value: number } {
  const columns: Record<string, Float64Array> = { softness: softnesses, exponent: exponents }
  const side = sideMaker({ kind: 'power', softness, exponent: 0.8 }, { least: 1e-6, most: 1 })
  const read = side(name => columns[name]!)(diameters)
  const reading = newLnReading()
  const share = 2 * smooth.length
  for (let i = 0; i < MANY; i++) {
    read(i, reading)
    sinkages[i] = Math.exp((Math.log(loads[i]! / share) - reading.lnLoad) / reading.slope)
  }
  return { pieces: MANY, value: sum(sinkages) }
}

/** The closed form as it is written. */
function plainPower(count: number): { pieces: number; value: number } {
  let total = 0
  for (let i = 0; i < count; i++) {
    const n = exponents[i]!
    const C = beta(0.5, n + 1) / 2
    const base =
      (loads[i]! * softnesses[i]! ** n) / (2 * smooth.length * C * REFERENCE * Math.sqrt(2 * radius))
    total += base ** (1 / (n + 0.5))
  }
  return { pieces: count, value: total }
}

const rising = evenly(100, 1000, 256)

/** Columns of 256 loads, each on another softness. */
function columnsOnStiffening(): { pieces: number; value: number } {
  let total = 0
  for (let k = 0; k < MANY / rising.length; k++) {
    const turf = { law: stiffening(0.2 * mm + mm * even(k, 1)) }
    total += sum(pressColumn({ roller: smooth, turf, condition: standing, loads: rising }).sinkages)
  }
  return { pieces: MANY, value: total }
}

/** Thirty loads, over and over. */
const loadOf = (i: number): number => 100 + 10 * (i % 30)

const pressing = (law: keyof typeof laws, count: number) =>
  timed(() => {
    let total = 0
    for (let i = 0; i < count; i++) {
      const pressed = press({
        roller: smooth,
        turf: { law: laws[law] },
        load: loadOf(i),
        condition: standing,
      })
      if (pressed.outcome === 'settled') total += pressed.sinkage
    }
    return { pieces: count, value: total / count }
  })

const plainPressing = (pressure: (z: number) => number, deepest: number) =>
  timed(() => {
    const count = 30
    let total = 0
    for (let i = 0; i < count; i++) total += sinkageUnder(pressure, plainRoller, loadOf(i), deepest)
    return { pieces: count, value: total / count }
  })

/** Greatest miss in load, 64 nodes against what was asked, over random turfs and loads in the stated ranges. */
function worstOf(
  kind: 'power' | 'stiffening',
  solved: (law: { softness: number; second: number }, load: number) => number,
): number {
  const random = randomFrom(7)
  let worst = 0
  for (let i = 0; i < CASES; i++) {
    const s = 0.07 * mm * (5 / 0.07) ** random.uniform()
    const second = kind === 'power' ? 0.2 + 1.8 * random.uniform() : s * (1.5 + 10 * random.uniform())
    const load = 20 * 40 ** random.uniform()
    const z = solved({ softness: s, second }, load)
    if (!(z > 0)) continue
    const pressure =
      kind === 'power'
        ? (depth: number) => REFERENCE * (depth / s) ** second
        : (depth: number) => (REFERENCE * (1 / s - 1 / second) * depth) / (1 - depth / second)
    worst = Math.max(worst, Math.abs((2 * smooth.length * sideLoad(pressure, radius, z)) / load - 1))
  }
  return worst
}

const oneByColumn = (law: Parameters<typeof pressColumn>[0]['turf']['law'], load: number) =>
  pressColumn({ roller: smooth, turf: { law }, condition: standing, loads: [load] }).sinkages[0]!

const across = timed(() => {
  const count = 300
  let total = 0
  for (let i = 0; i < count; i++)
    total += acrossGrooves({
      surface,
      turf: { law: stiffening(), spread: 2 * mm },
      sinkage: (0.5 + i * 0.001) * mm,
    }).bearingFraction
  return { pieces: count, value: total / count }
})

export const pressRows = ({ kernels, scipy }: Peers): readonly Row[] => [
  {
    name: 'kernel: power law, all its numbers varying',
    per: 'load',
    by: {
      ours: timed(powerKernel),
      plain: timed(() => plainPower(MANY)),
      ...peerSide('C', kernels, `power ${MANY}`),
      ...peerSide('scipy', scipy, `power ${MANY}`),
    },
    bar: { most: 1.1, of: 'C' },
    worst: () =>
      worstOf('power', ({ softness: s, second }, load) =>
        oneByColumn({ kind: 'power', softness: s, exponent: second }, load),
      ),
  },
  {
    name: 'kernel: stiffening law, columns of 256 loads',
    per: 'load',
    by: {
      ours: timed(columnsOnStiffening),
      ...peerSide('C', kernels, `stiffening ${MANY}`),
    },
    bar: { most: 1.5, of: 'C' },
    worst: () =>
      worstOf('stiffening', ({ softness: s, second }, load) =>
        oneByColumn({ kind: 'stiffening', softness: s, lockingDepth: second }, load),
      ),
  },
  {
    name: 'kernel: formula law, a column of 4,096 loads',
    per: 'load',
    by: {
      ours: timed(() => {
        const pressed = pressColumn({
          roller: smooth,
          turf: { law: laws.formula },
          condition: standing,
          loads: loads.subarray(0, 4096),
        })
        return { pieces: 4096, value: sum(pressed.sinkages) }
      }),
    },
    bar: { most: 8, of: 'row', row: 'kernel: stiffening law, columns of 256 loads' },
  },
  {
    name: 'press, power law',
    per: 'press',
    by: {
      ours: pressing('power', 3000),
      plain: plainPressing(z => REFERENCE * (z / softness) ** 0.8, 0.1),
    },
  },
  {
    name: 'press, stiffening law',
    per: 'press',
    by: {
      ours: pressing('stiffening', 3000),
      plain: plainPressing(nativePressure(softness), 0.99 * lockingDepth),
      ...peerSide('scipy', scipy, 'stiffening 30'),
    },
  },
  { name: 'press, layered law', per: 'press', by: { ours: pressing('layered', 900) } },
  {
    name: 'press, formula law',
    per: 'press',
    by: {
      ours: pressing('formula', 600),
      plain: plainPressing(nativePressure(softness), 0.95 * lockingDepth),
    },
    bar: { most: 8, of: 'row', row: 'press, stiffening law' },
  },
  { name: 'press, measured law', per: 'press', by: { ours: pressing('measured', 900) } },
  { name: 'acrossGrooves, stiffening law', per: 'sinkage', by: { ours: across } },
]
