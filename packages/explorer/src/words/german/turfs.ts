import type { Values } from './speaking.ts'

const counts = ['Kein', 'Ein', 'Zwei', 'Drei', 'Vier', 'Fünf', 'Sechs', 'Sieben', 'Acht', 'Neun']

export const turfs = {
  title: (count: number) => (count === 1 ? 'Ein Grün' : `${counts[count] ?? String(count)} Grüns`),
  alone: ({ name, softness, height }: Values<'name' | 'softness' | 'height'>) =>
    `${name} sinkt unter einer breiten Platte bei 10 kPa ${softness} ein; diese Einheit schneidet darauf auf ${height}.`,
  range: ({
    name,
    softness,
    height,
    low,
    lowName,
    high,
    highName,
  }: Values<'name' | 'softness' | 'height' | 'low' | 'lowName' | 'high' | 'highName'>) =>
    `${name} sinkt bei 10 kPa ${softness} ein, und diese Einheit schneidet darauf auf ${height}; am tiefsten schnitte sie auf ${lowName}, auf ${low}, und am höchsten auf ${highName}, auf ${high}.`,
  bottomsOutHere: (name: string) =>
    `Auf ${name} ist der Rasen am Anschlag: Diese Einheit hat dort keine Schnitthöhe.`,
  note: 'Eine Kurve je Grün, was auch immer es drückt; der Ring ist die tiefste Linie der Vorderwalze auf dem gewählten Grün. „Schnitt“: die Höhe der gewählten Einheit auf dem jeweiligen Grün.',
  caption: 'Die Grüns',
  turf: 'Grün',
  columns: {
    law: 'Gesetz',
    softness: 'Weichheit',
    spread: 'Verteilung',
    rebound: 'Rückfederung',
    effectiveHeight: 'Schnitt',
  },
  inHand: 'gewählt',
  stand: 'darauf stellen',
  bottomsOut: 'am Anschlag',
  later: '…',
  open: (name: string) => `${name}: seine Zahlen`,
  source: (source: string) => `Woher seine Zahlen kommen: ${source}`,
  typed: 'Seine Zahlen wurden getippt, nicht an Messwerte angepasst.',
  newName: 'neues Grün',
  add: 'Grün hinzufügen',
  law: 'Gesetz',
  lawOf: (layer: string) => `Gesetz, ${layer}`,
  from: (source: string) => `nach ${source}`,
  refused: (law: string) => `Mit diesem Gesetz (${law}) kann ein Grün nicht so weich sein wie dieses.`,
  points: 'Gemessene Punkte',
  tableColumns: { sinkage: 'Einsinktiefe', pressure: 'Druck' } as Readonly<Record<string, string>>,
  noNumber: 'Hier gehört eine Zahl hin.',
  pointsWrong: 'Einsinktiefe und Druck müssen beide von Zeile zu Zeile wachsen.',
  expression: 'Druck in Pa, berechnet aus',
  expressionNote:
    'z ist die Einsinktiefe in m; benannte Werte unten; + − × ÷ ^, sqrt, exp, log, tanh und dergleichen',
  values: 'Benannte Werte',
  valueName: 'Name',
  value: 'Wert',
  checking: 'wird geprüft',
  kept: 'Bis das stimmt, bleibt das Grün, wie es war.',
}

export const turfsWorkings = {
  turfSoftness: 'Weichheit ist, wie tief eine breite Platte bei 10 kPa einsinkt',
}
