type CautionValues = { readonly value: string; readonly limit: string }

/** Facts that ride on a result. `where` is already in this language. */
export const cautions = {
  'deep in the arc': ({ value, limit }: CautionValues) =>
    `the sinkage is ${value} of the roller’s radius; beyond ${limit} the parabola carries more than the true circle.`,
  'steep at the land': ({ value, limit }: CautionValues) =>
    `turf hangs into the groove at a slope of ${value}; beyond ${limit} the model of the mat is stretched.`,
  'wide spread under grooves': ({ value, limit }: CautionValues) =>
    `turf spreads load over ${value} of the contact; beyond ${limit} the quick model of a grooved roller may be more than 2 % out.`,
  'grooves while mowing': () =>
    'behind a grooved roller on turf that spreads load the model carries 2 to 9 % too little.',
  'large strain': ({ value, limit }: CautionValues) =>
    `the sinkage is ${value} of the layer’s thickness; beyond ${limit} real layers carry more than the model.`,
  'near locking': ({ value, limit }: CautionValues) =>
    `the sinkage is ${value} of the locking depth; beyond ${limit} the answer hangs on that depth alone.`,
  extrapolated: ({ value, limit }: CautionValues) =>
    `the pressure reaches ${value}, beyond the ${limit} that was measured: the curve is only carried on.`,
  'below the fitted pressures': ({ value, limit }: CautionValues) =>
    `the pressure is ${value}, below the ${limit} from which the turf was fitted: the curve is only carried on.`,
  'corners left out': () =>
    'what turf carries beside the corners of a rectangular plate is left out: the plate carries a little more.',
  'height not given': ({ value }: CautionValues) =>
    `the height of the centre of gravity is not given; the front axle’s, ${value}, is taken.`,
  'in a track': () =>
    'it runs in a track that was pressed before; how that ends sideways, and how grooves lie in it on turf that spreads load, is an estimate.',
  'turns about itself': ({ value, limit }: CautionValues) =>
    `a turn of ${value} has its centre under the roller, which reaches ${limit} to either side: one end runs backwards.`,
  'near slipping': ({ value, limit }: CautionValues) =>
    `the drag takes up ${value} of what friction holds; beyond ${limit} the roller is about to slide without turning.`,
  'cuts into the turf': ({ value }: CautionValues) =>
    `the cutting edge stands at ${value}, at or below the turf’s surface: it would scalp.`,
} as Readonly<Record<string, (values: CautionValues) => string>>

export const places = { 'front roller': 'Front roller', 'rear roller': 'Rear roller' } as Readonly<
  Record<string, string>
>
