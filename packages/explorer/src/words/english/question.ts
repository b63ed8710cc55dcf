import type { Values } from './speaking.ts'

type Said = Readonly<Record<string, string>>

export const question = {
  title: 'Say first, then look',
  /** Values that can be asked for, as they stand inside a sentence. */
  values: {
    'front.load': 'the load on the front roller',
    'front.sinkage': 'the sinkage of the front roller',
    'front.peakPressure': 'the greatest pressure under the front roller',
    'rear.load': 'the load on the rear roller',
    'rear.sinkage': 'the sinkage of the rear roller',
    drop: 'the drop of the cutting edge',
    effectiveHeight: 'the effective height of cut',
    'toHold.change': 'the change of the bench height that gives the wanted height',
    'toHold.travel': 'how far the front roller has to travel for the wanted height',
    'toHold.benchHeight': 'the bench height that gives the wanted height',
    'oneKilogram.mass': 'one kilogram',
    'body.weight': 'the weight of the body',
    'oneKilogramMore.drop': 'what one more unit of mass in front adds to the drop',
    'twiceAsSoft.drop': 'what turf twice as soft adds to the drop',
  } as Said,
  asked: (what: string) => `What is ${what}?`,
  askedIf: ({ setting, before, after, what }: Values<'setting' | 'before' | 'after' | 'what'>) =>
    `${setting}: ${after} instead of ${before}. What is ${what} then?`,
  askedDifference: ({ setting, before, after, what }: Values<'setting' | 'before' | 'after' | 'what'>) =>
    `${setting}: ${after} instead of ${before}. By how much does it change ${what}?`,
  askedRatio: ({ setting, before, after, what }: Values<'setting' | 'before' | 'after' | 'what'>) =>
    `${setting}: ${after} instead of ${before}. How many times what it was is ${what} then?`,
  /** What a setting is called, inside a sentence. */
  insideSentence: (name: string) => name.replace(/^./u, first => first.toLowerCase()),
  yours: 'Your prediction',
  drag: 'Type it, use the arrow keys, or put the mark where you think it will be. The model says nothing until you have locked it.',
  choose: 'Choose one. The model says nothing until you have locked it.',
  lock: 'Lock it',
  locked: (value: string) => `${value}, locked`,
  roomLocked: (count: string) => `${count} guesses, locked`,
  reveal: 'Show me',
  again: 'ask again',
  sayFirst: 'Say something first: then it can be locked.',
  noNumber: (text: string) => `“${text}” is no number.`,
  why: 'Why do you think so?',
  whySaid: (why: string) => `You thought: ${why}`,
  found: ({ yours, model, error, share, more }: Values<'yours' | 'model' | 'error' | 'share' | 'more'>) =>
    `You said ${yours}, the model says ${model}: ${error}, ${share} ${more}.`,
  foundBare: ({ yours, model, error, more }: Values<'yours' | 'model' | 'error' | 'more'>) =>
    `You said ${yours}, the model says ${model}: ${error}, ${more}.`,
  same: ({ yours, model }: Values<'yours' | 'model'>) =>
    `You said ${yours}, the model says ${model}: the same, as far as it is read.`,
  model: (model: string) => `The model says ${model}.`,
  noAnswer: 'The model has no answer for these values: the turf bottoms out, or they contradict each other.',
  right: (option: string) => `You said “${option}”, and so does the model.`,
  wrong: ({ yours, model }: Values<'yours' | 'model'>) => `You said “${yours}”, the model says “${model}”.`,
  modelSays: (option: string) => `The model says “${option}”.`,
  noneRight: (model: string) => `None of these: the model says ${model}.`,
  changedSince: (was: string) =>
    `Values were changed after it was locked: for those that stood then, the model said ${was}.`,
  more: { depth: 'too deep', height: 'too high', other: 'too much' },
  less: { depth: 'not deep enough', height: 'too low', other: 'too little' },
  room: 'Guesses of the room',
  roomHint: ({ unit, most }: Values<'unit' | 'most'>) =>
    unit === ''
      ? `Numbers with a space between them, or a tally such as 2 ×4; at most ${most}.`
      : `Numbers in ${unit} with a space between them, or a tally such as 2 ×4; at most ${most}.`,
  roomCount: (count: string) => `guesses for “${count}”`,
  unread: (text: string) => `“${text}” is no number: it is left out.`,
  tooMany: (most: string) => `Only the first ${most} are taken.`,
  roomFound: ({
    count,
    low,
    high,
    middle,
    above,
    below,
  }: Values<'count' | 'low' | 'high' | 'middle' | 'above' | 'below'>) =>
    `${count} guesses of the room lie between ${low} and ${high}, their middle at ${middle}: ${above} above the model’s answer, ${below} below.`,
  roomChose: ({ count, right }: Values<'count' | 'right'>) => `${right} of ${count} in the room said so.`,
  note: {
    roller: (times: string) =>
      `Depth is drawn ${times} times the width. The diamond was said beforehand; the ring is the model’s answer.`,
    other:
      'The diamond was said beforehand; the ring is the model’s answer. A filled dot is a guess of the room.',
  },
  table: {
    caption: 'What was said and what the model says',
    who: 'who',
    value: 'value',
    error: 'signed error',
    you: 'you',
    room: 'room',
    model: 'model',
    now: 'as it stands',
    hidden: 'not yet shown',
    says: 'says',
  },
  edit: {
    sentence: 'Question',
    sentenceHint:
      'A name in braces shows its value; {then.front.load} shows it with the change made. Empty: a sentence is made from what is asked.',
    asks: 'What is asked',
    of: 'Asked is',
    parts: { value: 'its value', difference: 'how much it changes', ratio: 'how many times what it was' },
    change: 'With another',
    none: 'nothing changed',
    how: 'changed',
    ways: { by: 'by', times: 'times', to: 'to' },
    amount: 'How much',
    because: 'Said when it is revealed',
    room: 'guesses of a room are typed here',
    options: 'A few options to choose from',
    option: (number: string) => `Option ${number}`,
    from: (number: string) => `Option ${number} is right from`,
    to: (number: string) => `Option ${number} is right below`,
    add: 'add an option',
    takeOut: (text: string) => `take out “${text}”`,
    optionsHint: 'Without options a number is asked for. Leave an end empty where there is none.',
  },
}

/** What the scale of a prediction says inside itself. */
export const questionFigure = {
  title: 'A scale with what was said and what the model says',
  now: (value: string) => `now ${value}`,
  yours: (value: string) => `yours ${value}`,
  model: (value: string) => `model ${value}`,
  front: 'front roller',
  rear: 'rear roller',
  handle: 'Your prediction',
  axis: ({ what, unit }: Values<'what' | 'unit'>) => (unit === '' ? what : `${what}, ${unit}`),
}

export const questionWorkings = { questionAnswer: 'What the model answers' }

export const questionReasons = {
  'question change unknown': () => 'What the question changes is no setting of this book.',
  'question change no choice': () => 'What the question changes to is none of the choices there are.',
  'question change not here': () =>
    'What the question changes is not there now, as a smooth roller has no pitch.',
  'question change no number': () => 'What the question changes takes a number.',
  'question change impossible': () => 'What the question changes to is not possible with the other values.',
} satisfies Readonly<Record<string, (values: Said) => string>>
