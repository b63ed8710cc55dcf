import type { Values } from './speaking.ts'

export const patch = {
  title: { front: 'Die Kontaktfläche der Vorderwalze', rear: 'Die Kontaktfläche der Hinterwalze' },
  roller: 'Walze',
  places: { front: 'vorn', rear: 'hinten' },
  cells: 'Zellen eines Viertels',
  cellsNote: 'je Richtung: mehr davon dauern länger und zeigen es feiner',
  begun: ({ sinkage, pressure }: Values<'sinkage' | 'pressure'>) =>
    `Nach dem schnellen Modell sinkt sie ${sinkage} ein und drückt mit höchstens ${pressure}; die volle Lösung ist noch nicht da.`,
  smooth: ({ pressure, sinkage }: Values<'pressure' | 'sinkage'>) =>
    `Sie drückt unter ihrer Achse am stärksten, mit ${pressure}, wo sie ${sinkage} tief ist.`,
  grooved: ({ pressure, share }: Values<'pressure' | 'share'>) =>
    `Ihre Stege drücken mit höchstens ${pressure}; ${share} der Last hängen an deren Kanten, wo der Rasen dazwischen zieht.`,
  springs: ({ pressure }: Values<'pressure'>) =>
    `Ihre Stege drücken mit höchstens ${pressure}; dieser Rasen verteilt keine Last, also hängt nichts an ihren Kanten.`,
  more: (share: string) =>
    `Bei gleicher Einsinktiefe trägt die volle Lösung ${share} mehr als das schnelle Modell.`,
  less: (share: string) =>
    `Bei gleicher Einsinktiefe trägt die volle Lösung ${share} weniger als das schnelle Modell.`,
  alike: (share: string) =>
    `Das schnelle Modell trägt bei gleicher Einsinktiefe dasselbe, auf ${share} genau.`,
  note: ({ error }: Values<'error'>) =>
    `Von oben gesehen, maßstäblich; eine Rillenteilung einer stehenden Walze, entlang der Walze immer wieder dieselbe. Dunkel drückt am stärksten. Mangels feinerer Zellen kann die Last um ${error} danebenliegen.`,
  smoothNote: ({ error }: Values<'error'>) =>
    `Von oben gesehen, maßstäblich; eine glatte Walze drückt auf ganzer Länge gleich. Dunkel drückt am stärksten. Mangels feinerer Zellen kann die Last um ${error} danebenliegen.`,
  quickNote: 'Nach dem schnellen Modell gezeichnet, das den Rasen nur quer zu den Rillen biegt.',
  still: ({ load, sinkage }: Values<'load' | 'sinkage'>) =>
    `Das ist noch die volle Lösung für ${load}, ${sinkage} tief.`,
  edges: (value: string) =>
    `Aufrechte Linien an der Stegkante: die Linienkraft entlang ihr, bis ${value}, an jeder Kante gleich.`,
  table: {
    caption: 'Druck entlang des Bodens',
    along: 'von unter der Achse',
    land: 'Mitte des Stegs',
    edge: 'Kante des Stegs',
    groove: 'Mitte der Rille',
    force: 'Linienkraft an jeder Kante',
    depth: 'Tiefe unter dem Steg',
    depthInGroove: 'Tiefe in der Rille',
    pressure: 'Druck',
    free: 'frei',
  },
}

/** What the map of a contact says inside itself. */
export const patchFigure = ({
  unit,
  lengthUnit,
  depthUnit,
}: Values<'unit' | 'lengthUnit' | 'depthUnit'>) => ({
  title: 'Druck unter der Walze, von oben',
  pressure: `Druck, ${unit}`,
  along: `entlang des Bodens von unter der Achse, ${lengthUnit}`,
  land: 'Steg',
  groove: 'Rille',
  smooth: 'auf ganzer Länge der Walze gleich',
  pitch: (value: string) => `Teilung ${value}`,
  landWidth: (value: string) => `Steg ${value}`,
  length: (value: string) => value,
  edge: (value: string) => `bis ${value} an jeder Kante`,
  depth: (times: string) =>
    times === '1' ? `Tiefe, ${depthUnit}` : `Tiefe, ${depthUnit}, gezeichnet ×${times}`,
  underLand: 'unter dem Steg',
  inGroove: 'in der Rille',
})

export const patchWorkings = {
  patchQuick: 'Das schnelle Modell unter derselben Last',
  patchLeast:
    'Die Oberfläche des Rasens, nirgends über dem Metall, die am wenigsten speichert: Zellen eines Viertels, und Mehrgitterzyklen auf dem feinsten Netz',
  patchBalance: 'Die Einsinktiefe, bei der der Rasen mit dieser Last antwortet',
  patchEdges: 'Linienkraft, wo sich der Rasen vom Steg weg biegt, und der Teil der Last, den sie trägt',
  patchAgainstQuick: 'Gegen das schnelle Modell bei gleicher Einsinktiefe',
}
