import { html, type TemplateResult } from 'lit'
import { type Frame, px, textSize } from './frame.ts'
import { hatchPattern } from './hatch.ts'
import { type SectionSpec, sectionLayout } from './sectionLayout.ts'
import { drawDepths, drawHead, drawMetal } from './sectionMetal.ts'
import { drawPressure, drawShare } from './sectionPressure.ts'
import { drawSectionScales } from './sectionScales.ts'
import { drawTurf, drawTurfNames } from './sectionTurf.ts'
import { drawWidths } from './sectionWidths.ts'
import type { SectionWords } from './sectionWords.ts'

/** A roller cut along its axis at its lowest line: metal, the mat in its grooves, and what the turf carries. */
export function grooveSection(spec: SectionSpec, frame: Frame<SectionWords>): TemplateResult {
  const layout = sectionLayout(spec, frame)
  const { width, height } = layout
  const { words } = frame
  return html`<svg class="figure groove-section" width=${width} height=${px(height)} viewBox="0 0 ${width} ${px(height)}" font-size=${textSize(frame)} role="img" aria-label=${spec.grooves ? words.title : words.smoothTitle}>
    ${hatchPattern}${drawTurf(spec, layout)}${drawMetal(spec, layout)}${drawHead(spec, layout, frame)}
    ${drawDepths(spec, layout, frame)}${drawTurfNames(spec, layout, frame)}
    ${drawWidths(spec, layout, frame)}${drawPressure(spec, layout, frame)}${drawShare(spec, layout, frame)}${drawSectionScales(layout.scales)}
  </svg>`
}
