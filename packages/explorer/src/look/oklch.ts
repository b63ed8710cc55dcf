import type { Linear, Oklch } from './colour.ts'

/**
 * OKLCH to linear sRGB, unclamped: outside 0 to 1 where the colour lies outside the gamut.
 *
 * Source  Björn Ottosson, A perceptual color space for image processing (2020), from memory.
 */
export function oklchToLinear([lightness, chroma, hue]: Oklch): Linear {
  const angle = (hue * Math.PI) / 180
  const a = chroma * Math.cos(angle)
  const b = chroma * Math.sin(angle)
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3
  return [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ]
}

const clamp = (channel: number) => Math.min(1, Math.max(0, channel))

/** Linear to coded channel. Source  IEC 61966-2-1. */
export const encode = (channel: number): number =>
  channel <= 0.0031308 ? 12.92 * channel : 1.055 * channel ** (1 / 2.4) - 0.055

/** Coded to linear channel. */
export const decode = (channel: number): number =>
  channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4

export const linearToHex = (linear: Linear): string =>
  `#${linear
    .map(c =>
      Math.round(255 * encode(clamp(c)))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`

export const hexOf = (colour: Oklch): string => linearToHex(oklchToLinear(colour))

export function hexToLinear(hex: string): Linear {
  const channel = (at: number) => decode(Number.parseInt(hex.slice(at, at + 2), 16) / 255)
  return [channel(1), channel(3), channel(5)]
}
