import { counted, type Values } from './speaking.ts'

export const units = {
  title: (count: number) => (count === 1 ? 'The unit' : `${counted(count)} units of one machine`),
  single: 'There is one unit. Copy it to set another of the same machine beside it.',
  alike: ({ count, low, high, tolerance }: Values<'count' | 'low' | 'high' | 'tolerance'>) =>
    `All ${count} cut within ${tolerance} of each other: ${low} to ${high}.`,
  apart: ({ higher, lower, by, tolerance }: Values<'higher' | 'lower' | 'by' | 'tolerance'>) =>
    `Of the units ${higher} cuts highest, ${by} above ${lower}: more than the ${tolerance} that pass for alike.`,
  setTo: ({ name, bench, inHand }: Values<'name' | 'bench' | 'inHand'>) =>
    `With ${bench} on the bench, ${name} would cut as high as ${inHand}.`,
  below: ({ name, inHand }: Values<'name' | 'inHand'>) =>
    `No setting of the bench brings ${name} down to the height of ${inHand}.`,
  unanswered: (name: string) => `For ${name} there is no height: its turf bottoms out.`,
  note: (tolerance: string) =>
    `Heights at the middle of the edge, on this turf, in this condition. Shaded: within ${tolerance} of the unit in hand. Ends: the right end against the left.`,
  caption: 'Units of the machine, side by side',
  unit: 'unit',
  unnamed: 'the unit',
  newName: 'unit 1',
  columns: {
    roller: 'front roller',
    benchHeight: 'bench',
    load: 'front carries',
    drop: 'drop',
    effectiveHeight: 'cuts',
    ends: 'ends',
    toMatch: 'set to match',
  },
  ownRoller: 'not of the rack',
  within: (tolerance: string) => `shaded: within ${tolerance} of the one in hand`,
  inHand: 'in hand',
  take: 'take in hand',
  nowInHand: 'The unit in hand',
  bottomsOut: 'bottoms out',
  belowBench: 'below the bench line',
  pairs: 'Every two of them',
  pair: ({ first, second }: Values<'first' | 'second'>) => `${first} to ${second}`,
  isAlike: 'alike',
  isApart: 'not alike',
}

export const unitsWorkings = {
  unitPair: 'The two that differ most',
  unitToMatch: 'Bench height that makes a unit cut as high as the one in hand',
}
