import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { patch, type Roller } from '@swardsink/model'
import { arcOf } from '../../packages/model/src/contact/arc.ts'
import { nested } from '../../packages/model/src/contact/patch/nested.ts'
import { quarterCell } from '../../packages/model/src/contact/patch/quarterCell.ts'
import { curveOf, shearOf, spreadAt } from '../../packages/model/src/turf/index.ts'
import type { Job, Timing } from './measure.ts'

const mm = 1e-3
const softness = 0.6 * mm
const lockingDepth = 6 * mm
const spread = 2 * mm
const sinkage = 0.9 * mm
const surface = { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 5 * mm } as const
const roller: Roller = { mass: 5.4, diameter: 58 * mm, length: 0.55, surface }
const turf = { law: { kind: 'stiffening', softness, lockingDepth } as const, spread }
const radius = roller.diameter / 2
const CELLS = 256
/** Solutions of one run of the peer: its start costs about as much as a tenth of one. */
const PEER_RUNS = 8

/** The same mat as the peer's, without what the public function tells about it. */
function solve() {
  const obstacle = {
    curve: curveOf(turf.law),
    shear: shearOf(turf),
    radius,
    arc: arcOf('parabola'),
    sinkage,
    depth: surface.depth,
  }
  const [mat] = nested(obstacle, quarterCell(obstacle, surface, spreadAt(turf, sinkage), CELLS))
  return mat!
}

/** The peer, compiled where there is a compiler; nothing where there is none. */
function compiledPeer(): string | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'swardsink-'))
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }))
  const program = join(folder, 'patch')
  const source = resolve('test/bench/patch.c')
  const made = ['cc', 'gcc'].some(
    compiler => spawnSync(compiler, ['-O2', '-o', program, source, '-lm']).status === 0,
  )
  return made ? program : undefined
}

const peer = compiledPeer()

function runPeer(program: string, repeats: number): { readonly load: number; readonly cycles: number } {
  const { pitch, land, depth } = surface
  const numbers = [CELLS, repeats, softness, lockingDepth, spread, radius, pitch, land, depth, sinkage]
  const { stdout } = spawnSync(program, numbers.map(String), { encoding: 'utf8' })
  const [load = Number.NaN, cycles = Number.NaN] = stdout.trim().split(' ').map(Number)
  return { load, cycles }
}

const OURS = `patch, mat alone, ${CELLS}²`
const WHOLE = `patch, whole answer, ${CELLS}²`
const PEERS = `patch, mat alone, ${CELLS}², in C`

const once = (run: () => unknown) => () => {
  run()
  return 1
}

export const patchJobs: readonly Job[] = [
  { name: OURS, per: 'patch', run: once(solve) },
  { name: WHOLE, per: 'patch', run: once(() => patch({ roller, turf, sinkage, cells: CELLS })) },
  ...(peer
    ? [
        {
          name: PEERS,
          per: 'patch',
          run: () => {
            runPeer(peer, PEER_RUNS)
            return PEER_RUNS
          },
        },
      ]
    : []),
]

/** Ratio to the peer, and the counts, which no machine changes. */
export function patchReport(timings: readonly Timing[]): string {
  const find = (name: string) => timings.find(timing => timing.name === name)
  const ours = find(OURS)
  const mat = solve()
  const counts = `patch ${CELLS}²: ${mat.cycles} cycles on the finest mesh in ${mat.turns} turns`
  const theirs = find(PEERS)
  if (!ours || !theirs || !peer) return `${counts}; the peer in C is left out: no C compiler here`
  const same = runPeer(peer, 1)
  const ratio = ours.median_us / theirs.median_us
  return `${counts}, ${ratio.toFixed(1)} times the peer in C (${same.cycles} cycles, load off by ${Math.abs(same.load / mat.load - 1).toExponential(1)})`
}
