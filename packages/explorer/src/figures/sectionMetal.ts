import { svg } from 'lit'
import { uprightDimension } from './dimension.ts'
import { drawLabel } from './drawLabel.ts'
import { type Frame, lineHeight, type Point, pathOf, px, textSize } from './frame.ts'
import type { Mark } from './marks.ts'
import { fitsIn, type SectionLayout, type SectionSpec } from './sectionLayout.ts'
import type { SectionWords } from './sectionWords.ts'
import { textWidth } from './textWidth.ts'

type Grooves = NonNullable<SectionSpec['grooves']>

/** Every land of the drawing, by its left and right edge, px. */
export function landsOf(
  { pitch, land }: Grooves,
  { pitches, x }: SectionLayout,
): readonly [number, number][] {
  return Array.from({ length: pitches + 1 }, (_, i) => [x(i * pitch - land / 2), x(i * pitch + land / 2)])
}

/** The cut metal: a core with lands under it; the ends of the drawing are open. */
export function drawMetal(spec: SectionSpec, layout: SectionLayout): Mark {
  const { grooves, sinkage } = spec
  const { width, metal, floor, y, breakAt } = layout
  const foot = y(sinkage)
  const lands = grooves ? landsOf(grooves, layout) : [[0, width] as const]
  const underside: Point[] = [{ x: 0, y: grooves ? floor : foot }]
  if (grooves)
    for (const [left, right] of lands)
      underside.push(
        { x: left, y: floor },
        { x: left, y: foot },
        { x: right, y: foot },
        { x: right, y: floor },
      )
  underside.push({ x: width, y: grooves ? floor : foot })
  const whole = [{ x: 0, y: metal }, ...underside, { x: width, y: metal }]
  const top = pathOf([
    { x: 0, y: metal },
    { x: width, y: metal },
  ])
  return svg`<path fill="url(#hatch)" d=${pathOf(whole, true)} /><path class="outline" d=${top} /><path class="outline" d=${pathOf(underside)} />${breakAt === null ? undefined : drawBreak(breakAt, width)}`
}

const WAVE = 26
const SWING = 3
const BREAK = 7

/** Two wavy lines with nothing between them: the drawing is shortened here. */
function drawBreak(at: number, width: number): Mark {
  const wave = (y: number): string => {
    let d = ''
    for (let x = 0; x < width; x += WAVE) d += `q${WAVE / 4} ${-SWING * 2} ${WAVE / 2} 0t${WAVE / 2} 0`
    return `M0 ${px(y)}${d}`
  }
  const steps = Math.ceil(width / WAVE) * WAVE
  const back = `L${steps} ${px(at + BREAK)}${Array.from({ length: steps / WAVE }, () => `q${-WAVE / 4} ${SWING * 2} ${-WAVE / 2} 0t${-WAVE / 2} 0`).join('')}Z`
  return svg`<clipPath id="section-width"><rect x="0" y=${px(at - 20)} width=${width} height="40" /></clipPath><g clip-path="url(#section-width)"><path class="solid" d=${wave(at) + back} /><path class="hair" d=${wave(at)} /><path class="hair" d=${wave(at + BREAK)} /></g>`
}

/** Sinkage of every land, and depth of the groove in the first gap. */
export function drawDepths(spec: SectionSpec, layout: SectionLayout, frame: Frame<SectionWords>): Mark {
  const { format } = frame
  const size = textSize(frame)
  const { grooves, sinkage } = spec
  const { y, ground, width } = layout
  const foot = y(sinkage)
  const down = format(sinkage, 'sinkage')
  const lands = grooves ? landsOf(grooves, layout) : [[0, width] as const]
  const room = Math.min(...lands.map(([left, right]) => right - left))
  const isIn = fitsIn(down, room, frame)
  // In the land, between the dashed line of the turf and the face; else over the line, or below a narrow land.
  const inside = foot - ground > size + 8 ? (foot + ground) / 2 + size * 0.36 : ground - 7
  const at = isIn ? inside : foot + size + 6
  const casing = isIn ? 'on-paper' : 'on-ground'
  const sunk = lands.map(
    ([left, right]) =>
      svg`<text class="${casing} strong" x=${px((left + right) / 2)} y=${px(at)} text-anchor="middle">${down}</text>`,
  )
  return svg`${sunk}${grooves ? drawGrooveDepth(grooves, foot, layout, frame) : undefined}`
}

/** A groove has its depth written in it where it is high and wide enough; the head of the drawing has it anyway. */
function drawGrooveDepth(
  grooves: Grooves,
  foot: number,
  layout: SectionLayout,
  frame: Frame<SectionWords>,
): Mark | undefined {
  const { floor, ground } = layout
  const [[, from = 0] = [], [to = 0] = []] = landsOf(grooves, layout)
  const text = frame.words.depth(frame.format(grooves.depth, 'grooveDepth'))
  const isHigh = ground - floor > lineHeight(frame) + 8
  if (!isHigh || !fitsIn(text, to - from - 30, frame)) return undefined
  const x = from + Math.min(22, (to - from) * 0.2)
  return svg`${uprightDimension({ x, from: floor, to: foot })}<text class="on-paper" x=${px(x + 8)} y=${px(Math.min(ground - 8, floor + lineHeight(frame)))}>${text}</text>`
}

/** What the roller is, over the drawing. */
export function drawHead(
  { grooves }: SectionSpec,
  { head }: SectionLayout,
  frame: Frame<SectionWords>,
): Mark {
  const { words, format } = frame
  const text = grooves
    ? words.grooved({
        land: format(grooves.land, 'land', { unit: false }),
        pitch: format(grooves.pitch, 'pitch'),
        depth: format(grooves.depth, 'grooveDepth'),
      })
    : words.smooth
  const size = textSize(frame)
  return drawLabel({
    lines: [{ text, strong: true }],
    anchor: 'start',
    box: { x: 0, y: head - size * 0.8, width: textWidth(text, size, true), height: size },
  })
}
