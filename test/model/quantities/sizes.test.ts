import { InputError, press, type Roller, sentence, turfProblems } from '@swardsink/model'
import { describe, expect, test } from 'vitest'

const roller: Roller = { mass: 6, diameter: 0.057, length: 0.55, surface: { kind: 'smooth' } }
const turf = { law: { kind: 'linear', softness: 4e-4 } } as const
const condition = { kind: 'standing' } as const

describe('numbers of a size that nothing has', () => {
  test.each([1e-31, 5e-324, 1e31, Number.MAX_VALUE])('a softness of %f m is refused', softness => {
    const [problem, ...more] = turfProblems({ law: { kind: 'linear', softness } }, 'turf')
    expect(more).toEqual([])
    expect(problem ? sentence(problem) : '').toMatch(/^turf\.law\.softness: expected a number of a size/)
  })

  test.each([{ diameter: 1e-320 }, { length: 1e300 }, { mass: 1e40 }])('%j is refused', part => {
    expect(() => press({ roller: { ...roller, ...part }, turf, load: 150, condition })).toThrow(InputError)
  })

  test('what may be nothing may be next to nothing', () => {
    expect(turfProblems({ ...turf, spread: 1e-320, recoveryTime: 0 }, 'turf')).toEqual([])
    expect(press({ roller: { ...roller, mass: 0 }, turf, load: 150, condition }).outcome).toBe('settled')
  })
})
