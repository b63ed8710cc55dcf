import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Roller, Turf } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { rollerOnTurf } from '../../../packages/model/src/contact/rollerOnTurf.ts'
import { repository } from '../../support/files.ts'
import { metresOf, numberOf, referenceTable } from '../../support/referenceTables.ts'
import { expectNear, expectPrinted, printed, rate, stated } from '../../support/tolerance.ts'
import { confined, onBondedLayer } from './bondedLayer.ts'

/** One contact on a layer: what it carries and how wide it is at a sinkage, SI. */
type Contact = {
  readonly radius: number
  readonly sinkage: number
  readonly lineLoad: number
  readonly half: number
}

type Layer = { readonly thickness: number; readonly stiffness: number; readonly contacts: readonly Contact[] }

/** What the model says too much of load and of contact width, relative, at the sinkage of each contact. */
function errorsOf({ stiffness, contacts }: Layer, spread: number) {
  return contacts.map(({ radius, sinkage, lineLoad, half }) => {
    const roller: Roller = { mass: 1, diameter: 2 * radius, length: 1, surface: { kind: 'smooth' } }
    const turf: Turf = { law: { kind: 'linear', softness: 10e3 / stiffness }, spread }
    const found = rollerOnTurf({ roller, turf, condition: { kind: 'standing' } }).at(sinkage)
    return { load: found.lineLoad / lineLoad - 1, width: found.leading.reach / half - 1 }
  })
}

const GOLDEN = (Math.sqrt(5) - 1) / 2

/** The spread, as a part of the thickness, that misses load and contact width least: least squares, golden section. */
function bestSpread(layer: Layer): number {
  const miss = (part: number) =>
    errorsOf(layer, part * layer.thickness).reduce((sum, e) => sum + e.load ** 2 + e.width ** 2, 0)
  let low = 0
  let high = 0.5
  while (high - low > 1e-7) {
    const left = high - GOLDEN * (high - low)
    const right = low + GOLDEN * (high - low)
    if (miss(left) < miss(right)) high = right
    else low = left
  }
  return low < 1e-6 ? 0 : (low + high) / 2
}

/** The layers of the table: all contacts of one thickness and Poisson's ratio. */
const rows = referenceTable('elastic_layer')
const layersOfTable = ['0.2', '0.3', '0.45'].flatMap(poisson =>
  ['5.0', '10.0', '20.0', '40.0'].map(thickness => ({ poisson, thickness })),
)
function layerOfTable({ poisson, thickness }: { poisson: string; thickness: string }): Layer {
  const own = rows.filter(row => row.poisson === poisson && row.thickness_mm === thickness)
  const nu = Number(poisson)
  const h = Number(thickness) / 1000
  return {
    thickness: h,
    stiffness: ((0.3e6 / (1 - nu * nu)) * confined(nu)) / h,
    contacts: own.map(row => ({
      radius: metresOf(row, 'radius_mm'),
      sinkage: metresOf(row, 'sinkage_mm'),
      lineLoad: 1000 * numberOf(row, 'line_load_N_per_mm'),
      half: metresOf(row, 'half_contact_mm'),
    })),
  }
}

/** Layers worked out here: E* = 1 MPa, h = 10 mm, R = 1 m, contacts of these widths over the thickness. */
const NARROW = [0.25, 0.5, 1]
const WIDE = [4, 7, 10]
const solved = new Map<string, Layer>()
function layerOf(poisson: number, widths: readonly number[]): Layer {
  const key = `${poisson} ${widths}`
  const known = solved.get(key)
  if (known) return known
  const h = 0.01
  const layer: Layer = {
    thickness: h,
    stiffness: (1e6 * confined(poisson)) / h,
    contacts: widths.map(width => {
      const { load, sinkage } = onBondedLayer(width, poisson, width > 3 ? 30 : 18)
      const half = width * h
      return { radius: 1, sinkage: sinkage * half ** 2, lineLoad: 1e6 * load * half ** 2, half }
    }),
  }
  solved.set(key, layer)
  return layer
}

const percent = (values: readonly number[]) => [100 * Math.min(...values), 100 * Math.max(...values)] as const
const summary = (layer: Layer, spread: number) => {
  const errors = errorsOf(layer, spread)
  return [...percent(errors.map(e => e.load)), ...percent(errors.map(e => e.width))]
}

describe('published values of a layer bonded to a firm base', () => {
  // Source: derived for this project with the exact layer kernel; P R/(E* a²), δ R/a²
  test.each([
    [0, 0.1, '0.789892', '1.57130'],
    [0, 0.5, '0.889634', '0.87848'],
    [0, 1, '1.134012', '0.69493'],
    [0, 2, '1.745575', '0.59557'],
    [0, 5, '3.715170', '0.53730'],
    [0, 10, '7.040168', '0.51848'],
    [0.3, 0.1, '0.791004', '1.49605'],
    [0.3, 0.5, '0.915880', '0.81992'],
    [0.3, 1, '1.221797', '0.65400'],
    [0.3, 2, '1.978038', '0.57114'],
    [0.3, 5, '4.394946', '0.52614'],
    [0.3, 10, '8.470704', '0.51264'],
  ])('Poisson’s ratio %d, a/h %d', (poisson, width, load, sinkage) => {
    const found = onBondedLayer(width, poisson, 30)
    expectPrinted(found.load, load)
    expectPrinted(found.sinkage, sinkage)
  })

  // Source: test/reference/data/elastic_layer.csv, numpy 1.24.2 and scipy 1.10.1
  test('the table, all 60 rows', () => {
    expect(rows.length).toBe(60)
    for (const row of rows) {
      const nu = numberOf(row, 'poisson')
      const a = numberOf(row, 'half_contact_mm')
      const R = numberOf(row, 'radius_mm')
      const found = onBondedLayer(a / numberOf(row, 'thickness_mm'), nu)
      const plane = numberOf(row, 'modulus_MPa') / (1 - nu * nu)
      expectNear((found.load * plane * a * a) / R, numberOf(row, 'line_load_N_per_mm'), stated(1e-7))
      expectNear((found.sinkage * a * a) / R, numberOf(row, 'sinkage_mm'), stated(1e-7))
    }
  })
})

describe('limits', () => {
  // Source: Johnson, Contact Mechanics §4.2, from memory
  test('a narrow contact is Hertz’s on a half-space: P R/(E* a²) = π/4, off by (a/h)²', () => {
    for (const poisson of [0, 0.3, 0.45])
      rate(2).of([0.04, 0.02, 0.01].map(width => onBondedLayer(width, poisson).load - Math.PI / 4))
  })

  // Source: Johnson, Contact Mechanics §5.8, from memory
  test('a wide one is a bed of springs: P = ⅔ M a³/(R h), δ = a²/2R, off by h/a', () => {
    for (const poisson of [0, 0.3]) {
      const wide = [6, 12, 24].map(width => ({ width, ...onBondedLayer(width, poisson, 24) }))
      const over = ({ width, load }: (typeof wide)[number]) =>
        load / ((2 / 3) * confined(poisson) * width) - 1
      rate(1).of(wide.map(over))
      rate(1).of(wide.map(({ sinkage }) => sinkage - 0.5))
      // there a spread says it all: 3 l/a too much load, l/a more sinkage
      const last = wide.at(-1)!
      expectNear((over(last) * last.width) / 3, (last.sinkage - 0.5) * last.width, stated(0.03))
    }
  })
})

describe('springs that spread load, fitted to the layer', () => {
  const page = readFileSync(join(repository, 'docs/elasticLayer.md'), 'utf8')
  /** Rows of the page's tables by their first two cells. */
  const told = new Map<string, readonly string[]>(
    page
      .split('\n')
      .filter(line => /^\| 0(\.\d+)? +\|/.test(line))
      .map(line =>
        line
          .split('|')
          .map(cell => cell.trim())
          .slice(1, -1),
      )
      .map(([poisson, second, ...cells]) => [`${poisson} ${second}`, cells] as const),
  )
  const numbers = (cell: string | undefined) =>
    (cell ?? '').replaceAll('−', '-').match(/-?\d+(\.\d+)?/g) ?? []
  function expectTold(key: string, part: number, errors: readonly number[], plain: readonly number[]) {
    const cells = told.get(key)
    const inPrint = [cells?.at(-5), cells?.at(-4), cells?.at(-3), cells?.at(-2), cells?.at(-1)].flatMap(
      numbers,
    )
    const found = [part, ...errors, ...plain]
    expect(inPrint.length, key).toBe(found.length)
    inPrint.forEach((text, i) => {
      expectNear(found[i]!, printed(text).value, printed(text), `${key}, number ${i}`)
    })
  }

  test.each(layersOfTable)('as the page tells them, Poisson’s ratio $poisson, $thickness mm', layer => {
    const own = layerOfTable(layer)
    const part = bestSpread(own)
    expectTold(
      `${layer.poisson} ${Number(layer.thickness)}`,
      part,
      summary(own, part * own.thickness),
      summary(own, 0),
    )
  })

  test.each(['0', '0.1', '0.2', '0.3', '0.35', '0.4', '0.45'])('by Poisson’s ratio %s', poisson => {
    for (const [name, widths] of [
      ['narrow', NARROW],
      ['wide', WIDE],
    ] as const) {
      const own = layerOf(Number(poisson), widths)
      const part = bestSpread(own)
      expectTold(`${poisson} ${name}`, part, summary(own, part * own.thickness), summary(own, 0))
    }
  })

  test('wide contacts: a spread of 0.18 to 0.20 h up to a ratio of 0.2, about 0.13 at 0.3, none from 0.4 on', () => {
    for (const poisson of [0, 0.1, 0.2]) {
      const part = bestSpread(layerOf(poisson, WIDE))
      expect(part).toBeGreaterThan(0.175)
      expect(part).toBeLessThan(0.2)
    }
    expectNear(bestSpread(layerOf(0.3, WIDE)), 0.13, stated(0.03))
    for (const poisson of [0.4, 0.45]) expect(bestSpread(layerOf(poisson, WIDE))).toBe(0)
  })
})
