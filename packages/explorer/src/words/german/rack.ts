import { counted, type Values } from './speaking.ts'

const walzen = (count: number) => `${counted(count)} ${count === 1 ? 'Walze' : 'Walzen'}`

export const surfaces = {
  smooth: 'glatt',
  grooved: ({ land, pitch }: Values<'land' | 'pitch'>) => `Steg ${land}/${pitch}`,
  fitted: 'montiert',
}

export const rack = {
  titles: {
    front: (count: number) => `${walzen(count)} auf dieser Einheit, auf diesem Grün`,
    rear: (count: number) => `${walzen(count)} hinten auf dieser Einheit, auf diesem Grün`,
  },
  position: 'Gewechselt wird',
  positions: { front: 'die Vorderwalze', rear: 'die Hinterwalze' },
  lowest: ({ bench, name, by, wanted, set }: Values<'bench' | 'name' | 'by' | 'wanted' | 'set'>) =>
    `Bleibt die Einstellhöhe ${bench}, schneidet ${name} am tiefsten, ${by} unter der montierten; um damit ${wanted} zu schneiden, stellen Sie ${set} ein.`,
  lowestCannot: ({ bench, name, by, wanted }: Values<'bench' | 'name' | 'by' | 'wanted'>) =>
    `Bleibt die Einstellhöhe ${bench}, schneidet ${name} am tiefsten, ${by} unter der montierten; keine Einstellhöhe bringt sie auf ${wanted} herunter.`,
  fittedLowest: ({ bench, name, by }: Values<'bench' | 'name' | 'by'>) =>
    `Bleibt die Einstellhöhe ${bench}, schneidet keine tiefer als die montierte; ${name} schneidet am höchsten, um ${by}.`,
  allAlike: 'Alle schneiden auf derselben Höhe.',
  note: 'Druck: unter einem Steg, an der tiefsten Linie. Relief: wie weit der Rasen in den Rillen aufsteht. Einstellen: die Einstellhöhe, mit der jeweiligen Walze gemessen, die den Schnitt der montierten hält.',
  caption: 'Das Regal im Vergleich',
  roller: 'Walze',
  columns: {
    mass: 'Masse',
    load: 'Last',
    sinkage: 'Tiefe',
    pressure: 'Druck',
    relief: 'Relief',
    benchHeight: 'einstellen',
    change: 'Änderung',
    effectiveHeight: 'Schnitt',
    sliding: 'rutscht',
  },
  sort: (column: string) => `Sortieren nach: ${column}`,
  within: (tolerance: string) => `schattiert: ±${tolerance} um die montierte`,
  fit: 'anbauen',
  touching: 'voll',
  noGrooves: 'keines',
  bottomsOut: 'am Anschlag',
  cannotHold: 'geht nicht',
  notKnown: 'nicht bekannt',
  slidingNote: (radius: string) => `Rutscht: an den Enden ihrer Segmente, in einer Kurve von ${radius}.`,
}

/** What the dot plot says inside itself. */
export const rackFigure = { axis: (unit: string) => `effektive Schnitthöhe, ${unit}` }

export const rackSettables = {
  'rack.headlandRadius': { name: 'Radius der Kurve am Vorgewende', note: '0 lässt das Rutschen weg' },
} as Readonly<Record<string, { readonly name: string; readonly note: string }>>

export const rackWorkings = {
  hold: 'Einstellhöhe, die mit dieser Walze den gewünschten Schnitt hält',
  adjust: 'Gegenüber der alten Einstellung gibt die Verstellung',
}
