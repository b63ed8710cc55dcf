import type { BookSpec } from '../entries/kinds.ts'

/** Changes with the book's own values. */
export const chooseFitResetEdition = '1'

const rearRoller = { mass_kg: 4.4, diameter_mm: 52, length_mm: 550, surface: { kind: 'smooth' } }

/** Choose, fit, re-set, for technicians. The place, the machine, its rollers and greens are invented. */
export const chooseFitReset: BookSpec = {
  swardsink: 1,
  title: 'Choose, fit, re-set',
  adjuster_mm: 1.25,
  scenario: {
    units: {
      left: {
        wheelbase_mm: 202,
        edge_mm: 111,
        benchHeight_mm: 4.8,
        frontRoller: 'smooth',
        rearRoller,
        scales: { total_kg: 30.4, front_kg: 15.6, height_mm: 90 },
      },
      middle: {
        wheelbase_mm: 202,
        edge_mm: 111,
        benchHeight_mm: 4.8,
        frontRoller: {
          mass_kg: 6.5,
          diameter_mm: 58,
          length_mm: 550,
          surface: { kind: 'smooth' },
          buildUp_mm: 0.6,
        },
        rearRoller,
        scales: { total_kg: 30.6, front_kg: 15.8, height_mm: 90 },
      },
      right: {
        wheelbase_mm: 202,
        edge_mm: 111,
        benchHeight_mm: 4.8,
        frontRoller: 'smooth',
        rearRoller,
        scales: { total_kg: 33.2, front_kg: 17.9, height_mm: 90 },
      },
    },
    unit: 'left',
    rollers: {
      smooth: { mass_kg: 6.4, diameter_mm: 58, length_mm: 550, surface: { kind: 'smooth' } },
      'smooth, three pieces': {
        mass_kg: 6.9,
        diameter_mm: 58,
        length_mm: 550,
        surface: { kind: 'smooth' },
        sections: 3,
      },
      'close grooves': {
        mass_kg: 5.7,
        diameter_mm: 58,
        length_mm: 550,
        surface: { kind: 'grooved', pitch_mm: 9, land_mm: 5, depth_mm: 4 },
      },
      'wide grooves': {
        mass_kg: 4.9,
        diameter_mm: 58,
        length_mm: 550,
        surface: { kind: 'grooved', pitch_mm: 20, land_mm: 6, depth_mm: 8 },
      },
    },
    turfs: {
      'bank green': {
        law: { kind: 'stiffening', softness_mm: 0.32, lockingDepth_mm: 4.4 },
        spread_mm: 1.8,
        rebound: 0.65,
        recoveryTime_s: 0.4,
        lasting: 0.05,
      },
      'bank green after rain': {
        law: { kind: 'stiffening', softness_mm: 0.58, lockingDepth_mm: 5.2 },
        spread_mm: 2,
        rebound: 0.55,
        recoveryTime_s: 0.6,
        lasting: 0.08,
      },
    },
    turf: 'bank green',
    condition: { kind: 'standing' },
    effectiveHeight_mm: 4.2,
  },
  pages: [
    {
      title: 'From the scales',
      lead: 'Three readings of the scales and two of a rule: that is the unit, as far as its height of cut is concerned.',
      entries: [
        {
          kind: 'text',
          id: 'weigh',
          text: `Make safe first, and clean the rollers before anything is weighed. Take the box off. Put the whole unit on the scales; then the front roller alone, with the rear one on a block of the same height as the scales; then the other way round, if you can. Two of the three are enough, and the third shows whether one was misread.

With a rule along the line under both rollers, measure from the front axis to the rear one and to the cutting edge.`,
        },
        { kind: 'unitFromScales', id: 'scales', total: 30.4, front: 15.6, rear: 14.8 },
        {
          kind: 'text',
          id: 'weighed',
          title: 'What it comes to',
          text: `On level ground the front roller presses with {front.load}, the rear one with {rear.load}. Fit a heavier front roller, and the front gains its weight; the rear gains next to nothing. Shift weight in the body, and one gains what the other loses.`,
        },
      ],
    },
    {
      title: 'The rollers you have',
      lead: 'Every roller of the rack once on the scales and once under the caliper, and the book knows them from then on.',
      entries: [
        {
          kind: 'text',
          id: 'inspect',
          text: `Look each one over before you measure: bearings free, ends not bent, nothing baked on. What sticks to a roller lifts the edge. Of what it adds to the radius, a point between the axes gets its part: here the edge lies {unit.edge} behind the front axis of {unit.wheelbase}. Runout does the same once in every turn, and leaves a ripple.

Take the diameter over the lands; the pitch from one land to the next; the depth to the floor of the groove.`,
        },
        { kind: 'rollers', id: 'rack-list' },
      ],
    },
    {
      title: 'The green, this week',
      lead: 'How soft the green is decides more than the roller does, so it comes before the choice.',
      entries: [
        {
          kind: 'text',
          id: 'read-green',
          text: `You need one reading you can trust. With the book set to standing, set the unit down on the green where it is even, wait as long as you always wait, and read how far the edge has gone down from where the bench put it. Six to ten places, and their middle. Then move the softness below until the book says the same drop: it says {drop} now.

Then change one thing that you can check, another roller or a known weight on the axle, predict it here, and read again. If the book is right twice, use it. If it is not, measure the spread with a second foot: that is in the book about gauges.`,
        },
        { kind: 'turfs', id: 'greens' },
        {
          kind: 'setting',
          id: 'this-week',
          beside: true,
          of: ['turf', 'turf.softness', 'condition', 'condition.speed'],
        },
        {
          kind: 'text',
          id: 'after-rain',
          title: 'Measure again after rain',
          text: `Softness is not a number of the green but of the green this week. Turf twice as soft would lower the edge by another {twiceAsSoft.drop}. Read it again after rain, after top-dressing and after hollow tining, before you blame a roller.`,
        },
      ],
    },
    {
      title: 'Choose',
      lead: 'All rollers of the rack on this unit and this green: what each would cut, press, and need on the bench.',
      entries: [
        {
          kind: 'text',
          id: 'at-work',
          text: `The reading on the green was taken standing. The choice is for mowing: set the book to mowing, at your speed. Then less turf carries behind each roller, the unit sinks further, and part of what was pressed has not come back yet when the edge passes.`,
        },
        { kind: 'setting', id: 'mowing', beside: true, of: ['condition', 'condition.speed'] },
        {
          kind: 'question',
          id: 'expect',
          asks: 'effectiveHeight',
          change: { name: 'frontRoller', to: 'wide grooves' },
          question:
            'With the bench as it is, the unit cuts at {effectiveHeight}. Say what you expect before you read the table: at what height would it cut with the wide grooves?',
          because:
            'It would sink {then.front.sinkage} instead of {front.sinkage}, though the roller is lighter. What it takes is in the table below, and so is what to set on the bench for it.',
        },
        { kind: 'rack', id: 'choice', headlandRadius: 3 },
        {
          kind: 'text',
          id: 'season',
          title: 'What the trade says, and what nobody has measured',
          text: `Common advice: smooth rollers in autumn and winter, on wet ground and on worn clean-up passes; grooved ones while the grass grows, since they let it stand up to be cut; two or three pieces where the machine turns tightly. It is advice from practice. No replicated trial that tells grooved from smooth in depths of cut was found in print.

What this table can do is take the height out of the argument: set to hold, all of them cut the same, and you can choose by finish.`,
        },
        { kind: 'section', id: 'face' },
        { kind: 'setting', id: 'try-on', beside: true, of: ['frontRoller'] },
      ],
    },
    {
      title: 'On the turns',
      lead: 'A roller that turns with the machine slides at its ends, and a wide one slides more.',
      entries: [
        {
          kind: 'text',
          id: 'turning',
          text: `On a turn the inner end of a roller has less way to go than the outer one, but both belong to one piece of metal: the ends slide, one forwards and one back. Free pieces each find their own speed and share the sliding out among them. Put in your tightest clean-up pass.`,
        },
        { kind: 'headland', id: 'turn' },
        {
          kind: 'text',
          id: 'pieces',
          title: 'More pieces, same height',
          beside: true,
          text: `On this turn the ends of the face slide {turn.greatest} of way. Pieces change that and nothing else: the unit sinks and cuts as before. A wider turn does the same for nothing, and mowing the clean-up pass first, on dry turf, does some of it too.`,
        },
      ],
    },
    {
      title: 'Fit it, and read again',
      lead: 'The roller is on: before you re-set, see whether the drop is what you were told.',
      entries: [
        {
          kind: 'text',
          id: 'fit-it',
          text: `Stop the engine or isolate the battery, wear cut-resistant gloves, lift with help, and never reach under a unit held by a jack.

Fit the roller, set the unit down on the same green in the same way, and read the drop. Choose it here as well. If reading and book are within what your gauge can tell, go on. If they are not, weigh the roller again before you doubt anything else.

A roller of another diameter lifts or lowers the edge on the bench all by itself; the book has counted that in. Measure the bench height with the new roller on.`,
        },
        { kind: 'sideView', id: 'fitted', settings: ['frontRoller', 'unit.benchHeight'] },
      ],
    },
    {
      title: 'Re-set',
      lead: 'What the turf takes, the bench gives back: the height to set, and what that is on the adjuster.',
      entries: [
        {
          kind: 'setting',
          id: 'wanted',
          title: 'The height that is wanted',
          of: ['wantedHeight', 'unit.benchHeight', 'turf.softness'],
        },
        {
          kind: 'text',
          id: 'to-set',
          beside: true,
          text: `To cut at {wantedHeight} here, set {toHold.benchHeight} on the bench, measured with this roller on. From the present setting that is a change of {toHold.change}; less than nothing is lower.

The edge hangs between the axes, so the front roller has to travel further than the edge: {toHold.travel}. With the thread of your adjuster the set-up sheet tells it in turns as well.`,
        },
        { kind: 'uncertainty', id: 'sure' },
        {
          kind: 'text',
          id: 'sheet',
          title: 'Take it to the machine',
          text: `The set-up sheet stands among the words at the foot of this page. It has the cautions first, both units, the height to set, the turns, and boxes for what you really measured. Type in how far one turn of your adjuster moves the roller, print it, and write on it.

Set both ends alike. Then mow a strip and measure ten places. These are estimates: the gauge on the turf has the last word.`,
        },
      ],
    },
    {
      title: 'Alike across the machine',
      lead: 'Three units, one green: do they cut alike, and if not, which one is to blame?',
      entries: [
        {
          kind: 'text',
          id: 'stripes',
          text: `People see a step between two units long before they can say which is wrong. Weigh all of them, measure all their rollers, clean before you measure. The bench heights of the three below are the same, and the heights of cut are not.`,
        },
        { kind: 'units', id: 'machine' },
        {
          kind: 'text',
          id: 'match',
          title: 'Find the cause before you turn a screw',
          text: `Between the highest and the lowest lie {machine.spread}. One unit has something on its roller, another is heavier. A screw would hide both for a week: clean the one, find out what the other carries, and set the bench last.`,
        },
      ],
    },
  ],
}
