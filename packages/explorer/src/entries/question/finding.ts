import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import { summaryOf } from './guesses.ts'
import type { QuestionResult } from './kind.ts'
import { amount, bare, sideOf, signed } from './saying.ts'
import type { QuestionSettings } from './settings.ts'

type ShownQuestion = Shown<QuestionSettings, QuestionResult>

/** What came of it, once it is revealed; before that nothing is told. */
export function questionFinding(shown: ShownQuestion): string | null {
  const { settings, reader } = shown
  if (settings.state !== 'revealed') return null
  const said = settings.options.length > 0 ? chosen(shown) : told(shown)
  return [...said, ...changedSince(settings, shown.result, reader)].join(' ')
}

function told({ settings, result, reader }: ShownQuestion): readonly string[] {
  const { question, percent } = reader.words
  const { answer, told: as } = result
  if (answer === null) return [question.noAnswer]
  const { prediction, guesses } = settings
  const model = amount(answer, as, reader)
  const own = prediction === null ? [question.model(model)] : [compared(prediction, answer, result, reader)]
  const room = summaryOf(guesses, answer)
  if (!room) return own
  const text = (value: number) => bare(value, as, reader)
  const { count, low, high, middle, above, below } = room
  return [
    ...own,
    question.roomFound({
      count: String(count),
      low: text(low),
      high: amount(high, as, reader),
      middle: text(middle),
      above: String(above),
      below: String(below),
    }),
  ]

  function compared(yours: number, right: number, { told: unit }: QuestionResult, to: Reader): string {
    const error = yours - right
    const side = sideOf(unit)
    const values = { yours: amount(yours, unit, to), model: amount(right, unit, to) }
    // What cannot be told apart as it is read is the same.
    if (bare(yours, unit, to) === bare(right, unit, to)) return question.same(values)
    const more = error > 0 ? question.more[side] : question.less[side]
    const parts = { ...values, error: signed(error, unit, to), more }
    return right === 0
      ? question.foundBare(parts)
      : question.found({ ...parts, share: percent(Math.abs(error / right)) })
  }
}

function chosen({ settings, result, reader }: ShownQuestion): readonly string[] {
  const { question } = reader.words
  const { prediction, options, guesses } = settings
  const { right, answer, told: as } = result
  if (right === null)
    return [answer === null ? question.noAnswer : question.noneRight(amount(answer, as, reader))]
  const model = options[right]?.text ?? ''
  const yours = prediction === null ? null : options[prediction]?.text
  const own =
    yours === null || yours === undefined
      ? question.modelSays(model)
      : prediction === right
        ? question.right(model)
        : question.wrong({ yours, model })
  if (guesses.length === 0) return [own]
  const same = guesses.filter(guess => guess === right).length
  return [own, question.roomChose({ count: String(guesses.length), right: String(same) })]
}

/** A prediction is set against what the model says now; if that is not what it was, both are told. */
function changedSince(
  { stood, options }: QuestionSettings,
  { answer, told: as }: QuestionResult,
  reader: Reader,
): readonly string[] {
  if (stood === null || answer === null || options.length > 0) return []
  const was = amount(stood, as, reader)
  return was === amount(answer, as, reader) ? [] : [reader.words.question.changedSince(was)]
}
