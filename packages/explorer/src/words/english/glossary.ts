type Term = {
  readonly word: string
  /** What the same thing is called elsewhere; UK words stand first in this table. */
  readonly elsewhere?: string
  readonly means: string
}

/** The words of the trade as this book uses them, in the order of the alphabet. UK words, with the US ones beside them. */
export const glossary: readonly Term[] = [
  {
    word: 'bearing fraction',
    means:
      'How much of what a smooth roller would carry at this depth a grooved one carries. More than its lands alone, because the mat of the turf hangs between them.',
  },
  {
    word: 'bench height',
    elsewhere: 'US also: bench setting',
    means: 'Height of the cutting edge above the flat line under both rollers, as it is set in the workshop.',
  },
  {
    word: 'bottom blade',
    elsewhere: 'US: bedknife',
    means:
      'The fixed blade that the blades of the cylinder shear the grass against. Its front edge is the cutting edge.',
  },
  {
    word: 'box',
    elsewhere: 'US: grass catcher, bucket',
    means: 'What the clippings are thrown into. Full, it may shift several kilograms to one of the rollers.',
  },
  {
    word: 'build-up',
    means:
      'Clippings and soil stuck to a roller. They make it larger and so raise the cut, until they are cleaned off.',
  },
  {
    word: 'clip',
    elsewhere: 'US also: frequency of clip',
    means: 'How far the machine goes from the cut of one blade to that of the next.',
  },
  {
    word: 'cylinder',
    elsewhere: 'US: reel',
    means: 'The turning cage of blades. A unit with one is a cylinder unit, in the US a reel unit.',
  },
  {
    word: 'discs',
    elsewhere: 'also: spaced discs, spiral',
    means:
      'A roller that touches only with narrow lands, wide apart. Here a grooved roller with a narrow land and a wide pitch.',
  },
  {
    word: 'drop',
    means: 'How far the cutting edge goes down because the rollers sink.',
  },
  {
    word: 'effective height',
    elsewhere: 'US also: effective height of cut',
    means: 'The height at which the grass is really cut: bench height less the drop.',
  },
  {
    word: 'firmness',
    means:
      'How little turf gives way. Numbers of impact devices are no softness, and are never made into one here.',
  },
  {
    word: 'green',
    elsewhere: 'here: any turf that is mown short',
    means: 'The turf in hand. The same sums hold for a wicket, a bowling green or a tennis court.',
  },
  {
    word: 'grooved roller',
    elsewhere: 'also: ribbed roller',
    means:
      'A roller with rings turned out of its face. It sinks more than a smooth one of the same weight, because less of it bears.',
  },
  {
    word: 'headland',
    elsewhere: 'US: perimeter, clean-up pass',
    means: 'The strip where the machine turns, or the last pass around. There a wide roller slides.',
  },
  {
    word: 'height of cut',
    elsewhere: 'US also: mowing height',
    means: 'Either bench height or effective height, so one of the two words is used here instead.',
  },
  {
    word: 'land',
    means: 'The part of a grooved roller between two grooves: what touches first.',
  },
  {
    word: 'locking depth',
    means: 'The depth at which this turf gives way no further, whatever presses on it.',
  },
  {
    word: 'marking',
    elsewhere: 'US also: banding, streaking',
    means: 'Lines that stay to be seen where a roller, an end or a land has pressed or slid.',
  },
  {
    word: 'peg',
    means: 'A place in the rack, and so a roller of the rack.',
  },
  {
    word: 'pitch',
    means: 'A land and a groove together: the distance from one land to the next.',
  },
  {
    word: 'rebound',
    means: 'The part of the sinkage that is back at once when the load has gone.',
  },
  {
    word: 'relief',
    means: 'How far turf stands up into a groove above the lowest line of the roller.',
  },
  {
    word: 'rootzone',
    elsewhere: 'US: root zone',
    means: 'The layer below the mat in which the roots stand, often sand.',
  },
  {
    word: 'runout',
    means: 'How far a roller is out of round. The cut goes up and down with it once a turn.',
  },
  {
    word: 'scalping',
    means: 'Cutting so low that stems and thatch are cut instead of leaf.',
  },
  {
    word: 'scuffing',
    elsewhere: 'US also: turf tearing',
    means: 'What sliding does to turf on a tight turn.',
  },
  {
    word: 'sectional roller',
    elsewhere: 'US: segmented roller',
    means: 'A roller in parts that turn on their own, so that each slides less on a turn.',
  },
  {
    word: 'sinkage',
    means: 'Depth of the lowest line of a roller below the turf as it stood before.',
  },
  {
    word: 'softness',
    means: 'How far a wide plate sinks at 10 kPa. Twice the softness, twice that sinkage.',
  },
  {
    word: 'spread',
    means:
      'How far turf carries a load past the edge of what presses on it. It is why narrow lands carry more than their width.',
  },
  {
    word: 'thatch',
    elsewhere: 'also: mat, where it is worked through with sand',
    means: 'Dead and living stems between leaf and soil: most of what gives way under a roller.',
  },
  {
    word: 'top-dressing',
    elsewhere: 'US: topdressing',
    means: 'Sand or soil spread on the turf. Afterwards softness is another, and heights are checked again.',
  },
  {
    word: 'unit',
    elsewhere: 'also: cutting unit, cutting head',
    means: 'Cylinder, bottom blade, two rollers and what holds them. A machine may carry several.',
  },
  {
    word: 'wheelbase',
    means: 'Here the distance between the axes of the two rollers of one unit.',
  },
]
