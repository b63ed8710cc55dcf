import type { BookSpec } from '../entries/kinds.ts'
import { gaugeTable, sandTable, stripTable } from './ownGaugeReadings.ts'

/** Changes with the book's own values. */
export const ownGaugeEdition = '1'

/**
 * Fit your own gauge, for researchers. The place, its unit, its greens and the readings of its gauge are invented; the
 * plates on sand are published, and say whose they are.
 */
export const ownGauge: BookSpec = {
  swardsink: 1,
  title: 'Fit your own gauge',
  scenario: {
    unit: {
      wheelbase_mm: 196,
      edge_mm: 108,
      benchHeight_mm: 4.5,
      frontRoller: 'smooth',
      rearRoller: { mass_kg: 4.3, diameter_mm: 52, length_mm: 545, surface: { kind: 'smooth' } },
      body: { mass_kg: 18.8, at_mm: 101, height_mm: 90 },
    },
    rollers: {
      smooth: { mass_kg: 6.7, diameter_mm: 57, length_mm: 545, surface: { kind: 'smooth' } },
      grooved: {
        mass_kg: 5.4,
        diameter_mm: 57,
        length_mm: 545,
        surface: { kind: 'grooved', pitch_mm: 11, land_mm: 4.5, depth_mm: 5 },
      },
    },
    turfs: {
      'mill green, guessed': { law: { kind: 'power', softness_mm: 0.7, exponent: 0.8 }, spread_mm: 2 },
    },
    turf: 'mill green, guessed',
    condition: { kind: 'mowing', speed_kmh: 4.6 },
  },
  pages: [
    {
      title: 'Open a table',
      lead: 'A gauge leaves you with a table: here is what a table has to say, and what the book says back when it does not.',
      entries: [
        {
          kind: 'text',
          id: 'columns',
          text: `Readings come as a plain file with one row of names, then a row for each reading. A name says what its column holds and in which unit: the set, which is the plot or the green; the foot of the gauge, or the roller that stood there; the load or the pressure; and the sinkage. The unit is a part of the name, so inches and pounds are as good as millimetres. Commas, semicolons or tabs between the cells, decimal points or decimal commas: the book finds that out by itself.

These readings are invented, as if somebody had gone over two greens of Ellerby Hollow with a gauge that has two round feet. Paste your own in their place, or open a file.`,
        },
        { kind: 'readings', id: 'gauge', title: 'Two feet on two greens', table: gaugeTable },
        {
          kind: 'text',
          id: 'understood',
          text: `{gauge.count} readings of {gauge.sets} greens were understood. Nothing goes missing without a word: a cell without a reading is counted, and one that cannot be read is named with its row and its column. Try it. Put a word where a number stands, look at what is said, and undo it.

Two things are worth writing down in the field, for no sum brings them back: how long you waited before you read, and what you did about the odd reading.`,
        },
      ],
    },
    {
      title: 'A law for the turf',
      lead: 'A fit turns the question round: which turf, pressed like that, would have given readings like these?',
      entries: [
        {
          kind: 'text',
          id: 'law',
          text: `Softness is the sinkage of a board so wide that its edge does not matter, under the weight of about a tonne to the square metre. Each green has its own. The exponent tells whether turf gets stiffer as it is pressed, above one, or gives way, below one. Both greens are asked for the same one here: their readings tell it better together.

This first fit takes turf for a bed of springs that know nothing of each other. Nothing is carried beside the foot.`,
        },
        {
          kind: 'fit',
          id: 'plain',
          readings: 'gauge',
          roles: { softness: 'per set', exponent: 'shared', spread: 'held' },
        },
        {
          kind: 'text',
          id: 'left-over',
          title: 'Read what is left over',
          text: `The curve looks well enough. Now look at the strip below it, where each reading stands as far from the curve as it was read: first under one foot, then under the other. If they were scatter alone, they would lie on both sides of the line under both feet. Do they?

The scatter that is left, {plain.scatter}, is more than a gauge like this would do by itself, which reads to a hundredth of a millimetre. Something in the readings has no place in this law.`,
        },
      ],
    },
    {
      title: 'What the edge carries',
      lead: 'Turf is a mat: it is drawn down beside the foot too, and the edge of a small foot carries more of the load than its area says.',
      entries: [
        {
          kind: 'question',
          id: 'edge-softness',
          asks: 'edged.softness',
          question:
            'The fit of the last page gave the edge nothing to carry, and found a softness of {plain.softness} on the mill green. Now the fit may let turf spread load past the edge. What softness will it find?',
          because:
            'The gauge reads the same as before. What the edge carries, the turf under the foot does not: it is pressed less than we thought, and goes down as far. So it is softer, {edged.softness}.',
        },
        {
          kind: 'fit',
          id: 'edged',
          after: 'edge-softness',
          readings: 'gauge',
          roles: { softness: 'per set', exponent: 'shared', spread: 'shared' },
        },
        {
          kind: 'text',
          id: 'two-feet',
          after: 'edge-softness',
          title: 'Why two feet',
          text: `The scatter that is left is now {edged.scatter}. The spread, how far turf carries load past an edge, comes out at {edged.spread}.

A small foot has much edge and little area, a wide one the other way round. Readings under both can tell softness from spread; readings under one of them alone cannot, however many there are. Take out the rows of one foot on the first page and come back: the fit will say what it cannot tell any more.

A roller has edges as well, at its ends and at every land of a grooved one. A softness found without the spread would go wrong under those.`,
        },
      ],
    },
    {
      title: 'Somebody else’s plates',
      lead: 'Published readings to try the same tools on: a plate pressed into bare sand, far harder than anything does on a green.',
      entries: [
        {
          kind: 'text',
          id: 'source',
          text: `Measured by R. Kruger (2026), Geotechnical Test Data Repository, doi 10.5281/zenodo.17584462, licensed CC BY 4.0, with Kruger, Els and Hamersma (2023), Journal of Terramechanics 109:45-62. The sinkages were read where each pressure was first crossed, from a thinned copy of the records, so they are biased low; that is the only change. They say nothing of turf.`,
        },
        { kind: 'readings', id: 'sand', title: 'A plate on sand', table: sandTable },
        {
          kind: 'fit',
          id: 'sand-fit',
          readings: 'sand',
          roles: { softness: 'per set', exponent: 'per set', spread: 'held' },
          noise: 'estimated',
          compare: true,
        },
        {
          kind: 'text',
          id: 'sand-lesson',
          title: 'What to look for',
          text: `Read the comparison of the laws. Two of them lock: they can only get stiffer. Sand gives way under a plate, so they come out no better than the straight line that each of them is while its locking depth is out of sight.

Then look at what is left over again. The deepest readings decide everything, because one scatter is taken for all of them, and a deviation that is nothing at the bottom is the whole reading at the top. Add a column sd_mm that grows with the sinkage, let the fit take the scatter as the readings say, and see how far the exponents move. What you take the scatter to be can matter more than the law.`,
        },
      ],
    },
    {
      title: 'From turf to height',
      lead: 'Nobody mows a softness: what matters is how sure the height of cut is, and what it hangs on.',
      entries: [
        {
          kind: 'text',
          id: 'hangs-on',
          text: `Here the turf comes from the fit with the edge, together with how sure its numbers are and how they go together. Beside it scatter the setting on the bench and the scales. If the fit makes the larger part, more readings help; if the bench does, a better feeler helps, and another day on the green does not.`,
        },
        { kind: 'uncertainty', id: 'sure', fit: 'edged', set: 'mill green' },
        {
          kind: 'text',
          id: 'next',
          title: 'What to measure next',
          text: `Under the fit of page “What the edge carries”, ask for what to measure next. It lists loads and feet by how much each would narrow the height, before anybody has gone out again. It believes the law: a reading far outside what the rollers press with may narrow the numbers and say little of the turf under a roller.`,
        },
      ],
    },
    {
      title: 'Cut, measure, compare',
      lead: 'A fit that was never checked is an opinion: mow a strip, measure it, and see whether the heights lie where they should.',
      entries: [
        { kind: 'readings', id: 'strip', title: 'Heights after a test strip', table: stripTable },
        {
          kind: 'question',
          id: 'agreeing',
          asks: 'compared.agree',
          question:
            'Both rollers were tried on both greens, {compared.strips} strips in all. Each mean has an interval that it should lie in nineteen times out of twenty if the fit is right. In how many of the strips will it?',
          because:
            'One that lies outside is no proof against the fit, and all of them inside is none for it: the intervals are as wide as the readings were few. On average the strips were cut {compared.difference} from what was expected; less than nothing is lower.',
        },
        { kind: 'check', id: 'compared', after: 'agreeing', readings: 'strip', fit: 'edged' },
        {
          kind: 'text',
          id: 'disagree',
          title: 'If they do not agree',
          text: `Ask first what was different on the day: water, the wait before reading, clippings on the roller, another operator. Then whether the unit is the one in this book: weigh it. Then whether the turf springs back at once behind the roller, as this book takes it to; one that takes its time is cut at another height. Only then doubt the law. A height that is off on one green and right on the other speaks for the day, one that is off with one roller on both speaks for that roller.`,
        },
      ],
    },
    {
      title: 'A paragraph of methods',
      lead: 'What a reader of your report needs in order to do it again, and where the book has written it for you.',
      entries: [
        {
          kind: 'text',
          id: 'report',
          text: `Under every fit stands a paragraph for a report. It names the law, what was fitted and what was held, how the scatter was taken, and the readings that were left out. Copy it, and add what only you know: the instrument and its step, the wait, the weather, who chose the places and how.

The same fit leaves as a short script for R or for Python that makes its numbers again with other people’s code, where that can be done, and as a table where it cannot. Keep it with the data.`,
        },
        { kind: 'curves', id: 'in-hand', show: 'pressure', over: 'turfs', readings: 'gauge' },
        {
          kind: 'text',
          id: 'use-it',
          title: 'And then use it',
          beside: true,
          text: `This curve is the turf in hand, which so far is a guess. Go back to the fit with the edge and say “use this turf”: curve, map, rack and every other book page that you build on it then stand on your readings, and each says so when it is asked for more than they cover.

The readings of the small foot lie above the curve even then. Their pressure is load over area, and some of that load was carried by the edge.`,
        },
      ],
    },
  ],
}
