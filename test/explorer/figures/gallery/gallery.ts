import { formatQuantity, settle, type UnitSystem } from '@swardsink/model'
import { html, render, type TemplateResult } from 'lit'
import type { Frame } from '../../../../packages/explorer/src/figures/frame.ts'
import { sideView } from '../../../../packages/explorer/src/figures/sideView.ts'
import {
  dress,
  figureStyles,
  figureText,
  sharedStyles,
} from '../../../../packages/explorer/src/look/index.ts'
import { units } from './units.ts'
import { sideWords } from './words.ts'

// Every figure with several sets of data, for looking at: ?figure=side&width=792&theme=dark&units=US&case=usual
const asked = new URLSearchParams(location.search)
const width = Number(asked.get('width') ?? 792)
const theme = (asked.get('theme') ?? 'light') as 'light' | 'dark' | 'projector'
const system = (asked.get('units') ?? 'metric') as UnitSystem
const wantedCase = asked.get('case')

const frame = <Words>(words: Words): Frame<Words> => ({
  width,
  words,
  units: system,
  text: figureText(theme),
  format: (value, quantity, options) => formatQuantity(value, quantity, { units: system, ...options }),
})

const figures: Record<string, () => Record<string, TemplateResult | string>> = {
  side: () =>
    Object.fromEntries(
      Object.entries(units).flatMap(([name, { unit, turf }]) =>
        ([1, 5, 10] as const).map(exaggeration => {
          const settled = settle({ unit, turf, condition: { kind: 'standing' } })
          const drawn =
            settled.outcome === 'settled'
              ? sideView({ unit, settled, turf, exaggeration }, frame(sideWords))
              : settled.outcome
          return [`${name} ${exaggeration}`, drawn] as const
        }),
      ),
    ),
}

document.documentElement.dataset.theme = theme
dress(document)
for (const { styleSheet } of [figureStyles, sharedStyles]) {
  if (styleSheet) document.adoptedStyleSheets = [...document.adoptedStyleSheets, styleSheet]
}
document.body.style.padding = '16px'
const shown = Object.entries(figures[asked.get('figure') ?? 'side']?.() ?? {}).filter(
  ([name]) => wantedCase === null || name.startsWith(wantedCase),
)
render(
  shown.map(([name, figure]) => html`<h3>${name}</h3><div>${figure}</div>`),
  document.body,
)
document.body.dataset.done = 'yes'
