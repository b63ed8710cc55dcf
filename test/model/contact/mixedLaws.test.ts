import {
  acrossGrooves,
  formulaLaw,
  loadAt,
  type PressureLaw,
  press,
  pressureAt,
  sentence,
  slopeAt,
  softnessOf,
  workTo,
} from '@swardsink/model'
import { beforeAll, describe, expect, test } from 'vitest'
import { type ReferenceLaw, referenceArcs } from '../../support/referenceLaws.ts'
import { evenly, halved, matBy, widening } from '../../support/referenceMat.ts'
import { doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const standing = { kind: 'standing' } as const

const laws: Record<string, PressureLaw> = {
  'two exponents below one': {
    kind: 'layered',
    upper: { kind: 'power', softness: 0.4 * mm, exponent: 0.5 },
    lower: { kind: 'power', softness: 0.5 * mm, exponent: 0.7 },
  },
  'an exponent below one over springs': {
    kind: 'layered',
    upper: { kind: 'power', softness: 0.6 * mm, exponent: 0.5 },
    lower: { kind: 'linear', softness: 0.3 * mm },
  },
  'thatch that locks over a soft base': {
    kind: 'layered',
    upper: { kind: 'stiffening', softness: 0.5 * mm, lockingDepth: 0.8 * mm },
    lower: { kind: 'linear', softness: 0.2 * mm },
  },
  'measured points with a bend': {
    kind: 'measured',
    points: [
      { sinkage: 0.4 * mm, pressure: 4e3 },
      { sinkage: 0.9 * mm, pressure: 11e3 },
      { sinkage: 1.1 * mm, pressure: 24e3 },
      { sinkage: 2.4 * mm, pressure: 60e3 },
    ],
  },
}
const names = [
  ...Object.keys(laws),
  'an expression with a corner',
  'an expression with an exponent below one',
]

beforeAll(async () => {
  const make = async (expression: string, values: Record<string, number>) => {
    const found = await formulaLaw({ expression, values })
    return found.ok ? found.law : expect.fail(found.problems.map(sentence).join('; '))
  }
  laws['an expression with a corner'] = await make('max(k*z, 3*k*z - 2*k*c)', { k: 1.1e7, c: 0.5 * mm })
  laws['an expression with an exponent below one'] = await make('k*(z/s)^0.55 + 2*k*z/s', {
    k: 3e3,
    s: 0.8 * mm,
  })
}, 30_000)

/** The law as the mesh asks for it: its pressure is tested elsewhere, here it is what quadratures make of it. */
const asAsked = (law: PressureLaw): ReferenceLaw => ({
  pressure: z => pressureAt(law, z),
  slope: z => slopeAt(law, z),
  work: z => workTo(law, z),
  limit: Number.POSITIVE_INFINITY,
})
const restsAtDistance = (name: string) =>
  name === 'two exponents below one' || name === 'an expression with an exponent below one'
const shearOf = (law: PressureLaw, spread: number) => (spread ** 2 * 10e3) / softnessOf(law)
const extrapolated = ([one = Number.NaN, two = Number.NaN]: readonly number[]) => two + (two - one) / 3

describe('across the grooves, the mat by finite differences', () => {
  const land = 4 * mm
  const gap = 9 * mm
  const onMesh = (name: string, spread: number, z: number, n: number, depth?: number) => {
    const law = laws[name]!
    const mat = matBy({
      law: asAsked(law),
      G: shearOf(law, spread),
      places: evenly(gap / 2, n),
      held: z,
      secant: restsAtDistance(name),
      ...(depth === undefined ? {} : { floor: z - depth }),
    })
    return { load: pressureAt(law, z) * land + 2 * mat.carried, lowest: mat.depth[n] ?? Number.NaN }
  }
  const inModel = (name: string, spread: number, sinkage: number, depth: number) => {
    const surface = { kind: 'grooved', pitch: land + gap, land, depth } as const
    const found = acrossGrooves({ surface, turf: { law: laws[name]!, spread }, sinkage })
    return { ...found, load: found.meanPressure * (land + gap) }
  }

  test.each(names)('%s, floor free', name => {
    const exact = inModel(name, 2.5 * mm, 1.3 * mm, 20 * mm)
    expect(exact.floor).toBe('free')
    const answers = [200, 400].map(n => onMesh(name, 2.5 * mm, 1.3 * mm, n))
    expectNear(extrapolated(answers.map(({ load }) => load)), exact.load, stated(1e-6))
    expectNear(extrapolated(answers.map(({ lowest }) => lowest)), exact.lowestSinkage, stated(1e-4))
  })

  test.each(names)('%s, little spread: at rest in mid-gap, or nearly', name => {
    const exact = inModel(name, 0.4 * mm, 0.5 * mm, 20 * mm)
    if (restsAtDistance(name)) expect(exact.lowestSinkage).toBe(0)
    else expect(exact.lowestSinkage).toBeGreaterThan(0)
    const answers = [200, 400].map(n => onMesh(name, 0.4 * mm, 0.5 * mm, n).load)
    expectNear(extrapolated(answers), exact.load, stated(2e-6))
  })

  test.each(names)('%s, floor touched', name => {
    const depth = 0.4 * mm
    const exact = inModel(name, 1.2 * mm, 1.6 * mm, depth)
    expect(exact.floor).toBe('touching')
    expectNear(onMesh(name, 1.2 * mm, 1.6 * mm, 800, depth).load, exact.load, stated(4e-5))
  })
})

describe('a smooth roller on turf that spreads load', () => {
  test.each(names)('%s, the mat ahead by finite differences', name => {
    const law = laws[name]!
    const [R, z, spread] = [29 * mm, 1.4 * mm, 2 * mm]
    const G = shearOf(law, spread)
    const { height, slope, reach } = referenceArcs.parabola(R)
    const side = (n: number) => {
      const outside = (a: number) =>
        matBy({
          law: asAsked(law),
          G,
          places: widening(0, 60 * spread, n, 6),
          held: z - height(a),
          secant: name !== 'thatch that locks over a soft base',
        }).carried
      const a = halved(a => G * slope(a) - outside(a), 0, reach(z) * (1 - 1e-12), 32)
      // split wherever the law has a corner or a point
      const places = [
        ...new Set([0, ...bends(name).map(depth => Math.min(a, reach(Math.max(0, z - depth)))), a]),
      ].sort((x, y) => x - y)
      const under = places
        .slice(1)
        .reduce(
          (sum, to, i) => sum + doubleExponential(x => pressureAt(law, z - height(x)), places[i] ?? 0, to),
          0,
        )
      return under + outside(a)
    }
    const loaded = loadAt({
      roller: { mass: 4.2, diameter: 2 * R, length: 0.5, surface: { kind: 'smooth' } },
      turf: { law, spread },
      sinkage: z,
      condition: standing,
    })
    if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
    expectNear(extrapolated([100, 200].map(side)), loaded.lineLoad / 2, stated(2e-5))
  })
})

/** Where the laws above bend. */
const bends = (name: string): readonly number[] =>
  name === 'measured points with a bend'
    ? [0.4 * mm, 0.9 * mm, 1.1 * mm]
    : name === 'an expression with a corner'
      ? [0.5 * mm]
      : []

describe('a grooved roller', () => {
  const roller = {
    mass: 5.1,
    diameter: 58 * mm,
    length: 0.52,
    surface: { kind: 'grooved', pitch: 13 * mm, land: 4 * mm, depth: 1 * mm },
  } as const

  test.each(names)('%s: its strips are the period at every depth under the arc', name => {
    const law = laws[name]!
    const z = 1.5 * mm
    const reach = Math.sqrt(roller.diameter * z)
    const meanAt = (x: number) =>
      acrossGrooves({
        surface: roller.surface,
        turf: { law },
        sinkage: Math.max(1e-12, z - (x * x) / roller.diameter),
      }).meanPressure
    const places = [
      0,
      ...[...bends(name), ...[0, ...bends(name)].map(depth => depth + 1 * mm)]
        .filter(depth => depth < z)
        .map(depth => Math.sqrt(roller.diameter * (z - depth))),
      reach,
    ].sort((a, b) => a - b)
    const half = places
      .slice(1)
      .reduce((sum, to, i) => sum + doubleExponential(meanAt, places[i] ?? 0, to, 1 / 16), 0)
    const loaded = loadAt({ roller, turf: { law }, sinkage: z, condition: standing })
    if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
    expectNear(loaded.lineLoad, 2 * half, stated(1e-6))
  })

  test.each(names)('%s: its load is given back, with spread, on a parabola and on a circle', name => {
    const turf = { law: laws[name]!, spread: 1.6 * mm, rebound: 0.6 }
    for (const arc of ['parabola', 'circle'] as const)
      for (const load of [40, 160]) {
        const mowing = { kind: 'mowing', speed: 1.2 } as const
        const pressed = press({ roller, turf, load, condition: mowing, arc })
        if (pressed.outcome !== 'settled') return expect.fail(sentence(pressed))
        const back = loadAt({ roller, turf, sinkage: pressed.sinkage, condition: mowing, arc })
        expectNear(
          back.outcome === 'settled' ? back.load : Number.NaN,
          load,
          stated(1e-10),
          `${arc}, ${load} N`,
        )
      }
  })
})
