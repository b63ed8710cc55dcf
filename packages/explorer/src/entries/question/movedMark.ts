import { printed, stepped } from '../../controls/index.ts'
import { predictionLayout } from '../../figures/index.ts'
import type { Shown } from '../view.ts'
import { frameOf, specOf } from './drawing.ts'
import type { QuestionResult, Told } from './kind.ts'
import { isDepth } from './saying.ts'
import type { QuestionSettings } from './settings.ts'

type ShownQuestion = Shown<QuestionSettings, QuestionResult>

const UPSIDE_DOWN: Readonly<Record<string, string>> = {
  ArrowUp: 'ArrowDown',
  ArrowDown: 'ArrowUp',
  PageUp: 'PageDown',
  PageDown: 'PageUp',
}
/** Where no catalogue gives digits, a step is this part of the scale, rounded to a power of ten. */
const FINE = 100

/** As many digits as are read; of a number with a unit of somebody's own, a hundredth of the scale. */
function rounded(value: number, told: Told, range: number, units: ShownQuestion['reader']['units']): number {
  if ('quantity' in told) return printed(value, { quantity: told.quantity, units })
  const step = stepOf(range)
  return Number((Math.round(value / step) * step).toPrecision(12))
}

const stepOf = (range: number): number => 10 ** Math.floor(Math.log10(range / FINE))

/** Where the mark of what is said goes under a pointer, px on the page; null while it cannot be moved. */
export function markAt(
  shown: ShownQuestion,
  q: { readonly width: number; readonly figure: Element | null; readonly y: number },
): number | null {
  if (!q.figure || shown.settings.state !== 'asked') return null
  const spec = specOf(shown, 1)
  const { valueAt } = predictionLayout(spec, frameOf(shown.reader, q.width))
  const [low, high] = spec.domain
  return rounded(
    valueAt(q.y - q.figure.getBoundingClientRect().top),
    spec.told,
    high - low,
    shown.reader.units,
  )
}

/** Where a key takes it: the way the key points, which on a scale of depths is towards more for down. */
export function markAfter(
  shown: ShownQuestion,
  event: Pick<KeyboardEvent, 'key' | 'altKey' | 'ctrlKey' | 'metaKey'>,
): number | null {
  const { settings, result, reader } = shown
  const value = settings.prediction
  if (value === null || settings.state !== 'asked') return null
  if (event.altKey || event.ctrlKey || event.metaKey) return null
  const { told } = result
  const key = isDepth(told) ? (UPSIDE_DOWN[event.key] ?? event.key) : event.key
  const [low, high] = specOf(shown, 1).domain
  const line = { low, high, usual: [low, high], scale: 'linear' } as const
  if ('quantity' in told)
    return stepped({ key, value, quantity: told.quantity, units: reader.units, line }, { ends: false })
  const steps = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[key]
  return steps === undefined
    ? null
    : rounded(value + steps * stepOf(high - low), told, high - low, reader.units)
}
