import { counted, type Values } from './speaking.ts'

export const turfs = {
  title: (count: number) => (count === 1 ? 'One green' : `${counted(count)} greens`),
  alone: ({ name, softness, height }: Values<'name' | 'softness' | 'height'>) =>
    `${name} sinks ${softness} under a wide plate at 10 kPa; this unit cuts at ${height} on it.`,
  range: ({
    name,
    softness,
    height,
    low,
    lowName,
    high,
    highName,
  }: Values<'name' | 'softness' | 'height' | 'low' | 'lowName' | 'high' | 'highName'>) =>
    `${name} sinks ${softness} at 10 kPa, and this unit cuts at ${height} on it; lowest it would cut on ${lowName}, at ${low}, and highest on ${highName}, at ${high}.`,
  bottomsOutHere: (name: string) => `On ${name} the turf bottoms out: this unit has no height there.`,
  note: 'One curve a green, whatever presses it; the ring is the lowest line of the front roller on the green in hand. “Cuts”: the height of the unit in hand on that green.',
  caption: 'The greens',
  turf: 'green',
  columns: {
    law: 'law',
    softness: 'softness',
    spread: 'spread',
    rebound: 'rebound',
    effectiveHeight: 'cuts',
  },
  inHand: 'in hand',
  stand: 'stand on it',
  bottomsOut: 'bottoms out',
  later: '…',
  open: (name: string) => `${name}: its numbers`,
  source: (source: string) => `Where its numbers come from: ${source}`,
  typed: 'Its numbers were typed, not fitted to readings.',
  newName: 'new green',
  add: 'add a green',
  law: 'Law',
  lawOf: (layer: string) => `Law of the ${layer}`,
  from: (source: string) => `after ${source}`,
  refused: (law: string) => `A ${law} law cannot be as soft as this green is.`,
  points: 'Measured points',
  tableColumns: { sinkage: 'sinkage', pressure: 'pressure' } as Readonly<Record<string, string>>,
  noNumber: 'A number belongs here.',
  pointsWrong: 'Sinkage and pressure must both grow from row to row.',
  expression: 'Pressure in Pa, worked from',
  expressionNote: 'z is the sinkage in m; named values below; + − × ÷ ^, sqrt, exp, log, tanh and the like',
  values: 'Named values',
  valueName: 'name',
  value: 'value',
  checking: 'being checked',
  kept: 'Until this is put right the green stays as it was.',
}

export const turfsWorkings = {
  turfSoftness: 'Softness is what a wide plate sinks at 10 kPa',
}
