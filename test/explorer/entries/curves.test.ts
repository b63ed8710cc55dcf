import { formulaLaw, loadAt, type Scenario, sinkageAt, softnessOf } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { presentTurf } from '../../../packages/explorer/src/book/index.ts'
import { equalLaws, WRITTEN } from '../../../packages/explorer/src/entries/curves/equalLaws.ts'
import { curvesFinding } from '../../../packages/explorer/src/entries/curves/finding.ts'
import { type CurvesSettings, curves } from '../../../packages/explorer/src/entries/curves/kind.ts'
import { pointAt } from '../../../packages/explorer/src/entries/curves/oneCurve.ts'
import { OVERS } from '../../../packages/explorer/src/entries/curves/questions.ts'
import { settledOf } from '../../../packages/explorer/src/entries/settled.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'
import { answered, asked, reader, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const mm = 1e-3
const several: Scenario = {
  ...scenario,
  turfs: {
    ...scenario.turfs,
    'mill field': { law: { kind: 'power', softness: 0.8 * mm, exponent: 0.8 }, spread: 2 * mm },
    read: {
      law: {
        kind: 'measured',
        points: [
          { sinkage: 0.15 * mm, pressure: 6e3 },
          { sinkage: 0.3 * mm, pressure: 14e3 },
        ],
      },
    },
    locking: { law: { kind: 'logarithmic', softness: 0.2 * mm, lockingDepth: 0.4 * mm } },
  },
}

const fine = (settings: Partial<CurvesSettings>, on = several, answers = {}) =>
  answered(curves.refine?.(asked(curves, on, settings, answers).input, () => {}))
const draft = (settings: Partial<CurvesSettings>, on = several) =>
  answered(curves.compute(asked(curves, on, settings).input))

/** Between points a curve is read off along a straight line on logarithmic axes. */
const readOff = stated(2e-4)

describe('curves of load', () => {
  it.each(OVERS)('over %s begin at nothing and go deeper with every newton', over => {
    for (const { points } of fine({ over }).curves) {
      expect(points[0]).toEqual({ x: 0, sinkage: 0 })
      for (const [i, point] of points.slice(1).entries()) {
        expect(point.x).toBeGreaterThan(points[i]?.x ?? Number.NaN)
        expect(point.sinkage).toBeGreaterThan(points[i]?.sinkage ?? Number.NaN)
      }
    }
  })

  it.each(OVERS)('over %s hold the case in hand on one of them', over => {
    const { curves: found, present } = fine({ over })
    const mine = found.filter(curve => curve.present)
    expect(mine.length).toBe(1)
    expectNear(pointAt(mine[0]?.points ?? [], present.x)?.sinkage ?? 0, present.sinkage, readOff)
    const settled = settledOf(several)
    if (settled.outcome !== 'settled') throw new Error(settled.outcome)
    expect(present).toEqual({ x: settled.front.load, sinkage: settled.front.sinkage })
  })

  it('have every other roller on its own curve, under its own load', () => {
    for (const { own, points, present } of fine({ over: 'rollers' }).curves) {
      if (present || !own) continue
      expectNear(pointAt(points, own.x)?.sinkage ?? 0, own.sinkage, readOff)
    }
  })

  it('lie where the model has them', () => {
    const { curves: found } = fine({ over: 'turfs' })
    const turf = several.turfs['mill field']
    const curve = found.find(({ name }) => name.of === 'reader' && name.name === 'mill field')
    if (!turf || !curve) throw new Error('no mill field')
    const { condition, unit } = several
    for (const { x, sinkage } of curve.points.slice(1, -1)) {
      const loaded = loadAt({ roller: unit.frontRoller, turf, condition, sinkage })
      if (loaded.outcome === 'settled') expectNear(x, loaded.load, identity)
    }
  })

  it('end, and say so, where the turf bottoms out', () => {
    const { curves: found, most } = fine({ over: 'turfs' })
    const locking = found.find(({ name }) => name.of === 'reader' && name.name === 'locking')
    expect(locking?.bottomsOut).toBe(true)
    expect(locking?.points.at(-1)?.x).toBeLessThan(most)
    expect(locking?.points.at(-1)?.sinkage).toBeLessThan(0.4 * mm)
  })

  it('know where a measured law is only carried on', () => {
    const { curves: found, most } = fine({ over: 'turfs' })
    const read = found.find(({ name }) => name.of === 'reader' && name.name === 'read')
    const knownTo = read?.knownTo ?? Number.NaN
    expect(knownTo).toBeLessThan(most)
    expectNear(pointAt(read?.points ?? [], knownTo)?.sinkage ?? 0, 0.3 * mm, readOff)
    expect(found.find(({ present }) => present)?.knownTo).toBe(null)
  })

  it('are drafted to within a pixel', () => {
    const coarse = draft({ over: 'rollers' })
    const { curves: found } = fine({ over: 'rollers' })
    const deepest = Math.max(...found.map(({ points }) => points.at(-1)?.sinkage ?? 0))
    const pixel = deepest / 400
    for (const [i, { points }] of found.entries()) {
      for (const { x, sinkage } of points) {
        const drafted = pointAt(coarse.curves[i]?.points ?? [], x)?.sinkage ?? Number.NaN
        expect(Math.abs(drafted - sinkage)).toBeLessThan(pixel)
      }
    }
  })

  it('are those of both conditions side by side', () => {
    const found = fine({ over: 'conditions' }).curves
    expect(found.map(({ present }) => present)).toEqual([true, false])
    // Turf that gives back a part only carries less behind a rolling roller, so that it sinks further.
    expect(found[1]?.atPresent).toBeGreaterThan(found[0]?.atPresent ?? Number.NaN)
  })

  it('count a fitted roller that is none of the rack', () => {
    const unit = { ...several.unit, frontRoller: { ...several.unit.frontRoller, mass: 6.6 } }
    const found = fine({ over: 'rollers' }, { ...several, unit }).curves
    expect(found.filter(({ present }) => present).map(({ name }) => name.of)).toEqual(['fitted'])
    expect(found.length).toBe(6)
  })
})

describe('kinds of law at one softness', () => {
  const turf = presentTurf(several)

  it('are every kind there is, the turf’s own among them', () => {
    const kinds = equalLaws(turf).map(({ kind }) => kind)
    expect(kinds.length).toBe(7)
    expect(equalLaws(turf).find(({ kind }) => kind === turf.law.kind)?.turf).toBe(turf)
  })

  it('sink by the softness at 10 kPa, all of them', () => {
    for (const { turf: other } of equalLaws(turf)) {
      expectNear(softnessOf(other.law), softnessOf(turf.law), stated(1e-9))
      expectNear(sinkageAt(other.law, 10e3), softnessOf(turf.law), stated(1e-9))
    }
  })

  it('have an example that the parser makes the same of', async () => {
    const { expression, values } = WRITTEN
    const made = await formulaLaw({ expression, values })
    if (!made.ok) throw new Error('refused')
    expect(made.law.program).toEqual(WRITTEN.program)
  })

  it('part under the load of the roller', () => {
    const depths = fine({ over: 'laws' }).curves.map(({ atPresent }) => atPresent ?? 0)
    expect(Math.max(...depths) / Math.min(...depths)).toBeGreaterThan(1.05)
  })
})

describe('curves of pressure', () => {
  it('mark the definition of softness on the curve', () => {
    const { softness, curves: found } = fine({ show: 'pressure' })
    expect(softness).toEqual({ x: 10e3, sinkage: softnessOf(presentTurf(several).law) })
    const points = found.find(({ present }) => present)?.points ?? []
    expectNear(pointAt(points, 10e3)?.sinkage ?? 0, softness?.sinkage ?? Number.NaN, readOff)
  })

  it('have one curve for one turf, with the rollers as marks on it', () => {
    const { curves: found } = fine({ show: 'pressure', over: 'rollers' })
    expect(found.filter(({ points }) => points.length > 0).length).toBe(1)
    const { law } = presentTurf(several)
    for (const { own } of found) expectNear(sinkageAt(law, own?.x ?? 0), own?.sinkage ?? 0, identity)
  })
})

describe('readings on the curves', () => {
  const rows = [{ load: 120, sinkage: 0.4 * mm, set: 'A' }, { load: 90, sinkage: null, set: 'A' }, 'nothing']

  it('are those of the entry that is named, as far as they are readings', () => {
    const { readings } = fine({ readings: 'ours' }, several, { ours: { rows } })
    expect(readings).toEqual([{ x: 120, sinkage: 0.4 * mm, set: 'A' }])
  })

  it('are none while that entry has no answer', () => {
    expect(fine({ readings: 'ours' }, several).readings).toEqual([])
  })

  it('must be of an entry of the book', () => {
    const { settings } = asked(curves, several, { readings: 'gone' })
    expect(curves.problems(settings, several, [])).toMatchObject([{ path: 'readings', received: 'gone' }])
    expect(curves.needs(settings, [])).toEqual([])
    const entries = [{ id: 'gone', kind: 'readings', beside: false, settings: {} }]
    expect(curves.problems(settings, several, entries)).toEqual([])
    expect(curves.needs(settings, entries)).toEqual(['gone'])
  })
})

describe('the finding of curves', () => {
  const find = (settings: Partial<CurvesSettings>) => {
    const { settings: complete } = asked(curves, several, settings)
    return curvesFinding(shownOf(complete, fine(settings), several))
  }
  const { present } = fine({})

  it('says what the present load does, and under which roller it would do least and most', () => {
    const sentence = find({ over: 'rollers' })
    expect(sentence).toContain(reader.format(present.x, 'load'))
    expect(sentence).toContain(reader.format(present.sinkage, 'sinkage'))
    expect(sentence).toMatch(/peg 5 most/)
  })

  it('says what softness is where pressure is shown', () => {
    expect(find({ show: 'pressure' })).toMatch(/sinks 0\.30.mm at 10 kPa: that is the softness/)
  })
})
