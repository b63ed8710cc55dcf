import {
  acrossGrooves,
  InputError,
  loadAt,
  type Pressed,
  press,
  type Roller,
  sentence,
  type Turf,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'

const mm = 1e-3
const surface = { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 4 * mm } as const
const roller: Roller = { mass: 4.2, diameter: 58 * mm, length: 0.5, surface }
const turf: Turf = { law: { kind: 'stiffening', softness: 1 * mm, lockingDepth: 5 * mm }, spread: 1 * mm }
const condition = { kind: 'standing' } as const
const question = { roller, turf, condition }

describe('press and loadAt refuse', () => {
  test.each([
    ['no load', () => press({ ...question, load: 0 }), 'load'],
    ['a load that lifts', () => press({ ...question, load: -20 }), 'load'],
    ['a load that is no number', () => press({ ...question, load: Number.NaN }), 'load'],
    ['a sinkage above the surface', () => loadAt({ ...question, sinkage: -1 * mm }), 'sinkage'],
    [
      'a roller without diameter',
      () => press({ ...question, load: 90, roller: { ...roller, diameter: 0 } }),
      'roller.diameter',
    ],
    [
      'a groove as deep as the roller is thick',
      () => press({ ...question, load: 90, roller: { ...roller, surface: { ...surface, depth: 29 * mm } } }),
      'roller.surface.depth',
    ],
    [
      'more rebound than went in',
      () => press({ ...question, load: 90, turf: { ...turf, rebound: 1.01 } }),
      'turf.rebound',
    ],
    [
      'more left for good than the rebound leaves',
      () => press({ ...question, load: 90, turf: { ...turf, rebound: 0.7, lasting: 0.4 } }),
      'turf.lasting',
    ],
    [
      'a spread below zero',
      () => press({ ...question, load: 90, turf: { ...turf, spread: -1 * mm } }),
      'turf.spread',
    ],
    [
      'rolling at no speed',
      () => press({ ...question, load: 90, condition: { kind: 'mowing', speed: 0 } }),
      'condition.speed',
    ],
  ])('%s', (_, ask, quantity) => {
    expect(ask).toThrow(InputError)
    expect(ask).toThrow(expect.objectContaining({ quantity }))
  })

  test.each([
    ['a smooth face', { kind: 'smooth' } as const, 1 * mm, 'surface.kind'],
    ['no sinkage', surface, 0, 'sinkage'],
    ['a sinkage at the locking depth', surface, 5 * mm, 'sinkage'],
    ['a land wider than the pitch', { ...surface, land: 13 * mm }, 1 * mm, 'surface.land'],
  ])('acrossGrooves: %s', (_, face, sinkage, quantity) => {
    const ask = () => acrossGrooves({ surface: face, turf, sinkage })
    expect(ask).toThrow(InputError)
    expect(ask).toThrow(expect.objectContaining({ quantity }))
  })

  test('nothing where turf bottoms out: that is an answer', () => {
    const answers: readonly (Pressed | ReturnType<typeof loadAt>)[] = [
      press({ ...question, load: 1e6 }),
      loadAt({ ...question, sinkage: 4.96 * mm }),
    ]
    for (const answer of answers) {
      expect(answer).toMatchObject({ outcome: 'bottomed out', where: 'roller', lockingDepth: 5 * mm })
      if (answer.outcome !== 'settled')
        expect(sentence(answer)).toMatch(/^the turf bottoms out under the roller/)
    }
    expect(loadAt({ ...question, sinkage: 4.94 * mm }).outcome).toBe('settled')
  })

  test('nothing at no sinkage: it takes no load', () => {
    expect(loadAt({ ...question, sinkage: 0 })).toMatchObject({ outcome: 'settled', load: 0, lineLoad: 0 })
  })
})
