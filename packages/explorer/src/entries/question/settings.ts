import { type Fields, isRecord } from '../../book/index.ts'

/** What of the asked value is meant: itself, how much it changes, or how many times it is what it was. */
export const PARTS = ['value', 'difference', 'ratio'] as const
export type Part = (typeof PARTS)[number]

/** asked: it can be changed; locked: it stands; revealed: the model has answered. */
export const STATES = ['asked', 'locked', 'revealed'] as const
export type State = (typeof STATES)[number]

/** One setting made different, in a copy of the values that stand; SI. */
export type Change = { readonly name: string } & (
  | { readonly by: number }
  | { readonly times: number }
  | { readonly to: number | string }
)

export type Option = {
  readonly text: string
  /** Right while the asked value is at least `from` and less than `to`, SI; null where there is no such end. */
  readonly from: number | null
  readonly to: number | null
  /** Right whatever the model says: for questions that no number answers. */
  readonly right: boolean
}

export type QuestionSettings = {
  /** The sentence, with live values by name in braces; empty: one is made from what is asked. */
  readonly question: string
  /** The name of a live value. */
  readonly asks: string
  readonly of: Part
  readonly change: Change | null
  /** Empty: a number is asked for. */
  readonly options: readonly Option[]
  /** Said once it is revealed, with live values by name. */
  readonly because: string
  /** Whether the guesses of a room are typed here. */
  readonly room: boolean
  /** Ends of the scale, SI; null: found from the values. */
  readonly scale: readonly [number, number] | null
  /** What the reader said: SI, or which option from 0. */
  readonly prediction: number | null
  /** Why they think so. */
  readonly why: string
  readonly state: State
  /** What the model said of the values that stood when the prediction was locked. */
  readonly stood: number | null
  /** What a room said, SI or which option. */
  readonly guesses: readonly number[]
}

export const MOST_GUESSES = 60

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value)

function readNumber(fields: Fields, name: string): number | null {
  const raw = fields.raw(name)
  if (raw === undefined || raw === null || isNumber(raw)) return raw ?? null
  fields.problem(name, 'a number, or null')
  return null
}

function readChange(fields: Fields): Change | null {
  const raw = fields.raw('change')
  if (raw === undefined || raw === null) return null
  if (isRecord(raw) && typeof raw.name === 'string') {
    const { name, by, times, to } = raw
    if (isNumber(by)) return { name, by }
    if (isNumber(times)) return { name, times }
    if (isNumber(to) || typeof to === 'string') return { name, to }
  }
  fields.problem('change', 'the name of a setting and one of by, times, to')
  return null
}

function readOptions(fields: Fields): readonly Option[] {
  const raw = fields.raw('options')
  if (raw === undefined) return []
  if (!Array.isArray(raw) || !raw.every(one => isRecord(one) && typeof one.text === 'string')) {
    fields.problem('options', 'a list of options, each with its text')
    return []
  }
  return raw.map(({ text, from, to, right }) => ({
    text,
    from: isNumber(from) ? from : null,
    to: isNumber(to) ? to : null,
    right: right === true,
  }))
}

function readScale(fields: Fields): readonly [number, number] | null {
  const raw = fields.raw('scale')
  if (raw === undefined || raw === null) return null
  if (Array.isArray(raw) && raw.length === 2) {
    const [low, high]: readonly unknown[] = raw
    if (isNumber(low) && isNumber(high) && low < high) return [low, high]
  }
  fields.problem('scale', 'two numbers, the lower one first')
  return null
}

function readGuesses(fields: Fields): readonly number[] {
  const raw = fields.raw('guesses')
  if (raw === undefined) return []
  if (Array.isArray(raw) && raw.every(isNumber) && raw.length <= MOST_GUESSES) return raw
  fields.problem('guesses', `at most ${MOST_GUESSES} numbers`)
  return Array.isArray(raw) ? raw.filter(isNumber).slice(0, MOST_GUESSES) : []
}

export function readQuestion(fields: Fields): QuestionSettings {
  const options = readOptions(fields)
  const prediction = readNumber(fields, 'prediction')
  const guesses = readGuesses(fields)
  const state = fields.oneOf('state', STATES, 'asked')
  // Nothing can be locked before something was said.
  const said = prediction !== null || guesses.length > 0
  return {
    question: fields.text('question', ''),
    asks: fields.text('asks', 'front.sinkage'),
    of: fields.oneOf('of', PARTS, 'value'),
    change: readChange(fields),
    options,
    because: fields.text('because', ''),
    room: fields.flag('room', false),
    scale: readScale(fields),
    prediction,
    why: fields.text('why', ''),
    state: said ? state : 'asked',
    stood: readNumber(fields, 'stood'),
    guesses,
  }
}
