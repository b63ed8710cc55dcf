import { patch } from '@swardsink/model'
import { arcOf } from '../../packages/model/src/contact/arc.ts'
import { nested } from '../../packages/model/src/contact/patch/nested.ts'
import { quarterCell } from '../../packages/model/src/contact/patch/quarterCell.ts'
import { curveOf, shearOf, spreadAt } from '../../packages/model/src/turf/index.ts'
import { grooved, mm, stiffening, surface } from './cases.ts'
import { type Row, timed } from './measure.ts'
import { type Peers, peerSide } from './peers.ts'

const turf = { law: stiffening(), spread: 2 * mm }
const sinkage = 0.9 * mm

/** The same mat as the peer's, without what the public function tells about it. */
function solve(cells: number) {
  const obstacle = {
    curve: curveOf(turf.law),
    shear: shearOf(turf),
    radius: grooved.diameter / 2,
    arc: arcOf('parabola'),
    sinkage,
    depth: surface.depth,
  }
  const [mat] = nested(obstacle, quarterCell(obstacle, surface, spreadAt(turf, sinkage), cells))
  return mat!
}

const kernelRow = (cells: number, { patch: peer }: Peers, name: string): Row => ({
  name: `kernel: mat of ${name}`,
  per: 'patch',
  by: {
    ours: timed(() => ({ pieces: 1, value: solve(cells).load })),
    ...peerSide('C', peer, `${cells} 1`),
  },
  ...(cells === 256 ? { bar: { most: 3.5, of: 'C' } as const } : {}),
  counts: () => {
    const { cycles, turns } = solve(cells)
    return `${cycles} V-cycles on the finest mesh, ${turns} turns`
  },
})

export const patchRows = (peers: Peers): readonly Row[] => [
  kernelRow(64, peers, 'one period, 64²'),
  kernelRow(256, peers, 'one period, 256²'),
  kernelRow(512, peers, 'one period, 512²'),
  {
    name: 'patch, all it tells, 256²',
    per: 'patch',
    by: {
      ours: timed(() => {
        patch({ roller: grooved, turf, sinkage, cells: 256 })
        return { pieces: 1 }
      }),
    },
  },
]
