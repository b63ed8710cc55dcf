import type { Values } from './speaking.ts'

export const section = {
  title: { front: 'Quer durch die Vorderwalze', rear: 'Quer durch die Hinterwalze' },
  roller: 'Geschnitten durch',
  places: { front: 'die Vorderwalze', rear: 'die Hinterwalze' },
  carried: ({ lands, below, mat }: Values<'lands' | 'below' | 'mat'>) =>
    `Stege sind ${lands} ihres Mantels: Der Rasen direkt darunter trägt ${below} der Last, der dazwischen hängende Filz ${mat}.`,
  touching: ({ lands, below }: Values<'lands' | 'below'>) =>
    `Stege sind ${lands} ihres Mantels: Der Rasen direkt darunter trägt ${below} der Last; der übrige hat den Rillengrund erreicht.`,
  noMat: ({ lands, below }: Values<'lands' | 'below'>) =>
    `Stege sind ${lands} ihres Mantels und tragen ${below} der Last: Dieser Rasen verteilt keine Last zur Seite.`,
  smooth: ({ pressure, sinkage }: Values<'pressure' | 'sinkage'>) =>
    `Ein glatter Mantel drückt gleichmäßig: ${pressure} auf ganzer Länge seiner tiefsten Linie, ${sinkage} tief.`,
  note: ({ scale }: Values<'scale'>) =>
    `Längs der Achse an der tiefsten Linie der Walze geschnitten; Breiten maßstäblich, ${scale}. Gepunktete Linien verlängern die Stegkanten nach unten.`,
  scale: (times: string) => (times === '1' ? 'Tiefen ebenso' : `Tiefen ×${times}`),
  broken: 'Die Rillen sind abgebrochen gezeichnet: Sie sind so tief, wie die Zahl sagt.',
  track: (depth: string) =>
    `Sie läuft in der Spur der Vorderwalze: Die Drücke sind die von frischem Rasen, ${depth} weniger tief.`,
  table: {
    caption: 'Quer zu den Rillen, an der tiefsten Linie',
    quantity: 'Größe',
    value: 'Wert',
    unit: 'Maßeinheit',
    load: 'Last auf der Walze',
    sinkage: 'Einsinktiefe der Stege',
    pressure: 'Druck unter den Stegen',
    meanPressure: 'Druck, Mittel über eine Teilung',
    bearing: 'Traganteil, tiefste Linie',
    wholeBearing: 'Traganteil, ganze Walze',
    contactWidth: 'Kontaktbreite',
    edgeForce: 'Linienkraft an jeder Stegkante',
    mat: 'Tiefe des Filzes in Rillenmitte',
    relief: 'Rasen steht in der Rille auf',
    matPressure: 'Druck in Rillenmitte',
    pitch: 'Teilung',
    land: 'Steg',
    depth: 'Rillentiefe',
    floor: 'Rillengrund',
    free: 'frei',
    touched: 'berührt',
    none: 'keine Rillen',
  },
}

/** What the section says inside itself. */
export const sectionFigure = {
  title: 'Schnitt quer zu den Rillen',
  smoothTitle: 'Schnitt längs eines glatten Mantels',
  smooth: 'glatt',
  grooved: ({ land, pitch, depth }: Values<'land' | 'pitch' | 'depth'>) =>
    `gerillt: Steg ${land} von ${pitch}, ${depth} tief`,
  turf: 'Rasen, ungestört',
  turfShort: 'Rasen',
  depth: (depth: string) => `${depth} tief`,
  relief: (relief: string) => `steht ${relief} auf`,
  floor: (by: string) => `am Grund, ${by} tief`,
  pressure: 'Druck, den der Rasen trägt',
  edges: (force: string) => `und ${force} entlang jeder Stegkante`,
  share: 'tragender Anteil',
  bears: (share: string) => `${share} der Teilung tragen`,
  all: 'alles trägt',
  land: (land: string) => `Steg ${land}`,
  gap: (gap: string) => `Lücke ${gap}`,
  pitch: (pitch: string) => `Teilung ${pitch}`,
  depthBar: (length: string, times: string) => (times === '1' ? length : `${length}, ×${times}`),
}

export const sectionWorkings = {
  sectionPressure: 'Druck unter einem Steg, nach dem Gesetz des Rasens',
  sectionPitch: 'Was eine Teilung trägt: der Rasen unter dem Steg, und was an dessen zwei Kanten hängt',
  sectionBearing: 'So viel eines glatten Mantels trüge in dieser Tiefe dasselbe',
  sectionRelief: 'Wie weit der Filz in die Rille aufsteht',
}
