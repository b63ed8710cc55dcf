import type { Values } from './speaking.ts'

export const sideView = {
  title: 'Set on the bench, cut on the turf',
  bench: 'set on the bench',
  cut: 'cut here',
  sinks: (drop: string) => `The rollers sink, and the cutting edge goes down with them: ${drop}.`,
  sinksAndRecovers: ({ drop, unrecovered, lost }: Values<'drop' | 'unrecovered' | 'lost'>) =>
    `The edge goes down ${drop} with the rollers, but turf still pressed down by ${unrecovered} passes under it: it cuts ${lost} lower than set.`,
  rises: (by: string) => `The turf has not come back when the edge passes: it cuts ${by} higher than set.`,
  condition: { standing: 'Standing.', mowing: (speed: string) => `Mowing at ${speed}.` },
  scale: (times: number) =>
    times === 1
      ? 'Drawn to scale.'
      : `Drawn to scale; heights at the turf, both sinkage and height of cut, ×${times}.`,
  reduced: ({ asked, drawn }: Values<'asked' | 'drawn'>) =>
    `At ${asked} these heights would not go on the page: they are drawn ${drawn}.`,
  invented: 'Unit and green are invented, Ellerby Hollow Turf School.',
  heights: 'Heights',
  factor: (times: number) => `×${times}`,
  table: {
    caption: 'Loads and heights',
    quantity: 'quantity',
    value: 'value',
    unit: 'unit',
    frontLoad: 'load on the front roller',
    rearLoad: 'load on the rear roller',
    frontSinkage: 'sinkage of the front roller',
    rearSinkage: 'sinkage of the rear roller',
    frontPeak: 'pressure under the front roller, lowest line',
    rearPeak: 'pressure under the rear roller, lowest line',
    drop: 'drop of the edge, left / middle / right',
    height: 'effective height, left / middle / right',
  },
}

/** What the drawing says inside itself. */
export const sideViewFigure = {
  title: 'The unit from the side, on turf',
  frontRoller: 'front roller',
  rearRoller: 'rear roller',
  cuttingCylinder: 'cutting cylinder',
  bottomBlade: 'bottom blade',
  edgeLine: ['line of the', 'cutting edge'],
  turf: 'turf',
  bench: 'bench',
  effective: 'effective',
  drop: (value: string) => `${value} drop`,
  body: (load: string) => `body ${load}`,
  load: (name: string, load: string) => `${name} ${load}`,
  heightBar: (length: string, times: number) => (times === 1 ? length : `${length}, ×${times}`),
  handle: {
    edge: 'cutting edge: drag to set the bench height',
    front: 'front roller: drag to set its mass',
    rear: 'rear roller',
    body: 'weight of the body',
  },
}

export const sideViewWorkings = {
  weight: 'Weights share out between the axles by the balance of moments',
  lowestPressure: 'Pressure at the lowest line of the front roller',
  balance: 'It sinks until the turf carries it: mean pressure times contact length is the load per length',
  drop: 'The edge lies between the axles and goes down with both; the tilt adds the last of it',
  height: 'So it cuts at',
}
