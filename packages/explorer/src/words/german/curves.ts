import type { Values } from './speaking.ts'

type Range = Values<'least' | 'leastName' | 'most' | 'mostName'>

export const curves = {
  titles: { load: 'Last über der Einsinktiefe', pressure: 'Druck über der Einsinktiefe' },
  over: 'Nebeneinander',
  overs: {
    rollers: 'Walzen im Regal',
    turfs: 'Rasen',
    laws: 'Gesetze gleicher Weichheit',
    conditions: 'Stehen und Mähen',
  },
  show: 'Über',
  shows: { load: 'Last', pressure: 'Druck' },
  fitted: 'wie montiert',
  laws: {
    linear: 'linear',
    power: 'Potenz',
    stiffening: 'versteifend',
    logarithmic: 'logarithmisch',
    layered: 'geschichtet',
    measured: 'gemessen',
    formula: 'selbst geschrieben',
  } as Readonly<Record<string, string>>,
  found: {
    alone: ({ x, sinkage }: Values<'x' | 'sinkage'>) => `Bei ${x} sinkt die Vorderwalze ${sinkage} ein.`,
    rollers: ({ x, sinkage, least, leastName, most, mostName }: Values<'x' | 'sinkage'> & Range) =>
      `Bei ${x} sinkt die montierte ${sinkage} ein; unter gleicher Last sänke ${leastName} am wenigsten ein, ${least}, und ${mostName} am meisten, ${most}.`,
    turfs: ({ x, sinkage, least, leastName, most, mostName }: Values<'x' | 'sinkage'> & Range) =>
      `Bei ${x} sinkt die Vorderwalze hier ${sinkage} ein; unter gleicher Last am wenigsten auf ${leastName}, ${least}, und am meisten auf ${mostName}, ${most}.`,
    laws: ({ x, softness, least, leastName, most, mostName }: Values<'x' | 'softness'> & Range) =>
      `Alle sinken unter einer breiten Platte bei 10 kPa ${softness} ein; unter den ${x} der Vorderwalze gehen sie auseinander, von ${least}, ${leastName}, bis ${most}, ${mostName}.`,
    conditions: ({ x, least, leastName, most, mostName }: Values<'x'> & Range) =>
      `Bei ${x} sinkt die Vorderwalze ${least} ein (${leastName}) und ${most} (${mostName}): Rasen, der nicht sofort zurückfedert, trägt hinter ihr weniger.`,
  },
  softness: ({ softness, pressure, sinkage }: Values<'softness' | 'pressure' | 'sinkage'>) =>
    `Eine breite Platte sinkt bei 10 kPa ${softness} ein: Das ist die Weichheit. Die Vorderwalze drückt an ihrer tiefsten Linie mit ${pressure}, ${sinkage} tief.`,
  notes: {
    load: 'Die Vorderwalze allein, auf Rasen, den zuvor nichts gedrückt hat. Der Ring ist der gewählte Fall; ein Punkt zeigt, wo eine andere unter ihrer eigenen Last auf dieser Einheit steht.',
    pressure:
      'Eine Kurve ist ein Rasen, was auch immer ihn drückt. Der Ring ist die tiefste Linie der Vorderwalze; ein Punkt die einer anderen an ihrer Stelle.',
    laws: 'Andere Arten als die des gewählten Rasens sind Beispiele mit seiner Weichheit: Hochzahl 0,7; Anschlag, wo er ihn hat, oder beim Sechsfachen der Weichheit; eine weiche Schicht auf einer festen; fünf erfundene Messwerte; k (exp(z/h) − 1).',
    carriedOn: 'Gestrichelt: Jenseits des Gemessenen ist das Gesetz nur fortgesetzt.',
    readings: (count: string) => `Kleine Ringe: ${count} Messwerte.`,
  },
  table: {
    caption: 'Einsinktiefe je Kurve',
    curve: 'Kurve',
    own: { load: 'eigene Last', pressure: 'eigener Druck' },
    ownSinkage: 'sinkt ein',
    at: (x: string) => `bei ${x}`,
    none: 'kein Ergebnis',
    beyond: 'am Anschlag',
  },
  none: 'keine',
  readings: 'Eingezeichnete Messwerte',
}

/** What the curves say inside themselves. */
export const curvesFigure = ({
  show,
  unit,
  sinkageUnit,
}: Values<'unit' | 'sinkageUnit'> & { readonly show: 'load' | 'pressure' }) => ({
  title: show === 'load' ? 'Last über der Einsinktiefe' : 'Druck über der Einsinktiefe',
  across: show === 'load' ? `Last auf der Vorderwalze, ${unit}` : `Druck, ${unit}`,
  down: `Einsinktiefe, ${sinkageUnit}`,
  turf: 'Rasenoberfläche',
  here: ({ x, sinkage }: Values<'x' | 'sinkage'>) => `${x}: ${sinkage}`,
  softness: (softness: string) => `Weichheit ${softness}, bei 10 kPa`,
  unknown: 'nicht gemessen',
  bottomsOut: (name: string) => `${name}, am Anschlag`,
})

export const curvesWorkings = {
  curvesSoftness: 'Weichheit ist, wie tief eine breite Platte bei 10 kPa einsinkt',
  curvesPressure: 'Wo die Kurve beim gewählten Druck steht',
  curvesLoad: 'Wo die Kurve unter der gewählten Last steht',
}
