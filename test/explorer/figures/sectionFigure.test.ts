import { acrossGrooves, pressureAt, type Turf } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grooveSection } from '../../../packages/explorer/src/figures/grooveSection.ts'
import { type SectionSpec, sectionLayout } from '../../../packages/explorer/src/figures/sectionLayout.ts'
import { matOver } from '../../../packages/explorer/src/figures/sectionTurf.ts'
import { sectionFigure } from '../../../packages/explorer/src/words/english/section.ts'
import { bounded } from '../../support/arbitraries.ts'
import { framing } from './framing.ts'
import { sectionSpec, sectionSpecs } from './gallery/sectionFigures.ts'
import { markup, ownText } from './markup.ts'

const drawn = (spec: SectionSpec, width = 792) =>
  markup(grooveSection(spec, framing(sectionFigure, { width })))
const specOf = (name: string): SectionSpec => sectionSpecs[name] ?? expect.fail(name)
const widths = [792, 560, 358, 280]

describe.each(Object.entries(sectionSpecs))('the section %s', (_, spec) => {
  test('is drawn at every width without a number that is none', () => {
    for (const width of widths) expect(drawn(spec, width)).not.toMatch(/NaN|Infinity|undefined|false/)
  })

  test('has no words of its own and no style attribute', () => {
    expect(ownText(grooveSection(spec, framing(sectionFigure)))).toBe('')
    expect(drawn(spec)).not.toMatch(/\sstyle=/)
  })

  test('has depth pointing down: the lands stand below undisturbed turf, the strip below the turf', () => {
    for (const width of widths) {
      const layout = sectionLayout(spec, framing(sectionFigure, { width }))
      expect(layout.y(spec.sinkage)).toBeGreaterThan(layout.ground)
      expect(layout.base).toBeGreaterThan(layout.y(spec.sinkage))
      expect(layout.strip.zero).toBeGreaterThan(layout.base)
      expect(layout.floor).toBeLessThanOrEqual(layout.y(spec.sinkage))
      expect(layout.height).toBeGreaterThan(layout.scales.y)
    }
  })

  test('says how many times depths are drawn', () => {
    const layout = sectionLayout(spec, framing(sectionFigure))
    if (layout.times !== 1) expect(drawn(spec)).toContain(`×${layout.times}`)
    expect(layout.down / layout.along / layout.times).toBeGreaterThan(0.999)
  })
})

test('any roller on any turf is drawn, as soft or as firm as may be', () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  const any = fc.record({
    softness: between(0.05, 5),
    sinkage: between(0.001, 15),
    pitch: between(4, 60),
    landPart: between(0.05, 0.98),
    depth: between(0.1, 30),
    spread: between(0, 10),
    width: between(240, 1200),
  })
  fc.assert(
    fc.property(any, ({ softness, sinkage, pitch, landPart, depth, spread, width }) => {
      const turf: Turf = { law: { kind: 'linear', softness: softness * 1e-3 }, spread: spread * 1e-3 }
      const spec = sectionSpec({ turf, sinkage, pitch, land: landPart * pitch, depth })
      expect(drawn(spec, Math.round(width))).not.toMatch(/NaN|Infinity|undefined|false/)
    }),
    bounded(60),
  )
})

test('a groove too deep for the paper is broken off, a shallow one is not', () => {
  const layoutOf = (name: string) => sectionLayout(specOf(name), framing(sectionFigure))
  expect(layoutOf('usual').breakAt).not.toBe(null)
  expect(layoutOf('shallow').breakAt).toBe(null)
})

test('a narrow figure has room for one pitch', () => {
  const spec = specOf('usual')
  expect(sectionLayout(spec, framing(sectionFigure)).pitches).toBe(2)
  expect(sectionLayout(spec, framing(sectionFigure, { width: 358 })).pitches).toBe(1)
})

test('the mat is that of the model, pitch after pitch, to both ends of the drawing', () => {
  const spec = specOf('usual')
  const layout = sectionLayout(spec, framing(sectionFigure))
  const mat = matOver(spec, layout)
  const { pitch = 0, land = 0, depth = 0 } = spec.grooves ?? {}
  const turf: Turf = {
    law: { kind: 'stiffening', softness: 0.3e-3, lockingDepth: 24e-3 },
    spread: 1.6e-3,
  }
  const found = acrossGrooves({
    surface: { kind: 'grooved', pitch, land, depth },
    turf,
    sinkage: spec.sinkage,
  })
  const lowest = Math.min(...mat.map(point => point.sinkage))
  expect(lowest).toBe(found.lowestSinkage)
  expect(mat[0]?.position).toBe(layout.start)
  expect(layout.x(mat.at(-1)?.position ?? 0)).toBeGreaterThan(791.9)
  const places = mat.map(point => point.position)
  expect(places).toEqual([...places].sort((a, b) => a - b))
  expect(spec.pressure).toBe(pressureAt(turf.law, spec.sinkage))
})

test('a smooth face says so, and has neither edges nor a pitch', () => {
  const text = drawn(specOf('smooth'))
  expect(text).toContain(sectionFigure.smooth)
  expect(text).toContain('14.0\u202fkPa')
  for (const word of ['pitch 1', 'land 5', 'each land edge']) expect(text).not.toContain(word)
})

test('line forces at the land edges are told, where there are any', () => {
  expect(drawn(specOf('usual'))).toMatch(/and 0\.\d{3}.N\/mm along each land edge/)
  expect(drawn(specOf('no spread'))).not.toContain('each land edge')
})
