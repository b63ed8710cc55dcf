import { html, svg, type TemplateResult } from 'lit'
import { uprightDimension } from './dimension.ts'
import { pathOf } from './frame.ts'
import type { Mark } from './marks.ts'

const WIDTH = 76
const HEIGHT = 60
const EDGE = 8
const GROUND = 46
const GRASS_EVERY = 3.4
const HATCH_EVERY = 7

/** The small drawing beside one of the two numbers: where the height is measured. It carries no word of its own. */
export function heightGlyph(where: 'bench' | 'turf'): TemplateResult {
  const middle = WIDTH / 2
  const level = (y: number) =>
    pathOf([
      { x: 0, y },
      { x: WIDTH, y },
    ])
  return html`<svg class="figure height-glyph" width=${WIDTH} height=${HEIGHT} aria-hidden="true">
    ${where === 'bench' ? hatch() : turf()}
    <path class="edge-line" d=${level(EDGE)} />
    <path class=${where === 'bench' ? 'outline' : 'surface'} d=${level(GROUND)} />
    ${uprightDimension({ x: middle, from: EDGE, to: GROUND })}
  </svg>`
}

/** Cut metal, below a bench plate's face. */
function hatch(): Mark {
  let d = ''
  for (let x = HATCH_EVERY; x <= WIDTH; x += HATCH_EVERY)
    d += `M${x} ${GROUND}l${-HATCH_EVERY} ${HATCH_EVERY}`
  return svg`<path class="hair" d=${d} />`
}

function turf(): Mark {
  let d = ''
  const clear = 8
  for (let x = 2; x < WIDTH; x += GRASS_EVERY) {
    if (Math.abs(x - WIDTH / 2) > clear) d += `M${x} ${GROUND}V${EDGE + 1}`
  }
  return svg`<rect class="ground" x="0" y=${GROUND} width=${WIDTH} height=${HEIGHT - GROUND} /><path class="grass" d=${d} />`
}
