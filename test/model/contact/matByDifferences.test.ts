import { acrossGrooves, loadAt, type PressureLaw } from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { referenceArcs, referenceLaw } from '../../support/referenceLaws.ts'
import { evenly, halved, matBy, widening } from '../../support/referenceMat.ts'
import { doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, rate, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const standing = { kind: 'standing' } as const
const meshes = [100, 200, 400, 800]

const softness = 1 * mm
const laws: readonly PressureLaw[] = [
  { kind: 'linear', softness },
  { kind: 'power', softness, exponent: 0.6 },
  { kind: 'power', softness, exponent: 1.4 },
  { kind: 'stiffening', softness, lockingDepth: 4 * mm },
  { kind: 'logarithmic', softness, lockingDepth: 4 * mm },
]
const named = laws.map(law => [law.kind === 'power' ? `power ${law.exponent}` : law.kind, law] as const)
const shearOf = (spread: number) => (spread ** 2 * 10e3) / softness
const restsAtDistance = (law: PressureLaw) => law.kind === 'power' && law.exponent < 1

/** The last two of a series of second-order answers, with the leading error taken out. */
const extrapolated = (answers: readonly number[]) => {
  const [one = Number.NaN, two = Number.NaN] = answers.slice(-2)
  return two + (two - one) / 3
}

const errorsOf = (answers: readonly number[], exact: number) => answers.map(answer => answer - exact)

/**
 * Load of one side of a smooth roller whose mat outside is solved on a mesh: the roller is left where the mat's slope
 * is the arc's.
 */
function sideOnMesh(
  law: PressureLaw,
  spread: number,
  R: number,
  z: number,
  arc: 'parabola' | 'circle',
  n: number,
) {
  const second = referenceLaw(law)
  const G = shearOf(spread)
  const shape = referenceArcs[arc](R)
  const outside = (a: number) =>
    matBy({
      law: second,
      G,
      places: widening(0, 60 * spread, n, 6),
      held: z - shape.height(a),
      secant: restsAtDistance(law),
    })
  const all = shape.reach(z)
  // all that the mat outside carries hangs on the place where it leaves
  const a = halved(a => G * shape.slope(a) - outside(a).carried, 0, all * (1 - 1e-12), 45)
  const under = doubleExponential(x => second.pressure(z - shape.height(x)), 0, a)
  return under + outside(a).carried
}

function modelLine(law: PressureLaw, spread: number, R: number, z: number, arc: 'parabola' | 'circle') {
  const loaded = loadAt({
    roller: { mass: 4.2, diameter: 2 * R, length: 0.5, surface: { kind: 'smooth' } },
    turf: { law, spread },
    sinkage: z,
    condition: standing,
    arc,
  })
  return loaded.outcome === 'settled' ? loaded.lineLoad : expect.fail(loaded.outcome)
}

// The mat p(u) − G u″ is that of Filonenko-Borodich 1940 and Pasternak 1954 (from memory); here it is solved on a mesh.
describe('a smooth roller on turf that spreads load, the mat by finite differences', () => {
  test.each(named)('%s on a parabola: order two, and the same load', (_, law) => {
    const exact = modelLine(law, 2 * mm, 32 * mm, 1.5 * mm, 'parabola') / 2
    const answers = meshes.map(n => sideOnMesh(law, 2 * mm, 32 * mm, 1.5 * mm, 'parabola', n))
    rate(2).of(errorsOf(answers, exact), JSON.stringify(law))
    expectNear(extrapolated(answers), exact, stated(1e-6))
  })

  test.each(named)('%s on a circle: order two, and the same load', (_, law) => {
    const exact = modelLine(law, 3 * mm, 26 * mm, 3 * mm, 'circle') / 2
    const answers = meshes.map(n => sideOnMesh(law, 3 * mm, 26 * mm, 3 * mm, 'circle', n))
    rate(2).of(errorsOf(answers, exact), JSON.stringify(law))
    expectNear(extrapolated(answers), exact, stated(1e-6))
  })
})

describe('across the grooves, the mat by finite differences', () => {
  const land = 4 * mm
  const gap = 9 * mm

  /** Load of a pitch and depth in mid-gap. */
  function onMesh(law: PressureLaw, spread: number, z: number, n: number, depth?: number) {
    const second = referenceLaw(law)
    const mat = matBy({
      law: second,
      G: shearOf(spread),
      places: evenly(gap / 2, n),
      held: z,
      secant: restsAtDistance(law),
      ...(depth === undefined ? {} : { floor: z - depth }),
    })
    return { load: second.pressure(z) * land + 2 * mat.carried, lowest: mat.depth[n] ?? Number.NaN }
  }
  const inModel = (law: PressureLaw, spread: number, sinkage: number, depth: number) => {
    const surface = { kind: 'grooved', pitch: land + gap, land, depth } as const
    const found = acrossGrooves({ surface, turf: { law, spread }, sinkage })
    return { ...found, load: found.meanPressure * (land + gap) }
  }

  test.each(named)('%s, floor free: order two, the same load and the same depth in mid-gap', (_, law) => {
    const exact = inModel(law, 2.5 * mm, 1.8 * mm, 20 * mm)
    const answers = meshes.map(n => onMesh(law, 2.5 * mm, 1.8 * mm, n))
    const loads = answers.map(({ load }) => load)
    const lows = answers.map(({ lowest }) => lowest)
    rate(2).of(errorsOf(loads, exact.load), 'load')
    expectNear(extrapolated(loads), exact.load, stated(1e-7))
    rate(2).of(errorsOf(lows, exact.lowestSinkage), 'depth in mid-gap')
    expectNear(extrapolated(lows), exact.lowestSinkage, stated(1e-5))
  })

  test('a mat at rest in mid-gap: the dead zone of an exponent below one', () => {
    const law: PressureLaw = { kind: 'power', softness, exponent: 0.5 }
    const exact = inModel(law, 0.4 * mm, 0.5 * mm, 20 * mm)
    expect(exact.lowestSinkage).toBe(0)
    const answers = [400, 800, 1600].map(n => onMesh(law, 0.4 * mm, 0.5 * mm, n).load)
    rate(2).of(errorsOf(answers, exact.load))
    expectNear(extrapolated(answers), exact.load, stated(1e-6))
  })

  // The floor's edge falls between nodes: the error jumps about its order, so the finest mesh is compared itself.
  test.each(named)('%s, floor touched: the same load', (_, law) => {
    const depth = 0.5 * mm
    const exact = inModel(law, 1.5 * mm, 2 * mm, depth)
    expect(exact.floor).toBe('touching')
    const { load, lowest } = onMesh(law, 1.5 * mm, 2 * mm, 3200, depth)
    expectNear(load, exact.load, stated(2e-6))
    expectNear(lowest, 2 * mm - depth, stated(1e-12))
  })

  test('the drawn mat lies where the mesh has it', () => {
    for (const [, law] of named) {
      const { across } = inModel(law, 2.5 * mm, 1.8 * mm, 20 * mm)
      const mat = matBy({
        law: referenceLaw(law),
        G: shearOf(2.5 * mm),
        places: evenly(gap / 2, 4000),
        held: 1.8 * mm,
        secant: restsAtDistance(law),
      })
      const right = across.filter(({ position }) => position > land / 2 + 1e-9)
      expect(right.length).toBeGreaterThan(10)
      for (const { position, sinkage, pressure } of right) {
        const place = ((position - land / 2) / (gap / 2)) * 4000
        const i = Math.min(Math.floor(place), 3999)
        const between = mat.depth[i]! + (place - i) * (mat.depth[i + 1]! - mat.depth[i]!)
        expectNear(sinkage, between, stated(1e-6), law.kind)
        expectNear(pressure, referenceLaw(law).pressure(sinkage), stated(1e-11))
      }
    }
  })
})
