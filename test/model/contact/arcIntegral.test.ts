import { type Arc, loadAt, type PressureLaw, softnessOf } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bounded, laws } from '../../support/arbitraries.ts'
import { referenceArcs, referenceLaw } from '../../support/referenceLaws.ts'
import { doubleExponential } from '../../support/referenceQuadrature.ts'
import { expectNear, stated } from '../../support/tolerance.ts'

const cases = fc
  .record({
    law: laws,
    part: fc.double({ min: 0.01, max: 0.97, noNaN: true }),
    radius: fc.double({ min: 0.02, max: 0.08, noNaN: true }),
    rebound: fc.double({ min: 0.02, max: 1, noNaN: true }),
  })
  .map(({ law, part, ...rest }) => ({
    law,
    ...rest,
    sinkage: part * Math.min(referenceLaw(law).limit, 5 * softnessOf(law), 0.6 * rest.radius),
  }))

/** What the graded nodes of the kernel reach at the least exponent, 0.2, on a circle: 1.1e-9 to 1.3e-9. */
const graded = 2e-9

/** One side without spread: ∫ p(z₀ − h(x)/λ) dx, with the arc and the law written a second time. */
function sideBy(law: PressureLaw, R: number, z: number, arc: Arc, rebound = 1): number {
  const { pressure } = referenceLaw(law)
  const { reach, below } = referenceArcs[arc](R)
  return doubleExponential((x, _from, short) => pressure(below(x, short) / rebound), 0, reach(rebound * z))
}

function lineLoad(law: PressureLaw, R: number, sinkage: number, arc: Arc, rebound?: number): number {
  const loaded = loadAt({
    roller: { mass: 4.2, diameter: 2 * R, length: 0.5, surface: { kind: 'smooth' } },
    turf: { law, ...(rebound === undefined ? {} : { rebound }) },
    sinkage,
    condition: rebound === undefined ? { kind: 'standing' } : { kind: 'mowing', speed: 1.2 },
    arc,
  })
  return loaded.outcome === 'settled' ? loaded.lineLoad : expect.fail(loaded.outcome)
}

describe('load of a roller without spread, by a second quadrature', () => {
  test.each(['parabola', 'circle'] as const)('standing on a %s, any law', arc => {
    fc.assert(
      fc.property(cases, ({ law, radius, sinkage }) =>
        expectNear(
          lineLoad(law, radius, sinkage, arc),
          2 * sideBy(law, radius, sinkage, arc),
          stated(law.kind === 'power' && arc === 'parabola' ? 1e-10 : graded),
          JSON.stringify({ law, radius, sinkage }),
        ),
      ),
      bounded(300),
    )
  })

  test.each(['parabola', 'circle'] as const)('mowing on a %s, any law, the back unloads', arc => {
    fc.assert(
      fc.property(cases, ({ law, radius, sinkage, rebound }) =>
        expectNear(
          lineLoad(law, radius, sinkage, arc, rebound),
          sideBy(law, radius, sinkage, arc) + sideBy(law, radius, sinkage, arc, rebound),
          stated(graded),
          JSON.stringify({ law, radius, sinkage, rebound }),
        ),
      ),
      bounded(200),
    )
  })

  test('on a parabola the back carries √λ of the front for any law', () => {
    fc.assert(
      fc.property(cases, ({ law, radius, sinkage, rebound }) =>
        expectNear(
          sideBy(law, radius, sinkage, 'parabola', rebound),
          Math.sqrt(rebound) * sideBy(law, radius, sinkage, 'parabola'),
          stated(1e-10),
        ),
      ),
      bounded(200),
    )
  })

  test('on the circle it does not: the rule is the parabola’s alone', () => {
    const law: PressureLaw = { kind: 'linear', softness: 1e-3 }
    const back = sideBy(law, 0.03, 0.009, 'circle', 0.5)
    const ratio = back / (Math.sqrt(0.5) * sideBy(law, 0.03, 0.009, 'circle'))
    expect(Math.abs(ratio - 1)).toBeGreaterThan(0.01)
  })
})

describe('dimensions', () => {
  test('load grows with sinkage to the power n + ½, and with the root of the diameter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 2, noNaN: true }), exponent => {
        const law: PressureLaw = { kind: 'power', softness: 1e-3, exponent }
        const one = lineLoad(law, 0.03, 1e-3, 'parabola')
        expectNear(
          Math.log(lineLoad(law, 0.03, 4e-3, 'parabola') / one) / Math.log(4),
          exponent + 0.5,
          stated(1e-10),
        )
        expectNear(lineLoad(law, 0.06, 1e-3, 'parabola') / one, Math.SQRT2, stated(1e-11))
      }),
      bounded(50),
    )
  })
})
