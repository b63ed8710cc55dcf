import { displayUnit, type FittedParameter, parameterQuantity } from '@swardsink/model'
import { decimalText, type Reader } from '../../words/index.ts'
import { scatterOf, setName } from './drawing.ts'
import type { Fitted } from './kind.ts'

export type NumberRow = { readonly name: string; readonly value: string; readonly interval: string }

export function parameterName(name: string, { words }: Reader): string {
  return words.fit.parameters[name] ?? name
}

const DIGITS = 3

/** A number of the fit as the table has it: in the reader's unit, which stands with its name. */
function shown(value: number, name: string, reader: Reader): string {
  const quantity = parameterQuantity(name)
  return quantity
    ? reader.format(value, quantity, { unit: false })
    : decimalText(value, { digits: DIGITS, locale: reader.locale })
}

export function intervalWords({ interval, name, state }: FittedParameter, reader: Reader): string {
  const { table } = reader.words.fit
  if (state === 'fixed') return table.held
  if (state === 'at bound') return table.atBound
  const number = (value: number) => shown(value, name, reader)
  switch (interval.kind) {
    case 'interval':
      return table.between({ low: number(interval.low), high: number(interval.high) })
    case 'at least':
      return table.atLeast(number(interval.low))
    case 'at most':
      return table.atMost(number(interval.high))
    case 'undetermined':
      return table.notKnown
  }
}

function rowOf(parameter: FittedParameter, reader: Reader, withSet: boolean): NumberRow {
  const { table } = reader.words.fit
  const { name, set, value } = parameter
  const quantity = parameterQuantity(name)
  const own = parameterName(name, reader)
  const called = withSet && set !== undefined ? table.of({ name: own, set: setName(set, reader) }) : own
  return {
    name: table.unit({ name: called, unit: quantity ? displayUnit(quantity, reader.units) : '' }),
    value: shown(value, name, reader),
    interval: intervalWords(parameter, reader),
  }
}

/** A spread of nothing that nobody asked for is not told. */
const isAbsent = ({ name, value, state }: FittedParameter): boolean =>
  name === 'spread' && value === 0 && state === 'fixed'

function scatterRow(fitted: Fitted, reader: Reader): NumberRow {
  const { table } = reader.words.fit
  const { fit } = fitted
  const scatter = scatterOf(fitted)
  return {
    name: table.unit({ name: table.scatter, unit: displayUnit('sinkage', reader.units) }),
    value: scatter === null ? table.notKnown : reader.format(scatter, 'sinkage', { unit: false }),
    interval: fit.noise === 'known' ? table.scatterKnown : table.left(fit.degreesOfFreedom),
  }
}

/** The numbers of the fit: of the set that is drawn, or of every set. */
export function numberRows(fitted: Fitted, reader: Reader, which: 'drawn' | 'all'): readonly NumberRow[] {
  const { fit, curve } = fitted
  const wanted = fit.parameters.filter(
    one =>
      !isAbsent(one) &&
      (which === 'all' || one.set === undefined || curve.set === null || one.set === curve.set),
  )
  const withSet = which === 'all' || curve.set === null
  return [...wanted.map(one => rowOf(one, reader, withSet)), scatterRow(fitted, reader)]
}

/** Why an interval is missing, or open to one side: once for each reason. */
export function intervalReasons({ fit }: Fitted, reader: Reader): readonly string[] {
  const reasons = new Map<string, Set<string>>()
  for (const { name, interval, state } of fit.parameters) {
    if (state === 'fixed' || interval.kind === 'interval') continue
    const names = reasons.get(interval.why) ?? new Set()
    reasons.set(interval.why, names.add(parameterName(name, reader)))
  }
  const { words } = reader
  return [...reasons].map(([why, names]) =>
    words.fit.why({ names: words.list([...names]), why: words.modelSays(why.replace(/\.$/, '')) }),
  )
}
