import type { SinkageMap } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { heightGlyph } from '../../../packages/explorer/src/figures/heightGlyph.ts'
import { rackAxis, rackRow, rackScale } from '../../../packages/explorer/src/figures/rackPlot.ts'
import { settingScale } from '../../../packages/explorer/src/figures/settingScale.ts'
import { sideView } from '../../../packages/explorer/src/figures/sideView.ts'
import { sinkageMapView } from '../../../packages/explorer/src/figures/sinkageMapView.ts'
import { usualUnit } from './drawnUnit.ts'
import { framing } from './framing.ts'
import { mapWords, sideWords } from './gallery/words.ts'
import { markup, ownText } from './markup.ts'

const values = Float64Array.from([0.3e-3, 0.5e-3, 0.6e-3, Number.NaN])
const map: SinkageMap = {
  masses: Float64Array.from([2, 10]),
  softnesses: Float64Array.from([0.1e-3, 1e-3]),
  values,
  outcomes: Uint8Array.from([0, 0, 0, 1]),
  outcomeNames: ['settled', 'bottomed out', 'not converged'],
  quantity: 'sinkage',
}
const mark = { mass: 4, softness: 0.2e-3, value: 0.39e-3 }
const mapFrame = framing(mapWords('metric', 'sinkage', 'mm'))
const scale = rackScale({ heights: [3e-3, null], fitted: 3e-3, tolerance: 0.25e-3 }, { width: 300 })

const figures = {
  'the side view': sideView({ ...usualUnit, exaggeration: 5 }, framing(sideWords)),
  'the map': sinkageMapView({ map, mark, readings: [{ mass: 3, softness: 0.3e-3 }] }, mapFrame),
  'a row of the rack': rackRow({ height: 2.9e-3, isFitted: false, name: 'worn' }, scale),
  'a row without an answer': rackRow({ height: null, isFitted: false, name: 'worn' }, scale),
  'the axis of the rack': rackAxis(scale, framing({ axis: 'effective height, mm' })),
  'a glyph': heightGlyph('turf'),
  'a graduated line': settingScale(
    { quantity: 'softness', domain: [0.1e-3, 2e-3], kind: 'logarithmic', measured: [0.2e-3, 0.3e-3] },
    framing(null, { width: 300 }),
  ),
}

describe.each(Object.entries(figures))('%s', (_, figure) => {
  test('has no words of its own', () => {
    expect(ownText(figure)).toBe('')
  })

  test('carries no style attribute, which a strict content policy would drop', () => {
    expect(markup(figure)).not.toMatch(/\sstyle=/)
  })

  test('has no number that is none', () => {
    expect(markup(figure)).not.toMatch(/NaN|Infinity|undefined|false/)
  })
})

test('the side view can be taken hold of at the edge, both axes and the body', () => {
  const text = markup(figures['the side view'])
  for (const handle of ['edge', 'front', 'rear', 'body']) expect(text).toContain(`data-handle=${handle}`)
})

test('a grooved roller shows the floor of its grooves as a hidden circle', () => {
  const circles = (text: string) => text.match(/<circle class="hidden"/g)?.length ?? 0
  const { unit } = usualUnit
  const surface = { kind: 'grooved', pitch: 12e-3, land: 5e-3, depth: 7e-3 } as const
  const grooved = { ...usualUnit, unit: { ...unit, frontRoller: { ...unit.frontRoller, surface } } }
  expect(circles(markup(figures['the side view']))).toBe(0)
  expect(circles(markup(sideView({ ...grooved, exaggeration: 5 }, framing(sideWords))))).toBe(1)
})

test('the map says its value at the mark, and in words where it has none', () => {
  expect(markup(figures['the map'])).toContain('0.39\u202fmm')
  const without = markup(sinkageMapView({ map, mark: { ...mark, value: null } }, mapFrame))
  expect(without).toContain('bottoms out here')
  expect(without).not.toContain('0.39')
})
