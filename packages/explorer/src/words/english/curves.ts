import type { Values } from './speaking.ts'

type Range = Values<'least' | 'leastName' | 'most' | 'mostName'>

export const curves = {
  titles: { load: 'Load against sinkage', pressure: 'Pressure against sinkage' },
  over: 'Side by side',
  overs: {
    rollers: 'rollers of the rack',
    turfs: 'turfs',
    laws: 'laws of equal softness',
    conditions: 'standing and mowing',
  },
  show: 'Against',
  shows: { load: 'load', pressure: 'pressure' },
  fitted: 'as fitted',
  laws: {
    linear: 'linear',
    power: 'power',
    stiffening: 'stiffening',
    logarithmic: 'logarithmic',
    layered: 'layered',
    measured: 'measured',
    formula: 'written',
  } as Readonly<Record<string, string>>,
  found: {
    alone: ({ x, sinkage }: Values<'x' | 'sinkage'>) => `Under ${x} the front roller sinks ${sinkage}.`,
    rollers: ({ x, sinkage, least, leastName, most, mostName }: Values<'x' | 'sinkage'> & Range) =>
      `Under ${x} the one fitted sinks ${sinkage}; with the same load on each, ${leastName} would sink least, ${least}, and ${mostName} most, ${most}.`,
    turfs: ({ x, sinkage, least, leastName, most, mostName }: Values<'x' | 'sinkage'> & Range) =>
      `Under ${x} the front roller sinks ${sinkage} here; with the same load, least on ${leastName}, ${least}, and most on ${mostName}, ${most}.`,
    laws: ({ x, softness, least, leastName, most, mostName }: Values<'x' | 'softness'> & Range) =>
      `All of these sink ${softness} under a wide plate at 10 kPa; under the front roller’s ${x} they part, from ${least}, ${leastName}, to ${most}, ${mostName}.`,
    conditions: ({ x, least, leastName, most, mostName }: Values<'x'> & Range) =>
      `Under ${x} the front roller sinks ${least} ${leastName} and ${most} ${mostName}: turf that does not spring back at once carries less behind it.`,
  },
  softness: ({ softness, pressure, sinkage }: Values<'softness' | 'pressure' | 'sinkage'>) =>
    `A wide plate sinks ${softness} at 10 kPa: that is the softness. The front roller presses ${pressure} at its lowest line, ${sinkage} down.`,
  notes: {
    load: 'Front roller alone, on turf that nothing pressed before. The ring is the present case; a dot is where another stands under its own load on this unit.',
    pressure:
      'One curve is one turf, whatever presses it. The ring is the lowest line of the front roller; a dot is that of another in its place.',
    laws: 'Kinds other than the present turf’s are examples at its softness: exponent 0.7; locking where it does, or at six times the softness; a soft layer over a firm one; five invented readings; k (exp(z/h) − 1).',
    carriedOn: 'Dashed: beyond what was measured, the law is only carried on.',
    readings: (count: string) => `Small rings: ${count} readings.`,
  },
  table: {
    caption: 'Sinkage by curve',
    curve: 'curve',
    own: { load: 'its own load', pressure: 'its own pressure' },
    ownSinkage: 'sinks',
    at: (x: string) => `at ${x}`,
    none: 'no answer',
    beyond: 'bottoms out',
  },
  none: 'none',
  readings: 'Readings drawn on top',
}

/** What the curves say inside themselves. */
export const curvesFigure = ({
  show,
  unit,
  sinkageUnit,
}: Values<'unit' | 'sinkageUnit'> & { readonly show: 'load' | 'pressure' }) => ({
  title: show === 'load' ? 'Load against sinkage' : 'Pressure against sinkage',
  across: show === 'load' ? `load on the front roller, ${unit}` : `pressure, ${unit}`,
  down: `sinkage, ${sinkageUnit}`,
  turf: 'turf surface',
  here: ({ x, sinkage }: Values<'x' | 'sinkage'>) => `${x}: ${sinkage}`,
  softness: (softness: string) => `softness ${softness}, at 10 kPa`,
  unknown: 'not measured',
  bottomsOut: (name: string) => `${name}, locks`,
})

export const curvesWorkings = {
  curvesSoftness: 'Softness is what a wide plate sinks at 10 kPa',
  curvesPressure: 'Where the curve stands at the pressure in hand',
  curvesLoad: 'Where the curve stands under the load in hand',
}
