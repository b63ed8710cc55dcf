import { times, type Values } from './speaking.ts'

export const map = {
  quantities: {
    sinkage: 'Einsinktiefe der Vorderwalze',
    drop: 'Absenkung der Schneidkante',
    effectiveHeight: 'Effektive Schnitthöhe',
    peakPressure: 'Druck unter der Vorderwalze',
  },
  short: {
    sinkage: 'Einsinktiefe',
    drop: 'Absenkung der Kante',
    effectiveHeight: 'effektive Höhe',
    peakPressure: 'Druck',
  },
  softnessWins: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
    `Die Weichheit macht mehr aus als die Masse: Von ${low} bis ${high} wächst der Wert auf das ${byMass}\u2011Fache, vom festesten zum weichsten Rasen auf das ${bySoftness}\u2011Fache.`,
  massWins: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
    `Die Masse macht mehr aus als die Weichheit: Von ${low} bis ${high} wächst der Wert auf das ${byMass}\u2011Fache, vom festesten zum weichsten Rasen auf das ${bySoftness}\u2011Fache.`,
  ends: ({
    low,
    high,
    lightest,
    heaviest,
    firmest,
    softest,
  }: Values<'low' | 'high' | 'lightest' | 'heaviest' | 'firmest' | 'softest'>) =>
    `Von ${low} bis ${high} geht der Wert von ${lightest} auf ${heaviest}; vom festesten zum weichsten Rasen von ${firmest} auf ${softest}.`,
  heights: ({ low, high, byMass, bySoftness }: Values<'low' | 'high' | 'byMass' | 'bySoftness'>) =>
    `Von ${low} bis ${high} ändert sich die Schnitthöhe um ${byMass}; vom festesten zum weichsten Rasen um ${bySoftness}.`,
  bottoms: (from: string) => `Weicher als ${from} ist dieser Rasen unter der Walze am Anschlag: gepunktet.`,
  times: (value: number) => times(value),
  note: 'Der Ring ist der gewählte Fall: Ziehen Sie ihn, klicken Sie auf seinen neuen Platz, oder nehmen Sie die Pfeiltasten. Entlang jeder Linie bleibt der Wert gleich.',
  readingsNote: (count: string) =>
    `Kleine Ringe: ${count} Messwerte, jeder bei der Masse seiner Walze und der Weichheit, die er ergibt.`,
  noneHere: 'Bei dieser Masse und Weichheit ist der Rasen am Anschlag.',
  none: 'keine',
  quantity: 'Zeigen',
  softness: 'Weichheit',
}

/** What the map says inside itself. */
export const mapFigure = ({
  quantity,
  unit,
  massUnit,
  softnessUnit,
}: Values<'quantity' | 'unit' | 'massUnit' | 'softnessUnit'>) => ({
  title: `${quantity}, über Masse und Weichheit`,
  massAxis: `Masse der Vorderwalze, ${massUnit}`,
  softnessAxis: `Weichheit des Rasens, ${softnessUnit} bei 10 kPa`,
  firm: 'fest',
  soft: 'weich',
  contourUnit: unit,
  here: (value: string) => `hier ${value}`,
  noAnswer: 'hier kein Ergebnis',
  markName: 'Der gewählte Fall: links und rechts die Masse, auf und ab die Weichheit',
  markText: (place: { mass: string; softness: string; value: string | null }) =>
    `${place.mass}, Weichheit ${place.softness}: ${place.value ?? 'kein Ergebnis'}`,
})

export const mapWorkings = {
  sweep: 'Jeder Punkt der Karte ist dieses Gleichgewicht, für eine andere Masse und Weichheit gelöst',
}
