import type { Values } from './speaking.ts'

export const settables = {
  'frontRoller.mass': { name: 'Mass of the front roller', note: '' },
  'frontRoller.diameter': { name: 'Diameter', note: 'over the lands' },
  'frontRoller.surface': { name: 'Surface', note: '' },
  'frontRoller.pitch': { name: 'Pitch', note: 'land and gap together' },
  'frontRoller.land': { name: 'Land', note: 'width that touches first' },
  'frontRoller.depth': { name: 'Depth of the grooves', note: '' },
  frontRoller: { name: 'Fitted in front', note: '' },
  'turf.softness': { name: 'Softness of the turf', note: 'how far a wide plate sinks at 10 kPa' },
  'turf.lockingDepth': { name: 'Locking depth', note: 'where no pressure sinks it further' },
  'turf.spread': { name: 'Spread', note: 'how far it carries past an edge' },
  turf: { name: 'Green', note: '' },
  'scales.total': { name: 'Whole unit on the scales', note: '' },
  'scales.front': { name: 'Front roller on the scales', note: 'rear roller on a block of equal height' },
  'unit.benchHeight': { name: 'Bench height', note: '' },
  'unit.wheelbase': { name: 'Rear axis behind front', note: '' },
  'unit.edge': { name: 'Edge behind front axis', note: '' },
  condition: { name: 'The unit is', note: '' },
  'condition.speed': { name: 'Speed', note: '' },
} as Readonly<Record<string, { readonly name: string; readonly note: string }>>

export const options = {
  smooth: 'smooth',
  grooved: 'grooved',
  standing: 'standing',
  mowing: 'mowing',
} as Readonly<Record<string, string>>

export const control = {
  line: (name: string) => `${name}, on the line`,
}

export const refusals = {
  notANumber: (text: string) =>
    text === '' ? 'A number belongs here.' : `“${text}” is no number: digits, and a point or a comma.`,
  moreThanZero: 'This must be more than 0.',
  notNegative: 'This cannot be less than 0.',
  landAgainstPitch: ({ land, pitch }: Values<'land' | 'pitch'>) =>
    `A land of ${land} leaves no gap in a pitch of ${pitch}: the land must be narrower.`,
  lockingAgainstSoftness: ({ lockingDepth, softness }: Values<'lockingDepth' | 'softness'>) =>
    `Turf that locks at ${lockingDepth} cannot sink ${softness} at 10 kPa: the locking depth must be more than the softness.`,
  edgeOutside: ({ edge, wheelbase }: Values<'edge' | 'wheelbase'>) =>
    `An edge ${edge} behind the front axis is not between the rollers, which are ${wheelbase} apart.`,
  rollerTooHeavy: ({ where, reading, roller }: Values<'where' | 'reading' | 'roller'>) =>
    `The ${where} would read ${reading}, but the ${where} roller alone weighs ${roller}.`,
}
