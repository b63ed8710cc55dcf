import type { Values } from './speaking.ts'

const counts = ['Keiner', 'Einer', 'Zwei', 'Drei', 'Vier', 'Fünf', 'Sechs', 'Sieben', 'Acht', 'Neun']

export const check = {
  title: 'Höhen nach einem Probestreifen',
  none: 'Unter diesen Messwerten ist keine Höhe nach einem Probestreifen. Eine Spalte height_mm, daneben die Gruppe und die montierte Walze, bringt sie hierher.',
  found: {
    one: {
      agrees: ({ strip, measured, low, high }: Values<'strip' | 'measured' | 'low' | 'high'>) =>
        `Streifen „${strip}“ stimmt: ${measured} gemessen, ${low} bis ${high} erwartet.`,
      lower: ({ strip, by, outside }: Values<'strip' | 'by' | 'outside'>) =>
        `Streifen „${strip}“ ist ${by} niedriger als erwartet, ${outside} mehr, als Anpassung und Einstellung zulassen.`,
      higher: ({ strip, by, outside }: Values<'strip' | 'by' | 'outside'>) =>
        `Streifen „${strip}“ ist ${by} höher als erwartet, ${outside} mehr, als Anpassung und Einstellung zulassen.`,
    },
    all: (count: number) => `Alle ${count} Streifen stimmen mit dem Erwarteten überein.`,
    some: ({ worst }: Values<'worst'>, agree: number, count: number) =>
      `${counts[agree] ?? String(agree)} von ${count} Streifen ${agree > 1 ? 'stimmen' : 'stimmt'}. ${worst}`,
    working: 'Wie weit jede Höhe abweichen darf, wird noch berechnet.',
    unknown: 'Keine dieser Höhen lässt sich vergleichen.',
  },
  strip: ({ set, roller }: Values<'set' | 'roller'>) => [set, roller].filter(part => part !== '').join(', '),
  unnamed: 'ohne Namen',
  note: {
    standing: 'Für die stehende Einheit berechnet: Wählen Sie „mäht“, wenn die Höhen geschnitten wurden.',
    mowing: 'Für die mähende Einheit berechnet.',
    exact: 'Der gewählte Rasen gilt als genau: Wählen Sie eine Anpassung, damit ihr Fehler mitzählt.',
    drawn:
      'Fläche: wo das Mittel der Höhen mit 95\u202f% liegen sollte; Linie: was erwartet wird; Ringe: was gemessen wurde, Balken: ihr Mittel.',
  },
  table: {
    caption: 'Gemessene und erwartete Höhen',
    strip: 'Streifen',
    count: 'Höhen',
    measured: 'gemessen',
    expected: 'erwartet',
    between: '95\u202f%',
    to: ({ low, high }: Values<'low' | 'high'>) => `${low} bis ${high}`,
    difference: 'Unterschied',
    verdict: 'Urteil',
    plot: 'auf einer Skala',
  },
  verdicts: {
    agrees: 'stimmt',
    lower: (outside: string) => `${outside} zu niedrig`,
    higher: (outside: string) => `${outside} zu hoch`,
    working: 'wird berechnet',
    'not known': 'lässt sich nicht sagen',
    'no turf': 'die Anpassung hat keinen Rasen dieser Gruppe',
    'no roller': 'keine solche Walze im Regal',
    'no answer': 'die Einheit hat hier kein Ergebnis',
  },
  readings: 'Höhen',
  fit: 'Verglichen mit',
  noReadings: 'keine gewählt',
  inHand: 'dem gewählten Rasen, als genau genommen',
}

export const checkSettables: Readonly<Record<string, { readonly name: string; readonly note: string }>> = {
  'check.bench': { name: 'Einstellhöhe, wie genau eingestellt', note: 'Standardabweichung' },
  'check.gauge': {
    name: 'Eine Höhe, wie genau gemessen',
    note: 'Standardabweichung, wo die Tabelle keine nennt',
  },
}

/** What the drawing of a strip says inside itself. */
export const checkFigure = ({ unit }: Values<'unit'>) => ({ axis: `Höhe, ${unit}` })

export const checkWorkings = {
  checkBetween:
    'Wo das Mittel der Höhen liegen sollte: der Fehler von Anpassung und Einstellung und der von so vielen Messwerten',
  checkMean: 'Was gemessen wurde',
}
