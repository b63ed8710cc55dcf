const smooth = { kind: 'smooth' }
const grooves = { kind: 'grooved', pitch_mm: 12, land_mm: 5, depth_mm: 6 }

/**
 * A book of the tests' own, of one page, so that they do not hang on what the books that ship are about. The place and
 * all its numbers are invented.
 */
export const workBook = {
  swardsink: 1,
  title: 'A page to work on',
  scenario: {
    unit: {
      wheelbase_mm: 190,
      edge_mm: 105,
      benchHeight_mm: 3.4,
      frontRoller: 'peg 1',
      rearRoller: { mass_kg: 4.2, diameter_mm: 51, length_mm: 560, surface: smooth },
      body: { mass_kg: 18.4, at_mm: 98, height_mm: 92 },
    },
    rollers: {
      'peg 1': { mass_kg: 6.2, diameter_mm: 57, length_mm: 560, surface: smooth },
      'peg 2': { mass_kg: 9.4, diameter_mm: 57, length_mm: 560, surface: smooth },
      'peg 3': { mass_kg: 5.1, diameter_mm: 57, length_mm: 560, surface: grooves },
    },
    turfs: {
      'chapel green': {
        law: { kind: 'stiffening', softness_mm: 0.3, lockingDepth_mm: 4 },
        spread_mm: 1.6,
        rebound: 0.6,
        recoveryTime_s: 0.5,
        lasting: 0.05,
      },
    },
    turf: 'chapel green',
    condition: { kind: 'standing' },
  },
  pages: [
    {
      title: 'One page',
      lead: 'What is set on the bench is not what is cut.',
      entries: [
        { kind: 'sideView' },
        { kind: 'map' },
        { kind: 'text', beside: true, text: 'With {frontRoller.mass} in front the edge goes down {drop}.' },
        { kind: 'rack' },
        { kind: 'setting', of: ['frontRoller.surface', 'frontRoller.diameter'] },
        { kind: 'setting', beside: true, of: ['turf.lockingDepth', 'turf.spread', 'condition'] },
        { kind: 'setting', beside: true, of: ['unit.benchHeight', 'unit.edge', 'unit.wheelbase'] },
      ],
    },
  ],
}

/** The entries of the work book in their order. */
export const WORK_ENTRIES = ['sideView', 'map', 'text', 'rack', 'setting', 'setting-2', 'setting-3']
