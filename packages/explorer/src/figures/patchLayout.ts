import { type Frame, type Layout, layoutOf, lineHeight, textSize } from './frame.ts'
import { type PatchQuarter, SMOOTH_SPAN } from './patchField.ts'
import type { PatchWords } from './patchWords.ts'
import { textWidth } from './textWidth.ts'

/** A contact as it is drawn: SI. */
export type PatchSpec = {
  readonly quarter: PatchQuarter
  readonly sinkage: number
  readonly diameter: number
  /** null under a smooth face. */
  readonly grooves: { readonly pitch: number; readonly land: number } | null
}

export type PatchLayout = {
  /** Half of what is drawn along and across, m. */
  readonly half: { readonly along: number; readonly across: number }
  readonly end: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly foot: number
  /** Where the length of the contact is told. */
  readonly length: number
  /** The section along the ground: its ground line and its foot, and how many times depths are drawn. */
  readonly ground: number
  readonly bottom: number
  readonly times: number
  readonly height: number
  readonly x: (along: number) => number
  readonly y: (across: number) => number
  readonly down: (depth: number) => number
}

/** What is drawn beyond the contact, against its half length. */
const BEYOND = 1.22
/** Tallest plan, px, and tallest depth in the section. */
const TALLEST: Readonly<Record<Layout, number>> = { wide: 380, middle: 340, narrow: 300 }
const DEEPEST: Readonly<Record<Layout, number>> = { wide: 84, middle: 76, narrow: 64 }
const TIMES = [100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1]
/** From the plan to the dimension below it, and from that to the roller over the section. */
const ROLLER = 26

/** The furthest that contact reaches along the ground. */
export const endOf = ({ outline, along }: PatchQuarter): number => {
  const ends = [...outline.land, ...outline.floor].map(place => place.along)
  return ends.length > 0 ? Math.max(...ends) : (along[along.length - 1] ?? 0) / 2
}

export function patchLayout(spec: PatchSpec, frame: Frame<PatchWords>): PatchLayout {
  const { quarter, grooves, sinkage } = spec
  const { words, format } = frame
  const size = textSize(frame)
  const line = lineHeight(frame)
  const layout = layoutOf(frame)
  const end = endOf(quarter)
  const along = end * BEYOND
  const across = grooves ? grooves.pitch / 2 : along * SMOOTH_SPAN
  const left = Math.ceil(textWidth('0.00', size)) + 18
  const named = grooves
    ? [
        words.pitch(format(grooves.pitch, 'pitch', { unit: false })),
        words.landWidth(format(grooves.land, 'land', { unit: false })),
      ]
    : []
  const beside = Math.max(0, ...named.map(text => textWidth(text, size)))
  const margin = grooves ? Math.ceil(beside) + (layout === 'narrow' ? 38 : 60) : 12
  const room = frame.width - left - margin
  const scale = Math.min(room / (2 * along), TALLEST[layout] / (2 * across))
  const right = left + scale * 2 * along
  const top = 2 * line + 20
  const foot = top + scale * 2 * across
  const length = foot + 18
  const ground = length + 22 + ROLLER + line
  const times = TIMES.find(factor => factor * scale * sinkage <= DEEPEST[layout]) ?? TIMES.at(-1) ?? 1
  const bottom = ground + times * scale * sinkage + 14
  return {
    half: { along, across },
    end,
    left,
    right,
    top,
    foot,
    length,
    ground,
    bottom,
    times,
    height: bottom + 14 + 2 * line + 8,
    x: place => left + scale * (place + along),
    y: place => top + scale * (place + across),
    down: depth => ground + scale * times * depth,
  }
}
