import { counted, type Values } from './speaking.ts'

export const units = {
  title: (count: number) => (count === 1 ? 'Die Einheit' : `${counted(count)} Einheiten einer Maschine`),
  single: 'Es gibt eine Einheit. Kopieren Sie sie, um eine zweite derselben Maschine danebenzustellen.',
  alike: ({ count, low, high, tolerance }: Values<'count' | 'low' | 'high' | 'tolerance'>) =>
    `Alle ${count} schneiden höchstens ${tolerance} verschieden: ${low} bis ${high}.`,
  apart: ({ higher, lower, by, tolerance }: Values<'higher' | 'lower' | 'by' | 'tolerance'>) =>
    `Von den Einheiten schneidet ${higher} am höchsten, ${by} über ${lower}: mehr als die ${tolerance}, die als gleich gelten.`,
  setTo: ({ name, bench, inHand }: Values<'name' | 'bench' | 'inHand'>) =>
    `Auf ${bench} eingestellt, würde ${name} so hoch schneiden wie ${inHand}.`,
  below: ({ name, inHand }: Values<'name' | 'inHand'>) =>
    `Keine Einstellung bringt ${name} auf die Höhe von ${inHand} herunter.`,
  unanswered: (name: string) => `Für ${name} gibt es keine Höhe: Ihr Rasen ist am Anschlag.`,
  note: (tolerance: string) =>
    `Höhen in der Mitte der Schneidkante, auf diesem Rasen, in diesem Betrieb. Schattiert: höchstens ${tolerance} von der gewählten Einheit. Enden: das rechte gegen das linke.`,
  caption: 'Einheiten der Maschine nebeneinander',
  unit: 'Einheit',
  unnamed: 'die Einheit',
  newName: 'Einheit 1',
  columns: {
    roller: 'Vorderwalze',
    benchHeight: 'eingestellt',
    load: 'vorn getragen',
    drop: 'Absenkung',
    effectiveHeight: 'schneidet',
    ends: 'Enden',
    toMatch: 'angleichen auf',
  },
  ownRoller: 'nicht aus dem Regal',
  within: (tolerance: string) => `schattiert: ±${tolerance} um die gewählte`,
  inHand: 'gewählt',
  take: 'wählen',
  nowInHand: 'Die gewählte Einheit',
  bottomsOut: 'am Anschlag',
  belowBench: 'unter der Bezugslinie',
  pairs: 'Je zwei von ihnen',
  pair: ({ first, second }: Values<'first' | 'second'>) => `${first} gegen ${second}`,
  isAlike: 'gleich',
  isApart: 'nicht gleich',
}

export const unitsWorkings = {
  unitPair: 'Die beiden, die sich am meisten unterscheiden',
  unitToMatch: 'Einstellhöhe, mit der eine Einheit so hoch schneidet wie die gewählte',
}
