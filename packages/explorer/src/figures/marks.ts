import { svg, type TemplateResult } from 'lit'
import { type Point, pathOf, px } from './frame.ts'

export type Mark = TemplateResult<2>

/** Half width of a wedge against its height. */
const WEDGE = 0.55
const CROSS = 1.5

/** A wedge whose tip stands at a point: the present case. Points down unless turned, degrees clockwise. */
export function wedge(tip: Point, { size = 12, turned = 0 }: { size?: number; turned?: number } = {}): Mark {
  const outline = pathOf(
    [
      { x: 0, y: 0 },
      { x: -size * WEDGE, y: -size },
      { x: size * WEDGE, y: -size },
    ],
    true,
  )
  return svg`<path class="present-fill" d=${outline} transform="translate(${px(tip.x)} ${px(tip.y)}) rotate(${turned})" />`
}

/** The ring of the present case, cased in paper. */
export function presentRing({ x, y }: Point, radius = 7): Mark {
  return svg`<circle class="cased" cx=${px(x)} cy=${px(y)} r=${radius} /><circle class="solid present" cx=${px(x)} cy=${px(y)} r=${radius} /><circle class="present-fill" cx=${px(x)} cy=${px(y)} r="2" />`
}

/** A line from the present case to an axis, cased so that it holds on the wash. */
export function crossLine(from: Point, to: Point): Mark {
  const d = pathOf([from, to])
  return svg`<path class="cross-casing" d=${d} /><path class="present-cross" d=${d} />`
}

/** What a gauge said. */
export function readingRing({ x, y }: Point): Mark {
  return svg`<circle class="cased" cx=${px(x)} cy=${px(y)} r="5" /><circle class="solid measured" cx=${px(x)} cy=${px(y)} r="5" /><circle class="measured-fill" cx=${px(x)} cy=${px(y)} r=${CROSS} />`
}

/** Another of its kind. */
export function dot({ x, y }: Point): Mark {
  return svg`<circle class="dot" cx=${px(x)} cy=${px(y)} r="4.5" />`
}

/** Said beforehand. */
export function diamond({ x, y }: Point, size = 6): Mark {
  const corners = [
    { x, y: y - size },
    { x: x + size, y },
    { x, y: y + size },
    { x: x - size, y },
  ]
  return svg`<path class="cased" d=${pathOf(corners, true)} /><path class="solid beforehand" d=${pathOf(corners, true)} />`
}

/** A slender filled head whose tip stands at a point; turned 0 points right, 90 down. */
export function arrowHead(tip: Point, turned: number, { kind = 'head', length = 9 } = {}): Mark {
  const half = length / 5.5
  return svg`<path class=${kind} d=${pathOf(
    [
      { x: 0, y: 0 },
      { x: -length, y: -half },
      { x: -length, y: half },
    ],
    true,
  )} transform="translate(${px(tip.x)} ${px(tip.y)}) rotate(${turned})" />`
}
