import { displayUnit, fromDisplay, type QuantityName, toDisplay } from '@swardsink/model'
import { settable } from '../../book/index.ts'
import { amountText, type Reader, settableWords } from '../../words/index.ts'
import type { QuestionResult, Told } from './kind.ts'
import type { QuestionSettings } from './settings.ts'

/** Quantities whose larger values lie deeper, and those that are heights. */
const DEPTHS: readonly QuantityName[] = [
  'sinkage',
  'drop',
  'relief',
  'softness',
  'grooveDepth',
  'lockingDepth',
]
const HEIGHTS: readonly QuantityName[] = ['height']

export const isDepth = (told: Told): boolean => 'quantity' in told && DEPTHS.includes(told.quantity)

/** What is said of a value that is more, or less, than another. */
export function sideOf(told: Told): 'depth' | 'height' | 'other' {
  if (isDepth(told)) return 'depth'
  return 'quantity' in told && HEIGHTS.includes(told.quantity) ? 'height' : 'other'
}

export const unitOf = (told: Told, { units }: Reader): string =>
  'quantity' in told ? displayUnit(told.quantity, units) : told.unit

/** To the number a reader sees, and back. */
export const shownAs = (value: number, told: Told, { units }: Reader): number =>
  'quantity' in told ? toDisplay(value, told.quantity, units) : value
export const saidAs = (shown: number, told: Told, { units }: Reader): number =>
  'quantity' in told ? fromDisplay(shown, told.quantity, units) : shown

export const amount = (value: number, told: Told, reader: Reader): string =>
  amountText({ value, ...told }, reader)

/** Without its unit. */
export const bare = (value: number, told: Told, reader: Reader): string =>
  'quantity' in told
    ? reader.format(value, told.quantity, { unit: false })
    : amountText({ value, unit: '' }, reader)

export function signed(value: number, told: Told, reader: Reader, unit = true): string {
  if ('quantity' in told) return reader.format(value, told.quantity, { signed: true, unit })
  const text = amountText({ value, unit: unit ? told.unit : '' }, reader)
  return value > 0 ? `+${text}` : text
}

const firstLarge = (text: string): string => text.replace(/^./u, first => first.toUpperCase())

/** A live value as it is called inside a sentence. */
export function valueName(name: string, { words }: Reader): string {
  const own = words.question.values[name]
  if (own !== undefined) return own
  if (!settable(name)) return name
  const said = settableWords(name, words)
  return words.question.insideSentence(said.name)
}

/** The question as it was written, or one made from what is asked. */
export function sentenceOf(
  { question, asks, of, change }: QuestionSettings,
  { values }: QuestionResult,
  reader: Reader,
): string {
  if (question.trim() !== '') return question
  const said = reader.words.question
  const what = valueName(asks, reader)
  if (!change) return firstLarge(said.asked(what))
  const before = values[change.name] ? `{${change.name}}` : ''
  const choice = 'to' in change && typeof change.to === 'string' ? change.to : null
  const after = choice ?? `{then.${change.name}}`
  const setting = settableWords(change.name, reader.words).name
  const parts = { setting, before: before || reader.words.question.table.now, after, what }
  if (of === 'difference') return said.askedDifference(parts)
  return of === 'ratio' ? said.askedRatio(parts) : said.askedIf(parts)
}
