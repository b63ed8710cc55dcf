import { counted, plural, type Values } from './speaking.ts'

type Interval = Values<'low' | 'high'>

export const fit = {
  title: 'Wie weich ist der Rasen?',
  parameters: {
    softness: 'Weichheit',
    exponent: 'Hochzahl',
    lockingDepth: 'Grenztiefe',
    spread: 'Lastverteilung',
    datum: 'Nullpunkt des Messgeräts',
    dropDatum: 'Nullpunkt der Absenkungen',
  } as Readonly<Record<string, string>>,
  laws: {
    linear: 'linear',
    power: 'Potenz',
    stiffening: 'versteifend',
    logarithmic: 'logarithmisch',
    own: 'das des gewählten Rasens, gestreckt',
  } as Readonly<Record<string, string>>,
  found: {
    sure: ({ softness, low, high }: Values<'softness'> & Interval) =>
      `Weichheit ${softness}, mit 95\u202f% Sicherheit zwischen ${low} und ${high}.`,
    unsure: (softness: string) =>
      `Die Weichheit ${softness} passt am besten; wie sicher das ist, sagen diese Messwerte nicht.`,
    held: 'Die Weichheit war vorgegeben, nicht angepasst.',
    sets: ({ count, low, high, first, last }: Values<'count' | 'first' | 'last'> & Interval) =>
      `Die Weichheit von ${count} Gruppen reicht von ${low} (${first}) bis ${high} (${last}).`,
    median: ({ median, low, high }: Values<'median'> & Interval) =>
      `Der Median solcher Gruppen ist ${median}, mit 95\u202f% Sicherheit zwischen ${low} und ${high}.`,
    here: ({ height, half }: Values<'height' | 'half'>) =>
      `Darauf würde diese Einheit auf ${height} ± ${half} (95\u202f%) schneiden.`,
    hereOn: ({ set, height, half }: Values<'set' | 'height' | 'half'>) =>
      `Auf ${set} würde diese Einheit auf ${height} ± ${half} (95\u202f%) schneiden.`,
    bare: (height: string) => `Darauf würde diese Einheit auf ${height} schneiden.`,
    bareOn: ({ set, height }: Values<'set' | 'height'>) =>
      `Auf ${set} würde diese Einheit auf ${height} schneiden.`,
  },
  none: {
    'no readings': 'Noch gibt es nichts anzupassen: Es braucht einen Eintrag mit Messwerten darin.',
    'no fit': (why: string) => `Es wurde kein Rasen gefunden, der zu jedem Messwert passt: ${why}`,
    problems: (list: string) => list,
  },
  noEntry: 'Fügen Sie diesem Buch einen Eintrag mit Messwerten hinzu, und wählen Sie ihn dann hier.',
  noCurve: (why: string) => `Es gibt keine Kurve zu zeichnen: ${why}.`,
  note: ({ count, foot, step }: Values<'count' | 'foot' | 'step'>) =>
    `${count}. Ringe: je ein Messwert, die einer Last nebeneinander; Balken: ihr Mittel. ${foot}${step}`,
  counted: (count: number) => plural(count, 'Messwert', 'Messwerte'),
  feet: {
    roller: (name: string) => `Walze „${name}“, stehend.`,
    unitRoller: 'Die Walze an der Einheit, stehend.',
    plate: (diameter: string) => `Runde Platte von ${diameter}.`,
  },
  footNames: {
    unitRoller: 'die Walze der Einheit',
    unitLoad: 'dem eigenen Gewicht an der Einheit',
    plate: (diameter: string) => `Platte von ${diameter}`,
  },
  unitDrops:
    ' Absenkungen der ganzen Einheit haben auf dieser Kurve keinen Platz: In der Tabelle steht, was von jeder übrig bleibt.',
  leftOut: ({ count, rows }: Values<'count' | 'rows'>) => ` ${count} nicht angepasst (${rows}).`,
  set: 'Kurve von',
  foot: 'Unter',
  allSets: 'allen Gruppen',
  noName: 'die Gruppe ohne Namen',
  table: {
    caption: 'Was angepasst wurde',
    quantity: 'Größe',
    value: 'Wert',
    interval: '95\u202f%',
    between: ({ low, high }: Interval) => `${low} bis ${high}`,
    atLeast: (low: string) => `mindestens ${low}`,
    atMost: (high: string) => `höchstens ${high}`,
    notKnown: 'nicht bekannt',
    held: 'vorgegeben, nicht angepasst',
    atBound: 'an seiner Schranke',
    scatter: 'Streuung',
    scatterKnown: 'vorher bekannt',
    left: (freedom: number) => `${freedom} übrig`,
    unit: ({ name, unit }: Values<'name' | 'unit'>) => (unit === '' ? name : `${name}, ${unit}`),
    of: ({ name, set }: Values<'name' | 'set'>) => `${name}, ${set}`,
  },
  why: ({ names, why }: Values<'names' | 'why'>) => `${names}: ${why}.`,
  residuals: {
    caption: 'Messwerte neben der Anpassung',
    row: 'Zeile',
    set: 'Gruppe',
    under: 'unter',
    load: 'Last',
    measured: 'gemessen',
    fitted: 'angepasst',
    residual: 'Messwert minus Anpassung',
    none: 'keine eigene',
  },
  settings: {
    law: 'Gesetz',
    what: 'Was angepasst wird',
    roles: { shared: 'eine für alle Gruppen', 'per set': 'eine je Gruppe', held: 'vorgegeben mit' },
    alone: { shared: 'angepasst', 'per set': 'angepasst', held: 'vorgegeben mit' },
    datum: 'Nullpunkt des Messgeräts',
    datums: { known: 'bekannt', 'per set': 'unbekannt, einer je Gruppe' },
    noise: 'Streuung eines Messwerts',
    noises: {
      'as given': 'wie angegeben, sonst aus dem Rest',
      estimated: 'aus dem Rest',
      known: 'bekannt:',
    },
    loss: 'Weit abliegende Messwerte',
    losses: {
      squares: 'zählen voll',
      huber: 'zählen weniger (Huber)',
      bisquare: 'zählen immer weniger (bisquare)',
    },
    readings: 'Messwerte',
    noReadings: 'keine gewählt',
    standardDeviation: 'Standardabweichung eines Messwerts',
    heldAt: (name: string) => `${name}, vorgegeben mit`,
  },
  cannotTell: {
    title: 'Was diese Messwerte nicht sagen können',
    loads: ({ low, high }: Interval) =>
      `Lasten unter ${low} oder über ${high}: Dort spricht allein das Gesetz, und die Kurve ist gestrichelt.`,
    pressures: ({ low, high }: Interval) =>
      `Drücke unter ${low} oder über ${high}: Dort spricht allein das Gesetz, und die Kurve ist gestrichelt.`,
    more: 'Rückfederung, Geschwindigkeit, eine andere Woche: Gemessen wurde im Stehen, und zu ihrer Zeit.',
  },
  look: 'Einen zweiten Blick wert',
  stopped: (why: string) => `Die Suche endete nicht an einem Minimum: ${why}.`,
  working: 'Was die Messwerte nicht sagen können, wird noch berechnet.',
  sets: {
    title: 'Weichheit je Gruppe',
    along: 'Über',
    alongs: { set: 'den Gruppen', date: 'dem Datum', moisture: 'der Feuchte' },
    next: ({ low, high }: Interval) =>
      `Eine weitere solche Gruppe hätte eine Weichheit von ${low} bis ${high} (95\u202f%).`,
    wide: (count: number, { low, high }: Interval) =>
      `${counted(count)} Gruppen sagen zu wenig über die nächste: Ihre Weichheit kann überall zwischen ${low} und ${high} liegen (95\u202f%).`,
    undetermined: (why: string) => `Wie die nächste Gruppe ausfällt, ist nicht bekannt: ${why}.`,
    note: 'Punkte: je eine Gruppe, mit ihrem 95-%-Intervall. Linie: der Median solcher Gruppen, zwischen den Linien, in denen er liegt.',
  },
  compare: {
    title: 'Andere Gesetze an denselben Messwerten',
    show: 'Gesetze vergleichen',
    hide: 'ohne Vergleich',
    law: 'Gesetz',
    free: 'angepasste Zahlen',
    scatter: 'Streuung',
    difference: 'AICc über dem kleinsten',
    none: 'keine Anpassung',
    likelihood: {
      'normal, variance known': 'AICc bei normaler Streuung bekannter Größe.',
      'normal, variance estimated':
        'AICc bei normaler Streuung, deren Größe geschätzt und unter die Zahlen gezählt ist.',
    },
  },
  next: {
    title: 'Was als Nächstes zu messen ist',
    show: 'was als Nächstes zu messen ist',
    hide: 'ohne den nächsten Messwert',
    best: ({ what, load }: Values<'what' | 'load'>) => `Als Nächstes messen: ${what}, unter ${load}:`,
    height: ({ to, from, part }: Values<'to' | 'from' | 'part'>) =>
      `Die Höhe wäre dann auf ${to} bekannt statt auf ${from} (ein Standardfehler, allein der Anpassung); ${part} ihrer Varianz fallen weg.`,
    other: (part: string) => `${part} der Varianz fallen weg.`,
    enough: (count: number) =>
      count === 1
        ? 'Ein Messwert dort bringt neun Zehntel dessen, was beliebig viele brächten.'
        : `${count} Messwerte dort bringen neun Zehntel dessen, was beliebig viele brächten.`,
    nothing: 'Keiner der möglichen Messwerte hat auf diesem Rasen ein Ergebnis.',
    what: 'Messwert',
    load: 'Last',
    expected: 'zu erwarten',
    narrows: 'nimmt der Varianz der Höhe',
    narrowsAll: 'nimmt der Varianz',
    problem: (sentence: string) =>
      `Welcher Messwert der nächste sein sollte, lässt sich nicht sagen: ${sentence}`,
  },
  turf: {
    use: 'diesen Rasen verwenden',
    used: (name: string) =>
      `„${name}“ ist jetzt der gewählte Rasen. Was nicht gemessen wurde (Rückfederung, Erholung), blieb, wie es war.`,
    fitted: 'angepasster Rasen',
    source: ({ count, set, law }: Values<'count' | 'set' | 'law'>) =>
      `Angepasst an ${count}${set === '' ? '' : ` von ${set}`}, Gesetz: ${law}.`,
  },
  report: {
    title: 'Für einen Bericht',
    copy: 'Absatz kopieren',
    copied: 'Kopiert.',
    notCopied: 'Von hier aus ging das Kopieren nicht: Markieren Sie den Text und kopieren Sie ihn selbst.',
    R: 'als Skript für R sichern',
    Python: 'als Skript für Python sichern',
    script: 'Das Skript macht dieselbe Anpassung aus denselben Messwerten.',
    asTable: (why: string) =>
      `Kein Skript kann diese Anpassung wiederholen: ${why}. Die Datei enthält die Messwerte neben ihren angepassten Werten.`,
  },
}

/** What the figure of a fit says inside itself. */
export const fitFigure = ({
  along,
  unit,
  sinkageUnit,
}: Values<'unit' | 'sinkageUnit'> & { readonly along: 'roller' | 'load' | 'pressure' }) => ({
  title: 'Messwerte, die angepasste Kurve und was übrig bleibt',
  across:
    along === 'pressure'
      ? `Druck unter der Platte, ${unit}`
      : along === 'roller'
        ? `Last auf der Walze, ${unit}`
        : `Last auf der Platte, ${unit}`,
  down: `Einsinktiefe, ${sinkageUnit}`,
  turf: 'Rasenoberfläche',
  fit: 'Anpassung',
  curve: ['95\u202f%, die Kurve'],
  oneMore: ['95\u202f%, ein', 'Messwert mehr'],
  unknown: 'nicht gemessen',
  here: ({ x, sinkage }: Values<'x' | 'sinkage'>) => [`${x}, die jetzige Last:`, sinkage],
  residual: `Messwert minus Anpassung, ${sinkageUnit}`,
  shallower: 'flacher',
  deeper: 'tiefer',
  twoS: (value: string) => `2 s = ${value}`,
})

/** What the figure of sets says inside itself. */
export const setsFigure = ({
  along,
  unit,
  day,
}: Values<'unit'> & {
  readonly along: 'set' | 'date' | 'moisture'
  readonly day: (day: number) => string
}) => ({
  title: 'Weichheit jeder Gruppe',
  down: `Weichheit, ${unit}`,
  across: { set: 'Gruppe', date: 'Datum', moisture: 'Feuchte, %' }[along],
  median: 'Median',
  interval: '95\u202f%, der Median',
  oneMore: ['95\u202f%, eine', 'Gruppe mehr'],
  day,
})

export const fitWorkings = {
  fitLeast: 'Der Rasen und die Nullpunkte des Messgeräts, bei denen am wenigsten übrig bleibt',
  fitSoftness: 'Die Weichheit, und wie sicher sie ist, aus der Änderung der Kurve mit ihr',
  fitScatter: 'Streuung eines einzelnen Messwerts, aus dem, was übrig bleibt',
}
