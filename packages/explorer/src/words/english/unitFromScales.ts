import type { Values } from './speaking.ts'

export const unitFromScales = {
  titles: { scales: 'The unit, from the scales', dimensions: 'The unit, from its dimensions' },
  from: 'Told by',
  sources: { scales: 'scale readings', dimensions: 'dimensions' },
  tooFew: 'Two of the three readings whole, front and rear are enough: the third follows from them.',
  weighed: ({ total, front, rear, body, at }: Values<'total' | 'front' | 'rear' | 'body' | 'at'>) =>
    `Of ${total} the front roller carries ${front} and the rear ${rear}: a body of ${body} whose weight acts ${at} behind the front axis.`,
  fullBox: ({ front, rear }: Values<'front' | 'rear'>) =>
    `A full box adds ${front} in front and ${rear} behind.`,
  threeDisagree: ({ parts, whole, difference }: Values<'parts' | 'whole' | 'difference'>) =>
    `Front and rear come to ${parts}, the whole unit to ${whole}: ${difference} apart, more than scales may be. Weigh again; until then the unit stays as it was.`,
  sidesDisagree: ({ parts, whole, difference }: Values<'parts' | 'whole' | 'difference'>) =>
    `Left and right come to ${parts}, the whole unit to ${whole}: ${difference} apart, more than scales may be.`,
  contradicts: 'These readings contradict each other; until one is put right the unit stays as it was.',
  changed: ({ total, front }: Values<'total' | 'front'>) =>
    `The unit in hand was changed since: it would read ${total} in all and ${front} in front.`,
  again: 'take these readings again',
  dimensions: ({ body, at, total }: Values<'body' | 'at' | 'total'>) =>
    `A body of ${body}, ${at} behind the front axis; with its rollers the unit would read ${total} on the scales.`,
  note: 'Weigh the unit level, each roller on a scale or a block of equal height, its box off. Lengths in the drawing are to scale, heights are not.',
  readings: 'What the scales read',
  lengths: 'What a rule reads',
  labels: {
    total: 'Whole unit',
    front: 'Front roller',
    rear: 'Rear roller',
    left: 'Left end',
    right: 'Right end',
    boxEmpty: 'Grass box, empty',
    boxFull: 'Grass box, full',
    boxAt: 'Box hangs',
    height: 'Height of the body’s weight',
  },
  notes: {
    total: '',
    front: 'the rear on a block of equal height',
    rear: 'the front on a block of equal height',
    left: 'a scale under each end of the front roller’s length',
    right: 'either end is enough',
    boxEmpty: 'weighed by itself',
    boxFull: '',
    boxAt: 'behind the front axis; ahead of it is negative',
    height: 'above the bench line, if known',
  },
  table: {
    caption: 'The unit on the scales',
    what: 'reading',
    read: 'read',
    would: 'the unit in hand would read',
    none: 'no reading',
  },
}

export const unitFromScalesFigure = ({ body, title }: Values<'body' | 'title'>) => ({
  title,
  front: 'front',
  rear: 'rear',
  edge: 'edge',
  body: `body ${body}`,
  scale: '',
})

export const unitFromScalesWorkings = {
  scalesBody: 'What is left of the readings without the rollers',
  scalesPlace: 'Where the weight of the body must act for the scales to read so',
}
