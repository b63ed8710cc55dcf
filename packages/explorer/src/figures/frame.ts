import type { QuantityName, UnitSystem } from '@swardsink/model'

/** The model's formatter with the reader's units and language bound. */
export type Format = (
  value: number,
  quantity: QuantityName,
  options?: { readonly unit?: boolean; readonly signed?: boolean },
) => string

/** What a figure is drawn into: never scaled, laid out anew for every width. */
export type Frame<Words> = {
  /** px */
  readonly width: number
  readonly words: Words
  readonly format: Format
  readonly units: UnitSystem
  readonly locale?: string
  /** No taller than this, where it can be lower, px; as tall as its layout has it unless given. */
  readonly tallest?: number
  /** Size of every text, px; 13 unless given, 20 on a projector. */
  readonly text?: number
}

const DEFAULT_TEXT = 13
/** Between the lines of a label that takes two. */
const LEADING = 1.18

export const textSize = (frame: { readonly text?: number }): number => frame.text ?? DEFAULT_TEXT
export const lineHeight = (frame: { readonly text?: number }): number => Math.round(textSize(frame) * LEADING)

export type Layout = 'wide' | 'middle' | 'narrow'

/** Which of three layouts a width takes; drawn for 792, 560 and 358 px. Larger text needs more room. */
export function layoutOf(frame: { readonly width: number; readonly text?: number }): Layout {
  const room = (frame.width * DEFAULT_TEXT) / textSize(frame)
  return room >= 676 ? 'wide' : room >= 460 ? 'middle' : 'narrow'
}

/** A coordinate as text: a hundredth of a pixel is finer than any screen. */
export const px = (value: number): string => String(Math.round(value * 100) / 100)

export const pathOf = (points: readonly Point[], closed = false): string =>
  `M${points.map(({ x, y }) => `${px(x)} ${px(y)}`).join('L')}${closed ? 'Z' : ''}`

export type Point = { readonly x: number; readonly y: number }
