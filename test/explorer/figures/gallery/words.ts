import type { SideViewWords } from '../../../../packages/explorer/src/figures/sideWords.ts'

export const sideWords: SideViewWords = {
  title: 'The unit from the side',
  frontRoller: 'front roller',
  rearRoller: 'rear roller',
  cuttingCylinder: 'cutting cylinder',
  bottomBlade: 'bottom blade',
  edgeLine: ['line of the', 'cutting edge'],
  turf: 'turf',
  bench: 'bench',
  effective: 'effective',
  drop: value => `${value} drop`,
  body: load => `body ${load}`,
  load: (name, load) => `${name} ${load}`,
  heightBar: (length, exaggeration) => (exaggeration === 1 ? length : `${length}, ×${exaggeration}`),
  handle: { edge: 'cutting edge', front: 'front axis', rear: 'rear axis', body: 'body' },
}
