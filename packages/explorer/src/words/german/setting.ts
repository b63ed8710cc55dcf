import type { Values } from './speaking.ts'

export const setting = {
  titles: {
    frontRoller: 'Die Vorderwalze',
    turf: 'Der Rasen',
    unit: 'Die Einheit, gewogen und vermessen',
    scales: 'Die Einheit, gewogen und vermessen',
    condition: 'Stehen oder mähen',
    rearRoller: 'Die Hinterwalze',
    body: 'Der Aufbau der Einheit',
    cylinder: 'Die Spindel',
    wantedHeight: 'Die gewünschte Höhe',
    rollers: 'Walzen im Regal',
    turfs: 'Die Grüns',
    loads: 'Was die Einheit trägt',
  } as Readonly<Record<string, string>>,
  smooth: (pressure: string) => `Sie liegt mit dem ganzen Mantel auf, mit ${pressure} an der tiefsten Linie.`,
  grooved: ({ lands, bears, relief }: Values<'lands' | 'bears' | 'relief'>) =>
    `Stege sind ${lands} ihres Mantels; in dieser Tiefe trägt sie ${bears} dessen, was eine glatte trüge, und der Rasen steht ${relief} in den Rillen auf.`,
  full: ({ lands, bears }: Values<'lands' | 'bears'>) =>
    `Stege sind ${lands} ihres Mantels; der Rasen hat den Rillengrund erreicht, und sie trägt ${bears} dessen, was eine glatte trüge.`,
  locking: ({ sinkage, share, lockingDepth }: Values<'sinkage' | 'share' | 'lockingDepth'>) =>
    `Die Vorderwalze ist ${sinkage} eingesunken: ${share} der ${lockingDepth}, bei denen dieser Rasen am Anschlag ist.`,
  notLocking: (sinkage: string) => `Die Vorderwalze ist ${sinkage} eingesunken.`,
  weighed: ({ front, total, share }: Values<'front' | 'total' | 'share'>) =>
    `Die Vorderwalze trägt ${front} von ${total}: ${share} des Gewichts.`,
  standing: ({ now, other }: Values<'now' | 'other'>) =>
    `Im Stehen würde sie auf ${now} schneiden, beim Mähen auf ${other}.`,
  mowing: ({ now, other }: Values<'now' | 'other'>) =>
    `Beim Mähen schneidet sie auf ${now}; im Stehen wären es ${other}.`,
}
