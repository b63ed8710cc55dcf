import {
  acrossGrooves,
  loadAt,
  type Patched,
  type PatchQuestion,
  type PressureLaw,
  patch,
  press,
  type Roller,
} from '@swardsink/model'
import { describe, expect, test } from 'vitest'
import { expectNear, identity, stated } from '../../support/tolerance.ts'

const mm = 1e-3
const softness = 0.6 * mm
const surface = { kind: 'grooved', pitch: 12 * mm, land: 5 * mm, depth: 5 * mm } as const
const grooved: Roller = { mass: 5.2, diameter: 58 * mm, length: 0.55, surface }
const smooth: Roller = { ...grooved, surface: { kind: 'smooth' } }
const standing = { kind: 'standing' } as const

const laws: readonly (readonly [string, PressureLaw])[] = [
  ['linear', { kind: 'linear', softness }],
  ['exponent 0.6', { kind: 'power', softness, exponent: 0.6 }],
  ['exponent 1.5', { kind: 'power', softness, exponent: 1.5 }],
  ['stiffening', { kind: 'stiffening', softness, lockingDepth: 6 * mm }],
]

function settled(found: Patched) {
  return found.outcome === 'settled' ? found : expect.fail(found.outcome)
}

const solve = (question: PatchQuestion) => settled(patch(question))

/** ∫∫ of a field over the quarter cell by the trapezium of its own lines. */
function integral(along: readonly number[], across: readonly number[], values: readonly number[]): number {
  const shares = (at: readonly number[]) => at.map((x, i) => ((at[i + 1] ?? x) - (at[i - 1] ?? x)) / 2)
  const [rows, columns] = [shares(along), shares(across)]
  return values.reduce(
    (sum, value, k) => sum + value * rows[Math.floor(k / columns.length)]! * columns[k % columns.length]!,
    0,
  )
}

describe('limits', () => {
  test.each(laws)('under a very wide contact the mat hangs as across the grooves: %s', (_name, law) => {
    const turf = { law, spread: 2 * mm }
    const wide = { ...grooved, diameter: 120 }
    for (const sinkage of [0.9 * mm, 6.6 * mm].filter(
      depth => law.kind !== 'stiffening' || depth < 5.9 * mm,
    )) {
      const { pressure, edgeForce, grooveFloor } = solve({ roller: wide, turf, sinkage, cells: 256 })
      const exact = acrossGrooves({ surface, turf, sinkage })
      const lowest = pressure.depths[pressure.across.length - 1]!
      expectNear(lowest, exact.lowestSinkage, stated(5e-4), 'mid-gap')
      expectNear(edgeForce, exact.edgeForce, stated(5e-4), 'edge force')
      expect(grooveFloor).toBe(exact.floor)
    }
  })

  test.each(laws)('a groove without gap or depth is a smooth roller: %s', (_name, law) => {
    const turf = { law, spread: 2 * mm }
    const question = { turf, sinkage: 0.9 * mm, cells: 64 }
    const flat = solve({ ...question, roller: smooth })
    for (const none of [{ land: surface.pitch }, { depth: 0 }]) {
      const same = solve({ ...question, roller: { ...grooved, surface: { ...surface, ...none } } })
      expectNear(same.lineLoad, flat.lineLoad, identity)
    }
  })

  test('a groove next to nothing wide carries what the smooth roller carries', () => {
    const turf = { law: laws[0]![1], spread: 2 * mm }
    const question = { turf, sinkage: 0.9 * mm, cells: 128 }
    const narrow = { ...grooved, surface: { ...surface, land: 11.99 * mm } }
    const [gap, none] = [narrow, smooth].map(roller => solve({ ...question, roller }).lineLoad)
    expectNear(gap!, none!, stated(2e-4))
  })

  test('turf with hardly any spread is nearly independent springs, and without any is exactly that', () => {
    const law = laws[0]![1]
    const question = { roller: grooved, sinkage: 0.9 * mm, cells: 256 }
    const springs = loadAt({ ...question, turf: { law }, condition: standing })
    if (springs.outcome !== 'settled') return expect.fail(springs.outcome)
    const none = solve({ ...question, turf: { law } })
    expectNear(none.lineLoad, springs.lineLoad, identity)
    expect([none.cycles, none.meshError, none.fromPress, none.edgeForce]).toEqual([0, 0, 0, 0])
    const little = solve({ ...question, turf: { law, spread: 0.02 * mm } })
    // two edges of l a pitch of land and lands that end in l: 1 % at the most
    expect(little.lineLoad).toBeGreaterThan(springs.lineLoad)
    expect(little.lineLoad).toBeLessThan(springs.lineLoad * 1.01)
  })

  test('where the spread is narrow the quick model is right to what it states', () => {
    const turf = { law: laws[0]![1], spread: 0.6 * mm }
    const { fromPress, meshError } = solve({ roller: grooved, turf, sinkage: 0.9 * mm, cells: 256 })
    expect(Math.abs(fromPress)).toBeLessThan(0.002 + meshError)
  })
})

describe('balance', () => {
  test.each(laws)(
    'pressures and edge forces on the roller come to the load of the turf: %s',
    (_name, law) => {
      for (const arc of ['parabola', 'circle'] as const) {
        const turf = { law, spread: 2 * mm }
        const { pressure, edges, lineLoad, edgePart } = solve({
          roller: { ...grooved, surface: { ...surface, depth: 0.5 * mm } },
          turf,
          sinkage: 1.9 * mm,
          cells: 128,
          arc,
        })
        const { along, across, values } = pressure
        // the column on the land edge is pressed over the land's half of its cells only
        const edge = across.findIndex(y => y >= surface.land / 2 - 1e-9)
        const tooWide = (across[edge + 1]! - across[edge]!) / 2
        const column = values.filter((_, k) => k % across.length === edge)
        const areas =
          integral(along, across, values) -
          tooWide *
            integral(
              along,
              [0, 1],
              column.flatMap(p => [p, p]),
            )
        const lines = integral(
          along,
          [0, 1],
          edges.force.flatMap(force => [force, force]),
        )
        expectNear((4 * (areas + lines)) / surface.pitch, lineLoad, stated(3e-6))
        expectNear((4 * lines) / surface.pitch / lineLoad, edgePart, identity)
      }
    },
  )

  test('the load that a sinkage needs presses the roller to that sinkage', () => {
    for (const [, law] of laws)
      for (const roller of [grooved, smooth]) {
        const question = { roller, turf: { law, spread: 2 * mm }, cells: 64 }
        const { load } = solve({ ...question, sinkage: 0.9 * mm })
        const back = solve({ ...question, load })
        expectNear(back.load, load, stated(2e-6))
        expectNear(back.sinkage, 0.9 * mm, stated(4e-6))
      }
  })

  test('load and every pressure grow with sinkage', () => {
    const question = { roller: grooved, turf: { law: laws[1]![1], spread: 2 * mm }, cells: 48 }
    const deeper = [0.3, 0.6, 1.2, 2.4].map(z => solve({ ...question, sinkage: z * mm }))
    for (const [i, { load, pressure }] of deeper.entries()) {
      expect(Math.min(...pressure.values)).toBeGreaterThanOrEqual(0)
      expect(load).toBeGreaterThan(deeper[i - 1]?.load ?? 0)
    }
  })

  test('metres, newtons and seconds of another size change nothing', () => {
    const scale = 7.3
    const bigger = {
      ...grooved,
      diameter: scale * grooved.diameter,
      length: scale * grooved.length,
      surface: {
        ...surface,
        pitch: scale * surface.pitch,
        land: scale * surface.land,
        depth: scale * surface.depth,
      },
    }
    const one = solve({
      roller: grooved,
      turf: { law: { kind: 'linear', softness }, spread: 2 * mm },
      sinkage: mm,
      cells: 64,
    })
    const other = solve({
      roller: bigger,
      turf: { law: { kind: 'linear', softness: scale * softness }, spread: scale * 2 * mm },
      sinkage: scale * mm,
      cells: 64,
    })
    // pressure at equal strain is the same; a line load grows with lengths
    expectNear(other.lineLoad, scale * one.lineLoad, stated(1e-10))
    expect(other.cycles).toBe(one.cycles)
  })
})

describe('what is told', () => {
  test('the part done only grows, and ends at one, for a sinkage and for a load', () => {
    for (const asked of [{ sinkage: 0.9 * mm }, { load: 90 }]) {
      const told: number[] = []
      const turf = { law: laws[0]![1], spread: 2 * mm }
      solve({ roller: grooved, turf, cells: 64, onStep: done => told.push(done), ...asked })
      expect(told.length).toBeGreaterThan(8)
      expect(told).toEqual([...told].sort((a, b) => a - b))
      expect(told.at(-1)).toBe(1)
    }
  })

  test('the result survives JSON', () => {
    const found = solve({ roller: grooved, turf: { law: laws[0]![1], spread: mm }, sinkage: mm, cells: 16 })
    expect(JSON.parse(JSON.stringify(found))).toEqual(found)
  })

  test('contact ends where the closed balance of a smooth roller says, to a cell', () => {
    for (const [, law] of laws) {
      const turf = { law, spread: 2 * mm }
      const found = solve({ roller: smooth, turf, load: 90, cells: 256 })
      const pressed = press({ roller: smooth, turf, load: 90, condition: standing })
      if (pressed.outcome !== 'settled') return expect.fail(pressed.outcome)
      const [end] = found.outline.land
      const cell = found.pressure.along[1]!
      expect(Math.abs(end!.along - pressed.lengthAhead)).toBeLessThan(cell)
    }
  })

  test('turf that locks before it carries the load has bottomed out', () => {
    const turf = { law: { kind: 'logarithmic', softness, lockingDepth: mm } as const, spread: mm }
    expect(patch({ roller: grooved, turf, load: 9e5, cells: 32 }).outcome).toBe('bottomed out')
    expect(patch({ roller: grooved, turf, sinkage: 0.995 * mm, cells: 32 }).outcome).toBe('bottomed out')
  })
})

describe('refuses', () => {
  const asked = { roller: grooved, turf: { law: laws[0]![1], spread: mm }, sinkage: mm, cells: 32 }
  test.each([
    [
      'a mowing roller',
      { condition: { kind: 'mowing', speed: 1 } as const },
      'condition.kind: expected standing',
    ],
    ['too few cells', { cells: 8 }, 'cells: expected at least 16'],
    ['half a cell', { cells: 20.5 }, 'cells: expected a whole number'],
    ['no sinkage', { sinkage: 0 }, 'sinkage: expected more than 0 mm'],
    ['an arc it does not know', { arc: 'ellipse' as 'circle' }, 'arc: expected one of parabola, circle'],
    ['a roller without a diameter', { roller: { ...grooved, diameter: 0 } }, 'roller.diameter: expected'],
  ])('%s', (_what, change, said) => {
    expect(() => patch({ ...asked, ...change })).toThrow(said)
  })
})
