import { formatQuantity, type UnitSystem } from '@swardsink/model'
import { html, render, type TemplateResult } from 'lit'
import type { Frame } from '../../../../packages/explorer/src/figures/frame.ts'
import {
  dress,
  figureStyles,
  figureText,
  rangeStyles,
  sharedStyles,
} from '../../../../packages/explorer/src/look/index.ts'
import { curveFigures } from './curveFigures.ts'
import { fitFigures } from './fitFigures.ts'
import { mapFigures } from './mapFigures.ts'
import { sideFigures, smallFigures } from './otherFigures.ts'
import { patchFigures } from './patchFigures.ts'
import { predictionFigures } from './predictionFigures.ts'
import { rackFigures } from './rackFigures.ts'
import { scenarioFigures } from './scenarioFigures.ts'
import { sectionFigures } from './sectionFigures.ts'
import { slidingFigures } from './slidingFigures.ts'
import { spreadFigures } from './spreadFigures.ts'

// Every figure with several sets of data, for looking at: ?figure=side&width=792&theme=dark&units=US&case=usual, the last a pattern
const asked = new URLSearchParams(location.search)
const width = Number(asked.get('width') ?? 792)
const theme = (asked.get('theme') ?? 'light') as 'light' | 'dark' | 'projector'
const units = (asked.get('units') ?? 'metric') as UnitSystem

const frame = <Words>(words: Words): Frame<Words> => ({
  width,
  words,
  units,
  text: figureText(theme),
  format: (value, quantity, options) => formatQuantity(value, quantity, { units, ...options }),
})
export type Framing = typeof frame

const figures: Record<string, (frame: Framing) => Record<string, TemplateResult | string>> = {
  side: sideFigures,
  map: mapFigures,
  rack: rackFigures,
  section: sectionFigures,
  curves: curveFigures,
  fit: fitFigures,
  headland: slidingFigures,
  patch: patchFigures,
  spread: spreadFigures,
  prediction: predictionFigures,
  small: smallFigures,
  scenario: scenarioFigures,
}

document.documentElement.dataset.theme = theme
dress(document)
for (const { styleSheet } of [figureStyles, sharedStyles, rangeStyles]) {
  if (styleSheet) document.adoptedStyleSheets = [...document.adoptedStyleSheets, styleSheet]
}
Object.assign(document.body.style, { display: 'flex', flexWrap: 'wrap', gap: '16px', padding: '16px' })
document.body.style.color = 'var(--ink)'
const shown = Object.entries(figures[asked.get('figure') ?? 'side']?.(frame) ?? {}).filter(([name]) =>
  new RegExp(asked.get('case') ?? '').test(name),
)
render(
  shown.map(([name, figure]) => html`<section><h3>${name}</h3><div class="drawn">${figure}</div></section>`),
  document.body,
)
for (const drawn of document.querySelectorAll('.drawn')) (drawn as HTMLElement).style.width = `${width}px`
document.body.dataset.done = 'yes'
