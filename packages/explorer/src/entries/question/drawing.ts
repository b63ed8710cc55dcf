import type { Frame, PredictionSpec, PredictionWords } from '../../figures/index.ts'
import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import type { QuestionResult } from './kind.ts'
import { amount, bare, isDepth, signed, valueName } from './saying.ts'
import type { QuestionSettings } from './settings.ts'

/** Steps of a scale's end: it tells no more of the answer than in which of them it lies. */
const STEPS = [1, 1.5, 2, 3, 4, 5, 6, 8, 10]
const ROOMY = 1.7

/** The next round number that leaves room over a size. */
function roundedUp(size: number): number {
  if (!(size > 0)) return 1
  const power = 10 ** Math.floor(Math.log10(size))
  const NOISE = 1 - 1e-9
  return (STEPS.find(step => step * power >= size * NOISE) ?? 10) * power
}

/**
 * Ends of the scale: those that were written, or round ones that hold everything that is drawn, the answer among it.
 * They stay where they are when it is revealed.
 */
export function domainOf(
  { scale, prediction, guesses, options }: QuestionSettings,
  { answer, now }: QuestionResult,
): readonly [number, number] {
  const said = options.length > 0 ? [] : [...(prediction === null ? [] : [prediction]), ...guesses]
  const known = [answer, now].filter(value => value !== null)
  if (scale) return [Math.min(scale[0], ...said), Math.max(scale[1], ...said)]
  const high = Math.max(0, ...known) * ROOMY
  const low = Math.min(0, ...known) * ROOMY
  return [
    -roundedOrNone(Math.max(-low, ...said.map(value => -value))),
    roundedUp(Math.max(high, ...said, low < 0 ? -low / 4 : 0)),
  ]
}

const roundedOrNone = (size: number): number => (size > 0 ? roundedUp(size) : 0)

/** What the scale shows. Until it is revealed nothing of the answer is handed to the figure. */
export function specOf(
  { settings, result, reader }: Shown<QuestionSettings, QuestionResult>,
  settled: number,
): PredictionSpec {
  const { prediction, state, guesses } = settings
  const { told, now, answer, roller } = result
  const revealed = state === 'revealed' ? answer : null
  const error =
    prediction === null ||
    revealed === null ||
    bare(prediction, told, reader) === bare(revealed, told, reader)
      ? ''
      : signed(prediction - revealed, told, reader, false)
  const of = reader.words.question.edit.parts[settings.of]
  return {
    told,
    what: settings.of === 'ratio' ? of : valueName(settings.asks, reader),
    domain: domainOf(settings, result),
    deep: isDepth(told),
    now,
    yours: prediction,
    model: revealed,
    settled,
    guesses,
    roller,
    error,
    text: value => bare(value, told, reader),
    movable: state === 'asked',
    spoken: prediction === null ? '' : amount(prediction, told, reader),
  }
}

export function frameOf(reader: Reader, width: number): Frame<PredictionWords> {
  const { words, format, units, locale, figureText } = reader
  return { width, words: words.figures.question, format, units, locale, text: figureText }
}
