import { counted, type Values } from './speaking.ts'

export const surfaces = {
  smooth: 'smooth',
  grooved: ({ land, pitch }: Values<'land' | 'pitch'>) => `land ${land} of ${pitch}`,
  fitted: 'fitted',
}

export const rack = {
  title: (count: number) => `${counted(count)} rollers on this unit, on this green`,
  lowest: ({ bench, name, by, wanted, set }: Values<'bench' | 'name' | 'by' | 'wanted' | 'set'>) =>
    `With the bench left at ${bench}, ${name} cuts lowest, ${by} below the one fitted; to cut ${wanted} with it, set ${set} on the bench.`,
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
  },
  sort: (column: string) => `Sort by ${column}`,
  within: (tolerance: string) => `shaded: within ${tolerance} of the one fitted`,
  fit: 'fit it',
  touching: 'full',
  noGrooves: 'no grooves',
  bottomsOut: 'bottoms out',
}

/** What the dot plot says inside itself. */
export const rackFigure = { axis: (unit: string) => `effective height, ${unit}` }

export const rackWorkings = {
  hold: 'Bench height that holds the wanted cut, with that roller fitted',
  adjust: 'From the old setting the adjuster gives',
}
