import { percent, type Values } from './speaking.ts'

type Said = Readonly<Record<string, string>>

export const uncertainty = {
  title: 'Welche Höhe es werden kann',
  inputs: {
    softness: 'Weichheit des Rasens',
    benchHeight: 'Einstellung in der Werkstatt',
    'frontRoller.mass': 'Masse der Vorderwalze',
    'scales.front': 'Waage vorn',
    'scales.rear': 'Waage hinten',
    fit: 'der Rasen, wie angepasst',
  } as Said,
  found: ({ low, high }: Values<'low' | 'high'>) =>
    `95 von 100 solchen Einheiten schneiden zwischen ${low} und ${high}`,
  about: ({ low, high }: Values<'low' | 'high'>) =>
    `Etwa 95 von 100 solchen Einheiten schneiden zwischen ${low} und ${high}`,
  mostly: ({ what, share }: Values<'what' | 'share'>) =>
    `allein ${share} dieser Streuung macht aus: ${what}.`,
  wanted: ({ within, height, tolerance }: Values<'within' | 'height' | 'tolerance'>) =>
    `${within} schneiden höchstens ${tolerance} neben den gewünschten ${height}.`,
  alike: 'Alle solchen Einheiten schneiden gleich: Nichts, was streut, ändert die Höhe.',
  unanswered: ({ share, why }: Values<'share' | 'why'>) =>
    `${share} der Ziehungen haben kein Ergebnis (${why}) und sind weggelassen.`,
  reasons: {
    'not possible': 'sie ergeben keine Einheit oder keinen Rasen',
    'would tip': 'die Einheit würde kippen',
    'bottomed out': 'der Rasen ist am Anschlag',
    'not converged': 'es wurde kein Ergebnis gefunden',
  } as Said,
  scalps: (share: string) => `${share} schneiden in den Rasen.`,
  note: ({ draws, seed }: Values<'draws' | 'seed'>) =>
    `${draws} zufällig gezogene Einheiten, begonnen bei ${seed}: jedes Mal wieder dieselben. Wie weit etwas streut, ist hier gesagt, nicht gemessen, außer es kommt aus einer Anpassung.`,
  noteLines: 'Aus Geraden durch den gewählten Fall, bis die Ziehungen da sind.',
  noWanted: 'Es ist keine gewünschte Höhe eingestellt.',
  settings: 'Wie weit jedes streut',
  table: {
    caption: 'Höhen, und woran sie hängen',
    what: 'was',
    value: 'Wert',
    unit: 'Maßeinheit',
    quantile: (percent: string) => `${percent} schneiden tiefer als`,
    deviation: 'Standardabweichung',
    nominal: 'wie es ist',
    within: 'innerhalb der Toleranz',
    below: 'darunter',
    above: 'darüber',
    share: (what: string) => `Anteil an der Varianz: ${what}`,
    together: 'Anteil an der Varianz: nur gemeinsam',
    effect: (what: string) => `Höhe je Standardabweichung von: ${what}`,
  },
  edit: {
    fit: 'Rasen und seine Streuung aus',
    own: 'dem gewählten Rasen',
    set: 'Gruppe dieser Anpassung',
    draws: 'Gezogene Einheiten',
    seed: 'Begonnen bei',
  },
}

export const uncertaintySettables: Readonly<
  Record<string, { readonly name: string; readonly note: string }>
> = {
  'uncertainty.softness': { name: 'Weichheit', note: 'Standardabweichung, als Teil von ihr' },
  'uncertainty.benchHeight': { name: 'Einstellung in der Werkstatt', note: 'Standardabweichung' },
  'uncertainty.scales': { name: 'Waage', note: 'nicht weiter daneben als so viel, je Ablesung' },
  'uncertainty.rollerMass': { name: 'Masse der Vorderwalze', note: 'Standardabweichung' },
  'uncertainty.tolerance': { name: 'Toleranz der gewünschten Höhe', note: 'nach jeder Seite' },
}

/** What the figures of a height that scatters say inside themselves. */
export const uncertaintyFigure = ({ unit }: Values<'unit'>) => ({
  title: 'Wie oft jede Höhe geschnitten wird',
  axis: `Schnitthöhe, ${unit}`,
  often: 'je weiter rechts, desto öfter',
  low: (value: string) => `${value}, 2,5 % schneiden tiefer`,
  middle: (value: string) => `${value}, die Hälfte schneidet tiefer`,
  high: (value: string) => `${value}, 97,5 % schneiden tiefer`,
  present: (value: string) => `${value}, wie es ist`,
  wanted: ({ height, tolerance }: Values<'height' | 'tolerance'>) => `gewünscht ${height} ± ${tolerance}`,
  shares: 'Teile der Streuung',
  share: (share: number) => (share < 0.005 ? '< 1\u202f%' : percent(share)),
  together: 'nur gemeinsam',
})

export const uncertaintyWorkings = {
  uncertaintyNominal: 'Die Höhe, wie es ist',
  uncertaintyStep: 'Was eine Standardabweichung davon mit ihr macht',
  uncertaintyLines: 'Zusammen, entlang von Geraden',
  uncertaintyDraws:
    'Höhen vieler Einheiten, bei denen alles zufällig gezogen ist: wie viele, und wobei die Ziehungen begannen',
}

export const uncertaintyReasons = {
  'uncertainty of nothing': () =>
    'Nichts streut: Sagen Sie, wie weit etwas streut, oder nennen Sie eine Anpassung.',
  'uncertainty lacks a fit': () => 'Die genannte Anpassung hat noch keinen Rasen.',
  'uncertainty of no fit': () =>
    'Die Messwerte dieser Anpassung sagen nicht, wie sicher ihr Rasen ist: Es gibt nichts zu streuen.',
  'uncertainty without draws': () =>
    'Keine der gezogenen Einheiten hat ein Ergebnis: Sie streuen zu weit, oder der Rasen ist am Anschlag.',
} satisfies Readonly<Record<string, (values: Said) => string>>
