import { counted, type Values } from './speaking.ts'

export const rollers = {
  title: (count: number) =>
    count === 1 ? 'One roller in the rack' : `${counted(count)} rollers in the rack`,
  fitted: ({ front, rear }: Values<'front' | 'rear'>) => `${front} is fitted in front, ${rear} behind.`,
  frontOnly: (front: string) => `In front is ${front}; the rear roller is not of this rack.`,
  rearOnly: (rear: string) => `Behind is ${rear}; the front roller is not of this rack.`,
  neither: 'Neither roller of the unit in hand is of this rack.',
  inFront: 'In front is',
  buildUp: ({ name, buildUp, raises }: Values<'name' | 'buildUp' | 'raises'>) =>
    `On ${name} there is ${buildUp} of build-up, which raises the cut by ${raises}.`,
  runout: ({ name, rise, every }: Values<'name' | 'rise' | 'every'>) =>
    `${name} runs out of true: the cut goes ${rise} up and down every ${every}.`,
  note: 'Faces cut along the axis, lands down, all to one scale. Build-up and runout are radial: half of what a caliper reads on the diameter.',
  caption: 'The rack',
  roller: 'roller',
  face: 'face',
  columns: {
    mass: 'mass',
    diameter: 'diameter',
    length: 'length',
    sections: 'sections',
    buildUp: 'build-up',
    runout: 'runout',
    raises: 'raises the cut',
  },
  where: 'fitted',
  nowhere: 'in the rack',
  places: { front: 'in front', rear: 'behind' },
  placeOn: ({ unit, place }: Values<'unit' | 'place'>) => `${place} on ${unit}`,
  faceName: (name: string) => `The face of ${name}`,
  open: (name: string) => `${name}: its numbers`,
  openWords: (name: string) => `measure ${name}`,
  fitFront: 'fit in front',
  fitRear: 'fit behind',
  follows: (places: string) => `Fitted ${places}: what is changed here is changed there.`,
  free: 'Fitted nowhere: changes here leave every unit as it is.',
  last: 'The last roller of a rack cannot be taken out.',
  touches: 'It would touch the other roller of the unit in hand, and cannot be fitted.',
  tooSmall:
    'With it the edge would lie below the bench line: it cannot be fitted before the bench is raised.',
  newName: 'new roller',
  add: 'add a roller',
}

export const rollersWorkings = {
  rollerBuildUp: 'What the build-up raises the cut by',
  rollerRunout: 'How far the cut goes up and down, and how often',
}
