type Values<Name extends string> = { readonly [Key in Name]: string }

type CautionValues = { readonly value: string; readonly limit: string }

const percent = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 })
const times = new Intl.NumberFormat('en', { maximumSignificantDigits: 2 })
const counts = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine']
const joined = new Intl.ListFormat('en', { type: 'conjunction' })

/** Everything the book says of itself, in English. Values come in formatted; sentences about them are made here. */
export const english = {
  language: 'en',
  percent: (share: number) => percent.format(share).replace('%', '\u202f%'),
  list: (items: readonly string[]) => joined.format(items),

  page: {
    of: (total: number) => `of ${total}`,
    atHand: 'Always at hand',
    units: 'Units',
    unitSystems: { metric: 'mm, kg', US: 'in, lb' },
    theme: 'Paper',
    themes: { system: 'as the device', light: 'light', dark: 'dark', projector: 'projector' },
    print: 'Print',
    undo: 'Undo',
    redo: 'Redo',
    changes: 'Your changes',
    restore: 'Back to this book’s values',
    link: 'A link to these values',
    saveFile: 'Save as a file',
    openFile: 'Open a file',
    kept: 'What you change is kept in this browser.',
    notKept: 'This browser keeps nothing for later: save a file if you want your values back.',
    linked: 'The address now carries these values: copy it to share them.',
    opened: (title: string) => `Opened: ${title}.`,
    unopened: 'This could not be opened.',
    damaged: 'Not all of this could be read. What could is shown; the rest, in full:',
    problemAt: ({ path, expected, received }: Values<'path' | 'expected' | 'received'>) =>
      `${path}: expected ${expected}, but found ${received}.`,
    trust: 'How far to trust this',
    trustText:
      'These are estimates from a model of turf, not readings. They are as good as the softness that goes in, and they say nothing of injury or playing quality. Check with a gauge on the turf before mowing.',
    invented:
      'Ellerby Hollow Turf School, its unit, rollers and greens are invented; so is every number set on this page.',
    safety: 'Before you reach under a unit',
    safetyText:
      'Cylinder and bottom blade cut even when turned by hand. Stop the engine or isolate the battery. Wear cut-resistant gloves. Lift with help or a hoist; never work under a unit held by a jack. Follow the machine’s own manual and local rules, and let a competent person do what needs one.',
  },

  entry: {
    asTable: 'As a table',
    workedOut: 'How this is worked out',
    section: (section: string) => `Equations: docs/physics.md ${section}.`,
    check: (path: string) => `Checked by ${path}.`,
    working: (seconds: string) => `working, ${seconds} s`,
    stop: 'Stop',
    waiting: (names: readonly string[]) => `waits for ${joined.format(names)}`,
    still: 'still for the values before',
    stillFor: ({ was, now }: Values<'was' | 'now'>) => `still for ${was}; now ${now}`,
    cautions: 'Cautions',
  },

  settables: {
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
  } as Readonly<Record<string, { readonly name: string; readonly note: string }>>,

  options: {
    smooth: 'smooth',
    grooved: 'grooved',
    standing: 'standing',
    mowing: 'mowing',
  } as Readonly<Record<string, string>>,

  control: {
    line: (name: string) => `${name}, on the line`,
  },

  refusals: {
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
  },

  failures: {
    bottomedOut: ({ where, load, lockingDepth }: Values<'where' | 'load' | 'lockingDepth'>) =>
      `The turf bottoms out under the ${where} roller: ${load} would press it to its locking depth of ${lockingDepth}. Raise the locking depth, or lower the mass or the softness.`,
    thatLoad: 'the load on it',
    notConverged: ({ where, iterations }: Values<'where' | 'iterations'>) =>
      `No answer was found for the ${where} in ${iterations} steps. Change a value a little; if this stays, the values contradict each other.`,
    worker: (message: string) => `The finer figure could not be worked out (${message}).`,
    places: { roller: 'front', front: 'front', rear: 'rear' } as Readonly<Record<string, string>>,
  },

  /** Facts that ride on a result. `where` is already in this language. */
  cautions: {
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
      `the pressure reaches ${value}, beyond the ${limit} that was measured: the curve is carried on with its last slope.`,
    'corners left out': () =>
      'what turf carries beside the corners of a rectangular plate is left out: the plate carries a little more.',
    'height not given': ({ value }: CautionValues) =>
      `the height of the centre of gravity is not given; the front axle’s, ${value}, is taken.`,
    'in a track': () =>
      'it runs in a track that was pressed before; how that ends sideways, and how grooves lie in it on turf that spreads load, is an estimate.',
    'cuts into the turf': ({ value }: CautionValues) =>
      `the cutting edge stands at ${value}, at or below the turf’s surface: it would scalp.`,
  } as Readonly<Record<string, (values: CautionValues) => string>>,
  places: { 'front roller': 'Front roller', 'rear roller': 'Rear roller' } as Readonly<
    Record<string, string>
  >,

  surfaces: {
    smooth: 'smooth',
    grooved: ({ land, pitch }: Values<'land' | 'pitch'>) => `land ${land} of ${pitch}`,
    fitted: 'fitted',
  },

  sideView: {
    title: 'Set on the bench, cut on the turf',
    bench: 'set on the bench',
    cut: 'cut here',
    sinks: (drop: string) => `The rollers sink, and the cutting edge goes down with them: ${drop}.`,
    sinksAndRecovers: ({ drop, unrecovered, lost }: Values<'drop' | 'unrecovered' | 'lost'>) =>
      `The edge goes down ${drop} with the rollers, but turf still pressed down by ${unrecovered} passes under it: it cuts ${lost} lower than set.`,
    rises: (by: string) => `The turf has not come back when the edge passes: it cuts ${by} higher than set.`,
    condition: { standing: 'Standing.', mowing: (speed: string) => `Mowing at ${speed}.` },
    scale: (times: number) =>
      times === 1
        ? 'Drawn to scale.'
        : `Drawn to scale; heights at the turf, both sinkage and height of cut, ×${times}.`,
    invented: 'Unit and green are invented, Ellerby Hollow Turf School.',
    heights: 'Heights',
    factor: (times: number) => `×${times}`,
    table: {
      caption: 'Loads and heights',
      quantity: 'quantity',
      value: 'value',
      unit: 'unit',
      frontLoad: 'load on the front roller',
      rearLoad: 'load on the rear roller',
      frontSinkage: 'sinkage of the front roller',
      rearSinkage: 'sinkage of the rear roller',
      frontPeak: 'pressure under the front roller, lowest line',
      rearPeak: 'pressure under the rear roller, lowest line',
      drop: 'drop of the edge, left / middle / right',
      height: 'effective height, left / middle / right',
    },
  },

  map: {
    quantities: {
      sinkage: 'Sinkage of the front roller',
      drop: 'Drop of the cutting edge',
      effectiveHeight: 'Effective height of cut',
      peakPressure: 'Pressure under the front roller',
    },
    short: {
      sinkage: 'sinkage',
      drop: 'drop of the edge',
      effectiveHeight: 'effective height',
      peakPressure: 'pressure',
    },
    softnessWins: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
      `Softness moves it further than mass: from ${low} to ${high} it grows ${byMass}-fold; from the firmest turf to the softest, ${bySoftness}-fold.`,
    massWins: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
      `Mass moves it further than softness: from ${low} to ${high} it grows ${byMass}-fold; from the firmest turf to the softest, ${bySoftness}-fold.`,
    ends: ({
      low,
      high,
      lightest,
      heaviest,
      firmest,
      softest,
    }: Values<'low' | 'high' | 'lightest' | 'heaviest' | 'firmest' | 'softest'>) =>
      `From ${low} to ${high} it goes from ${lightest} to ${heaviest}; from the firmest turf to the softest, from ${firmest} to ${softest}.`,
    heights: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
      `From ${low} to ${high} the cut moves by ${byMass}; from the firmest turf to the softest, by ${bySoftness}.`,
    bottoms: (from: string) => `Softer than ${from} this turf bottoms out under the roller: stippled.`,
    times: (value: number) => times.format(value),
    note: 'The ring is the present case: drag it, click where it should go, or use the arrow keys. Along each line the value stays the same.',
    noneHere: 'At this mass and softness the turf bottoms out.',
    none: 'none',
    quantity: 'Show',
    softness: 'softness',
  },

  rack: {
    title: (count: number) => `${counts[count] ?? count} rollers on this unit, on this green`,
    lowest: ({ bench, name, by, wanted, set }: Values<'bench' | 'name' | 'by' | 'wanted' | 'set'>) =>
      `With the bench left at ${bench}, ${name} cuts lowest, ${by} below the one fitted; to cut ${wanted} with it, set ${set} on the bench.`,
    fittedLowest: ({ bench, name, by }: Values<'bench' | 'name' | 'by'>) =>
      `With the bench left at ${bench}, none cuts lower than the one fitted; ${name} cuts highest, by ${by}.`,
    allAlike: 'All of them cut at the same height.',
    note: 'Pressure: under a land, at the lowest line. Set to hold: the bench height, measured with that roller fitted, that keeps the cut of the fitted one.',
    caption: 'The rack, compared',
    roller: 'roller',
    columns: {
      mass: 'mass',
      load: 'load',
      sinkage: 'sinks',
      pressure: 'pressure',
      relief: 'turf stands up',
      benchHeight: 'set to hold',
      change: 'change',
      effectiveHeight: 'cuts',
    },
    sort: (column: string) => `Sort by ${column}`,
    within: (tolerance: string) => `shaded: within ${tolerance} of the one fitted`,
    fit: 'fit it',
    touching: 'full',
    noGrooves: 'no grooves',
    bottomsOut: 'bottoms out',
  },

  setting: {
    titles: {
      frontRoller: 'The front roller',
      turf: 'The turf',
      unit: 'The unit, weighed and measured',
      scales: 'The unit, weighed and measured',
      condition: 'Standing or mowing',
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
  },

  text: { title: 'In words', unknown: 'not known' },

  workings: {
    weight: 'Weights share out between the axles by the balance of moments',
    lowestPressure: 'Pressure at the lowest line of the front roller',
    balance: 'It sinks until the turf carries it: mean pressure times contact length is the load per length',
    drop: 'The edge lies between the axles and goes down with both; the tilt adds the last of it',
    height: 'So it cuts at',
    sweep: 'Every point of the map is this balance solved for another mass and softness',
    hold: 'Bench height that holds the wanted cut, with that roller fitted',
    adjust: 'From the old setting the adjuster gives',
  } as Readonly<Record<string, string>>,

  /** What the figures say inside themselves. */
  figures: {
    rack: { axis: (unit: string) => `effective height, ${unit}` },
    sideView: {
      title: 'The unit from the side, on turf',
      frontRoller: 'front roller',
      rearRoller: 'rear roller',
      cuttingCylinder: 'cutting cylinder',
      bottomBlade: 'bottom blade',
      edgeLine: ['line of the', 'cutting edge'],
      turf: 'turf',
      bench: 'bench',
      effective: 'effective',
      drop: (value: string) => `${value} drop`,
      body: (load: string) => `body ${load}`,
      load: (name: string, load: string) => `${name} ${load}`,
      heightBar: (length: string, times: number) => (times === 1 ? length : `${length}, ×${times}`),
      handle: {
        edge: 'cutting edge: drag to set the bench height',
        front: 'front roller: drag to set its mass',
        rear: 'rear roller',
        body: 'weight of the body',
      },
    },
    map: ({
      quantity,
      unit,
      massUnit,
      softnessUnit,
    }: Values<'quantity' | 'unit' | 'massUnit' | 'softnessUnit'>) => ({
      title: `${quantity}, over mass and softness`,
      massAxis: `mass of the front roller, ${massUnit}`,
      softnessAxis: `softness of the turf, ${softnessUnit} at 10 kPa`,
      firm: 'firm',
      soft: 'soft',
      contourUnit: unit,
      here: (value: string) => `${value} here`,
      noAnswer: 'no answer here',
      markName: 'The present case: left and right mass, up and down softness',
      markText: (place: { mass: string; softness: string; value: string | null }) =>
        `${place.mass}, softness ${place.softness}: ${place.value ?? 'no answer'}`,
    }),
  },
}
