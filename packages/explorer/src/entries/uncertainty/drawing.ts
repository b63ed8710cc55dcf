import { displayUnit } from '@swardsink/model'
import type { Frame, SharesSpec, SpreadSpec, SpreadWords } from '../../figures/index.ts'
import type { Reader } from '../../words/index.ts'
import type { UncertaintyResult } from './kind.ts'

export function spreadOf({
  nominal,
  quantiles,
  histogram,
  deviation,
  wanted,
}: UncertaintyResult): SpreadSpec {
  const [low = 0, , middle = 0, , high = 0] = quantiles
  return {
    nominal,
    quantiles: [low, middle, high],
    histogram,
    deviation: deviation ?? 0,
    wanted: wanted && { height: wanted.height, tolerance: wanted.tolerance },
  }
}

/** null where the heights hang on nothing. */
export function sharesOf({ hangsOn, interactions }: UncertaintyResult, { words }: Reader): SharesSpec | null {
  if (!hangsOn) return null
  const { inputs } = words.uncertainty
  return {
    shares: hangsOn.map(({ name, share }) => ({ name: inputs[name] ?? name, share })),
    together: interactions,
  }
}

export function frameOf(reader: Reader, width: number): Frame<SpreadWords> {
  const { words, format, units, locale, figureText } = reader
  return {
    width,
    words: words.figures.uncertainty({ unit: displayUnit('height', units) }),
    format,
    units,
    locale,
    text: figureText,
  }
}
