import { counted, type Values } from './speaking.ts'

const plural = (count: number, word: string) => (count === 1 ? `1 ${word}` : `${count} ${word}s`)

type Interval = Values<'low' | 'high'>

export const fit = {
  title: 'How soft is the turf?',
  parameters: {
    softness: 'softness',
    exponent: 'exponent',
    lockingDepth: 'locking depth',
    spread: 'spread',
    datum: 'zero of the gauge',
    dropDatum: 'zero of the drops',
  } as Readonly<Record<string, string>>,
  laws: {
    linear: 'linear',
    power: 'power',
    stiffening: 'stiffening',
    logarithmic: 'logarithmic',
    own: 'that of the turf in hand, stretched',
  } as Readonly<Record<string, string>>,
  found: {
    sure: ({ softness, low, high }: Values<'softness'> & Interval) =>
      `Softness ${softness}, with 95\u202f% confidence between ${low} and ${high}.`,
    unsure: (softness: string) =>
      `Softness ${softness} fits best; how sure that is, these readings do not tell.`,
    held: 'The softness was held, not fitted.',
    sets: ({ count, low, high, first, last }: Values<'count' | 'first' | 'last'> & Interval) =>
      `The softness of ${count} sets runs from ${low} (${first}) to ${high} (${last}).`,
    median: ({ median, low, high }: Values<'median'> & Interval) =>
      `The median of their like is ${median}, with 95\u202f% confidence between ${low} and ${high}.`,
    here: ({ height, half }: Values<'height' | 'half'>) =>
      `On it this unit would cut at ${height} ± ${half} (95\u202f%).`,
    hereOn: ({ set, height, half }: Values<'set' | 'height' | 'half'>) =>
      `On ${set} this unit would cut at ${height} ± ${half} (95\u202f%).`,
    bare: (height: string) => `On it this unit would cut at ${height}.`,
    bareOn: ({ set, height }: Values<'set' | 'height'>) => `On ${set} this unit would cut at ${height}.`,
  },
  none: {
    'no readings': 'There is nothing to fit yet: it needs an entry of readings with some in it.',
    'no fit': (why: string) => `No turf was found that answers every reading: ${why}`,
    problems: (list: string) => list,
  },
  noEntry: 'Add an entry of readings to this book, then choose it here.',
  noCurve: (why: string) => `There is no curve to draw: ${why}.`,
  note: ({ count, foot, step }: Values<'count' | 'foot' | 'step'>) =>
    `${count}. Rings: one reading each, those of one load side by side; bars: their mean. ${foot}${step}`,
  counted: (count: number) => plural(count, 'reading'),
  feet: {
    roller: (name: string) => `Roller “${name}”, standing.`,
    unitRoller: 'The roller on the unit, standing.',
    plate: (diameter: string) => `Round plate of ${diameter}.`,
  },
  footNames: {
    unitRoller: 'the unit’s roller',
    unitLoad: 'its own weight on the unit',
    plate: (diameter: string) => `plate of ${diameter}`,
  },
  unitDrops: ' Drops of the whole unit have no place on this curve: the table has what is left over of each.',
  leftOut: ({ count, rows }: Values<'count' | 'rows'>) => ` ${count} not fitted (${rows}).`,
  set: 'Curve of',
  foot: 'Under',
  allSets: 'all sets',
  noName: 'the set without a name',
  table: {
    caption: 'What was fitted',
    quantity: 'quantity',
    value: 'value',
    interval: '95\u202f%',
    between: ({ low, high }: Interval) => `${low} to ${high}`,
    atLeast: (low: string) => `at least ${low}`,
    atMost: (high: string) => `at most ${high}`,
    notKnown: 'not known',
    held: 'held, not fitted',
    atBound: 'at its bound',
    scatter: 'scatter',
    scatterKnown: 'known beforehand',
    left: (freedom: number) => `${freedom} left over`,
    unit: ({ name, unit }: Values<'name' | 'unit'>) => (unit === '' ? name : `${name}, ${unit}`),
    of: ({ name, set }: Values<'name' | 'set'>) => `${name} of ${set}`,
  },
  why: ({ names, why }: Values<'names' | 'why'>) => `${names}: ${why}.`,
  residuals: {
    caption: 'Readings beside the fit',
    row: 'row',
    set: 'set',
    under: 'under',
    load: 'load',
    measured: 'measured',
    fitted: 'fitted',
    residual: 'reading less fit',
    none: 'none of its own',
  },
  settings: {
    law: 'Law',
    what: 'What is fitted',
    roles: { shared: 'one for all sets', 'per set': 'one for each set', held: 'held at' },
    alone: { shared: 'fitted', 'per set': 'fitted', held: 'held at' },
    datum: 'Zero of the gauge',
    datums: { known: 'known', 'per set': 'unknown, one for each set' },
    noise: 'Scatter of one reading',
    noises: {
      'as given': 'as the readings say, else from what is left over',
      estimated: 'from what is left over',
      known: 'known:',
    },
    loss: 'Readings far off',
    losses: {
      squares: 'count in full',
      huber: 'count less (Huber)',
      bisquare: 'count less and less (bisquare)',
    },
    readings: 'Readings',
    noReadings: 'none chosen',
    standardDeviation: 'standard deviation of one reading',
    heldAt: (name: string) => `${name}, held at`,
  },
  cannotTell: {
    title: 'What these readings cannot tell',
    loads: ({ low, high }: Interval) =>
      `Loads under ${low} or over ${high}: there the curve is the law’s word alone, and is dashed.`,
    pressures: ({ low, high }: Interval) =>
      `Pressures under ${low} or over ${high}: there the curve is the law’s word alone, and is dashed.`,
    more: 'Rebound, speed, another week: they were read standing, and when they were.',
  },
  look: 'Worth a second look',
  stopped: (why: string) => `The search did not end at a minimum: ${why}.`,
  working: 'What the readings cannot tell is being worked out.',
  sets: {
    title: 'Softness by set',
    along: 'Against',
    alongs: { set: 'the sets', date: 'the date', moisture: 'moisture' },
    next: ({ low, high }: Interval) =>
      `One more set of their like would have a softness of ${low} to ${high} (95\u202f%).`,
    wide: (count: number, { low, high }: Interval) =>
      `${counted(count)} sets say too little of the next one: its softness may be anything from ${low} to ${high} (95\u202f%).`,
    undetermined: (why: string) => `How the next set will be is not known: ${why}.`,
    note: 'Dots: one set each, with its 95\u202f% interval. Line: the median of their like, between the lines it lies in.',
  },
  compare: {
    title: 'Other laws on the same readings',
    show: 'compare the laws',
    hide: 'without the comparison',
    law: 'law',
    free: 'numbers fitted',
    scatter: 'scatter',
    difference: 'AICc above the least',
    none: 'no fit',
    likelihood: {
      'normal, variance known': 'AICc of normal scatter of known size.',
      'normal, variance estimated':
        'AICc of normal scatter, its size estimated and counted among the numbers.',
    },
  },
  next: {
    title: 'What to measure next',
    show: 'what to measure next',
    hide: 'without the next reading',
    best: ({ what, load }: Values<'what' | 'load'>) => `Measure next with ${what} under ${load}:`,
    height: ({ to, from, part }: Values<'to' | 'from' | 'part'>) =>
      `the height would be known to ${to} in place of ${from} (one standard error, of the fit alone); ${part} of its variance goes.`,
    other: (part: string) => `${part} of the variance goes.`,
    enough: (count: number) =>
      count === 1
        ? 'One reading there gives nine tenths of what any number would.'
        : `${counted(count)} readings there give nine tenths of what any number would.`,
    nothing: 'None of the readings that could be made has an answer on this turf.',
    what: 'reading',
    load: 'load',
    expected: 'would read',
    narrows: 'takes off the variance of the height',
    narrowsAll: 'takes off the variance',
    problem: (sentence: string) => `Which reading to make next cannot be said: ${sentence}`,
  },
  turf: {
    use: 'use this turf',
    used: (name: string) =>
      `“${name}” is now the turf in hand. What was not measured (rebound, recovery) stays as it was.`,
    fitted: 'fitted turf',
    source: ({ count, set, law }: Values<'count' | 'set' | 'law'>) =>
      `Fitted to ${count}${set === '' ? '' : ` of ${set}`}, ${law} law.`,
  },
  report: {
    title: 'For a report',
    copy: 'copy the paragraph',
    copied: 'Copied.',
    notCopied: 'It could not be copied from here: select the text and copy it yourself.',
    R: 'save as a script for R',
    Python: 'save as a script for Python',
    script: 'The script makes the same fit from the same readings.',
    asTable: (why: string) =>
      `No script can repeat this fit: ${why}. The file has the readings beside their fitted values.`,
  },
}

/** What the figure of a fit says inside itself. */
export const fitFigure = ({
  along,
  unit,
  sinkageUnit,
}: Values<'unit' | 'sinkageUnit'> & { readonly along: 'roller' | 'load' | 'pressure' }) => ({
  title: 'Readings, the fitted curve, and what is left over',
  across:
    along === 'pressure'
      ? `pressure under the plate, ${unit}`
      : along === 'roller'
        ? `load on the roller, ${unit}`
        : `load on the plate, ${unit}`,
  down: `sinkage, ${sinkageUnit}`,
  turf: 'turf surface',
  fit: 'fit',
  curve: ['95\u202f%, the curve'],
  oneMore: ['95\u202f%, one', 'more reading'],
  unknown: 'not read',
  here: ({ x, sinkage }: Values<'x' | 'sinkage'>) => [`${x}, the present load:`, sinkage],
  residual: `reading less fit, ${sinkageUnit}`,
  shallower: 'shallower',
  deeper: 'deeper',
  twoS: (value: string) => `2 s = ${value}`,
})

/** What the figure of sets says inside itself. */
export const setsFigure = ({
  along,
  unit,
  day,
}: Values<'unit'> & {
  readonly along: 'set' | 'date' | 'moisture'
  readonly day: (day: number) => string
}) => ({
  title: 'Softness of each set',
  down: `softness, ${unit}`,
  across: { set: 'set', date: 'date', moisture: 'moisture, %' }[along],
  median: 'median',
  interval: '95\u202f%, the median',
  oneMore: ['95\u202f%, one', 'more set'],
  day,
})

export const fitWorkings = {
  fitLeast: 'The turf, and zeros of the gauge, for which least is left over',
  fitSoftness: 'The softness, and how sure it is from how the curve bends with it',
  fitScatter: 'Scatter of a single reading, from what is left over',
}
