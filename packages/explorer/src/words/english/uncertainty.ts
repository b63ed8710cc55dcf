import type { Values } from './speaking.ts'

type Said = Readonly<Record<string, string>>

export const uncertainty = {
  title: 'What the height may be',
  inputs: {
    softness: 'softness of the turf',
    benchHeight: 'setting on the bench',
    'frontRoller.mass': 'mass of the front roller',
    'scales.front': 'scales, in front',
    'scales.rear': 'scales, at the rear',
    fit: 'the turf, as fitted',
  } as Said,
  found: ({ low, high }: Values<'low' | 'high'>) => `95 of 100 such units cut between ${low} and ${high}`,
  about: ({ low, high }: Values<'low' | 'high'>) =>
    `About 95 of 100 such units cut between ${low} and ${high}`,
  mostly: ({ what, share }: Values<'what' | 'share'>) => `${what} alone makes ${share} of that scatter.`,
  wanted: ({ within, height, tolerance }: Values<'within' | 'height' | 'tolerance'>) =>
    `${within} cut within ${tolerance} of the ${height} wanted.`,
  alike: 'All such units cut alike: nothing that scatters moves the height.',
  unanswered: ({ share, why }: Values<'share' | 'why'>) =>
    `${share} of the draws have no answer (${why}) and are left out.`,
  reasons: {
    'not possible': 'they make no unit or no turf',
    'would tip': 'the unit would tip',
    'bottomed out': 'the turf bottoms out',
    'not converged': 'no answer was found',
  } as Said,
  scalps: (share: string) => `${share} cut into the turf.`,
  note: ({ draws, seed }: Values<'draws' | 'seed'>) =>
    `${draws} units drawn at random, started from ${seed}: the same again each time. How far each thing scatters is said here, not measured, unless it comes from a fit.`,
  noteLines: 'Told from straight lines through the case in hand, until the draws have come.',
  noWanted: 'No wanted height is set.',
  settings: 'How far each scatters',
  table: {
    caption: 'Heights, and what they hang on',
    what: 'what',
    value: 'value',
    unit: 'unit',
    quantile: (percent: string) => `${percent} cut lower than`,
    deviation: 'standard deviation',
    nominal: 'as it stands',
    within: 'within the tolerance',
    below: 'below it',
    above: 'above it',
    share: (what: string) => `share of the variance: ${what}`,
    together: 'share of the variance: only together',
    effect: (what: string) => `height per standard deviation of: ${what}`,
  },
  edit: {
    fit: 'Turf and its scatter from',
    own: 'the turf in hand',
    set: 'Set of that fit',
    draws: 'Units drawn',
    seed: 'Started from',
  },
}

export const uncertaintySettables: Readonly<
  Record<string, { readonly name: string; readonly note: string }>
> = {
  'uncertainty.softness': { name: 'Softness', note: 'standard deviation, as a part of it' },
  'uncertainty.benchHeight': { name: 'Setting on the bench', note: 'standard deviation' },
  'uncertainty.scales': { name: 'Scales', note: 'off by no more than this, each reading' },
  'uncertainty.rollerMass': { name: 'Mass of the front roller', note: 'standard deviation' },
  'uncertainty.tolerance': { name: 'Tolerance of the wanted height', note: 'to either side' },
}

/** What the figures of a height that scatters say inside themselves. */
export const uncertaintyFigure = ({ unit }: Values<'unit'>) => ({
  title: 'How often each height is cut',
  axis: `height of cut, ${unit}`,
  often: 'the further to the right, the oftener',
  low: (value: string) => `${value}, 2.5 % cut lower`,
  middle: (value: string) => `${value}, half cut lower`,
  high: (value: string) => `${value}, 97.5 % cut lower`,
  present: (value: string) => `${value} as it stands`,
  wanted: ({ height, tolerance }: Values<'height' | 'tolerance'>) => `wanted ${height} ± ${tolerance}`,
  shares: 'Parts of the scatter',
  share: (share: number) => `${share < 0.005 ? '< 1' : Math.round(100 * share)}\u202f%`,
  together: 'only together',
})

export const uncertaintyWorkings = {
  uncertaintyNominal: 'The height as it stands',
  uncertaintyStep: 'What one standard deviation of this does to it',
  uncertaintyLines: 'Together, along straight lines',
  uncertaintyDraws:
    'Heights of many units with everything drawn at random: how many, and what the draws were started from',
}

export const uncertaintyReasons = {
  'uncertainty of nothing': () => 'Nothing scatters: say how far something does, or name a fit.',
  'uncertainty lacks a fit': () => 'The fit that is named has no turf yet.',
  'uncertainty of no fit': () =>
    'The readings of that fit do not tell how sure its turf is: there is nothing to scatter.',
  'uncertainty without draws': () =>
    'None of the units drawn has an answer: they scatter too far, or the turf bottoms out.',
} satisfies Readonly<Record<string, (values: Said) => string>>
