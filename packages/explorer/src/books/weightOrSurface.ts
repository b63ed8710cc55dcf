import type { BookSpec } from '../entries/kinds.ts'

/** Changes with the book's own values. */
export const weightOrSurfaceEdition = '1'

/**
 * Weight or surface? For trainers: twelve steps, twice guess, press, measure, type the reading in, explain. The unit, its
 * rollers and the pad are invented; none of their masses is one that the tests check against.
 */
export const weightOrSurface: BookSpec = {
  swardsink: 1,
  title: 'Weight or surface?',
  scenario: {
    unit: {
      wheelbase_mm: 188,
      edge_mm: 104,
      benchHeight_mm: 7.2,
      frontRoller: 'light',
      rearRoller: { mass_kg: 4.1, diameter_mm: 51, length_mm: 560, surface: { kind: 'smooth' } },
      body: { mass_kg: 17.6, at_mm: 96, height_mm: 95 },
    },
    rollers: {
      light: { mass_kg: 4.6, diameter_mm: 57, length_mm: 560, surface: { kind: 'smooth' } },
      heavy: { mass_kg: 9.6, diameter_mm: 57, length_mm: 560, surface: { kind: 'smooth' } },
      grooved: {
        mass_kg: 5.2,
        diameter_mm: 57,
        length_mm: 560,
        surface: { kind: 'grooved', pitch_mm: 16, land_mm: 5, depth_mm: 8 },
      },
    },
    turfs: {
      'foam pad': {
        law: { kind: 'power', softness_mm: 1.6, exponent: 0.9 },
        spread_mm: 2,
        thickness_mm: 30,
      },
    },
    turf: 'foam pad',
    condition: { kind: 'standing' },
  },
  pages: [
    {
      title: 'Two numbers',
      lead: 'The bench says one height, and whatever the unit stands on makes another of it.',
      minutes: 4,
      notes: `Say the safety words first if a unit is in the room: engine off or battery isolated, cut-resistant gloves, lift with help, nothing under a unit held by a jack, the machine’s own manual and local rules.

Kit: the unit, or its front end alone; a foam pad wider than the rollers and on a firm floor; three front rollers, light and smooth, heavy and smooth, grooved; scales; a straight-edge across two blocks that stand beside the pad; a caliper or depth gauge; slips of paper. No pad? A box of turf does as well, if it is cut square and watered the day before.

Before the room comes: weigh your unit and your rollers, type them in under this figure, set one roller down on your pad, and move the softness until the book says what your gauge says. From then on it predicts, and the room can catch it out.

Ask who knew that the two heights differ, and who sets the bench by it.`,
      entries: [
        { kind: 'sideView', id: 'stands', settings: ['unit.benchHeight', 'turf.softness'] },
        {
          kind: 'setting',
          id: 'yours',
          title: 'Your own unit and pad',
          notes: 'For before the lesson. Leave it out when you show the book; nobody in the room needs it.',
          of: [
            'frontRoller',
            'scales.total',
            'scales.front',
            'unit.edge',
            'unit.wheelbase',
            'turf.softness',
            'turf.spread',
          ],
        },
      ],
    },
    {
      title: 'Guess: the weight',
      lead: 'Two smooth rollers, the same size, one much heavier than the other.',
      minutes: 4,
      notes: `Let both rollers go round: weighing in the hand makes the guesses bolder. Slips in, no talking, then type the numbers in as they come, or a tally. Their dots stand on the figure before anything is said.

Lock before you go on, in front of everybody. Do not reveal yet: the pad goes first.`,
      entries: [
        {
          kind: 'question',
          id: 'guess-weight',
          asks: 'front.sinkage',
          change: { name: 'frontRoller', to: 'heavy' },
          room: true,
          question:
            'With the light roller, {rollers.light.mass}, the front roller stands {front.sinkage} deep in the pad. How deep will it stand with the heavy one, {rollers.heavy.mass}?',
          because:
            'The front roller presses with {then.front.load} instead of {front.load}. A round roller that sinks widens its own seat, so that more of the pad comes to help with what is added.',
        },
      ],
    },
    {
      title: 'Press: the weight',
      lead: 'Light roller first, then the heavy one: set it down gently, and wait for as long each time.',
      minutes: 5,
      notes: `Somebody from the room sets it down, somebody else counts the wait aloud. Same place on the pad, same wait. Foam creeps: without a fixed wait you measure patience.

While the heavy roller goes in, let the room say what they would do on a green to keep conditions alike.`,
      entries: [
        {
          kind: 'text',
          id: 'press-weight',
          text: `Engine off or battery isolated, gloves on, lift with help.

Touch down, without weight: that is zero. Let go, count, read. Lift off, let the pad come back, change the roller, and do it again in the same place.

What must stay the same so that only the weight is different?`,
        },
      ],
    },
    {
      title: 'Measure: the weight',
      lead: 'Read down from the straight-edge to the roller’s axle, once before it is let go and once after the wait.',
      minutes: 5,
      notes: `Read three times and write all three on the board, not only the nicest. Ask how far apart they are before you ask for their middle: that is how well this room can measure today.

The blocks must stand on the floor, not on the pad.`,
      entries: [
        {
          kind: 'text',
          id: 'measure-weight',
          text: `The difference of the two readings is the sinkage. Three people read; nobody says a number before all three have written theirs down.

How far apart are they? Nothing smaller than that can be told from the pad.`,
        },
      ],
    },
    {
      title: 'Type it in: the weight',
      lead: 'The readings of this room beside the curve of the book.',
      minutes: 4,
      notes: `Type the load that your scales gave under the front roller, and the sinkage. Each reading lands on the curve as a small ring the moment it is typed.

If the pad disagrees: say so, and leave it on the wall. A reading deeper than the curve, with both rollers: the pad is softer than the book has it, or warmer; set the softness until the light roller agrees, and ask whether the heavy one does now. Deeper with the heavy one only: the pad is bottoming out on the floor, or the blocks stood on the pad. Less deep: the wait was shorter, or the roller was not let go. None of this is a failure; it is what a model is for.`,
      entries: [
        {
          kind: 'readings',
          id: 'weights',
          title: 'Read from the pad: the weight',
          table: 'roller,load_kg,sinkage_mm\nlight,,\nheavy,,\n',
        },
        { kind: 'curves', id: 'weight-curve', show: 'load', over: 'turfs', readings: 'weights' },
      ],
    },
    {
      title: 'Explain: the weight',
      lead: 'Now show what the book said, and let the room say why it is so little.',
      minutes: 5,
      notes: `Go back one page at a time if the room wants to see its guesses against the ring: the question of the second step is revealed there.

The word to get out of the room is “seat”. Press a bottle into a cushion if you need a picture: at first it touches along a line, then along a broad stripe. Twice the stripe, and each part of it presses harder too.

Question to put: what would a flat plate do?`,
      entries: [
        {
          kind: 'text',
          id: 'explain-weight',
          text: `A roller meets the pad along a line. As it goes down, the line becomes a stripe. The stripe widens with the root of the depth, and the pad presses back harder the deeper it is: so each newton more costs less depth than the one before.

Under {front.load} this roller stands {front.sinkage} deep. {oneKilogram.mass} more in front would lower the edge by {oneKilogramMore.drop}.`,
        },
      ],
    },
    {
      title: 'Guess: the surface',
      lead: 'Now a roller that weighs hardly more than the light one, but has grooves.',
      minutes: 4,
      notes: `Put the light roller back in, in the room and in the book. Pass the grooved roller round next to the light one. Somebody will measure the lands: good, let them say what part of the face is left.

Slips again, lock, do not reveal.`,
      entries: [
        {
          kind: 'question',
          id: 'guess-surface',
          asks: 'front.sinkage',
          change: { name: 'frontRoller', to: 'grooved' },
          room: true,
          question:
            'The grooved roller weighs {rollers.grooved.mass}, the light one {rollers.light.mass}. Its lands are {rollers.grooved.land} wide, one every {rollers.grooved.pitch}. The front roller stands {front.sinkage} deep now. How deep will it stand with the grooved one?',
          because:
            'It weighs next to nothing more, and presses with {then.front.load} instead of {front.load}. But it has only its lands to stand on, and whatever the pad between them gives.',
        },
      ],
    },
    {
      title: 'Press: the surface',
      lead: 'The same place on the pad, the same wait, the grooved roller.',
      minutes: 4,
      notes: `Let somebody look along the pad at eye level while it is set down: in the grooves the foam stands up. That is the whole lesson, and they saw it before you said it.

A phone held low makes a picture of it for the wall.`,
      entries: [
        {
          kind: 'text',
          id: 'press-surface',
          text: `Gloves on, lift with help. Set the grooved roller down. Before you read the gauge, look along the pad from the side.

What does the pad do between the lands? What does it do beside the roller’s ends?`,
        },
      ],
    },
    {
      title: 'Measure: the surface',
      lead: 'Three people read, as before; then move the roller along its axis by half a pitch and read again.',
      minutes: 4,
      notes: `The half pitch costs a minute and buys trust: lands stand on fresh foam, and the reading is the same. If it is not, you have found how much one place of the pad differs from the next.`,
      entries: [
        {
          kind: 'text',
          id: 'measure-surface',
          text: `Read as before. Then move the unit sideways by half the distance between two lands, and read once more.

Is it the same? Then it was the roller. Is it not? Then it was the pad.`,
        },
      ],
    },
    {
      title: 'Type it in: the surface',
      lead: 'All rollers on one picture, and the readings of this room on top.',
      minutes: 4,
      notes: `Now every roller has its curve, each with a dot where it would stand on this unit.

If the pad disagrees: the grooved reading is the one to doubt the model on. The foam in the grooves is stretched further than the equations like, and the book says so in a caution; read it out. If the grooved roller went down further than its curve, the foam may be stiffer in stretch than the book takes it to be, or softer in press: change the spread, watch the grooved curve move and the smooth ones hardly.

If it did not go down as far, see whether the foam touched the floor of the grooves.`,
      entries: [
        {
          kind: 'readings',
          id: 'surfaces',
          title: 'Read from the pad: the surface',
          table: 'roller,load_kg,sinkage_mm\nlight,,\ngrooved,,\n',
        },
        { kind: 'curves', id: 'surface-curve', show: 'load', over: 'rollers', readings: 'surfaces' },
      ],
    },
    {
      title: 'Explain: the surface',
      lead: 'Lands carry, grooves do not, and the mat between them helps a little.',
      minutes: 5,
      notes: `Fit the grooved roller in the list beside the figure, and let the room find the lands, the mat, and the small arrows at the edges of the lands. Ask what a much wider pitch would do, then do it.

Do not quote the numbers as if they had been measured on turf. No replicated trial in print tells grooved from smooth rollers in depths of cut. If somebody has a green and a rack, this is how to run one.`,
      entries: [
        { kind: 'section', id: 'between' },
        {
          kind: 'setting',
          id: 'lands',
          title: 'Another surface',
          beside: true,
          of: ['frontRoller', 'frontRoller.land', 'frontRoller.pitch', 'turf.spread'],
        },
      ],
    },
    {
      title: 'Put the height back',
      lead: 'Weight or surface: whichever took the height, the bench can give it back.',
      minutes: 6,
      notes: `One hand goes up for weight, one for surface: which of the two would you look at first on a green that scalps? Then ask for the number, aloud this time, and reveal.

To close: nobody has measured your green. What would you have to measure next week to use this? Rollers on the scales, a drop on the green, one test strip.

Say once more that a pad is not turf: it springs back at once, has no thatch and no rain.`,
      entries: [
        {
          kind: 'question',
          id: 'guess-bench',
          asks: 'drop',
          of: 'difference',
          change: { name: 'frontRoller', to: 'grooved' },
          question:
            'The grooved roller stays on, for its finish. By how much must the edge be raised on the bench so that it stands as high above the pad as now?',
          because:
            'The edge goes down {then.drop} instead of {drop}, less of a difference than under the roller itself: it hangs between the two rollers, and the rear one has not changed.',
        },
        { kind: 'rack', id: 'all-three', after: 'guess-bench', sort: 'benchHeight', order: 'down' },
      ],
    },
  ],
}
