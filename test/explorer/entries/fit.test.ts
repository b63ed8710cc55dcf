import { fitCompliance, readTable, type Scenario, settle, softnessOf } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { fieldsOf } from '../../../packages/explorer/src/book/index.ts'
import { alongsOf, fitSpec, scatterOf, setsSpec } from '../../../packages/explorer/src/entries/fit/drawing.ts'
import { fitFinding, fitNote, reasonWords } from '../../../packages/explorer/src/entries/fit/finding.ts'
import { fittedTurf, hereOf, reachOf } from '../../../packages/explorer/src/entries/fit/here.ts'
import { type FitResult, type Fitted, fit } from '../../../packages/explorer/src/entries/fit/kind.ts'
import { nextWords } from '../../../packages/explorer/src/entries/fit/nextWords.ts'
import { intervalReasons, numberRows } from '../../../packages/explorer/src/entries/fit/numbers.ts'
import { leanedOn } from '../../../packages/explorer/src/entries/fit/question.ts'
import { type FitSettings, LAWS, readSettings } from '../../../packages/explorer/src/entries/fit/settings.ts'
import { residualTable } from '../../../packages/explorer/src/entries/fit/tables.ts'
import { withFittedTurf } from '../../../packages/explorer/src/entries/fit/useTurf.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'
import { answered, asked, reader, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()

/** Made up: two greens under a plate, with a wobble, as a table has them. */
function plates(
  q: { sets?: readonly (readonly [string, number])[]; head?: string; tail?: string } = {},
): string {
  const {
    sets = [
      ['orchard', 0.6],
      ['nursery', 0.9],
    ],
    head = '',
    tail = '',
  } = q
  const rows = sets.flatMap(([set, softness]) =>
    [6, 12, 24, 48].flatMap((load, at) =>
      [0, 1].map(
        i =>
          `${set},50,${load},${(softness * (load / 20) ** 0.8 + 0.01 * (((at * 3 + i * 2) % 5) - 2)).toFixed(3)}${tail}`,
      ),
    ),
  )
  return [`set,plate_diameter_mm,load_N,sinkage_mm${head}`, ...rows].join('\n')
}

function given(text: string, settings: Partial<FitSettings> = {}, on: Scenario = scenario) {
  const { readings } = readTable(text)
  return asked(fit, on, { readings: 'ours', ...settings }, { ours: { readings } })
}
function whole(text: string, settings: Partial<FitSettings> = {}, on: Scenario = scenario) {
  const q = given(text, settings, on)
  const result = answered<FitResult>(fit.refine?.(q.input, () => {}))
  return { ...q, result, shown: shownOf(q.settings, result, on) }
}
function found(result: FitResult): Fitted {
  if (result.outcome === 'none') throw new Error(JSON.stringify(result))
  return result
}

describe('a fit in the book', () => {
  it('says what the model says of the same readings', () => {
    const { readings } = readTable(plates())
    const direct = fitCompliance({
      readings,
      law: 'power',
      free: [{ name: 'softness', per: 'set' }, 'exponent'],
      noise: { kind: 'estimated' },
    })
    if (direct.outcome === 'failed') throw new Error(direct.why)
    const { fit: ours } = found(whole(plates()).result)
    for (const { name, set, value } of direct.parameters) {
      const same = ours.parameters.find(one => one.name === name && one.set === set)
      expectNear(same?.value ?? Number.NaN, value, identity)
    }
  })

  it('drafts a few plates at once, and leaves the rest to the worker', () => {
    const quick = fit.compute(given(plates()).input)
    expect(found(answered<FitResult>(quick)).judged).toBe(null)
    const spread = given(plates(), { held: { spread: 1e-3 } })
    expect(fit.compute(spread.input)).toEqual({ outcome: 'later' })
    expect(found(whole(plates()).result).judged?.judgement.residuals.residuals).toHaveLength(16)
  })

  it('is not asked again for a roller’s mass when it leans on plates', () => {
    const heavier: Scenario = {
      ...scenario,
      unit: { ...scenario.unit, frontRoller: { ...scenario.unit.frontRoller, mass: 9 } },
    }
    const same = (settings: Partial<FitSettings>) =>
      JSON.stringify(given(plates(), settings).input) ===
      JSON.stringify(given(plates(), settings, heavier).input)
    expect(same({})).toBe(true)
    expect(same({ next: true })).toBe(false)
  })

  it('leans on the faces of rollers under known loads, and on the unit where that presses', () => {
    const [name = ''] = Object.keys(scenario.rollers)
    const known = readTable(`set,roller,load_N,sinkage_mm\nA,"${name}",100,0.3\nA,"${name}",150,0.4`).readings
    const face = leanedOn(known, scenario)
    expect(Object.keys(face?.rollers ?? {})).toEqual([name])
    expect(face?.rollers[name]).toEqual({ ...scenario.rollers[name], mass: 1 })
    const dropped = readTable(`set,roller,point,drop_mm\nA,"${name}",0,0.3\nA,"${name}",1,0.4`).readings
    expect(leanedOn(dropped, scenario)?.unit).toBe(scenario.unit)
    expect(leanedOn(readTable(plates()).readings, scenario)).toBe(undefined)
  })

  it('offers its numbers to formulas: those of the set that is drawn, and what all share', () => {
    const { result } = whole(plates(), { set: 'nursery' })
    const offers = fit.offers?.(result) ?? {}
    const nursery = found(result).fit.parameters.find(
      ({ name, set }) => name === 'softness' && set === 'nursery',
    )
    expect(offers.softness).toEqual({ quantity: 'softness', value: nursery?.value })
    expect(offers.exponent).toMatchObject({ quantity: 'exponent' })
    expect(offers.readings).toEqual({ quantity: 'count', value: 16 })
  })

  it('takes the scatter as known where every reading says its own, unless told', () => {
    const own = plates({ head: ',sd_mm', tail: ',0.02' })
    expect(given(own).input.question.noise).toMatchObject({ kind: 'known' })
    expect(given(plates()).input.question.noise).toEqual({ kind: 'estimated' })
    expect(given(own, { noise: 'estimated' }).input.question.noise).toEqual({ kind: 'estimated' })
    const known = found(whole(plates(), { noise: 'known', standardDeviation: 2e-5 }).result)
    expectNear(scatterOf(known) ?? 0, 2e-5, identity)
  })

  it('never fits a height, and says the rows it leaves out', () => {
    const text = `${plates({ head: ',height_mm,pass', tail: ',,1' })}\northard,50,24,0.9,,2\norchard,,,,3.1,`
    const { result, shown } = whole(text)
    expect(found(result).fit.readings).toHaveLength(16)
    expect(fitNote(shown)).toContain('1 not fitted (18)')
  })

  it('can be fitted with every law, also that of the turf in hand', () => {
    for (const law of LAWS) {
      const { result } = whole(plates({ sets: [['A', 0.6]] }), { law })
      expect([law, result.outcome]).toEqual([law, 'fitted'])
    }
  })
})

describe('a fit that cannot be made', () => {
  it('keeps its settings in view and says what to change', () => {
    const few = whole('set,plate_diameter_mm,load_N,sinkage_mm\nA,50,20,0.6')
    expect(few.result).toMatchObject({ outcome: 'none', reason: 'problems' })
    expect(reasonWords(few.shown)).toMatch(/at least 2 readings for 2 free numbers/)
    const named = whole('set,roller,load_N,sinkage_mm\nA,nobody,100,0.3\nA,nobody,120,0.4\nA,nobody,140,0.5')
    expect(reasonWords(named.shown)).toMatch(/row 2, roller/)
    expect(fitFinding(few.shown)).toBe(null)
  })

  it('asks for readings where there are none, at once', () => {
    const { input, settings } = asked(fit, scenario, {}, {})
    const answer = fit.compute(input)
    expect(answer).toMatchObject({ outcome: 'answered', whole: true, result: { reason: 'no readings' } })
    expect(reasonWords(shownOf(settings, answered<FitResult>(answer), scenario))).toMatch(/readings/)
    expect(fit.offers?.(answered<FitResult>(answer))).toEqual({})
  })

  it('refuses to lean on an entry that has no readings', () => {
    const settings = { ...readSettings(fieldsOf({}, 'entry', [])), readings: 'map' }
    expect(
      fit.problems(settings, scenario, [{ id: 'map', kind: 'map', beside: false, settings: {} }]),
    ).toMatchObject([{ path: 'readings' }])
  })
})

describe('what a fit says', () => {
  it('is how soft, how sure, and what that makes of the unit in hand', () => {
    const { shown, result } = whole(plates({ sets: [['A', 0.6]] }))
    const sentence = fitFinding(shown) ?? ''
    const softness = found(result).fit.parameters.find(({ name }) => name === 'softness')
    expect(sentence).toContain(`Softness ${reader.format(softness?.value ?? 0, 'softness')}, with 95`)
    const turf = fittedTurf(found(result).fit, null, scenario)
    const settled = settle({ ...scenario, turf })
    if (settled.outcome !== 'settled') throw new Error(settled.outcome)
    expect(sentence).toContain(reader.format(settled.effectiveHeight.middle, 'height', { unit: false }))
    expect(sentence).toMatch(/±/)
  })

  it('does not foretell from two sets what two sets cannot', () => {
    const { shown } = whole(plates())
    expect(fitFinding(shown)).toMatch(/The softness of 2 sets runs from .* \(orchard\) to .* \(nursery\)/)
    expect(fitFinding(shown)).not.toMatch(/median/)
    const three = whole(
      plates({
        sets: [
          ['a', 0.6],
          ['b', 0.7],
          ['c', 0.8],
          ['d', 0.66],
        ],
      }),
    )
    expect(fitFinding(three.shown)).toMatch(/median of their like/)
  })

  it('has an interval of the height as wide as the model’s slopes make it', () => {
    const { fit: ours } = found(whole(plates({ sets: [['A', 0.6]] })).result)
    const here = hereOf(ours, null, scenario)
    const softness = ours.parameters.find(({ name }) => name === 'softness')
    const exponent = ours.parameters.find(({ name }) => name === 'exponent')
    const [s, n] = [softness?.value ?? 0, exponent?.value ?? 0]
    const height = (ds: number, dn: number) => {
      const turf = {
        ...fittedTurf(ours, null, scenario),
        law: { kind: 'power', softness: s + ds, exponent: n + dn } as const,
      }
      const settled = settle({ ...scenario, turf })
      return settled.outcome === 'settled' ? settled.effectiveHeight.middle : Number.NaN
    }
    const [es, en] = [1e-3 * s, 1e-3 * n]
    const slopes = [(height(es, 0) - height(-es, 0)) / 2 / es, (height(0, en) - height(0, -en)) / 2 / en]
    const variance = slopes.reduce(
      (sum, a, i) =>
        sum + slopes.reduce((part, b, j) => part + a * b * (ours.covariance?.[i]?.[j] ?? Number.NaN), 0),
      0,
    )
    const half = (reachOf(ours) ?? 0) * Math.sqrt(variance)
    // Central differences of this step are good to a part in 1e5.
    expectNear(here?.half ?? 0, half, stated(1e-4))
  })

  it('has words where there is no number', () => {
    const { result } = whole(plates({ sets: [['A', 0.6]] }), {
      roles: { exponent: 'held' },
      held: { exponent: 0.8, spread: 1e-3 },
    })
    const rows = numberRows(found(result), reader, 'drawn')
    expect(rows.filter(({ interval }) => interval === 'held, not fitted').map(({ name }) => name)).toEqual([
      'exponent',
      'spread, mm',
    ])
    const alike = 'set,plate_diameter_mm,load_N,sinkage_mm\nA,50,20,0.6\nA,50,20,0.62\nA,50,20,0.61'
    const intervals = (law: FitSettings['law']) => {
      const told = found(whole(alike, { law }).result)
      expect(told.judged?.judgement.cannotTell.length).toBeGreaterThan(0)
      expect(intervalReasons(told, reader).length).toBeGreaterThan(0)
      return numberRows(told, reader, 'drawn').map(({ interval }) => interval)
    }
    expect(intervals('power')).toContain('at its bound')
    expect(intervals('stiffening')).toContain('not known')
  })

  it('is worked out in lines that hold the printed numbers', () => {
    const { result, input } = whole(plates())
    const lines = fit.workedOut?.({ input, result, format: reader.format }) ?? []
    expect(lines.length).toBeGreaterThan(2)
    for (const { what } of lines) expect(reader.words.workings[what]).toMatch(/\w/)
    expect(lines.map(({ filled }) => filled).join(' ')).toContain('n = 16')
  })

  it('has a row for every reading in its table', () => {
    const { shown } = whole(plates())
    const { rows, columns } = residualTable(shown)
    expect(rows).toHaveLength(16)
    expect(new Set(rows.map(row => row.length))).toEqual(new Set([columns.length]))
  })
})

describe('the curve of a fit', () => {
  it('is that of the set and foot asked for, with the readings standing off it by what is left over', () => {
    const { shown, result } = whole(plates(), { set: 'nursery' })
    const { curve, fit: ours } = found(result)
    expect(curve.set).toBe('nursery')
    expect(curve.readings).toHaveLength(8)
    for (const { row, residual } of curve.readings) {
      const at = ours.readings.findIndex(one => one.row === row)
      expect(residual).toBe(ours.residuals[at])
      const own = ours.readings[at]
      const ring = curve.readings.find(one => one.row === row)
      expectNear(ring?.sinkage ?? 0, own?.measured ?? 1, { ...identity, relative: 1e-9 })
    }
    expect(fitSpec(shown, found(result)).others.map(({ name }) => name)).toEqual(['orchard'])
  })

  it('is drawn against pressure where the readings say pressures', () => {
    const text =
      'set,plate_diameter_mm,pressure_kPa,sinkage_mm\nA,60,5,0.22\nA,60,10,0.53\nA,60,20,1.4\nA,60,30,2.4'
    const { curve } = found(whole(text).result)
    expect(curve.along).toBe('pressure')
    expect(curve.readings.map(({ x }) => Math.round(x))).toEqual([5000, 10000, 20000, 30000])
  })

  it('marks the load in hand only on the curve of the roller in hand', () => {
    expect(fitSpec(whole(plates()).shown, found(whole(plates()).result)).present).toBe(null)
    const rolled = whole('set,load_N,sinkage_mm\nA,60,0.3\nA,100,0.4\nA,150,0.52\nA,260,0.8')
    const spec = fitSpec(rolled.shown, found(rolled.result))
    expect(spec.present?.x).toBeGreaterThan(60)
    expect(spec.present?.sinkage).toBeGreaterThan(0.2e-3)
  })
})

describe('the softness of sets', () => {
  const dated = [
    'set,plate_diameter_mm,load_N,sinkage_mm,date,moisture_percent',
    ...['a,2025-04-01,20', 'b,2025-04-15,20', 'c,2025-05-01,30'].flatMap((set, k) => {
      const [name, date, water] = set.split(',')
      return [6, 12, 24, 48].map(
        load => `${name},50,${load},${((0.6 + 0.1 * k) * (load / 20) ** 0.8).toFixed(3)},${date},${water}`,
      )
    }),
  ].join('\n')

  it('stands against the date or moisture where the readings say them', () => {
    const { shown, result } = whole(dated, { along: 'date' })
    expect(alongsOf(found(result))).toEqual(['set', 'date', 'moisture'])
    const { sets, along } = setsSpec(shown, found(result))
    expect(along).toBe('date')
    expect(sets.map(({ at }) => at - (sets[0]?.at ?? 0))).toEqual([0, 14, 30])
    const wet = setsSpec(whole(dated, { along: 'moisture' }).shown, found(result))
    expect(wet.sets.map(({ at }) => at)).toEqual([0.2, 0.2, 0.3])
  })

  it('stands by set where nothing else is known', () => {
    const { shown, result } = whole(plates(), { along: 'date' })
    expect(alongsOf(found(result))).toEqual(['set'])
    expect(setsSpec(shown, found(result)).along).toBe('set')
  })
})

describe('on request', () => {
  it('other laws and the next reading come with the whole answer, not with the draft', () => {
    const { result } = whole(plates(), { compare: true, next: true })
    const judged = found(result).judged
    expect(judged?.comparison?.laws.map(({ name }) => name).sort()).toEqual([
      'linear',
      'logarithmic',
      'power',
      'stiffening',
    ])
    const next = judged?.next
    if (!next || 'path' in next) throw new Error(JSON.stringify(next))
    expect(next.aim).toEqual({ kind: 'height' })
    const told = nextWords(next, reader)
    expect(told).toContain(`${Math.round(100 * (next.ranked[0]?.narrowed ?? 0))}\u202f% of its variance goes`)
    expect(nextWords(next, readerFor({ units: 'US', figureText: 13 }))).not.toMatch(/mm|\dN/)
    expect(nextWords({ ...next, ranked: [] }, reader)).toBe(reader.words.fit.next.nothing)
    expect(found(whole(plates()).result).judged).toMatchObject({ comparison: null, next: null })
  })
})

describe('use this turf', () => {
  it('puts the fitted turf in hand under the name of its set, with where it comes from and how far it was read', () => {
    const { result } = whole(plates(), { set: 'nursery' })
    const used = withFittedTurf(found(result), { id: 'fit', now: scenario, reader })
    expect(used.name).toBe('nursery')
    const turf = used.scenario.turfs.nursery
    expect(used.scenario.turf).toBe('nursery')
    expectNear(
      softnessOf(turf?.law ?? { kind: 'linear', softness: 1 }),
      found(result).fit.parameters[1]?.value ?? 0,
      identity,
    )
    expect(turf).toMatchObject({ fittedFrom: expect.any(Number), fittedTo: expect.any(Number) })
    expect(turf?.source).toMatch(/8 readings of nursery/)
  })

  it('is renewed, not added again, when the fit has changed', () => {
    const first = withFittedTurf(found(whole(plates()).result), { id: 'fit', now: scenario, reader })
    const again = withFittedTurf(found(whole(plates(), { law: 'linear' }).result), {
      id: 'fit',
      now: first.scenario,
      reader,
    })
    expect(again.name).toBe(first.name)
    expect(again.scenario.turfs[again.name]?.law.kind).toBe('linear')
    const other = withFittedTurf(found(whole(plates()).result), { id: 'fit-2', now: first.scenario, reader })
    expect(other.name).not.toBe(first.name)
  })

  it('marks what lies outside the fitted pressures as carried on', () => {
    const { result } = whole(plates({ sets: [['A', 0.6]] }))
    const used = withFittedTurf(found(result), { id: 'fit', now: scenario, reader })
    const turf = used.scenario.turfs[used.scenario.turf]
    if (!turf) throw new Error('no turf')
    const settled = settle({ ...used.scenario, turf })
    expect(settled.cautions.map(({ kind }) => kind)).toContain('extrapolated')
  })
})
