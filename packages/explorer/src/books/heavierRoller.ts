import type { BookSpec } from '../entries/kinds.ts'

/** Changes with the book's own values: what a reader kept of an older edition is not poured into a newer one. */
export const heavierRollerEdition = '1'

/**
 * Why a heavier roller cuts lower, for students. The place, the unit, its rollers and the green are invented; no
 * number that follows from them is written here.
 */
export const heavierRoller: BookSpec = {
  swardsink: 1,
  title: 'Why a heavier roller cuts lower',
  scenario: {
    unit: {
      wheelbase_mm: 190,
      edge_mm: 105,
      benchHeight_mm: 3.4,
      frontRoller: 'peg 1',
      rearRoller: {
        mass_kg: 4.2,
        diameter_mm: 51,
        length_mm: 560,
        surface: { kind: 'smooth' },
      },
      body: { mass_kg: 18.4, at_mm: 98, height_mm: 92 },
    },
    rollers: {
      'peg 1': { mass_kg: 6.2, diameter_mm: 57, length_mm: 560, surface: { kind: 'smooth' } },
      'peg 2': { mass_kg: 9.4, diameter_mm: 57, length_mm: 560, surface: { kind: 'smooth' } },
      'peg 3': {
        mass_kg: 5.1,
        diameter_mm: 57,
        length_mm: 560,
        surface: { kind: 'grooved', pitch_mm: 12, land_mm: 5, depth_mm: 6 },
      },
      'peg 4': {
        mass_kg: 5.6,
        diameter_mm: 57,
        length_mm: 560,
        surface: { kind: 'grooved', pitch_mm: 8, land_mm: 5, depth_mm: 4 },
      },
      'peg 5': {
        mass_kg: 4.4,
        diameter_mm: 57,
        length_mm: 560,
        surface: { kind: 'grooved', pitch_mm: 30, land_mm: 8, depth_mm: 12 },
      },
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
      title: 'Set on the bench, cut on the turf',
      lead: 'The height of cut is set on a bench, but the rollers sink into the turf: see how far, and at what height the grass is really cut.',
      entries: [
        { kind: 'sideView', settings: ['frontRoller.mass', 'turf.softness'] },
        { kind: 'map', quantity: 'sinkage' },
        {
          kind: 'text',
          beside: true,
          text: `At {frontRoller.mass} the front roller presses with {front.load} and sinks {front.sinkage}; the rear roller presses with {rear.load} and sinks {rear.sinkage}. The cutting edge lies between them and goes down {drop}.

{oneKilogram.mass} more in front would lower the cut by {oneKilogramMore.drop}; turf twice as soft, by {twiceAsSoft.drop}.`,
        },
        { kind: 'rack' },
        {
          kind: 'setting',
          of: [
            'frontRoller.surface',
            'frontRoller.pitch',
            'frontRoller.land',
            'frontRoller.depth',
            'frontRoller.diameter',
          ],
        },
        {
          kind: 'setting',
          beside: true,
          of: ['turf.lockingDepth', 'turf.spread', 'condition', 'condition.speed'],
        },
        {
          kind: 'setting',
          beside: true,
          of: ['scales.total', 'scales.front', 'unit.benchHeight', 'unit.edge', 'unit.wheelbase'],
        },
      ],
    },
  ],
}
