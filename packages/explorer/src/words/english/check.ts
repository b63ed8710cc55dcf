import { counted, type Values } from './speaking.ts'

export const check = {
  title: 'Heights after a test strip',
  none: 'There is no height after a test strip among these readings. A column height_mm, with the set and the roller that was fitted beside it, brings them here.',
  found: {
    one: {
      agrees: ({ strip, measured, low, high }: Values<'strip' | 'measured' | 'low' | 'high'>) =>
        `Strip “${strip}” agrees: ${measured} measured, ${low} to ${high} expected.`,
      lower: ({ strip, by, outside }: Values<'strip' | 'by' | 'outside'>) =>
        `Strip “${strip}” is ${by} lower than expected, ${outside} beyond what the fit and the setting allow.`,
      higher: ({ strip, by, outside }: Values<'strip' | 'by' | 'outside'>) =>
        `Strip “${strip}” is ${by} higher than expected, ${outside} beyond what the fit and the setting allow.`,
    },
    all: (count: number) => `All ${count} strips agree with what was expected.`,
    some: ({ worst }: Values<'worst'>, agree: number, count: number) =>
      `${agree === 0 ? 'None' : counted(agree)} of ${count} strips ${agree > 1 ? 'agree' : 'agrees'}. ${worst}`,
    working: 'How far each height may be off is being worked out.',
    unknown: 'None of these heights can be compared.',
  },
  strip: ({ set, roller }: Values<'set' | 'roller'>) => [set, roller].filter(part => part !== '').join(', '),
  unnamed: 'without a name',
  note: {
    standing: 'Worked out for the unit standing: choose mowing if the heights were cut.',
    mowing: 'Worked out for the unit mowing.',
    exact: 'The turf in hand is taken as exact: choose a fit to have its error counted.',
    drawn:
      'Wash: where the mean of the heights should lie with 95\u202f%; line: what is expected; rings: what was measured, bar: its mean.',
  },
  table: {
    caption: 'Measured and expected heights',
    strip: 'strip',
    count: 'heights',
    measured: 'measured',
    expected: 'expected',
    between: '95\u202f%',
    to: ({ low, high }: Values<'low' | 'high'>) => `${low} to ${high}`,
    difference: 'difference',
    verdict: 'verdict',
    plot: 'on one scale',
  },
  verdicts: {
    agrees: 'agrees',
    lower: (outside: string) => `${outside} too low`,
    higher: (outside: string) => `${outside} too high`,
    working: 'being worked out',
    'not known': 'cannot be told',
    'no turf': 'the fit has no turf of this set',
    'no roller': 'no such roller in the rack',
    'no answer': 'the unit has no answer here',
  },
  readings: 'Heights',
  fit: 'Against',
  noReadings: 'none chosen',
  inHand: 'the turf in hand, taken as exact',
}

export const checkSettables: Readonly<Record<string, { readonly name: string; readonly note: string }>> = {
  'check.bench': { name: 'Bench height, how well it is set', note: 'standard deviation' },
  'check.gauge': {
    name: 'One height, how well it is measured',
    note: 'standard deviation, where the table says none',
  },
}

/** What the drawing of a strip says inside itself. */
export const checkFigure = ({ unit }: Values<'unit'>) => ({ axis: `height, ${unit}` })

export const checkWorkings = {
  checkBetween:
    'Where the mean of the heights should lie: the error of fit and setting, and of so many readings',
  checkMean: 'What was measured',
}
