import { sentence } from '@swardsink/model'
import type { Shown } from '../view.ts'
import { setName } from './drawing.ts'
import { hereOf } from './here.ts'
import type { FitResult, FitSettings, Fitted } from './kind.ts'
import { plateDiameter } from './tables.ts'

type ShownFit = Shown<FitSettings, FitResult>

/** Why there is no fit, with what to change. */
export function reasonWords({ result, reader }: ShownFit): string | null {
  const { fit, modelSays } = reader.words
  const { none } = fit
  if (result.outcome === 'fitted') return null
  if (result.reason === 'problems')
    return none.problems(result.problems.map(one => modelSays(sentence(one))).join(' '))
  return result.reason === 'no fit' ? none['no fit'](modelSays(result.why)) : none[result.reason]
}

/** An interval of more than this, from its one end to its other, says nothing worth a sentence. */
const WIDE = 10

function softnessWords({ fit, sets, judged }: Fitted, { reader }: ShownFit): string {
  const { found } = reader.words.fit
  const { format } = reader
  const bare = (value: number) => format(value, 'softness', { unit: false })
  const sorted = sets.toSorted((a, b) => a.softness - b.softness)
  const [first, last] = [sorted[0], sorted.at(-1)]
  if (first && last && sets.length > 1) {
    const range = found.sets({
      count: String(sets.length),
      low: bare(first.softness),
      high: format(last.softness, 'softness'),
      first: setName(first.set, reader),
      last: setName(last.set, reader),
    })
    const population = judged?.population
    if (population?.interval.kind !== 'interval') return range
    const { low, high } = population.interval
    if (high > WIDE * low) return range
    const median = format(population.median, 'softness')
    return `${range} ${found.median({ median, low: bare(low), high: format(high, 'softness') })}`
  }
  const softness = fit.parameters.find(({ name }) => name === 'softness')
  if (!softness) return ''
  const value = format(softness.value, 'softness')
  const { interval, state } = softness
  if (state === 'fixed') return found.held
  if (interval.kind !== 'interval') return found.unsure(value)
  return found.sure({ softness: value, low: bare(interval.low), high: format(interval.high, 'softness') })
}

function hereWords({ fit, curve }: Fitted, { now, reader }: ShownFit): string {
  const { found } = reader.words.fit
  const here = hereOf(fit, curve.set, now)
  if (!here) return ''
  const height = reader.format(here.height, 'height')
  const set = curve.set === null ? null : setName(curve.set, reader)
  if (here.half === null) return set === null ? found.bare(height) : found.bareOn({ set, height })
  const values = {
    height: reader.format(here.height, 'height', { unit: false }),
    half: reader.format(here.half, 'height'),
  }
  return set === null ? found.here(values) : found.hereOn({ set, ...values })
}

/** How soft, how sure, and what that comes to for the unit in hand. */
export function fitFinding(shown: ShownFit): string | null {
  const { result } = shown
  if (result.outcome !== 'fitted') return null
  return [softnessWords(result, shown), hereWords(result, shown)].filter(text => text !== '').join(' ')
}

/** Rows that are named one by one; more are counted. */
const NAMED = 8

/** How to read the figure: what its marks are, under what they were read, and what is not in it. */
export function fitNote({ result, reader }: ShownFit): string {
  if (result.outcome === 'none') return ''
  const { fit: said } = reader.words
  const { fit, curve } = result
  const { foot } = curve
  const rows = fit.leftOut.map(({ row }) => String(row))
  const shown = rows.length > NAMED ? [...rows.slice(0, NAMED), '…'] : rows
  const leftOut =
    rows.length === 0 ? '' : said.leftOut({ count: String(rows.length), rows: shown.join(', ') })
  const drops = fit.readings.some(({ load }) => load === null) ? said.unitDrops : ''
  const under =
    foot.kind === 'plate'
      ? said.feet.plate(reader.format(plateDiameter(foot), 'diameter'))
      : foot.name === null
        ? said.feet.unitRoller
        : said.feet.roller(foot.name)
  return said.note({ count: said.counted(curve.readings.length), foot: under, step: `${drops}${leftOut}` })
}
