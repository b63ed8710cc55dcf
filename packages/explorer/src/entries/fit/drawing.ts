import { displayUnit } from '@swardsink/model'
import { fittedName } from '../../book/index.ts'
import type { FitSpec, FitWords, Frame, SetsSpec, SetsWords } from '../../figures/index.ts'
import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import { type FitCurve, sinkageAt } from './curve.ts'
import { hereOf } from './here.ts'
import type { FitResult, FitSettings, Fitted } from './kind.ts'

type ShownFit = Shown<FitSettings, FitResult>

export const setName = (set: string, { words }: Reader): string => (set === '' ? words.fit.noName : set)

/** Scatter of one reading, m: from what is left over, or as it was told. */
export function scatterOf({ fit }: Pick<Fitted, 'fit'>): number | null {
  if (fit.noise === 'estimated') return fit.residualStandardDeviation
  const variances = fit.weights.filter(weight => weight > 0).map(weight => 1 / weight)
  if (variances.length === 0) return null
  return Math.sqrt(variances.reduce((sum, one) => sum + one, 0) / variances.length)
}

/** The load in hand, where the curve is that of the roller in hand. */
function presentOn(
  { foot, points, most, set }: FitCurve,
  fitted: Fitted,
  { now }: ShownFit,
): FitSpec['present'] {
  if (foot.kind !== 'roller') return null
  if (foot.name !== null && foot.name !== fittedName(now, 'front')) return null
  const here = hereOf(fitted.fit, set, now)
  const sinkage = here && here.load <= most ? sinkageAt(points, here.load) : null
  return here && sinkage !== null ? { x: here.load, sinkage } : null
}

/** Sets that sink more than this many times as much would press the curve in hand flat. */
const MOST_TIMES = 2

function comparable({ others, points }: FitCurve): FitCurve['others'] {
  const deepest = points.at(-1)?.sinkage ?? 0
  return others.filter(one => (one.points.at(-1)?.sinkage ?? 0) <= MOST_TIMES * deepest)
}

export function fitSpec(shown: ShownFit, fitted: Fitted): FitSpec {
  const { curve } = fitted
  return {
    quantity: curve.along,
    most: curve.most,
    points: curve.points,
    readings: curve.readings,
    others: comparable(curve).map(({ set, points }) => ({ name: setName(set, shown.reader), points })),
    scatter: scatterOf(fitted),
    present: presentOn(curve, fitted, shown),
  }
}

export function fitFrame(
  reader: Reader,
  q: { readonly curve: FitCurve; readonly width: number },
): Frame<FitWords> {
  const { words, format, units, locale, figureText } = reader
  const { along, foot } = q.curve
  const said = words.figures.fit({
    along: foot.kind === 'roller' ? 'roller' : along,
    unit: displayUnit(along, units),
    sinkageUnit: displayUnit('sinkage', units),
  })
  return { width: q.width, words: said, format, units, locale, text: figureText }
}

/** What the sets can be drawn along: a date or moisture needs two that say one. */
export function alongsOf({ sets }: Pick<Fitted, 'sets'>): readonly FitSettings['along'][] {
  const has = (key: 'day' | 'moisture') =>
    new Set(sets.map(set => set[key]).filter(value => value !== null)).size > 1
  return [
    'set',
    ...(has('day') ? (['date'] as const) : []),
    ...(has('moisture') ? (['moisture'] as const) : []),
  ]
}

export function setsSpec({ settings, reader }: ShownFit, fitted: Fitted): SetsSpec {
  const along = alongsOf(fitted).includes(settings.along) ? settings.along : 'set'
  const population = fitted.judged?.population ?? null
  const range = (interval: { kind: string; low?: number; high?: number } | undefined) =>
    interval?.kind === 'interval' && interval.low !== undefined && interval.high !== undefined
      ? ([interval.low, interval.high] as const)
      : null
  return {
    along,
    sets: fitted.sets.flatMap(({ set, softness, interval, day, moisture }, i) => {
      const at = along === 'set' ? i : along === 'date' ? day : moisture
      return at === null ? [] : [{ name: setName(set, reader), at, softness, interval: range(interval) }]
    }),
    median: population?.median ?? null,
    interval: range(population?.interval),
    newSet: range(population?.newSet),
  }
}

const DAY = 86_400_000

export function setsFrame(
  reader: Reader,
  q: { readonly along: FitSettings['along']; readonly width: number },
): Frame<SetsWords> {
  const { words, format, units, locale, figureText } = reader
  const days = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', timeZone: 'UTC' })
  const said = words.figures.sets({
    along: q.along,
    unit: displayUnit('softness', units),
    day: day => days.format(day * DAY),
  })
  return { width: q.width, words: said, format, units, locale, text: figureText }
}
