import type { Values } from './speaking.ts'

export const settables = {
  'frontRoller.mass': { name: 'Mass of the front roller', note: '' },
  'frontRoller.diameter': { name: 'Diameter', note: 'over the lands' },
  'frontRoller.length': { name: 'Length of the face', note: '' },
  'frontRoller.sections': { name: 'Free sections', note: 'parts that turn on their own' },
  'frontRoller.buildUp': { name: 'Build-up', note: 'what sticks to the face, radial' },
  'frontRoller.runout': { name: 'Runout', note: 'radial, to either side' },
  'frontRoller.surface': { name: 'Surface', note: '' },
  'frontRoller.pitch': { name: 'Pitch', note: 'land and gap together' },
  'frontRoller.land': { name: 'Land', note: 'width that touches first' },
  'frontRoller.depth': { name: 'Depth of the grooves', note: '' },
  frontRoller: { name: 'Fitted in front', note: '' },
  'rearRoller.mass': { name: 'Mass of the rear roller', note: '' },
  rearRoller: { name: 'Fitted behind', note: '' },
  'turf.softness': { name: 'Softness of the turf', note: 'how far a wide plate sinks at 10 kPa' },
  'turf.lockingDepth': { name: 'Locking depth', note: 'where no pressure sinks it further' },
  'turf.spread': { name: 'Spread', note: 'how far it carries past an edge' },
  'turf.exponent': { name: 'Exponent', note: 'below 1: softer the deeper' },
  'turf.rebound': { name: 'Rebound', note: 'part of the sinkage that is back at once' },
  'turf.lasting': { name: 'Lasting', note: 'part that stays for good' },
  'turf.recoveryTime': { name: 'Recovery time', note: 'of what comes back slowly' },
  'turf.thickness': { name: 'Thickness of the soft layer', note: 'for cautions only' },
  turf: { name: 'Green', note: '' },
  'scales.total': { name: 'Whole unit on the scales', note: '' },
  'scales.front': { name: 'Front roller on the scales', note: 'rear roller on a block of equal height' },
  'scales.rear': { name: 'Rear roller on the scales', note: 'front roller on a block of equal height' },
  'unit.benchHeight': { name: 'Bench height', note: '' },
  'unit.wheelbase': { name: 'Rear axis behind front', note: '' },
  'unit.edge': { name: 'Edge behind front axis', note: '' },
  'unit.slopeAlong': { name: 'Slope along', note: 'positive: the front is higher' },
  'unit.slopeAcross': { name: 'Slope across', note: 'positive: the right side is lower' },
  'unit.hitchHeight': { name: 'Height of the pull', note: 'above the bench line; unless known, at the axes' },
  'unit.edgeLength': { name: 'Length of the edge', note: 'unless given, that of the front roller' },
  'body.mass': { name: 'Mass of the body', note: 'without its rollers' },
  'body.at': { name: 'Its weight acts', note: 'behind the front axis' },
  'body.height': { name: 'Height of its centre of gravity', note: 'above the bench line' },
  'body.offset': { name: 'To the right of the middle', note: '' },
  'cylinder.blades': { name: 'Blades of the cylinder', note: '' },
  'cylinder.turnsPerSecond': { name: 'Cylinder turns', note: '' },
  unit: { name: 'Unit in hand', note: '' },
  condition: { name: 'The unit is', note: '' },
  'condition.speed': { name: 'Speed', note: '' },
  'condition.recovery': { name: 'Turf not yet back at the edge', note: '' },
  wantedHeight: { name: 'Height wanted', note: 'unless given, the one cut now' },
} as Readonly<Record<string, { readonly name: string; readonly note: string }>>

/** The same numbers of a thing that is named beside them. */
export const parts = {
  mass: 'Mass',
  diameter: 'Diameter',
  length: 'Length of the face',
  sections: 'Free sections',
  buildUp: 'Build-up',
  runout: 'Runout',
  surface: 'Surface',
  pitch: 'Pitch',
  land: 'Land',
  depth: 'Depth of the grooves',
  softness: 'Softness',
  lockingDepth: 'Locking depth',
  exponent: 'Exponent',
  spread: 'Spread',
  rebound: 'Rebound',
  lasting: 'Lasting',
  recoveryTime: 'Recovery time',
  thickness: 'Thickness of the soft layer',
  down: 'Presses down',
  forward: 'Pushes forward',
  at: 'Behind the front axis',
  height: 'Above the bench line',
  offset: 'To the right of the middle',
} as Readonly<Record<string, string>>

/** Laws inside a law. */
export const layers = { upper: 'upper layer', lower: 'lower layer' } as Readonly<Record<string, string>>

/** What a number belongs to, where its name alone does not say so. */
export const belonging = {
  rear: 'rear roller',
  layer: ({ layer, of }: Values<'layer' | 'of'>) => (of === '' ? layer : `${layer} of ${of}`),
}

export const options = {
  smooth: 'smooth',
  grooved: 'grooved',
  standing: 'standing',
  mowing: 'mowing',
  counted: 'counts',
  'left out': 'is left out',
} as Readonly<Record<string, string>>

export const control = {
  line: (name: string) => `${name}, on the line`,
  more: (name: string) => `${name}, more`,
  less: (name: string) => `${name}, less`,
  notKnown: 'not known',
  empty: 'no reading',
  unlikely: ({ value, low, high }: Values<'value' | 'low' | 'high'>) =>
    `${value} is taken as typed, but ${low} to ${high} is usual. Is it meant in another unit?`,
}

/** Lists of things that have names: rollers, greens, units. */
export const naming = {
  name: 'Name',
  noName: 'It needs a name.',
  taken: (name: string) => `“${name}” is the name of another one.`,
  add: 'add one',
  copy: (name: string) => `copy ${name}`,
  takeOut: (name: string) => `take out ${name}`,
  inHand: 'in hand',
  close: 'close',
  change: (name: string) => `change ${name}`,
}

export const tableEditor = {
  row: 'row',
  cell: ({ head, row }: Values<'head' | 'row'>) => `${head}, row ${row}`,
  add: 'add a row',
  takeOut: (row: number) => `take out row ${row}`,
  takenOut: (row: number) => `Row ${row} is taken out. “Undo” brings it back.`,
  how: (rows: number) =>
    `${rows === 1 ? '1 row' : `${rows} rows`}. Tab goes along a row; Enter and the arrow keys go from row to row. Several lines pasted from a spreadsheet fill as many rows.`,
  pasted: (rows: number) => (rows === 1 ? 'One row is filled.' : `${rows} rows are filled.`),
  leftOver: (cells: number) =>
    cells === 1
      ? 'One pasted cell had no column to go to and was left out.'
      : `${cells} pasted cells had no column to go to and were left out.`,
  wrong: (count: number) => (count === 1 ? 'One thing is wrong' : `${count} things are wrong`),
  toRow: (row: number) => `row ${row}`,
  more: (count: number) => `and ${count} more`,
}

export const refusals = {
  notANumber: (text: string) =>
    text === ''
      ? 'A number belongs here.'
      : `“${text}” is no number: digits with a point or a comma, and a unit if you like.`,
  moreThanZero: 'This must be more than 0.',
  notNegative: 'This cannot be less than 0.',
  wholeNumber: 'A whole number belongs here, 1 or more.',
  aShare: 'This is a part of the whole: 0 to 1.',
  grooveTooDeep: ({ depth, diameter }: Values<'depth' | 'diameter'>) =>
    `Grooves ${depth} deep leave nothing of a roller of ${diameter}: they must be less than half of it.`,
  lastingAgainstRebound: ({ lasting, rebound }: Values<'lasting' | 'rebound'>) =>
    `Of what the roller sinks, ${rebound} is back at once: ${lasting} more cannot stay for good.`,
  rollersTouch: ({ front, rear, wheelbase }: Values<'front' | 'rear' | 'wheelbase'>) =>
    `Rollers of ${front} and ${rear} would touch: their axes are only ${wheelbase} apart.`,
  landAgainstPitch: ({ land, pitch }: Values<'land' | 'pitch'>) =>
    `A land of ${land} leaves no gap in a pitch of ${pitch}: the land must be narrower.`,
  lockingAgainstSoftness: ({ lockingDepth, softness }: Values<'lockingDepth' | 'softness'>) =>
    `Turf that locks at ${lockingDepth} cannot sink ${softness} at 10 kPa: the locking depth must be more than the softness.`,
  edgeOutside: ({ edge, wheelbase }: Values<'edge' | 'wheelbase'>) =>
    `An edge ${edge} behind the front axis is not between the rollers, which are ${wheelbase} apart.`,
  rollerTooHeavy: ({ where, reading, roller }: Values<'where' | 'reading' | 'roller'>) =>
    `The ${where} would read ${reading}, but the ${where} roller alone weighs ${roller}.`,
}
