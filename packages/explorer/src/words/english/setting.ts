import type { Values } from './speaking.ts'

export const setting = {
  titles: {
    frontRoller: 'The front roller',
    turf: 'The turf',
    unit: 'The unit, weighed and measured',
    scales: 'The unit, weighed and measured',
    condition: 'Standing or mowing',
    rearRoller: 'The rear roller',
    body: 'The body of the unit',
    cylinder: 'The cylinder',
    wantedHeight: 'The height wanted',
    rollers: 'Rollers of the rack',
    turfs: 'The greens',
    loads: 'What the unit carries',
  } as Readonly<Record<string, string>>,
  smooth: (pressure: string) => `It bears on the whole of its face, with ${pressure} at the lowest line.`,
  grooved: ({ lands, bears, relief }: Values<'lands' | 'bears' | 'relief'>) =>
    `Lands are ${lands} of its face; at this depth it carries ${bears} of what a smooth one would, and turf stands ${relief} up into the grooves.`,
  full: ({ lands, bears }: Values<'lands' | 'bears'>) =>
    `Lands are ${lands} of its face; turf has reached the floor of the grooves, and it carries ${bears} of what a smooth one would.`,
  locking: ({ sinkage, share, lockingDepth }: Values<'sinkage' | 'share' | 'lockingDepth'>) =>
    `The front roller is ${sinkage} down: ${share} of the ${lockingDepth} at which this turf locks.`,
  notLocking: (sinkage: string) => `The front roller is ${sinkage} down.`,
  weighed: ({ front, total, share }: Values<'front' | 'total' | 'share'>) =>
    `The front roller carries ${front} of ${total}: ${share} of the weight.`,
  standing: ({ now, other }: Values<'now' | 'other'>) =>
    `Standing it would cut at ${now}; mowing, at ${other}.`,
  mowing: ({ now, other }: Values<'now' | 'other'>) =>
    `Mowing it cuts at ${now}; standing, it would at ${other}.`,
}
