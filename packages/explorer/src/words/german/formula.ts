type Said = Readonly<Record<string, string>>

export const formula = {
  title: 'Ein hier berechneter Wert',
  name: 'Name',
  from: 'berechnet aus',
  in: 'in',
  finding: (name: string, value: string) => `${name} ist ${value}.`,
  unnamed: 'dieser Wert',
  note: 'Zahlen in Formeln haben einen Punkt; Maßeinheiten stehen hinter ihrer Zahl, wie in 2 mm. Winkel sind in rad, wenn nicht deg dasteht.',
  names: 'Namen, die hier gelten',
  table: { caption: 'Woraus er berechnet ist', name: 'Name', value: 'Wert', unit: 'Maßeinheit' },
}

const THINGS: Said = {
  'plain number': 'eine reine Zahl',
  length: 'eine Länge',
  area: 'eine Fläche',
  volume: 'ein Volumen',
  mass: 'eine Masse',
  time: 'eine Zeit',
  speed: 'eine Geschwindigkeit',
  acceleration: 'eine Beschleunigung',
  force: 'eine Kraft',
  'force per length': 'eine Kraft je Länge',
  pressure: 'ein Druck',
  'pressure per length': 'ein Druck je Länge',
  energy: 'eine Energie',
  turning: 'eine Drehzahl',
}
const thing = (name = ''): string => THINGS[name] ?? `etwas in ${name}`

/** The parser speaks English; where it stopped can be said without it. */
function shapeOf(why = ''): string {
  const at = /\(char (\d+)\)/.exec(why)?.[1]
  if (at !== undefined) return `ab Stelle ${at}`
  return why.startsWith('names, numbers')
    ? 'gelesen werden nur Namen, Zahlen, Maßeinheiten und Rechenzeichen'
    : why
}

/** Why a formula has no value, each with what to change. */
export const formulaReasons = {
  'formula is empty': () => 'Schreiben Sie, woraus der Wert berechnet wird, etwa drop / front.load.',
  'formula has no name': () =>
    'Geben Sie einen Namen aus Buchstaben und Ziffern, damit Text und andere Werte ihn aufrufen können.',
  'name cannot be used': ({ name }: Said) =>
    `„${name}“ geht nicht als Name: Ein Name beginnt mit einem Buchstaben und besteht aus Buchstaben, Ziffern und _.`,
  'name is taken': ({ name }: Said) =>
    `„${name}“ bedeutet schon etwas anderes: Wählen Sie einen anderen Namen.`,
  'formula sign': ({ sign, at }: Said) =>
    `„${sign}“ an Stelle ${at} hat hier keine Bedeutung: Namen, Zahlen, Maßeinheiten, Klammern und + − × ÷ ^ haben eine.`,
  'formula length': ({ most }: Said) => `Das ist länger, als gelesen werden kann: höchstens ${most} Zeichen.`,
  'formula shape': ({ text, why }: Said) => `„${text}“ ist nicht lesbar (${shapeOf(why)}).`,
  'name unknown': ({ name, near }: Said) =>
    near === '' ? `Hier heißt nichts „${name}“.` : `Hier heißt nichts „${name}“; meinten Sie ${near}?`,
  'function unknown': ({ name, known }: Said) =>
    `„${name}“ ist keine hier bekannte Funktion; bekannt sind: ${known}.`,
  'function arguments': ({ name, wanted }: Said) =>
    `${name} braucht ${wanted === '1' ? 'genau einen Wert' : 'einen Wert oder mehr'} in den Klammern.`,
  'factors without a sign': ({ text }: Said) =>
    `Zwischen zwei Faktoren steht × oder ÷: In „${text}“ fehlt es. Nur eine Maßeinheit darf direkt auf ihre Zahl folgen.`,
  circle: ({ names }: Said) => `Diese brauchen einander, also lässt sich keiner berechnen: ${names}.`,
  'value not known': ({ name }: Said) => `${name} ist nicht bekannt, also ist es dieser Wert auch nicht.`,
  'dimensions differ': ({ left, right, sign }: Said) =>
    `${thing(left).replace(/^./, first => first.toUpperCase())} und ${thing(right)} sind Verschiedenes: ${sign} kann sie nicht verbinden.`,
  'plain number wanted': ({ where, received }: Said) =>
    `${where === '^' ? 'Eine Hochzahl' : where} verlangt eine reine Zahl; hier ist es ${thing(received)}.`,
  'unit unknown': ({ unit, near }: Said) =>
    near === ''
      ? `„${unit}“ ist keine hier bekannte Maßeinheit.`
      : `„${unit}“ ist keine hier bekannte Maßeinheit; meinten Sie ${near}?`,
  'unit does not fit': ({ unit, received, proposal }: Said) =>
    proposal === ''
      ? `Das Ergebnis ist eine reine Zahl; in ${unit} lässt es sich nicht angeben. Lassen Sie „in“ leer.`
      : `Das Ergebnis ist ${thing(received)}; in ${unit} lässt es sich nicht angeben, wohl aber in ${proposal}.`,
  'not a number': () =>
    'Für die jetzigen Werte gibt es kein Ergebnis: Es wird durch nichts geteilt oder eine Wurzel aus weniger als nichts gezogen.',
} satisfies Readonly<Record<string, (values: Said) => string>>
