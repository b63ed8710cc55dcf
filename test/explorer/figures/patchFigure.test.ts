import { patch } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { contactPatch } from '../../../packages/explorer/src/figures/contactPatch.ts'
import { patchField } from '../../../packages/explorer/src/figures/patchField.ts'
import { type PatchSpec, patchLayout } from '../../../packages/explorer/src/figures/patchLayout.ts'
import { patchFigure } from '../../../packages/explorer/src/words/english/patch.ts'
import { bounded } from '../../support/arbitraries.ts'
import { framing } from './framing.ts'
import { patchSpec, patchSpecs } from './gallery/patchFigures.ts'
import { markup, ownText } from './markup.ts'

const words = patchFigure({ unit: 'kPa', lengthUnit: 'mm', depthUnit: 'mm' })
const drawn = (spec: PatchSpec, width = 792) => markup(contactPatch(spec, framing(words, { width })))
const widths = [792, 560, 358, 280]
const noNumber = /NaN|Infinity|undefined/

describe.each(Object.entries(patchSpecs))('the contact %s', (_, spec) => {
  test('is drawn at every width without a number that is none', () => {
    for (const width of widths) expect(drawn(spec, width)).not.toMatch(noNumber)
  })

  test('has no words of its own and no style attribute', () => {
    expect(ownText(contactPatch(spec, framing(words)))).toBe('')
    expect(drawn(spec)).not.toMatch(/\sstyle=/)
  })

  test('is drawn to scale inside its frame, with the deepest lowest', () => {
    for (const width of widths) {
      const layout = patchLayout(spec, framing(words, { width }))
      const along = layout.x(0.001) - layout.x(0)
      const across = layout.y(0.001) - layout.y(0)
      expect(Math.abs(along / across - 1)).toBeLessThan(1e-9)
      expect(layout.x(-layout.end)).toBeGreaterThan(layout.left)
      expect(layout.x(layout.end)).toBeLessThan(layout.right)
      expect(layout.right).toBeLessThanOrEqual(width)
      expect(layout.down(spec.sinkage)).toBeGreaterThan(layout.ground)
      expect(layout.down(spec.sinkage)).toBeLessThan(layout.bottom)
    }
  })

  test('names bands that rise towards the axis, each ending within the contact', () => {
    const field = patchField(spec.quarter, spec.grooves?.land ?? 0, framing(words))
    const ends = field.ends.filter(end => end !== null)
    expect(ends).toEqual([...ends].sort((a, b) => b - a))
    for (const { rung } of field.bands) expect(rung.value).toBeLessThan(field.greatest)
  })
})

test('a band ends where the pressure of the quick model on springs is its own', () => {
  const spec = patchSpec({
    roller: { mass: 6, diameter: 0.06, length: 0.5, surface: { kind: 'smooth' } },
    turf: { law: { kind: 'linear', softness: 0.0004 } },
    load: 200,
  })
  const { ends, bands } = patchField(spec.quarter, 0, framing(words))
  const meshed = 2e-2
  bands.forEach(({ rung }, i) => {
    // p = p_r (z − x²/D)/s, so x = √(D (z − s p/p_r))
    const wanted = Math.sqrt(0.06 * (spec.sinkage - (0.0004 * rung.value) / 10_000))
    const found = ends[i] ?? Number.NaN
    expect(Math.abs(found / wanted - 1)).toBeLessThan(meshed)
  })
  expect(bands.length).toBeGreaterThan(2)
})

test('the line force is told only where there is one', () => {
  const named = /N\/mm on each edge/
  expect(drawn(patchSpecs.grooved as PatchSpec)).toMatch(named)
  expect(drawn(patchSpecs['no spread'] as PatchSpec)).not.toMatch(named)
  expect(drawn(patchSpecs.smooth as PatchSpec)).not.toMatch(named)
})

test('any grooved roller is drawn', () => {
  const any = fc.record({
    pitch: fc.double({ min: 4, max: 60, noNaN: true }),
    part: fc.double({ min: 0.1, max: 0.95, noNaN: true }),
    depth: fc.double({ min: 0.3, max: 12, noNaN: true }),
    softness: fc.double({ min: 0.05, max: 5, noNaN: true }),
    spread: fc.double({ min: 0, max: 4, noNaN: true }),
    sunk: fc.double({ min: 0.01, max: 6, noNaN: true }),
  })
  fc.assert(
    fc.property(any, ({ pitch, part, depth, softness, spread, sunk }) => {
      const surface = {
        kind: 'grooved',
        pitch: pitch / 1000,
        land: (part * pitch) / 1000,
        depth: depth / 1000,
      } as const
      const roller = { mass: 6, diameter: 0.057, length: 0.56, surface }
      const turf = { law: { kind: 'linear', softness: softness / 1000 }, spread: spread / 1000 } as const
      const full = patch({ roller, turf, sinkage: sunk / 1000, cells: 16 })
      if (full.outcome !== 'settled') return
      const { along, across, values, depths } = full.pressure
      const { outline, edges, sinkage } = full
      const quarter = { along, across, pressures: values, depths, outline, edges }
      const spec = { quarter, sinkage, diameter: 0.057, grooves: surface }
      for (const width of widths) expect(drawn(spec, width)).not.toMatch(noNumber)
    }),
    bounded(25),
  )
})
