import { html, svg, type TemplateResult } from 'lit'
import { type Point, pathOf, px } from './frame.ts'
import { hatchPattern } from './hatch.ts'

/** A length of a roller's face, cut along its axis: every strip of a list is drawn to the same scale. */
export type FaceStripSpec = {
  readonly surface:
    | { readonly kind: 'smooth' }
    | { readonly kind: 'grooved'; readonly pitch: number; readonly land: number; readonly depth: number }
  /** Radial, on the lands. */
  readonly buildUp: number
}

/** px for a millimetre, both ways. */
const SCALE = 2000
/** Metal over the deepest groove that is drawn, px. */
const BACK = 7
const FOOT = 3

/** How tall a strip is in which a groove of this depth finds room. */
export const stripHeight = (deepest: number): number => Math.ceil(BACK + deepest * SCALE + FOOT + 5)

/** Lands point down, as on the turf; the drawing begins and ends in the middle of a land. Build-up is dotted under them. */
export function faceStrip(
  { surface, buildUp }: FaceStripSpec,
  frame: { readonly width: number; readonly height: number; readonly name: string },
): TemplateResult {
  const { width, height } = frame
  const foot = height - FOOT - 5
  const grooved = surface.kind === 'grooved' ? surface : null
  const underside: Point[] = [{ x: 0, y: foot }]
  if (grooved) {
    const floor = Math.max(2, foot - grooved.depth * SCALE)
    for (let start = grooved.land / 2; start * SCALE < width; start += grooved.pitch) {
      const [left, right] = [start * SCALE, Math.min(width, (start + grooved.pitch - grooved.land) * SCALE)]
      underside.push({ x: left, y: foot }, { x: left, y: floor }, { x: right, y: floor })
      if (right < width) underside.push({ x: right, y: foot })
    }
  }
  if ((underside.at(-1)?.x ?? 0) < width) underside.push({ x: width, y: underside.at(-1)?.y ?? foot })
  const whole = [{ x: 0, y: 0 }, ...underside, { x: width, y: 0 }]
  const grown = Math.min(FOOT + 4, buildUp * SCALE)
  return html`<svg class="figure face-strip" width=${px(width)} height=${px(height)} viewBox="0 0 ${px(width)} ${px(height)}" role="img" aria-label=${frame.name}>
    ${hatchPattern}<path fill="url(#hatch)" d=${pathOf(whole, true)} /><path class="outline" d=${pathOf(underside)} />
    ${grown > 0 ? svg`<path class="dotted" d=${pathOf(underside.map(({ x, y }) => ({ x, y: Math.min(height - 1, y + Math.max(2, grown)) })))} />` : undefined}
  </svg>`
}
