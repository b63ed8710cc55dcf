import type { BookSpec } from '../entries/kinds.ts'

/** Changes with the book's own values: what a reader kept of an older edition is not poured into a newer one. */
export const heavierRollerEdition = '2'

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
        {
          kind: 'question',
          id: 'heavier',
          asks: 'effectiveHeight',
          change: { name: 'frontRoller', to: 'peg 2' },
          question:
            'Peg 2 of the rack is like peg 1 but heavier: {rollers.peg 2.mass} in place of {rollers.peg 1.mass}. Now the unit cuts at {effectiveHeight}. Say it before you look at the rack: at what height would it cut with peg 2?',
          because:
            'The front roller would press with {then.front.load} instead of {front.load}, and sink {then.front.sinkage} instead of {front.sinkage}. A heavier roller does cut lower, though by less than most people say. Why it is so little is on the next page.',
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
    {
      title: 'A round roller makes its own seat',
      lead: 'A roller is round: as it sinks, the seat it sits in grows wider. What does that do to the next newton?',
      entries: [
        {
          kind: 'text',
          text: `Lay a flat board on turf that answers like a spring, and load it: it goes down in step with the load. A roller is not flat. Before you look at its curve, say what you expect of it.`,
        },
        {
          kind: 'question',
          id: 'loaded',
          asks: 'front.sinkage',
          of: 'ratio',
          change: { name: 'frontRoller.mass', by: 15.1 },
          question:
            'Weights are hung on the axle of the front roller until it presses on the green with {then.front.load} instead of {front.load}. How many times as deep as now will it sink?',
          because:
            'It sinks {then.front.sinkage} instead of {front.sinkage}: further, but not in step with the load.',
        },
        { kind: 'curves', id: 'load', after: 'loaded', show: 'load', over: 'turfs' },
        {
          kind: 'text',
          id: 'seat-why',
          after: 'loaded',
          title: 'Why it bends',
          beside: true,
          text: `The seat reaches as far ahead of the axis and behind it as the arc of the roller dips into the turf. That length grows with the square root of the sinkage. Pressure grows too, on turf like a spring in step with the sinkage.

So the load that a seat can carry grows as the sinkage to the power three halves. Turned round: the sinkage grows as the load to the power two thirds. This green also gets stiffer the further it is pressed, and that bends the curve a little more.`,
        },
        {
          kind: 'formula',
          id: 'seat',
          name: 'seat',
          from: '2 * sqrt(frontRoller.diameter * front.sinkage)',
          in: 'mm',
        },
        {
          kind: 'text',
          id: 'seat-length',
          beside: true,
          text: `Told from the diameter and the sinkage alone, the seat is {seat} long. The turf just ahead and just behind is pulled down with the roller, so the metal itself touches over a little less.

A roller of another diameter makes another seat. Change it on the first page, and come back.`,
        },
      ],
    },
    {
      title: 'Two rollers carry it',
      lead: 'The unit stands on two rollers, and the cutting edge hangs between them: it matters where the weight is, not only how much of it there is.',
      entries: [
        {
          kind: 'text',
          id: 'balance',
          text: `The body of this unit weighs {body.weight}. Its centre of gravity lies {body.at} behind the axis of the front roller; the rear axis lies {unit.wheelbase} behind it. Each roller carries itself and its part of the body, and the part is the larger the nearer the centre of gravity.`,
        },
        {
          kind: 'question',
          id: 'moved',
          asks: 'front.load',
          change: { name: 'body.at', by: -0.02 },
          question:
            'A heavy part of the body is moved forwards, and the centre of gravity goes with it: {then.body.at} behind the front axis instead of {body.at}. Now the front roller presses with {front.load}. With what will it press then?',
          because:
            'What the front roller takes on, the rear one gives up: {then.rear.load} there instead of {rear.load}. Together they always press with the weight of the whole unit.',
        },
        {
          kind: 'sideView',
          id: 'levers',
          after: 'moved',
          settings: ['body.at', 'unit.edge', 'frontRoller.mass'],
        },
        {
          kind: 'text',
          id: 'edge',
          after: 'moved',
          title: 'Where the edge goes',
          text: `The front roller is {front.sinkage} down, the rear one {rear.sinkage}. The edge stands {unit.edge} behind the front axis and goes down by a mixture of the two, each counted by how near it is: {drop}.

Weight in a roller is different from weight in the body. It sits on that roller’s own axis and changes next to nothing at the other one. Make the front roller heavier and watch the load at the rear.`,
        },
      ],
    },
    {
      title: 'Weight or turf?',
      lead: 'Turf is never the same for long. Rain, thatch and top-dressing change how soft it is, and the height of cut with it.',
      entries: [
        {
          kind: 'text',
          id: 'softness',
          text: `Softness is told as a depth: how far a wide flat board goes down under the weight of about a tonne to the square metre. On this green that is {turf.softness}.`,
        },
        {
          kind: 'question',
          id: 'softer',
          asks: 'effectiveHeight',
          change: { name: 'turf.softness', times: 0.5 },
          question:
            'After a dry, windy week the green is half as soft: {then.turf.softness} instead of {turf.softness}. Nobody touches the unit, which cuts at {effectiveHeight} now. At what height will it cut then?',
          because:
            'The edge goes down {then.drop} instead of {drop}. Set this beside your answer for the heavier roller: that added a few newtons under one roller, while firmer turf gives way less to every newton under both. A wet week that makes the green twice as soft takes even more than this gives: {twiceAsSoft.drop}.',
        },
        { kind: 'map', id: 'heights', after: 'softer', quantity: 'effectiveHeight' },
        {
          kind: 'text',
          id: 'lines',
          after: 'softer',
          title: 'Read the map by its lines',
          beside: true,
          text: `Along a line of the map the unit always cuts at the same height. Follow one with your finger: how much lighter must the roller be to make up for a little more softness?

Then move the mark, once along the mass and once along the softness, and see which of the two crosses lines faster. That is the one to look after first.`,
        },
      ],
    },
    {
      title: 'The surface, not the weight',
      lead: 'A smooth roller carries its load on all of its face. Grooves leave the work to the lands between them.',
      entries: [
        {
          kind: 'text',
          id: 'grooves',
          text: `Peg 3 of the rack has grooves: lands {rollers.peg 3.land} wide, one every {rollers.peg 3.pitch}. It weighs {rollers.peg 3.mass}; peg 1, which is smooth and just as thick, weighs {rollers.peg 1.mass}.`,
        },
        {
          kind: 'question',
          id: 'grooved',
          asks: 'effectiveHeight',
          of: 'difference',
          change: { name: 'frontRoller', to: 'peg 3' },
          question:
            'Peg 3 goes on the unit, and the bench stays as it is. Where will it cut, compared with {effectiveHeight} now?',
          options: [
            { text: 'Higher, for it is lighter', from: 1e-5, to: null, right: false },
            { text: 'At the same height', from: -1e-5, to: 1e-5, right: false },
            { text: 'Lower, for less of its face carries', from: null, to: -1e-5, right: false },
          ],
          because:
            'It would cut at {then.effectiveHeight} and sink {then.front.sinkage}. The lands are only part of the face. Yet the turf does not give way as if they carried alone: the mat between them is drawn down too, and bears on their edges.',
        },
        { kind: 'section', id: 'across', after: 'grooved' },
        {
          kind: 'setting',
          id: 'fit-one',
          after: 'grooved',
          beside: true,
          of: ['frontRoller', 'frontRoller.land', 'frontRoller.pitch'],
        },
        {
          kind: 'text',
          id: 'lands',
          after: 'grooved',
          title: 'What the lands leave',
          text: `Fit peg 3 and look across its face, then peg 5 with its narrow lands. What the roller fitted now carries, as a part of what a smooth one would carry at that depth: {across.bearingFraction}. One would be all of it.

This is mechanics, and a gauge on a green has the last word. No replicated trial of grooved against smooth rollers that tells it in depths of cut was found in print. If you have a rack and a green, you could run it.`,
        },
      ],
    },
    {
      title: 'Put the height back',
      lead: 'Rain or a roller chosen for its finish: what they take from the cut, the bench can give back.',
      entries: [
        {
          kind: 'question',
          id: 'back',
          asks: 'drop',
          of: 'difference',
          change: { name: 'turf.softness', times: 1.5 },
          question:
            'It rains, and the green is half as soft again: {then.turf.softness} instead of {turf.softness}. By how much must the edge be raised on the bench so that the grass is cut at the same height as now?',
          because:
            'The edge would go down {then.drop} instead of {drop}. What the turf takes, the bench has to give: set the edge higher by the difference. It is the same with another roller, and the rack says for each of them what to set.',
        },
        { kind: 'rack', id: 'hold', after: 'back', sort: 'benchHeight', order: 'down' },
        {
          kind: 'text',
          id: 'learnt',
          after: 'back',
          title: 'What you can say now',
          text: `A heavier roller cuts lower because it presses harder; its round seat keeps that small. Where the weight sits decides how it is shared, and the edge follows the roller that is nearer. Softer turf lowers the cut more than the rollers of this rack do by their weight. Grooves lower it without any weight. And the bench can give back what all of them take.

Look at your six predictions together on the hand-in, at the foot of this page. Where were you furthest out, and what had you thought?`,
        },
        {
          kind: 'setting',
          id: 'go-on',
          title: 'Go on from here',
          of: ['condition', 'condition.speed', 'turf.lockingDepth'],
        },
        {
          kind: 'text',
          id: 'ask-on',
          beside: true,
          text: `Set the unit to mow. Only the half of the seat ahead of the axis is pressed into fresh turf then; what carries behind is what springs back. Does it cut lower or higher than when it stands?

Make the locking depth smaller, step by step, and watch the height. What does the book say when the turf can give no further, and what does it not say?

This is a model of turf, not a reading. Its answer is as good as the softness that goes in, and it knows nothing of ball roll, disease or wear.`,
        },
      ],
    },
  ],
}
