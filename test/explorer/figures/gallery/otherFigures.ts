import { settle } from '@swardsink/model'
import { html, type TemplateResult } from 'lit'
import { heightGlyph } from '../../../../packages/explorer/src/figures/heightGlyph.ts'
import {
  diamond,
  dot,
  presentRing,
  readingRing,
  wedge,
} from '../../../../packages/explorer/src/figures/marks.ts'
import {
  type SettingScaleSpec,
  settingParts,
  settingScale,
} from '../../../../packages/explorer/src/figures/settingScale.ts'
import { sideView } from '../../../../packages/explorer/src/figures/sideView.ts'
import type { Framing } from './gallery.ts'
import { units } from './units.ts'
import { sideWords } from './words.ts'

export const sideFigures = (frame: Framing): Record<string, TemplateResult | string> =>
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
  )

const mm = 1e-3
const settings: Record<string, SettingScaleSpec & { value: number }> = {
  mass: { quantity: 'mass', domain: [2, 12], kind: 'linear', usual: [4, 9], value: 6.2 },
  softness: {
    quantity: 'softness',
    domain: [0.07 * mm, 15 * mm],
    kind: 'logarithmic',
    usual: [0.1 * mm, 2 * mm],
    measured: [0.09 * mm, 0.12 * mm],
    value: 0.1 * mm,
  },
  'bench height': { quantity: 'height', domain: [2 * mm, 50 * mm], kind: 'linear', value: 2 * mm },
}

const at = (x: number) => ({ x, y: 20 })

export const smallFigures = (frame: Framing): Record<string, TemplateResult> => ({
  marks: html`<svg class="figure" width="240" height="40">${wedge(at(20))}${presentRing(at(60))}${readingRing(at(100))}${diamond(at(140))}${dot(at(180))}</svg>`,
  'bench and turf': html`${heightGlyph('bench')}${heightGlyph('turf')}`,
  ...Object.fromEntries(
    Object.entries(settings).map(([name, setting]) => {
      const part = settingParts(setting).partOf(setting.value)
      return [
        name,
        html`<input type="range" min="0" max="1" step="any" .value=${String(part)} aria-label=${name} />${settingScale(setting, frame(null))}`,
      ]
    }),
  ),
})
