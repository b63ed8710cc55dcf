import { bounce, rippleLength } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { across, bounded } from '../../support/arbitraries.ts'
import { expectNear, identity, ofSize, stated } from '../../support/tolerance.ts'

const GRAVITY = 9.80665
const supports = fc.record({ load: across(40, 400), stiffness: across(1e4, 1e6) })
const questions = fc.record({ front: supports, rear: supports, wheelbase: across(0.15, 0.5) })
const inertias = across(0.05, 5)

function modesOf(question: Parameters<typeof bounce>[0]) {
  const found = bounce(question)
  return found.kind === 'modes' ? found : expect.fail(found.kind)
}

/** Mass and distances of the centre of gravity from both axles. */
function massOf({ front, rear, wheelbase }: Parameters<typeof bounce>[0]) {
  const mass = (front.load + rear.load) / GRAVITY
  const a = (rear.load * wheelbase) / (front.load + rear.load)
  return { mass, a, b: wheelbase - a }
}

describe('closed forms', () => {
  test('without a moment of inertia each end swings alone: √(g k/W)/2π', () => {
    const front = { load: 150, stiffness: 2e5 }
    const rear = { load: 180, stiffness: 3e5 }
    const found = bounce({ front, rear, wheelbase: 0.2 })
    if (found.kind !== 'each end alone') return expect.fail(found.kind)
    expectNear(found.front, Math.sqrt((GRAVITY * 2e5) / 150) / (2 * Math.PI), identity)
    expectNear(found.rear, Math.sqrt((GRAVITY * 3e5) / 180) / (2 * Math.PI), identity)
  })

  test('with I = m a b both ends do swing alone, each mode still over the other axle', () => {
    fc.assert(
      fc.property(questions, question => {
        const { mass, a, b } = massOf(question)
        const { heave, pitch } = modesOf({ ...question, inertia: mass * a * b })
        const alone = bounce(question)
        if (alone.kind !== 'each end alone') return expect.fail(alone.kind)
        const close = stated(1e-7)
        expectNear(Math.max(heave.frequency, pitch.frequency), Math.max(alone.front, alone.rear), close)
        expectNear(Math.min(heave.frequency, pitch.frequency), Math.min(alone.front, alone.rear), close)
      }),
      bounded(100),
    )
  })

  test('alike at both ends, it heaves as a whole and pitches about its middle', () => {
    const end = { load: 160, stiffness: 2.5e5 }
    const { heave, pitch } = modesOf({ front: end, rear: end, wheelbase: 0.24, inertia: 0.4 })
    expect(heave.node).toBeNull()
    expectNear(heave.frequency, Math.sqrt((GRAVITY * 2.5e5) / 160) / (2 * Math.PI), identity)
    expectNear(pitch.node ?? Number.NaN, 0.12, identity)
    expectNear(pitch.frequency, Math.sqrt((5e5 * 0.12 ** 2) / 0.4) / (2 * Math.PI), identity)
  })
})

describe('a second method', () => {
  test('each mode moves as its equations say: the forces of the springs answer its own accelerations', () => {
    fc.assert(
      fc.property(questions, inertias, (question, inertia) => {
        const { front, rear } = question
        const { mass, a, b } = massOf(question)
        const { heave, pitch } = modesOf({ ...question, inertia })
        for (const { frequency, node } of [heave, pitch]) {
          // turning by 1 about the node, or rising by 1
          const [rise, turn] = node === null ? [1, 0] : [-(node - a), 1]
          const squared = (2 * Math.PI * frequency) ** 2
          const frontForce = front.stiffness * (rise - a * turn)
          const rearForce = rear.stiffness * (rise + b * turn)
          const size = Math.abs(frontForce) + Math.abs(rearForce)
          expectNear(mass * squared * rise, frontForce + rearForce, ofSize(size, stated(1e-9)))
          expectNear(inertia * squared * turn, b * rearForce - a * frontForce, ofSize(size, stated(1e-9)))
        }
      }),
      bounded(200),
    )
  })

  test('the two nodes lie on either side of the centre of gravity, √(I/m) between them in the mean', () => {
    fc.assert(
      fc.property(questions, inertias, (question, inertia) => {
        const { mass, a } = massOf(question)
        const { heave, pitch } = modesOf({ ...question, inertia })
        fc.pre(heave.node !== null && pitch.node !== null)
        expectNear((heave.node! - a) * (pitch.node! - a), -inertia / mass, stated(1e-6))
        expect(Math.abs(heave.node! - a)).toBeGreaterThanOrEqual(Math.abs(pitch.node! - a) * (1 - 1e-9))
      }),
      bounded(200),
    )
  })
})

test('ripple length is what is travelled in one swing', () => {
  expectNear(rippleLength(1.4, 20), 0.07, identity)
})

describe('refuses', () => {
  const end = { load: 160, stiffness: 2.5e5 }
  test.each([
    ['front.load', { front: { ...end, load: 0 }, rear: end, wheelbase: 0.2 }],
    ['rear.stiffness', { front: end, rear: { ...end, stiffness: Number.NaN }, wheelbase: 0.2 }],
    ['wheelbase', { front: end, rear: end, wheelbase: -1 }],
    ['inertia', { front: end, rear: end, wheelbase: 0.2, inertia: 0 }],
  ])('%s', (path, question) => {
    expect(() => bounce(question)).toThrow(path)
  })
  test('a ripple of no frequency', () => expect(() => rippleLength(1, 0)).toThrow('frequency'))
})
