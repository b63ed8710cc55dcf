import {
  formulaLaw,
  loadAt,
  type PressureLaw,
  press,
  pressureAt,
  type Roller,
  sentence,
  sinkageAt,
  slopeAt,
  softnessOf,
  turfProblems,
  withSoftness,
  workTo,
} from '@swardsink/model'
import { beforeAll, describe, expect, test } from 'vitest'
import { derivative, doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const kPa = 1e3
const standing = { kind: 'standing' } as const
const smooth: Roller = { mass: 6.4, diameter: 62 * mm, length: 0.54, surface: { kind: 'smooth' } }
const grooved: Roller = {
  ...smooth,
  surface: { kind: 'grooved', pitch: 11 * mm, land: 4 * mm, depth: 5 * mm },
}

async function made(expression: string, values: Record<string, number> = {}) {
  const found = await formulaLaw({ expression, values })
  return found.ok ? found : expect.fail(found.problems.map(sentence).join('; '))
}
const lawOf = async (expression: string, values: Record<string, number> = {}) =>
  (await made(expression, values)).law

const s = 0.7 * mm
const H = 3 * mm
const spelt: readonly (readonly [string, Record<string, number>, PressureLaw])[] = [
  ['10e3*z/s', { s }, { kind: 'linear', softness: s }],
  ['10e3*(z/s)^n', { s, n: 0.6 }, { kind: 'power', softness: s, exponent: 0.6 }],
  ['10e3*(z/s)^n', { s, n: 1.4 }, { kind: 'power', softness: s, exponent: 1.4 }],
  ['10e3*(1 − s/H)/s × z ÷ (1 − z/H)', { s, H }, { kind: 'stiffening', softness: s, lockingDepth: H }],
  ['10e3*log1p(-z/H)/log1p(-s/H)', { s, H }, { kind: 'logarithmic', softness: s, lockingDepth: H }],
]

describe('limits: the built-in law that an expression spells', () => {
  test.each(spelt)('%s %j', async (expression, values, law) => {
    const written = await lawOf(expression, values)
    expectNear(softnessOf(written), s, identity)
    for (const z of [1e-5 * mm, 0.01 * mm, 0.3 * mm, 1.2 * mm, 2.4 * mm]) {
      expectNear(pressureAt(written, z), pressureAt(law, z), identity, `pressure at ${z}`)
      expectNear(slopeAt(written, z), slopeAt(law, z), identity, `slope at ${z}`)
      expectNear(workTo(written, z), workTo(law, z), stated(1e-10), `work to ${z}`)
      expectNear(sinkageAt(written, pressureAt(law, z)), z, identity, `sinkage at ${z}`)
    }
    for (const roller of [smooth, grooved])
      for (const spread of [0, 2 * mm]) {
        const sinkage = (of: PressureLaw) => {
          const pressed = press({ roller, turf: { law: of, spread }, load: 210, condition: standing })
          return pressed.outcome === 'settled' ? pressed.sinkage : expect.fail(pressed.outcome)
        }
        expectNear(sinkage(written), sinkage(law), stated(1e-9), `${roller.surface.kind}, spread ${spread}`)
      }
  })
})

describe('every function and sign', () => {
  const expressions = [
    'k*(sqrt(z/s) + cbrt(z/s))',
    'k*(exp(z/s) - 1)',
    'k*expm1(z/s)',
    'k*log(1 + z/s) + k*log1p(z/s) + k*log10(1 + z/s)',
    'k*(sin(z/s/4) + 1 - cos(z/s/4)) + 3*k*z/s',
    'k*tan(z/(9*s)) + k*z/s',
    'k*(atan(z/s) + sinh(z/s) + cosh(z/s) - 1 + tanh(z/s))',
    'k*(2^(z/s) - 1)',
    'k*(1 + z/s)^(z/s + 1) - k',
    '-(-k*z/s) + +k*z/s - pi*0',
    'k*(z/s)^2^0.5',
    'min(3*k*z/s, k*z/s + k, 2*k + k*z/s/9)',
    'max(k*z/s, 4*k*z/s - 3*k)',
    'k*(abs(z - s) - s + 3*z)/s',
  ]
  test.each(expressions)('%s: slope and work belong to the pressure', async expression => {
    const { law, range } = await made(expression, { k: 9 * kPa, s: 0.8 * mm })
    for (const z of [0.07 * mm, 0.33 * mm, 0.79 * mm, 1.3 * mm]) {
      expectNear(
        derivative(x => pressureAt(law, x), z, 2e-3 * z),
        slopeAt(law, z),
        stated(1e-8),
        `at ${z}`,
      )
      const edges = [0, ...range.corners.map(({ sinkage }) => sinkage).filter(x => x < z), z]
      const work = edges
        .slice(1)
        .reduce((sum, to, i) => sum + doubleExponential(x => pressureAt(law, x), edges[i] ?? 0, to), 0)
      expectNear(workTo(law, z), work, stated(1e-10), `to ${z}`)
    }
  })
})

describe('the range used', () => {
  test('ends where the expression bears 200 kPa, short of a pole', async () => {
    const { range } = await made('k*z/(1 - z/H)', { k: 1e7, H: 2 * mm })
    // k z/(1 − z/H) = 200 kPa at z = 200/(10 + 100) mm
    expectNear(range.sinkage, (200 / 110) * mm, stated(1e-9))
    expectNear(range.pressure, 200 * kPa, stated(1e-9))
  })

  test('beyond it the last slope goes on, and the result says so', async () => {
    const law = await lawOf('k*z/(1 - z/H)', { k: 1e7, H: 2 * mm })
    const end = (200 / 110) * mm
    expectNear(
      pressureAt(law, 3 * mm),
      200 * kPa + slopeAt(law, end * (1 - 1e-12)) * (3 * mm - end),
      stated(1e-6),
    )
    const pressed = press({ roller: smooth, turf: { law }, load: 4e3, condition: standing })
    expect(pressed.cautions.map(({ kind }) => kind)).toContain('extrapolated')
  })

  test('ends at the depth asked for where 200 kPa is never borne', async () => {
    const found = await formulaLaw({ expression: '15e3*tanh(z/0.001)', deepest: 8 * mm })
    if (!found.ok) return expect.fail('refused')
    expect(found.range.sinkage).toBe(8 * mm)
    const deeper = await formulaLaw({ expression: '15e3*tanh(z/0.001)' })
    expect(deeper.ok).toBe(false)
  })

  test('corners are found and named, and quadratures split at them', async () => {
    const { law, range } = await made('max(k*z, 4*k*z - 3*k*c)', { k: 2e7, c: 0.6 * mm })
    expect(range.corners.map(corner => corner.function)).toEqual(['max'])
    expectNear(range.corners[0]?.sinkage ?? Number.NaN, 0.6 * mm, stated(1e-12))
    // one side of a parabola over two straight pieces, in closed form
    const [z, R, k] = [1.1 * mm, 31 * mm, 2e7]
    const piece = (depth: number, rise: number) => (2 / 3) * rise * depth * Math.sqrt(2 * R * depth)
    const loaded = loadAt({ roller: smooth, turf: { law }, sinkage: z, condition: standing })
    if (loaded.outcome !== 'settled') return expect.fail(loaded.outcome)
    expectNear(loaded.lineLoad / 2, piece(z, k) + piece(z - 0.6 * mm, 3 * k), stated(1e-11))
  })
})

describe('a law that was made', () => {
  let law: Extract<PressureLaw, { kind: 'formula' }>
  beforeAll(async () => {
    law = await lawOf('10e3*(z/s)^n', { s, n: 0.8 })
  })

  test('is plain data: it survives JSON', () => {
    const copy = JSON.parse(JSON.stringify(law)) as PressureLaw
    expect(copy).toEqual(law)
    expectNear(pressureAt(copy, 1 * mm), pressureAt(law, 1 * mm), identity)
  })

  test('follows its values without being parsed again', () => {
    const changed = { ...law, values: { s: 2 * s, n: 0.8 } }
    expectNear(pressureAt(changed, 2 * mm), pressureAt(law, 1 * mm), identity)
  })

  test('is stretched to another softness, twice over', () => {
    const once = withSoftness({ law }, 1.1 * mm)
    const twice = withSoftness(once, 2.2 * mm)
    expectNear(softnessOf(twice.law), 2.2 * mm, identity)
    expectNear(pressureAt(twice.law, 2.2 * mm), 10 * kPa, identity)
    const built: PressureLaw = { kind: 'power', softness: 2.2 * mm, exponent: 0.8 }
    expectNear(workTo(twice.law, 1 * mm), workTo(built, 1 * mm), stated(1e-10))
    const loads = [twice.law, built].map(one => {
      const loaded = loadAt({
        roller: grooved,
        turf: { law: one, spread: 1 * mm },
        sinkage: 1 * mm,
        condition: standing,
      })
      return loaded.outcome === 'settled' ? loaded.load : Number.NaN
    })
    expectNear(loads[0]!, loads[1]!, stated(1e-9))
  })

  test('stands in a layer', () => {
    const two: PressureLaw = { kind: 'layered', upper: law, lower: { kind: 'linear', softness: 0.2 * mm } }
    const pressure = 23 * kPa
    expectNear(sinkageAt(two, pressure), sinkageAt(law, pressure) + 0.46 * mm, identity)
  })

  test('with a program that is none, or values missing, is refused', () => {
    const problems = (changed: object) => turfProblems({ law: { ...law, ...changed } }, 'turf').map(sentence)
    expect(problems({})).toEqual([])
    expect(problems({ values: { s } })).toEqual(['turf.law.values.n: expected a number, received nothing'])
    const { program } = law
    for (const wrong of [
      undefined,
      {},
      { ...program, steps: [3, 0] },
      { ...program, steps: [99, 0] },
      { ...program, steps: [0, 7] },
      { ...program, steps: [1, 0, 1, 0] },
      { ...program, stack: 1e9 },
      { ...program, constants: [Number.NaN] },
    ])
      expect(problems({ program: wrong }), JSON.stringify(wrong)).toHaveLength(1)
  })
})
