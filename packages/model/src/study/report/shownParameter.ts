import { catalogue, type QuantityName, type UnitSystem } from '../../quantities/index.ts'
import type { FittedParameter, Interval } from '../fit/fit.ts'

export const MINUS = '\u2212'
/** Digits of a standard error; its value is told to the same place. */
const ERROR_DIGITS = 2
const VALUE_DIGITS = 4
const MOST_DECIMALS = 8

/** What a parameter is: of a layer by its last name; a zero of a gauge is a drop; null for a number without a unit. */
export function quantityOf(name: string): QuantityName | null {
  const own = name.split('.').at(-1) ?? name
  if (own === 'datum' || own === 'dropDatum') return 'drop'
  return Object.hasOwn(catalogue, own) ? (own as QuantityName) : null
}

const words: Readonly<Record<string, string>> = {
  lockingDepth: 'locking depth',
  dropDatum: 'datum of the drops',
}

/** "softness", "locking depth of the upper layer". */
export function parameterWord(name: string): string {
  const parts = name.split('.')
  const own = parts.pop() ?? name
  const word = words[own] ?? own
  return parts.length === 0 ? word : `${word} of the ${parts.join(' ')} layer`
}

const factorOf = (name: string, units: UnitSystem): number => {
  const quantity = quantityOf(name)
  return quantity ? catalogue[quantity][units].factor : 1
}

export const parameterUnit = (name: string, units: UnitSystem): string => {
  const quantity = quantityOf(name)
  return quantity ? catalogue[quantity][units].unit : ''
}

/** Decimals that show a size with so many digits. */
const decimalsFor = (size: number, digits: number): number => {
  if (!(size > 0) || !Number.isFinite(size)) return 0
  return Math.min(MOST_DECIMALS, Math.max(0, digits - 1 - Math.floor(Math.log10(size))))
}

const fixed = (value: number, decimals: number): string => value.toFixed(decimals).replace('-', MINUS)

export type ShownParameter = {
  readonly value: string
  readonly standardError: string
  readonly low: string
  readonly high: string
  /** Why there is no interval, or only half of one. */
  readonly why: string
}

const ends = (interval: Interval): { low: number | null; high: number | null; why: string } => {
  switch (interval.kind) {
    case 'interval':
      return { low: interval.low, high: interval.high, why: '' }
    case 'at least':
      return { low: interval.low, high: null, why: interval.why }
    case 'at most':
      return { low: null, high: interval.high, why: interval.why }
    default:
      return { low: null, high: null, why: interval.why }
  }
}

/** A parameter in display units, to the place that its standard error reaches. */
export function shownParameter(parameter: FittedParameter, units: UnitSystem): ShownParameter {
  const { name, value, standardError, interval } = parameter
  const factor = factorOf(name, units)
  const decimals =
    standardError === null
      ? decimalsFor(Math.abs(value / factor), VALUE_DIGITS)
      : decimalsFor(standardError / factor, ERROR_DIGITS)
  const show = (number: number | null) => (number === null ? '' : fixed(number / factor, decimals))
  const { low, high, why } = ends(interval)
  return { value: show(value), standardError: show(standardError), low: show(low), high: show(high), why }
}
