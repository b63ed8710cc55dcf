import { press, pressColumn, sinkageMap } from '@swardsink/model'
import { randomFrom } from '../../packages/model/src/numerics/index.ts'
import { GRAVITY } from '../../packages/model/src/quantities/index.ts'
import {
  evenly,
  lockingDepth,
  logarithmically,
  mm,
  nativePressure,
  smooth,
  standing,
  stiffening,
  sum,
} from './cases.ts'
import { type Row, timed } from './measure.ts'
import { type Peers, peerSide } from './peers.ts'
import { sinkageUnder } from './straightforward/side.ts'

/** What a lone roller carries besides itself, N. */
const CARRIED = 60
const CASES = 10_000
const massesOf = (side: number) => evenly(2, 10, side)
const softnessesOf = (side: number) => logarithmically(0.04 * mm, 2 * mm, side)

const mapOf = (side: number) =>
  sinkageMap({
    roller: smooth,
    carried: CARRIED,
    turf: { law: stiffening() },
    condition: standing,
    quantity: 'sinkage',
    masses: massesOf(side),
    softnesses: softnessesOf(side),
  })

const byTable = (side: number) =>
  timed(() => {
    const { values } = mapOf(side)
    return { pieces: values.length, value: sum(values) }
  })

/** Every cell searched for, nothing read off a table. */
const oneByOne = (side: number) =>
  timed(() => {
    const loads = massesOf(side).map(mass => CARRIED + mass * GRAVITY)
    let total = 0
    for (const softness of softnessesOf(side))
      total += sum(
        pressColumn({ roller: smooth, turf: { law: stiffening(softness) }, condition: standing, loads })
          .sinkages,
      )
    return { pieces: side * side, value: total }
  })

const plainly = timed(() => {
  const side = 5
  for (const softness of softnessesOf(side))
    for (const mass of massesOf(side))
      sinkageUnder(
        nativePressure(softness),
        { radius: smooth.diameter / 2, length: smooth.length },
        CARRIED + mass * GRAVITY,
        0.99 * lockingDepth,
      )
  return { pieces: side * side }
})

/** Greatest distance of a cell from press, relative. */
function worstCell(side: number): number {
  const random = randomFrom(3)
  const map = mapOf(side)
  let worst = 0
  for (let k = 0; k < CASES; k++) {
    const at = random.integer(side * side)
    const pressed = press({
      roller: smooth,
      turf: { law: stiffening(map.softnesses[Math.floor(at / side)]!) },
      condition: standing,
      load: CARRIED + map.masses[at % side]! * GRAVITY,
    })
    if (pressed.outcome === 'settled')
      worst = Math.max(worst, Math.abs(map.values[at]! / pressed.sinkage - 1))
  }
  return worst
}

export const mapRows = ({ kernels, scipy }: Peers): readonly Row[] => [
  {
    name: 'kernel: map 256², every cell solved',
    per: 'cell',
    by: {
      ours: oneByOne(256),
      plain: plainly,
      ...peerSide('C', kernels, 'map 256'),
      ...peerSide('scipy', scipy, 'map 256'),
    },
    bar: { most: 16, of: 'ms' },
  },
  {
    name: 'map of a roller, 256² by similarity',
    per: 'cell',
    by: { ours: byTable(256), ...peerSide('C', kernels, 'map 256') },
    worst: () => worstCell(256),
  },
  {
    name: 'map of a roller, 1024² by similarity',
    per: 'cell',
    by: { ours: byTable(1024) },
    bar: { most: 16, of: 'ms' },
    worst: () => worstCell(1024),
  },
]
