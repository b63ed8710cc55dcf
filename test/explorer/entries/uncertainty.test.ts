import {
  type ComplianceFit,
  fitCompliance,
  readTable,
  type Scenario,
  uncertainHeight,
} from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { uncertaintyFinding } from '../../../packages/explorer/src/entries/uncertainty/finding.ts'
import { fromFit } from '../../../packages/explorer/src/entries/uncertainty/fromFit.ts'
import {
  type UncertaintyResult,
  uncertainty,
} from '../../../packages/explorer/src/entries/uncertainty/kind.ts'
import { uncertaintyTable } from '../../../packages/explorer/src/entries/uncertainty/rows.ts'
import {
  SET_HERE,
  settableOf,
  type UncertaintySettings,
  USUAL,
} from '../../../packages/explorer/src/entries/uncertainty/settings.ts'
import { turfPut } from '../../../packages/explorer/src/entries/uncertainty/straight.ts'
import { uncertaintyView } from '../../../packages/explorer/src/entries/uncertainty/view.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { answered, asked, reader, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const wanting: Scenario = { ...scenario, effectiveHeight: 2.8e-3 }
const few = { draws: 4000 } as const

function atOnce(settings: Partial<UncertaintySettings> = few, on = scenario, answers = {}) {
  const q = asked(uncertainty, on, settings, answers)
  return { ...q, answer: uncertainty.compute(q.input) }
}

function drawn(settings: Partial<UncertaintySettings> = few, on = scenario, answers = {}) {
  const q = asked(uncertainty, on, settings, answers)
  const heard: number[] = []
  return { ...q, heard, answer: uncertainty.refine?.(q.input, done => heard.push(done)) }
}

const shown = (result: UncertaintyResult, on = scenario) =>
  shownOf<UncertaintySettings, UncertaintyResult>({ ...USUAL, ...few }, result, on)

/** Plates pressed at Ellerby Hollow, invented: two sets that share one softness. */
function plateFit(): ComplianceFit {
  const table = readTable(
    ['set,plate_diameter_mm,load_N,sinkage_mm']
      .concat(
        [20, 35, 50, 65, 80, 95].map(
          (load, i) => `a,50,${load},${(0.031 * load + 0.02 * (i % 2)).toFixed(3)}`,
        ),
      )
      .join('\n'),
  )
  if (!table.ok) throw new Error(JSON.stringify(table.problems))
  const fit = fitCompliance({
    readings: table.readings,
    law: 'linear',
    free: ['softness'],
    noise: { kind: 'estimated' },
    start: { spread: 0 },
  })
  if (fit.outcome === 'failed') throw new Error(fit.why)
  return fit
}

describe('a height that scatters', () => {
  it('is drawn by the model from what is said to scatter, the same each time', () => {
    const { answer, input, heard } = drawn(few, wanting)
    const { unit, turf, condition } = input
    const wanted = uncertainHeight({
      unit,
      turf,
      condition,
      scatter: {
        softness: { kind: 'log-normal', relative: 0.2 },
        benchHeight: { kind: 'normal', standardDeviation: 0.05e-3 },
        'frontRoller.mass': { kind: 'normal', standardDeviation: 0.05 },
        'scales.front': { kind: 'uniform', halfWidth: 0.1 },
        'scales.rear': { kind: 'uniform', halfWidth: 0.1 },
      },
      wanted: { height: 2.8e-3, tolerance: 0.2e-3 },
      draws: 4000,
      seed: 1,
    })
    if (wanted.outcome !== 'answered') throw new Error(wanted.outcome)
    const result = answered(answer)
    expect(result.quantiles).toEqual(wanted.quantiles.map(({ value }) => value))
    expect(result.wanted?.within).toBe(wanted.wanted?.within.value)
    expect(result.hangsOn?.[0]).toMatchObject({ name: 'softness', share: wanted.hangsOn?.[0]?.share.value })
    expect(heard.at(-1)).toBe(1)
  })

  it('is told at once along straight lines, near what the draws say', () => {
    const [lines, draws] = [answered(atOnce().answer), answered(drawn().answer)]
    expect(lines.by).toBe('lines')
    // Straight lines against a curved answer and 4,000 draws: a tenth of the width.
    const stated = 0.1
    expect(Math.abs((lines.deviation ?? 0) / (draws.deviation ?? 1) - 1)).toBeLessThan(stated)
    const width = (draws.quantiles[4] ?? 0) - (draws.quantiles[0] ?? 0)
    lines.quantiles.forEach((value, i) => {
      expect(Math.abs(value - (draws.quantiles[i] ?? 0))).toBeLessThan(stated * width)
    })
    const share = (result: UncertaintyResult) => result.hangsOn?.[0]?.share ?? 0
    expect(Math.abs(share(lines) - share(draws))).toBeLessThan(stated)
  })

  it('moves with the bench setting by as much as that is moved', () => {
    const only = { softness: 0, scales: 0, rollerMass: 0, benchHeight: 0.04e-3 }
    const lines = answered(atOnce(only).answer)
    expectNear(lines.deviation ?? 0, 0.04e-3, { ...identity, relative: 1e-3 })
    expect(lines.hangsOn?.map(({ name }) => name)).toEqual(['benchHeight'])
  })

  it('has no answer when nothing scatters, and says what to do', () => {
    const nothing = { softness: 0, scales: 0, rollerMass: 0, benchHeight: 0 }
    for (const { answer } of [atOnce(nothing), drawn(nothing)])
      expect(answer).toMatchObject({ outcome: 'no answer', why: { reason: 'uncertainty of nothing' } })
    expect(reader.words.failures.reasons['uncertainty of nothing']?.()).toMatch(/^Nothing scatters/)
  })

  it('tells draws that make no sense as the model does', () => {
    expect(drawn({ draws: 12.5 }).answer).toMatchObject({
      outcome: 'no answer',
      why: { kind: 'problems', problems: [{ path: 'draws' }] },
    })
    expect(uncertainty.problems({ ...USUAL, scales: -1, fit: 'gone' }, scenario, [])).toMatchObject([
      { path: 'fit', received: 'gone' },
      { path: 'scales' },
    ])
  })

  it('is told for other turfs as well, whatever their law', () => {
    const laws = [
      { kind: 'linear', softness: 0.3e-3 },
      { kind: 'power', softness: 0.3e-3, exponent: 0.8 },
      {
        kind: 'layered',
        upper: { kind: 'linear', softness: 0.2e-3 },
        lower: { kind: 'linear', softness: 0.1e-3 },
      },
    ] as const
    for (const law of laws) {
      const on: Scenario = { ...scenario, turfs: { it: { law } }, turf: 'it' }
      const only = { ...few, scales: 0, rollerMass: 0, benchHeight: 0 }
      const [lines, draws] = [answered(atOnce(only, on).answer), answered(drawn(only, on).answer)]
      expect(lines.deviation).toBeGreaterThan(0)
      expect(Math.abs((lines.deviation ?? 0) / (draws.deviation ?? 1) - 1)).toBeLessThan(0.1)
    }
  })

  it('offers its ends, its middle and how much of it is wanted', () => {
    const result = answered(drawn(few, wanting).answer)
    const offered = uncertainty.offers?.(result)
    expect(offered?.low?.value).toBe(result.quantiles[0])
    expect(offered?.high?.value).toBe(result.quantiles[4])
    expect(offered?.within?.value).toBe(result.wanted?.within)
  })

  it('is worked out in lines that hold the printed numbers', () => {
    for (const { input, answer } of [atOnce(), drawn()]) {
      const result = answered(answer)
      const lines = uncertainty.workedOut?.({ input, result, format: reader.format }) ?? []
      expect(lines.map(({ filled }) => filled).join(' ')).toContain(
        reader.format(result.deviation ?? 0, 'height'),
      )
      for (const { what } of lines) expect(reader.words.workings[what]).toMatch(/\w/)
    }
  })
})

describe('a turf that was fitted', () => {
  const fit = plateFit()
  const named = { ...few, fit: 'fit', scales: 0, rollerMass: 0, benchHeight: 0 }

  it('stands in for the turf in hand, and scatters as its fit says', () => {
    const found = fromFit(
      { fit, curve: { set: 'a' } },
      { law: { kind: 'linear', softness: 1 }, rebound: 0.7 },
      '',
    )
    expect(found?.turf).toMatchObject({ rebound: 0.7, law: { kind: 'linear' } })
    const answers = { fit: { fit, curve: { set: 'a' } } }
    const [lines, draws] = [
      answered(atOnce(named, scenario, answers).answer),
      answered(drawn(named, scenario, answers).answer),
    ]
    expect(draws.hangsOn?.map(({ name }) => name)).toEqual(['fit'])
    // Student's t with five degrees of freedom is wider than the normal of the straight lines.
    expect((draws.deviation ?? 0) / (lines.deviation ?? 1)).toBeGreaterThan(1)
    expect((draws.deviation ?? 0) / (lines.deviation ?? 1)).toBeLessThan(1.6)
  })

  it('that has no answer yet, or is something else, is said to be missing', () => {
    for (const answer of [undefined, null, 3, { fit: { outcome: 'failed' } }, { outcome: 'none' }])
      expect(atOnce(named, scenario, { fit: answer }).answer).toMatchObject({
        outcome: 'no answer',
        why: { reason: 'uncertainty lacks a fit' },
      })
  })

  it('that does not determine its turf scatters nothing, and says so', () => {
    const answers = { fit: { fit: { ...fit, covariance: null } } }
    expect(atOnce(named, scenario, answers).answer).toMatchObject({
      why: { reason: 'uncertainty of no fit' },
    })
  })

  it('is needed only where it is there', () => {
    const entries = [{ id: 'fit', kind: 'fit', beside: false, settings: {} }]
    expect(uncertainty.needs({ ...USUAL, fit: 'fit' }, entries)).toEqual(['fit'])
    expect(uncertainty.needs(USUAL, entries)).toEqual([])
  })
})

it('one number of a turf is put to another value, whatever its law', () => {
  const layered = {
    law: {
      kind: 'layered',
      upper: { kind: 'power', softness: 1e-3, exponent: 1 },
      lower: { kind: 'linear', softness: 1e-3 },
    },
  } as const
  expect(turfPut(layered, 'upper.exponent', 0.7)?.law).toMatchObject({ upper: { exponent: 0.7 } })
  expect(turfPut(layered, 'upper.colour', 0.7)).toBe(null)
  expect(turfPut({ law: layered.law.lower }, 'spread', 2e-3)).toMatchObject({ spread: 2e-3 })
})

describe('the finding', () => {
  it('says between which heights 95 of 100 cut, and what that hangs on most', () => {
    const result = answered(drawn(few, wanting).answer)
    const finding = uncertaintyFinding(shown(result, wanting))
    expect(finding).toMatch(
      /^95 of 100 such units cut between 2\.\d\d\u202fmm and 2\.\d\d\u202fmm; softness of the turf alone makes \d+\u202f% of that scatter\./,
    )
    expect(finding).toContain(reader.format(2.8e-3, 'height'))
  })

  it('says about, and nothing of the wanted height, before there are draws', () => {
    const begun = shown(answered(atOnce(few, wanting).answer), wanting)
    expect(uncertaintyFinding(begun)).toMatch(/^About 95 of 100/)
    expect(uncertaintyFinding(begun)).not.toContain('wanted')
    expect(uncertaintyView.note(begun)).toContain('straight lines')
  })

  it('does not leave out in silence what has no answer', () => {
    const result = answered(drawn().answer)
    const some = { ...result, unanswered: [{ why: 'bottomed out', where: 'front', share: 0.012 }] }
    expect(uncertaintyFinding(shown(some))).toMatch(
      /1\.2\u202f% of the draws have no answer \(the turf bottoms out\)/,
    )
  })

  it('has a word for everything the height may hang on', () => {
    for (const name of Object.keys(atOnce().input.scatter))
      expect(reader.words.uncertainty.inputs[name]).toMatch(/\w/)
    for (const name of SET_HERE) expect(reader.words.settables[`uncertainty.${name}`]?.name).toMatch(/\w/)
  })
})

it('the table has every number of the figures', () => {
  for (const answer of [atOnce(few, wanting).answer, drawn(few, wanting).answer]) {
    const result = answered(answer)
    const { rows } = uncertaintyTable(shown(result, wanting))
    const text = rows.flat().join(' ')
    expect(text).not.toMatch(/NaN|undefined|null/)
    for (const value of result.quantiles)
      expect(text).toContain(reader.format(value, 'height', { unit: false }))
  }
})

it('takes no scatter below zero', () => {
  for (const name of SET_HERE)
    expect(settableOf(name, USUAL).refuse(scenario, -1)).toMatchObject({
      reason: /not negative|more than zero/,
    })
})
