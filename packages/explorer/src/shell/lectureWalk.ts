import { html, type SVGTemplateResult, svg, type TemplateResult } from 'lit'
import type { Plan } from '../book/index.ts'

const WIDTH = 300
const EDGE = 12
const LINE = 16
/** A tick that begins a page is taller than those of its other entries. */
const TALL = 8
const SHORT = 5
const WEDGE = { half: 7, height: 11 }

/** All steps as ticks on a line, the wedge at the one that is shown. */
export function lectureWalk(
  { steps }: Plan,
  q: { readonly at: number; readonly label: string },
): TemplateResult {
  const between = steps.length > 1 ? (WIDTH - 2 * EDGE) / (steps.length - 1) : 0
  const x = (index: number): number => (steps.length > 1 ? EDGE + index * between : WIDTH / 2)
  const tip = x(q.at)
  return html`<svg class="walk" role="img" aria-label=${q.label} viewBox="0 0 ${WIDTH} ${LINE + 2}">
    <path class="line" d="M0 ${LINE}H${WIDTH}" />
    ${steps.map(
      ({ opens }, index): SVGTemplateResult =>
        svg`<path class="line" d="M${x(index)} ${LINE}v${opens ? -TALL : -SHORT}" />`,
    )}
    <path class="wedge" d="M${tip - WEDGE.half} ${LINE - WEDGE.height}h${2 * WEDGE.half}L${tip} ${LINE}z" />
  </svg>`
}
