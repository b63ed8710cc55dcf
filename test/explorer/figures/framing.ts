import { formatQuantity, type UnitSystem } from '@swardsink/model'
import type { Frame } from '../../../packages/explorer/src/figures/frame.ts'

/** A frame as the page makes one. */
export const framing = <Words>(
  words: Words,
  {
    width = 792,
    text = 13,
    units = 'metric' as UnitSystem,
  }: { width?: number; text?: number; units?: UnitSystem } = {},
): Frame<Words> => ({
  width,
  words,
  text,
  units,
  format: (value, quantity, options) => formatQuantity(value, quantity, { units, ...options }),
})
