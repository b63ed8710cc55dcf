import { amountText } from '../../words/index.ts'
import { paragraphsOf } from '../text/prose.ts'
import type { Asked, Shown } from '../view.ts'
import type { QuestionResult } from './kind.ts'
import { amount, sentenceOf, signed } from './saying.ts'
import type { QuestionSettings } from './settings.ts'

/** The question, what was said to it, and what the model says once it may: in plain text, for paper. */
export function askedOf({ settings, result, reader }: Shown<QuestionSettings, QuestionResult>): Asked {
  const { prediction, options, state, why } = settings
  const { told, answer, right, values } = result
  const has = options.length > 0
  const plain = (text: string) =>
    paragraphsOf(text)
      .map(pieces =>
        pieces
          .map(piece => {
            if (piece.kind === 'words') return piece.text
            const value = values[piece.name]
            return value ? amountText(value, reader) : reader.words.text.unknown
          })
          .join(''),
      )
      .join(' ')
  const worded = (value: number) => (has ? (options[value]?.text ?? '') : amount(value, told, reader))
  const model = has ? right : answer
  const isOpen = state === 'revealed'
  return {
    question: plain(sentenceOf(settings, result, reader)),
    said: prediction === null ? null : worded(prediction),
    found: isOpen ? (model === null ? reader.words.text.unknown : worded(model)) : null,
    error:
      isOpen && !has && prediction !== null && answer !== null
        ? signed(prediction - answer, told, reader)
        : null,
    why,
  }
}
