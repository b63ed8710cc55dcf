import { times, type Values } from './speaking.ts'

export const map = {
  quantities: {
    sinkage: 'Sinkage of the front roller',
    drop: 'Drop of the cutting edge',
    effectiveHeight: 'Effective height of cut',
    peakPressure: 'Pressure under the front roller',
  },
  short: {
    sinkage: 'sinkage',
    drop: 'drop of the edge',
    effectiveHeight: 'effective height',
    peakPressure: 'pressure',
  },
  softnessWins: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
    `Softness moves it further than mass: from ${low} to ${high} it grows ${byMass}-fold; from the firmest turf to the softest, ${bySoftness}-fold.`,
  massWins: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
    `Mass moves it further than softness: from ${low} to ${high} it grows ${byMass}-fold; from the firmest turf to the softest, ${bySoftness}-fold.`,
  ends: ({
    low,
    high,
    lightest,
    heaviest,
    firmest,
    softest,
  }: Values<'low' | 'high' | 'lightest' | 'heaviest' | 'firmest' | 'softest'>) =>
    `From ${low} to ${high} it goes from ${lightest} to ${heaviest}; from the firmest turf to the softest, from ${firmest} to ${softest}.`,
  heights: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
    `From ${low} to ${high} the cut moves by ${byMass}; from the firmest turf to the softest, by ${bySoftness}.`,
  bottoms: (from: string) => `Softer than ${from} this turf bottoms out under the roller: stippled.`,
  times: (value: number) => times(value),
  note: 'The ring is the present case: drag it, click where it should go, or use the arrow keys. Along each line the value stays the same.',
  readingsNote: (count: string) =>
    `Small rings: ${count} readings, each at the mass of its roller and the softness it says.`,
  noneHere: 'At this mass and softness the turf bottoms out.',
  none: 'none',
  quantity: 'Show',
  softness: 'softness',
}

/** What the map says inside itself. */
export const mapFigure = ({
  quantity,
  unit,
  massUnit,
  softnessUnit,
}: Values<'quantity' | 'unit' | 'massUnit' | 'softnessUnit'>) => ({
  title: `${quantity}, over mass and softness`,
  massAxis: `mass of the front roller, ${massUnit}`,
  softnessAxis: `softness of the turf, ${softnessUnit} at 10 kPa`,
  firm: 'firm',
  soft: 'soft',
  contourUnit: unit,
  here: (value: string) => `${value} here`,
  noAnswer: 'no answer here',
  markName: 'The present case: left and right mass, up and down softness',
  markText: (place: { mass: string; softness: string; value: string | null }) =>
    `${place.mass}, softness ${place.softness}: ${place.value ?? 'no answer'}`,
})

export const mapWorkings = {
  sweep: 'Every point of the map is this balance solved for another mass and softness',
}
