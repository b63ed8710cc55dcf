import { type Frame, layoutOf, lineHeight, textSize } from './frame.ts'
import { type SectionScales, sectionScales } from './sectionScales.ts'
import type { SectionWords } from './sectionWords.ts'
import { textWidth } from './textWidth.ts'

/** One point of the mat: place across, 0 in the middle of a land, and how deep it is pressed there. */
export type MatPoint = { readonly position: number; readonly sinkage: number; readonly pressure: number }

export type SectionSpec = {
  /** SI; null for a smooth face. */
  readonly grooves: {
    readonly pitch: number
    readonly land: number
    readonly depth: number
    /** One pitch, from mid-gap to mid-gap. */
    readonly mat: readonly MatPoint[]
    readonly relief: number
    readonly touching: boolean
    /** Along each land edge, N/m. */
    readonly edgeForce: number
    /** Of the pitch, at the lowest line. */
    readonly bearingFraction: number
  } | null
  /** Of the lands, below undisturbed turf. */
  readonly sinkage: number
  /** Under the lands. */
  readonly pressure: number
  /** Depth of the track it runs in: the mat lies so much deeper than its pressure says. */
  readonly track: number
  readonly pitches: number
}

export type SectionLayout = {
  readonly width: number
  readonly height: number
  /** Pitches drawn, and lands, one more. */
  readonly pitches: number
  /** px per metre along the axis, and per metre of depth. */
  readonly along: number
  readonly down: number
  /** down over along: one of a few round numbers. */
  readonly times: number
  /** The place along the axis at the left end of the drawing. */
  readonly start: number
  /** From a place along the axis, 0 in the middle of the first land, to px. */
  readonly x: (position: number) => number
  /** From a depth below undisturbed turf to px. */
  readonly y: (depth: number) => number
  readonly head: number
  readonly metal: number
  readonly floor: number
  /** Where the drawing of the groove is broken off; null when it is drawn whole. */
  readonly breakAt: number | null
  readonly ground: number
  readonly base: number
  readonly strip: {
    readonly title: number
    readonly zero: number
    readonly reach: number
    readonly text: number
  }
  readonly share: { readonly title: number; readonly top: number; readonly text: number }
  readonly dimensions: readonly [number, number]
  readonly scales: SectionScales
}

/** A factor of depth is one of these, so that it can be said. */
const FACTORS = [100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01]
/** Sinkage is drawn at most so deep, px. */
const DEEPEST = { wide: 84, middle: 76, narrow: 66 }
/** A groove deeper than this on paper is broken off, px. */
const WHOLE = 130
const CORE = 26
/** What is left of a broken groove above the turf, of the size of text: its depth is written in it. */
const WALL = 3.4
/** A glimpse of the groove before the first land and after the last, as a part of the gap. */
const GLIMPSE = 0.16
/** A smooth face has no measure of its own: so much of it is shown, m. */
const SMOOTH_SHOWN = 0.024
const STRIP = 58
export const SHARE_BAR = 14

/** Where everything of a section stands, for one width. */
export function sectionLayout(spec: SectionSpec, frame: Frame<SectionWords>): SectionLayout {
  const layout = layoutOf(frame)
  const { width } = frame
  const line = lineHeight(frame)
  const size = textSize(frame)
  const { grooves, sinkage } = spec
  const pitches = grooves ? (layout === 'narrow' ? 1 : spec.pitches) : 1
  const gap = grooves ? grooves.pitch - grooves.land : 0
  const shown = grooves ? pitches * grooves.pitch + grooves.land + 2 * GLIMPSE * gap : SMOOTH_SHOWN
  const start = grooves ? -grooves.land / 2 - GLIMPSE * gap : -SMOOTH_SHOWN / 2
  const along = width / shown
  const times = FACTORS.find(factor => sinkage * along * factor <= DEEPEST[layout]) ?? 0.01
  const down = along * times
  const sunk = sinkage * down
  const depth = (grooves?.depth ?? 0) * down
  const isWhole = depth <= WHOLE
  const head = size
  const metal = line + 10
  const wall = WALL * size
  const above = grooves ? (isWhole ? Math.max(18, depth - sunk) : wall + size * 1.1) : size * 2.6
  const ground = metal + CORE + above
  const land = ground + sunk
  const base = land + 2 * line + 26
  const strip = base + line + 12
  const zero = strip + 8
  const text = zero + STRIP + line + 2
  const extra = grooves && grooves.edgeForce > 0 ? line : 0
  const share = text + extra + line + 14
  const top = share + 7
  const shareText = top + SHARE_BAR + line + 2
  const first = shareText + (grooves ? Math.round(line * 0.8) + 8 : 0)
  const second = first + (grooves ? line + 12 : 0)
  const reach = grooves ? (pitches > 1 ? grooves.pitch + grooves.land : shown) * along : width
  const scales = sectionScales({ along, down, times, row: grooves ? second : shareText + 12, reach }, frame)
  return {
    width,
    pitches,
    along,
    down,
    times,
    start,
    x: position => (position - start) * along,
    y: at => ground + at * down,
    head,
    metal,
    floor: grooves ? (isWhole ? land - depth : metal + CORE) : metal,
    breakAt: grooves && !isWhole ? metal + CORE + wall * 0.6 : null,
    ground,
    base,
    strip: { title: strip, zero, reach: STRIP, text },
    share: { title: share, top, text: shareText },
    dimensions: [first, second],
    scales,
    height: scales.y + line + 6,
  }
}

/** Whether a text has room over a stretch of the section. */
export const fitsIn = (text: string, room: number, frame: Pick<Frame<unknown>, 'text'>): boolean =>
  textWidth(text, textSize(frame)) + 12 <= room
