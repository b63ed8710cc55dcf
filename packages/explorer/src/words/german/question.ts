import type { Values } from './speaking.ts'

type Said = Readonly<Record<string, string>>

export const question = {
  title: 'Erst sagen, dann nachsehen',
  /** Values that can be asked for, as they stand inside a sentence. */
  values: {
    'front.load': 'die Last auf der Vorderwalze',
    'front.sinkage': 'die Einsinktiefe der Vorderwalze',
    'front.peakPressure': 'der größte Druck unter der Vorderwalze',
    'rear.load': 'die Last auf der Hinterwalze',
    'rear.sinkage': 'die Einsinktiefe der Hinterwalze',
    drop: 'die Absenkung der Schneidkante',
    effectiveHeight: 'die effektive Schnitthöhe',
    'toHold.change': 'die Änderung der Einstellhöhe, die die gewünschte Höhe ergibt',
    'toHold.travel': 'der Weg der Vorderwalze bis zur gewünschten Höhe',
    'toHold.benchHeight': 'die Einstellhöhe, die die gewünschte Höhe ergibt',
    'oneKilogram.mass': 'ein Kilogramm',
    'body.weight': 'das Gewicht des Aufbaus',
    'oneKilogramMore.drop': 'die zusätzliche Absenkung durch eine Masseneinheit mehr vorn',
    'twiceAsSoft.drop': 'die zusätzliche Absenkung auf doppelt so weichem Rasen',
  } as Said,
  asked: (what: string) => `Wie groß ist ${what}?`,
  askedIf: ({ setting, before, after, what }: Values<'setting' | 'before' | 'after' | 'what'>) =>
    `${setting}: ${after} statt ${before}. Wie groß ist dann ${what}?`,
  askedDifference: ({ setting, before, after, what }: Values<'setting' | 'before' | 'after' | 'what'>) =>
    `${setting}: ${after} statt ${before}. Um wie viel ändert sich ${what}?`,
  askedRatio: ({ setting, before, after, what }: Values<'setting' | 'before' | 'after' | 'what'>) =>
    `${setting}: ${after} statt ${before}. Das Wievielfache von vorher ist dann ${what}?`,
  /** What a setting is called, inside a sentence: German keeps the capital of its nouns. */
  insideSentence: (name: string) => name,
  yours: 'Ihre Vorhersage',
  drag: 'Tippen Sie sie ein, nehmen Sie die Pfeiltasten, oder setzen Sie die Marke dorthin, wo Sie den Wert erwarten. Das Modell sagt nichts, bevor Sie sich festgelegt haben.',
  choose: 'Wählen Sie eine Antwort. Das Modell sagt nichts, bevor Sie sich festgelegt haben.',
  lock: 'Festlegen',
  locked: (value: string) => `${value}, festgelegt`,
  roomLocked: (count: string) => `${count} Schätzungen, festgelegt`,
  reveal: 'Zeigen',
  again: 'noch einmal fragen',
  sayFirst: 'Sagen Sie erst etwas: Dann können Sie es festlegen.',
  noNumber: (text: string) => `„${text}“ ist keine Zahl.`,
  why: 'Warum glauben Sie das?',
  whySaid: (why: string) => `Sie dachten: ${why}`,
  found: ({ yours, model, error, share, more }: Values<'yours' | 'model' | 'error' | 'share' | 'more'>) =>
    `Sie sagten ${yours}, das Modell sagt ${model}: ${error}, ${share} ${more}.`,
  foundBare: ({ yours, model, error, more }: Values<'yours' | 'model' | 'error' | 'more'>) =>
    `Sie sagten ${yours}, das Modell sagt ${model}: ${error}, ${more}.`,
  same: ({ yours, model }: Values<'yours' | 'model'>) =>
    `Sie sagten ${yours}, das Modell sagt ${model}: dasselbe, soweit es ablesbar ist.`,
  model: (model: string) => `Das Modell sagt ${model}.`,
  noAnswer:
    'Für diese Werte hat das Modell kein Ergebnis: Der Rasen ist am Anschlag, oder die Werte widersprechen sich.',
  right: (option: string) => `Sie sagten „${option}“, und das Modell sagt es auch.`,
  wrong: ({ yours, model }: Values<'yours' | 'model'>) =>
    `Sie sagten „${yours}“, das Modell sagt „${model}“.`,
  modelSays: (option: string) => `Das Modell sagt „${option}“.`,
  noneRight: (model: string) => `Nichts davon: Das Modell sagt ${model}.`,
  changedSince: (was: string) =>
    `Nach dem Festlegen wurden Werte geändert: Für die damaligen sagte das Modell ${was}.`,
  more: { depth: 'zu tief', height: 'zu hoch', other: 'zu viel' },
  less: { depth: 'nicht tief genug', height: 'zu niedrig', other: 'zu wenig' },
  room: 'Schätzungen der Gruppe',
  roomHint: ({ unit, most }: Values<'unit' | 'most'>) =>
    unit === ''
      ? `Zahlen mit einem Leerzeichen dazwischen, oder eine Strichliste wie 2 ×4; höchstens ${most}.`
      : `Zahlen in ${unit} mit einem Leerzeichen dazwischen, oder eine Strichliste wie 2 ×4; höchstens ${most}.`,
  roomCount: (count: string) => `Schätzungen für „${count}“`,
  unread: (text: string) => `„${text}“ ist keine Zahl: Es bleibt weg.`,
  tooMany: (most: string) => `Nur die ersten ${most} zählen.`,
  roomFound: ({
    count,
    low,
    high,
    middle,
    above,
    below,
  }: Values<'count' | 'low' | 'high' | 'middle' | 'above' | 'below'>) =>
    `${count} Schätzungen der Gruppe liegen zwischen ${low} und ${high}, ihre Mitte bei ${middle}: ${above} über der Antwort des Modells, ${below} darunter.`,
  roomChose: ({ count, right }: Values<'count' | 'right'>) =>
    `${right} von ${count} in der Gruppe sagten das.`,
  note: {
    roller: (times: string) =>
      `Die Tiefe ist auf das ${times}\u2011Fache der Breite gezeichnet. Die Raute wurde vorher gesagt; der Ring ist die Antwort des Modells.`,
    other:
      'Die Raute wurde vorher gesagt; der Ring ist die Antwort des Modells. Ein gefüllter Punkt ist eine Schätzung der Gruppe.',
  },
  table: {
    caption: 'Was gesagt wurde, und was das Modell sagt',
    who: 'wer',
    value: 'Wert',
    error: 'Abweichung mit Vorzeichen',
    you: 'Sie',
    room: 'Gruppe',
    model: 'Modell',
    now: 'wie es ist',
    hidden: 'noch nicht gezeigt',
    says: 'sagt',
  },
  edit: {
    sentence: 'Fragetext',
    sentenceHint:
      'Ein Name in geschweiften Klammern zeigt seinen Wert; {then.front.load} zeigt ihn nach der Änderung. Leer: Aus dem Gefragten wird ein Satz gemacht.',
    asks: 'Wonach gefragt wird',
    of: 'Gefragt ist',
    parts: { value: 'der Wert', difference: 'die Änderung', ratio: 'das Wievielfache von vorher' },
    change: 'Mit geändertem Wert von',
    none: 'nichts geändert',
    how: 'geändert',
    ways: { by: 'um', times: 'mal', to: 'auf' },
    amount: 'Wie viel',
    because: 'Was beim Zeigen dazu gesagt wird',
    room: 'hier werden Schätzungen einer Gruppe eingetippt',
    options: 'Einige Antworten zur Wahl',
    option: (number: string) => `Antwort ${number}`,
    from: (number: string) => `Antwort ${number} stimmt ab`,
    to: (number: string) => `Antwort ${number} stimmt unter`,
    add: 'Antwort hinzufügen',
    takeOut: (text: string) => `„${text}“ herausnehmen`,
    optionsHint:
      'Ohne Antworten zur Wahl wird nach einer Zahl gefragt. Lassen Sie ein Ende leer, wo es keines gibt.',
  },
}

/** What the scale of a prediction says inside itself. */
export const questionFigure = {
  title: 'Eine Skala mit dem Gesagten und der Antwort des Modells',
  now: (value: string) => `jetzt ${value}`,
  yours: (value: string) => `Ihre ${value}`,
  model: (value: string) => `Modell ${value}`,
  front: 'Vorderwalze',
  rear: 'Hinterwalze',
  handle: 'Ihre Vorhersage',
  axis: ({ what, unit }: Values<'what' | 'unit'>) => (unit === '' ? what : `${what}, ${unit}`),
}

export const questionWorkings = { questionAnswer: 'Was das Modell antwortet' }

export const questionReasons = {
  'question change unknown': () => 'Was die Frage ändert, lässt sich in diesem Buch nicht einstellen.',
  'question change no choice': () => 'Worauf die Frage etwas ändert, steht nicht zur Wahl.',
  'question change not here': () =>
    'Was die Frage ändert, gibt es gerade nicht, wie eine glatte Walze keine Teilung hat.',
  'question change no number': () => 'Was die Frage ändert, verlangt eine Zahl.',
  'question change impossible': () =>
    'Worauf die Frage etwas ändert, ist mit den übrigen Werten nicht möglich.',
} satisfies Readonly<Record<string, (values: Said) => string>>
