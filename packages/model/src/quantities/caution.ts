import type { QuantityName, UnitSystem } from './catalogue.ts'
import { tell } from './problem.ts'

type Words = { readonly quantity: QuantityName; readonly say: (value: string, limit: string) => string }

/**
 * Every caution a result can carry: the quantity it is told in and its English sentence. Other languages keep a
 * table of the same keys.
 */
export const cautionWords = {
  'deep in the arc': {
    quantity: 'ratio',
    say: (value, limit) =>
      `the sinkage is ${value} of the roller's radius; beyond ${limit} the parabola carries noticeably more than the true circle`,
  },
  'steep at the land': {
    quantity: 'ratio',
    say: (value, limit) =>
      `the turf hangs into the groove at a slope of ${value}; beyond ${limit} the model of the mat is stretched`,
  },
  'wide spread under grooves': {
    quantity: 'ratio',
    say: (value, limit) =>
      `the turf spreads load over ${value} of the contact; beyond ${limit} the quick model of a grooved roller may be out by more than 2 %`,
  },
  'grooves while mowing': {
    quantity: 'ratio',
    say: () => 'behind a grooved roller on turf that spreads load the model carries 2 to 9 % too little',
  },
  'large strain': {
    quantity: 'ratio',
    say: (value, limit) =>
      `the sinkage is ${value} of the layer's thickness; beyond ${limit} real layers carry more than the model`,
  },
  'near locking': {
    quantity: 'ratio',
    say: (value, limit) =>
      `the sinkage is ${value} of the locking depth; beyond ${limit} the answer hangs on that depth alone`,
  },
  extrapolated: {
    quantity: 'pressure',
    say: (value, limit) =>
      `the turf's law is known up to ${limit}; it is pressed with ${value} here, where the law is only continued`,
  },
  'below the fitted pressures': {
    quantity: 'pressure',
    say: (value, limit) =>
      `the turf was fitted to readings from ${limit} up; it is pressed with ${value} here, where the fit is only continued`,
  },
  'corners left out': {
    quantity: 'length',
    say: () =>
      'what turf carries beside the corners of a rectangular plate is left out: the plate carries a little more',
  },
  'height not given': {
    quantity: 'height',
    say: value => `the height of the centre of gravity is not given; the front axle's, ${value}, is taken`,
  },
  'in a track': {
    quantity: 'ratio',
    say: () =>
      'it runs in a track that was pressed before; how that ends sideways, and how grooves lie in it on turf that spreads load, is an estimate',
  },
  'turns about itself': {
    quantity: 'turnRadius',
    say: (value, limit) =>
      `a turn of ${value} has its centre under the roller, which reaches ${limit} to either side: one end runs backwards`,
  },
  'near slipping': {
    quantity: 'ratio',
    say: (value, limit) =>
      `the drag takes up ${value} of what friction holds; beyond ${limit} the roller is about to slide without turning`,
  },
  'cuts into the turf': {
    quantity: 'height',
    say: value => `the cutting edge stands at ${value}, at or below the turf surface: it would scalp`,
  },
} as const satisfies Record<string, Words>

export type CautionKind = keyof typeof cautionWords

/** A mark on a result: it holds, but look before you trust it. */
export type Caution = {
  readonly kind: CautionKind
  readonly value?: number
  readonly limit?: number
  readonly where?: string
}

export function cautionSentence({ kind, value, limit, where }: Caution, system: UnitSystem): string {
  const words: Words = cautionWords[kind]
  const say = (number: number | undefined) =>
    number === undefined ? '' : tell(number, words.quantity, system)
  const text = words.say(say(value), say(limit))
  return where ? `${where}: ${text}` : text
}
