import type { Values } from './speaking.ts'

export const section = {
  title: { front: 'Across the front roller', rear: 'Across the rear roller' },
  roller: 'Cut along',
  places: { front: 'the front roller', rear: 'the rear roller' },
  carried: ({ lands, below, mat }: Values<'lands' | 'below' | 'mat'>) =>
    `Lands are ${lands} of its face: turf straight below them carries ${below} of the load, the mat that hangs between them ${mat}.`,
  touching: ({ lands, below }: Values<'lands' | 'below'>) =>
    `Lands are ${lands} of its face: turf straight below them carries ${below} of the load; the rest has reached the floor of the grooves.`,
  noMat: ({ lands, below }: Values<'lands' | 'below'>) =>
    `Lands are ${lands} of its face and carry ${below} of the load: this turf does not spread load sideways.`,
  smooth: ({ pressure, sinkage }: Values<'pressure' | 'sinkage'>) =>
    `A smooth face presses evenly: ${pressure} all along its lowest line, ${sinkage} down.`,
  note: ({ scale }: Values<'scale'>) =>
    `Cut along the axis at the lowest line of the roller; widths to scale, ${scale}. Dotted lines carry the land edges down.`,
  scale: (times: string) => (times === '1' ? 'depths as well' : `depths ×${times}`),
  broken: 'The grooves are broken off: they are as deep as the number says.',
  track: (depth: string) =>
    `It runs in the track of the front roller: pressures are those of fresh turf, ${depth} less deep.`,
  table: {
    caption: 'Across the grooves, at the lowest line',
    quantity: 'quantity',
    value: 'value',
    unit: 'unit',
    load: 'load on the roller',
    sinkage: 'sinkage of the lands',
    pressure: 'pressure under the lands',
    meanPressure: 'pressure, mean over a pitch',
    bearing: 'bearing fraction, lowest line',
    wholeBearing: 'bearing fraction, whole roller',
    contactWidth: 'contact width',
    edgeForce: 'line force on each land edge',
    mat: 'depth of the mat in mid-groove',
    relief: 'turf stands up into the groove',
    matPressure: 'pressure in mid-groove',
    pitch: 'pitch',
    land: 'land',
    depth: 'depth of the grooves',
    floor: 'floor of the grooves',
    free: 'free',
    touched: 'touched',
    none: 'no grooves',
  },
}

/** What the section says inside itself. */
export const sectionFigure = {
  title: 'Section across the grooves',
  smoothTitle: 'Section along a smooth face',
  smooth: 'smooth',
  grooved: ({ land, pitch, depth }: Values<'land' | 'pitch' | 'depth'>) =>
    `grooved: land ${land} of ${pitch}, ${depth} deep`,
  turf: 'turf, undisturbed',
  turfShort: 'turf',
  depth: (depth: string) => `${depth} deep`,
  relief: (relief: string) => `stands up ${relief}`,
  floor: (by: string) => `on the floor, ${by} down`,
  pressure: 'pressure the turf carries',
  edges: (force: string) => `and ${force} along each land edge`,
  share: 'share that bears',
  bears: (share: string) => `${share} of the pitch bears`,
  all: 'all of it bears',
  land: (land: string) => `land ${land}`,
  gap: (gap: string) => `gap ${gap}`,
  pitch: (pitch: string) => `pitch ${pitch}`,
  depthBar: (length: string, times: string) => (times === '1' ? length : `${length}, ×${times}`),
}

export const sectionWorkings = {
  sectionPressure: 'Pressure under a land, from the law of the turf',
  sectionPitch: 'What one pitch carries: the turf below the land, and what hangs on its two edges',
  sectionBearing: 'So much of a smooth face would carry the same at this depth',
  sectionRelief: 'How far the mat stands up into the groove',
}
