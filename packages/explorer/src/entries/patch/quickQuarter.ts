import { acrossGrooves, pressureAt, spreadAt } from '@swardsink/model'
import type { PatchSpec } from '../../figures/index.ts'
import type { PatchResult } from './kind.ts'

type Quarter = PatchSpec['quarter']

const ROWS = 40
const HALF_LAND = 8
const HALF_GAP = 10
/** Beyond the contact, against its length. */
const BEYOND = 1.3

/** Depth of the mat at a place across, read off the model's profile; outside it, its ends. */
function depthAt(
  profile: readonly { readonly position: number; readonly sinkage: number }[],
  place: number,
): number {
  const next = profile.findIndex(point => point.position >= place)
  const [before, after] = [profile[next - 1], profile[next]]
  if (next < 0) return profile.at(-1)?.sinkage ?? 0
  if (!before || !after) return profile[0]?.sinkage ?? 0
  const part = (place - before.position) / (after.position - before.position || 1)
  return before.sinkage + part * (after.sinkage - before.sinkage)
}

/**
 * What the quick model says of a contact, on lines as the full solution has them: across the grooves strip by strip,
 * each as deep as the arc of the roller presses it. Drawn while there is no full solution yet.
 */
export function quickQuarter({ roller, turf, quick }: PatchResult): Quarter {
  const { surface, diameter } = roller
  const { sinkage, lengthAhead: end } = quick
  const grooves =
    surface.kind === 'grooved' && surface.depth > 0 && surface.land < surface.pitch ? surface : null
  const along = Array.from({ length: ROWS + 1 }, (_, i) => (end * BEYOND * i) / ROWS)
  const across = grooves ? linesAcross(grooves) : [0]
  const half = grooves ? grooves.land / 2 : 0
  const rows = along.map(place => {
    const depth = sinkage - place ** 2 / diameter
    if (place > end || depth <= 0) return { force: 0, cells: across.map(() => ({ pressure: 0, depth: 0 })) }
    const pressed = pressureAt(turf.law, depth)
    const strip = grooves && acrossGrooves({ surface: grooves, turf, sinkage: depth })
    return {
      force: strip?.edgeForce ?? 0,
      cells: across.map(at =>
        strip && at > half ? { pressure: 0, depth: depthAt(strip.across, at) } : { pressure: pressed, depth },
      ),
    }
  })
  const length = spreadAt(turf, sinkage)
  const tail = (place: number) => (length > 0 ? Math.exp(-(place - end) / length) : 0)
  const last = rows.findLast((_, i) => (along[i] ?? 0) <= end)
  const cells = rows.flatMap((row, i) => {
    const place = along[i] ?? 0
    if (place <= end) return row.cells
    return row.cells.map((cell, j) => ({ ...cell, depth: (last?.cells[j]?.depth ?? 0) * tail(place) }))
  })
  return {
    along,
    across,
    pressures: cells.map(({ pressure }) => pressure),
    depths: cells.map(({ depth }) => depth),
    outline: {
      land: across.filter(at => at <= half).map(at => ({ along: end, across: at })),
      floor: [],
    },
    edges: { along, force: rows.map(({ force }) => force) },
  }
}

const linesAcross = ({
  land,
  pitch,
}: {
  readonly land: number
  readonly pitch: number
}): readonly number[] => [
  ...Array.from({ length: HALF_LAND + 1 }, (_, i) => (land / 2) * (i / HALF_LAND)),
  ...Array.from({ length: HALF_GAP }, (_, i) => land / 2 + ((pitch - land) / 2) * ((i + 1) / HALF_GAP)),
]
