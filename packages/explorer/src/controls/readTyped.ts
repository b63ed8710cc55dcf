import {
  displayUnit,
  fromDisplay,
  type QuantityName,
  type UnitSystem,
  unitFactor,
  unitWords,
} from '@swardsink/model'
import { isUnfinished as isUnfinishedNumber, readNumber } from './readNumber.ts'

type Shown = { readonly quantity: QuantityName; readonly units: UnitSystem }

/** What stands behind the digits: letters, an inch mark, a degree sign, a stroke between letters. */
const UNIT = /[a-zA-Zµ°"″]+(?:[/_][a-zA-Z]+)*$/

/** 5/32, 1 5/32, 1-5/32; a minus in front if need be. */
const FRACTION = /^([+-]?)(?:(\d+)[\s\u00a0\u202f-]+)?(\d+)\s*[/⁄]\s*(\d+)$/

function readFraction(text: string): number | null {
  const found = FRACTION.exec(text.trim().replaceAll('\u2212', '-'))
  if (!found) return null
  const [, sign, whole = '0', above, below] = found
  if (Number(below) === 0) return null
  return (sign === '-' ? -1 : 1) * (Number(whole) + Number(above) / Number(below))
}

/** Inches are read with the rule in hand, and a rule is divided in fractions; no other unit is. */
const isInches = (unit: string, quantity: QuantityName): boolean =>
  unitFactor(unit, quantity) === unitFactor('in', quantity) && unitFactor('in', quantity) !== null

function parts(text: string): { readonly digits: string; readonly unit: string } {
  const trimmed = text.trim()
  const unit = UNIT.exec(trimmed)?.[0] ?? ''
  return { digits: trimmed.slice(0, trimmed.length - unit.length).trim(), unit }
}

/**
 * Not yet something to be read, but on the way to it: "4 m" may become "4 mm", and "5/" a fraction. Nothing is made of
 * it until the field is left.
 */
export function isUnfinished(text: string, { quantity, units }: Shown): boolean {
  if (isUnfinishedNumber(text)) return true
  const { digits, unit } = parts(text)
  if (
    /[/⁄]\s*$/.test(digits) ||
    (/^\d+\s+\d+$/.test(digits) && isInches(unit || displayUnit(quantity, units), quantity))
  )
    return true
  if (unit === '') return false
  return unitWords(quantity).some(word => word.startsWith(unit) && word !== unit)
}

/**
 * A quantity as a person types it, in SI: a decimal point or comma, a unit behind it or the one shown, and in inches a
 * fraction. Anything else is null, never a guess.
 */
export function readTyped(text: string, { quantity, units }: Shown): number | null {
  const shown = displayUnit(quantity, units)
  const { digits, unit } = parts(text)
  const factor = unit === '' || unit === shown ? fromDisplay(1, quantity, units) : unitFactor(unit, quantity)
  if (factor === null) return null
  const number = readNumber(digits)
  if (number !== null && !/\d\s+\d/.test(digits)) return number * factor
  const fraction = isInches(unit || shown, quantity) ? readFraction(digits) : null
  return fraction === null ? null : fraction * factor
}
