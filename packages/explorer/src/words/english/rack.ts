import { counted, type Values } from './speaking.ts'

export const surfaces = {
  smooth: 'smooth',
  grooved: ({ land, pitch }: Values<'land' | 'pitch'>) => `land ${land} of ${pitch}`,
  fitted: 'fitted',
}

export const rack = {
  titles: {
    front: (count: number) => `${counted(count)} rollers on this unit, on this green`,
    rear: (count: number) => `${counted(count)} rollers at the rear of this unit, on this green`,
  },
  position: 'Changed',
  positions: { front: 'the front roller', rear: 'the rear roller' },
  lowest: ({ bench, name, by, wanted, set }: Values<'bench' | 'name' | 'by' | 'wanted' | 'set'>) =>
    `With the bench left at ${bench}, ${name} cuts lowest, ${by} below the one fitted; to cut ${wanted} with it, set ${set} on the bench.`,
  lowestCannot: ({ bench, name, by, wanted }: Values<'bench' | 'name' | 'by' | 'wanted'>) =>
    `With the bench left at ${bench}, ${name} cuts lowest, ${by} below the one fitted; no bench height makes it cut as low as ${wanted}.`,
  fittedLowest: ({ bench, name, by }: Values<'bench' | 'name' | 'by'>) =>
    `With the bench left at ${bench}, none cuts lower than the one fitted; ${name} cuts highest, by ${by}.`,
  allAlike: 'All of them cut at the same height.',
  note: 'Pressure: under a land, at the lowest line. Set to hold: the bench height, measured with that roller fitted, that keeps the cut of the fitted one.',
  caption: 'The rack, compared',
  roller: 'roller',
  columns: {
    mass: 'mass',
    load: 'load',
    sinkage: 'sinks',
    pressure: 'pressure',
    relief: 'turf stands up',
    benchHeight: 'set to hold',
    change: 'change',
    effectiveHeight: 'cuts',
    sliding: 'slides',
  },
  sort: (column: string) => `Sort by ${column}`,
  within: (tolerance: string) => `shaded: within ${tolerance} of the one fitted`,
  fit: 'fit it',
  touching: 'full',
  noGrooves: 'no grooves',
  bottomsOut: 'bottoms out',
  cannotHold: 'cannot',
  notKnown: 'not known',
  slidingNote: (radius: string) => `Slides: at the ends of its sections, on a turn of ${radius}.`,
}

/** What the dot plot says inside itself. */
export const rackFigure = { axis: (unit: string) => `effective height, ${unit}` }

export const rackSettables = {
  'rack.headlandRadius': { name: 'Radius of a headland turn', note: '0 leaves sliding out' },
} as Readonly<Record<string, { readonly name: string; readonly note: string }>>

export const rackWorkings = {
  hold: 'Bench height that holds the wanted cut, with that roller fitted',
  adjust: 'From the old setting the adjuster gives',
}
