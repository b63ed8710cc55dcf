import type { Values } from './speaking.ts'

export const patch = {
  title: { front: 'The contact of the front roller', rear: 'The contact of the rear roller' },
  roller: 'Roller',
  places: { front: 'front', rear: 'rear' },
  cells: 'Cells of a quarter',
  cellsNote: 'each way: more of them take longer and tell more finely',
  begun: ({ sinkage, pressure }: Values<'sinkage' | 'pressure'>) =>
    `By the quick model it sinks ${sinkage} and presses with ${pressure} at most; the full solution has not come yet.`,
  smooth: ({ pressure, sinkage }: Values<'pressure' | 'sinkage'>) =>
    `It presses hardest below its axis, with ${pressure}, where it is ${sinkage} deep.`,
  grooved: ({ pressure, share }: Values<'pressure' | 'share'>) =>
    `Its lands press with ${pressure} at most; ${share} of the load hangs on their edges, where the turf between them pulls.`,
  springs: ({ pressure }: Values<'pressure'>) =>
    `Its lands press with ${pressure} at most; this turf spreads no load, so nothing hangs on their edges.`,
  more: (share: string) =>
    `At the same sinkage the full solution carries ${share} more than the quick model.`,
  less: (share: string) =>
    `At the same sinkage the full solution carries ${share} less than the quick model.`,
  alike: (share: string) => `The quick model carries the same at the same sinkage, within ${share}.`,
  note: ({ error }: Values<'error'>) =>
    `Seen from above, to scale; one groove period of a standing roller, the same again and again along it. Dark presses hardest. For want of finer cells the load may be off by ${error}.`,
  smoothNote: ({ error }: Values<'error'>) =>
    `Seen from above, to scale; a smooth roller presses the same all along it. Dark presses hardest. For want of finer cells the load may be off by ${error}.`,
  quickNote: 'Drawn from the quick model, which bends the turf across the grooves only.',
  still: ({ load, sinkage }: Values<'load' | 'sinkage'>) =>
    `This is still the full solution for ${load}, ${sinkage} deep.`,
  edges: (value: string) =>
    `Upright lines at the land edge: the line force along it, up to ${value}, the same on each edge.`,
  table: {
    caption: 'Pressure along the ground',
    along: 'from below the axis',
    land: 'middle of the land',
    edge: 'edge of the land',
    groove: 'middle of the groove',
    force: 'line force on each edge',
    depth: 'depth under the land',
    depthInGroove: 'depth in the groove',
    pressure: 'pressure',
    free: 'free',
  },
}

/** What the map of a contact says inside itself. */
export const patchFigure = ({
  unit,
  lengthUnit,
  depthUnit,
}: Values<'unit' | 'lengthUnit' | 'depthUnit'>) => ({
  title: 'Pressure under the roller, from above',
  pressure: `pressure, ${unit}`,
  along: `along the ground from below the axis, ${lengthUnit}`,
  land: 'land',
  groove: 'groove',
  smooth: 'the same all along the roller',
  pitch: (value: string) => `pitch ${value}`,
  landWidth: (value: string) => `land ${value}`,
  length: (value: string) => value,
  edge: (value: string) => `up to ${value} on each edge`,
  depth: (times: string) => (times === '1' ? `depth, ${depthUnit}` : `depth, ${depthUnit}, drawn ×${times}`),
  underLand: 'under the land',
  inGroove: 'in the groove',
})

export const patchWorkings = {
  patchQuick: 'The quick model under the same load',
  patchLeast:
    'The surface of the turf, nowhere above the metal, that stores the least: cells of a quarter, and multigrid cycles on the finest mesh',
  patchBalance: 'The sinkage at which the turf answers with this load',
  patchEdges: 'Line force where the turf bends off the land, and the part of the load it carries',
  patchAgainstQuick: 'Against the quick model at the same sinkage',
}
