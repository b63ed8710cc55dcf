import { formatQuantity, type QuantityName, type UnitSystem } from '@swardsink/model'

export type FormatOptions = { readonly unit?: boolean; readonly signed?: boolean }

/** The model's formatter with the reader's units and locale bound. */
export type Format = (value: number, quantity: QuantityName, options?: FormatOptions) => string

export function formatterFor(units: UnitSystem, locale: string, unknown?: string): Format {
  return (value, quantity, options = {}) =>
    unknown !== undefined && !Number.isFinite(value)
      ? unknown
      : formatQuantity(value, quantity, { units, locale, ...options })
}
