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
