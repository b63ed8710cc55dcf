import { plural, type Values } from './speaking.ts'

export const settables = {
  'frontRoller.mass': { name: 'Masse der Vorderwalze', note: '' },
  'frontRoller.diameter': { name: 'Durchmesser', note: 'über die Stege gemessen' },
  'frontRoller.length': { name: 'Länge des Mantels', note: '' },
  'frontRoller.sections': { name: 'Freie Segmente', note: 'Teile, die sich für sich drehen' },
  'frontRoller.buildUp': { name: 'Anhaftung', note: 'was am Mantel klebt, radial' },
  'frontRoller.runout': { name: 'Rundlauffehler', note: 'radial, nach jeder Seite' },
  'frontRoller.surface': { name: 'Oberfläche', note: '' },
  'frontRoller.pitch': { name: 'Teilung', note: 'Steg und Lücke zusammen' },
  'frontRoller.land': { name: 'Steg', note: 'Breite, die zuerst aufliegt' },
  'frontRoller.depth': { name: 'Rillentiefe', note: '' },
  frontRoller: { name: 'Vorn montiert', note: '' },
  'rearRoller.mass': { name: 'Masse der Hinterwalze', note: '' },
  rearRoller: { name: 'Hinten montiert', note: '' },
  'turf.softness': { name: 'Weichheit des Rasens', note: 'wie tief eine breite Platte bei 10 kPa einsinkt' },
  'turf.lockingDepth': { name: 'Grenztiefe', note: 'tiefer drückt ihn kein Druck' },
  'turf.spread': { name: 'Lastverteilung', note: 'wie weit er über eine Kante hinaus trägt' },
  'turf.exponent': { name: 'Hochzahl', note: 'unter 1: je tiefer, desto weicher' },
  'turf.rebound': { name: 'Rückfederung', note: 'Teil der Einsinktiefe, der sofort zurückkommt' },
  'turf.lasting': { name: 'Bleibender Teil', note: 'was für immer eingedrückt bleibt' },
  'turf.recoveryTime': { name: 'Erholungszeit', note: 'dessen, was langsam zurückkommt' },
  'turf.thickness': { name: 'Dicke der weichen Schicht', note: 'nur für Hinweise' },
  turf: { name: 'Grün', note: '' },
  'scales.total': { name: 'Ganze Einheit auf der Waage', note: '' },
  'scales.front': { name: 'Vorderwalze auf der Waage', note: 'Hinterwalze auf einem gleich hohen Klotz' },
  'scales.rear': { name: 'Hinterwalze auf der Waage', note: 'Vorderwalze auf einem gleich hohen Klotz' },
  'unit.benchHeight': { name: 'Einstellhöhe', note: '' },
  'unit.wheelbase': { name: 'Hinterachse hinter der Vorderachse', note: '' },
  'unit.edge': { name: 'Schneidkante hinter der Vorderachse', note: '' },
  'unit.slopeAlong': { name: 'Längsneigung', note: 'positiv: vorn ist höher' },
  'unit.slopeAcross': { name: 'Querneigung', note: 'positiv: die rechte Seite ist tiefer' },
  'unit.hitchHeight': {
    name: 'Höhe der Zugkraft',
    note: 'über der Bezugslinie; wenn unbekannt, in Achshöhe',
  },
  'unit.edgeLength': { name: 'Länge der Schneidkante', note: 'wenn nicht angegeben, die der Vorderwalze' },
  'body.mass': { name: 'Masse des Aufbaus', note: 'ohne die Walzen' },
  'body.at': { name: 'Sein Gewicht greift an', note: 'hinter der Vorderachse' },
  'body.height': { name: 'Höhe seines Schwerpunkts', note: 'über der Bezugslinie' },
  'body.offset': { name: 'Rechts der Mitte', note: '' },
  'cylinder.blades': { name: 'Messer der Spindel', note: '' },
  'cylinder.turnsPerSecond': { name: 'Drehzahl der Spindel', note: '' },
  unit: { name: 'Gewählte Einheit', note: '' },
  condition: { name: 'Die Einheit', note: '' },
  'condition.speed': { name: 'Geschwindigkeit', note: '' },
  'condition.recovery': { name: 'An der Kante noch nicht erholter Rasen', note: '' },
  wantedHeight: { name: 'Gewünschte Schnitthöhe', note: 'wenn nicht angegeben, die jetzige' },
} as Readonly<Record<string, { readonly name: string; readonly note: string }>>

/** The same numbers of a thing that is named beside them. */
export const parts = {
  mass: 'Masse',
  diameter: 'Durchmesser',
  length: 'Länge des Mantels',
  sections: 'Freie Segmente',
  buildUp: 'Anhaftung',
  runout: 'Rundlauffehler',
  surface: 'Oberfläche',
  pitch: 'Teilung',
  land: 'Steg',
  depth: 'Rillentiefe',
  softness: 'Weichheit',
  lockingDepth: 'Grenztiefe',
  exponent: 'Hochzahl',
  spread: 'Lastverteilung',
  rebound: 'Rückfederung',
  lasting: 'Bleibender Teil',
  recoveryTime: 'Erholungszeit',
  thickness: 'Dicke der weichen Schicht',
  down: 'Drückt nach unten',
  forward: 'Schiebt nach vorn',
  at: 'Hinter der Vorderachse',
  height: 'Über der Bezugslinie',
  offset: 'Rechts der Mitte',
} as Readonly<Record<string, string>>

/** Laws inside a law. */
export const layers = { upper: 'obere Schicht', lower: 'untere Schicht' } as Readonly<Record<string, string>>

/** What a number belongs to, where its name alone does not say so. */
export const belonging = {
  rear: 'Hinterwalze',
  layer: ({ layer, of }: Values<'layer' | 'of'>) => (of === '' ? layer : `${layer}, ${of}`),
}

export const options = {
  smooth: 'glatt',
  grooved: 'gerillt',
  standing: 'steht',
  mowing: 'mäht',
  counted: 'zählt mit',
  'left out': 'zählt nicht',
} as Readonly<Record<string, string>>

export const control = {
  line: (name: string) => `${name}, auf der Skala`,
  more: (name: string) => `${name}, mehr`,
  less: (name: string) => `${name}, weniger`,
  notKnown: 'nicht bekannt',
  empty: 'ohne Wert',
  unlikely: ({ value, low, high }: Values<'value' | 'low' | 'high'>) =>
    `${value} gilt wie eingegeben, üblich sind aber ${low} bis ${high}. War eine andere Maßeinheit gemeint?`,
}

/** Lists of things that have names: rollers, greens, units. */
export const naming = {
  name: 'Bezeichnung',
  noName: 'Hier fehlt eine Bezeichnung.',
  taken: (name: string) => `„${name}“ heißt schon etwas anderes.`,
  add: 'hinzufügen',
  copy: (name: string) => `${name} kopieren`,
  takeOut: (name: string) => `${name} herausnehmen`,
  inHand: 'gewählt',
  close: 'schließen',
  change: (name: string) => `${name} ändern`,
}

export const tableEditor = {
  row: 'Zeile',
  cell: ({ head, row }: Values<'head' | 'row'>) => `${head}, Zeile ${row}`,
  add: 'Zeile hinzufügen',
  takeOut: (row: number) => `Zeile ${row} herausnehmen`,
  takenOut: (row: number) => `Zeile ${row} ist herausgenommen. „Rückgängig“ bringt sie zurück.`,
  how: (rows: number) =>
    `${plural(rows, 'Zeile', 'Zeilen')}. Die Tabulatortaste führt in der Zeile weiter; Eingabetaste und Pfeiltasten führen von Zeile zu Zeile. Mehrere aus einer Tabellenkalkulation eingefügte Zeilen füllen ebenso viele hier.`,
  pasted: (rows: number) => (rows === 1 ? 'Eine Zeile ist gefüllt.' : `${rows} Zeilen sind gefüllt.`),
  leftOver: (cells: number) =>
    cells === 1
      ? 'Für eine eingefügte Zelle gab es keine Spalte; sie wurde weggelassen.'
      : `Für ${cells} eingefügte Zellen gab es keine Spalte; sie wurden weggelassen.`,
  wrong: (count: number) => (count === 1 ? 'Eine Stelle stimmt nicht' : `${count} Stellen stimmen nicht`),
  toRow: (row: number) => `Zeile ${row}`,
  more: (count: number) => `und ${count} weitere`,
}

export const refusals = {
  notANumber: (text: string) =>
    text === ''
      ? 'Hier gehört eine Zahl hin.'
      : `„${text}“ ist keine Zahl: Ziffern mit Komma oder Punkt, auf Wunsch mit Maßeinheit.`,
  moreThanZero: 'Das muss mehr als 0 sein.',
  notNegative: 'Das kann nicht weniger als 0 sein.',
  wholeNumber: 'Hier gehört eine ganze Zahl hin, 1 oder mehr.',
  aShare: 'Das ist ein Teil des Ganzen: 0 bis 1.',
  grooveTooDeep: ({ depth, diameter }: Values<'depth' | 'diameter'>) =>
    `Rillen von ${depth} Tiefe lassen von einer Walze von ${diameter} nichts übrig: Sie müssen flacher als deren halber Durchmesser sein.`,
  lastingAgainstRebound: ({ lasting, rebound }: Values<'lasting' | 'rebound'>) =>
    `Von der Einsinktiefe kommt ein Teil von ${rebound} sofort zurück: Weitere ${lasting} können nicht für immer bleiben.`,
  rollersTouch: ({ front, rear, wheelbase }: Values<'front' | 'rear' | 'wheelbase'>) =>
    `Walzen von ${front} und ${rear} würden sich berühren: Ihre Achsen liegen nur ${wheelbase} auseinander.`,
  landAgainstPitch: ({ land, pitch }: Values<'land' | 'pitch'>) =>
    `Ein Steg von ${land} lässt in einer Teilung von ${pitch} keine Lücke: Der Steg muss schmaler sein.`,
  lockingAgainstSoftness: ({ lockingDepth, softness }: Values<'lockingDepth' | 'softness'>) =>
    `Rasen mit der Grenztiefe ${lockingDepth} kann bei 10 kPa nicht ${softness} einsinken: Die Grenztiefe muss größer sein als die Weichheit.`,
  edgeOutside: ({ edge, wheelbase }: Values<'edge' | 'wheelbase'>) =>
    `Eine Schneidkante ${edge} hinter der Vorderachse liegt nicht zwischen den Walzen, die ${wheelbase} auseinanderliegen.`,
  rollerTooHeavy: ({ where, reading, roller }: Values<'where' | 'reading' | 'roller'>) =>
    `Unter der ${where} würde die Waage ${reading} zeigen, die Walze allein wiegt aber ${roller}.`,
}
