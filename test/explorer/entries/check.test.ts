import { readTable, type Scenario, settle } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { presentTurf } from '../../../packages/explorer/src/book/index.ts'
import { stripsOf } from '../../../packages/explorer/src/entries/check/groups.ts'
import {
  type CheckResult,
  type CheckSettings,
  check,
} from '../../../packages/explorer/src/entries/check/kind.ts'
import { checkFinding, checkTable } from '../../../packages/explorer/src/entries/check/strips.ts'
import { fit } from '../../../packages/explorer/src/entries/fit/kind.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { answered, asked, reader, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const [firstRoller = '', secondRoller = ''] = Object.keys(scenario.rollers)

const settled = settle({ ...scenario, turf: presentTurf(scenario) })
if (settled.outcome !== 'settled') throw new Error(settled.outcome)
const here = settled.effectiveHeight.middle
const mm = (height: number) => (height * 1e3).toFixed(3)

const plates = ['orchard', 'nursery'].flatMap((set, k) =>
  [6, 12, 24, 48].map(
    load => `${set},50,${load},${((0.5 + 0.2 * k) * (load / 20) ** 0.8 + 0.004 * (load % 5)).toFixed(3)},,`,
  ),
)
const tableOf = (heights: readonly string[]) =>
  ['set,plate_diameter_mm,load_N,sinkage_mm,height_mm,roller', ...plates, ...heights].join('\n')

function checked(heights: readonly string[], settings: Partial<CheckSettings> = {}, on: Scenario = scenario) {
  const { readings } = readTable(tableOf(heights))
  const own = asked(fit, on, { readings: 'ours' }, { ours: { readings } })
  const found = answered(fit.refine?.(own.input, () => {}))
  const q = asked(
    check,
    on,
    { readings: 'ours', fit: 'fit', ...settings },
    { ours: { readings }, fit: found },
  )
  const draft = answered<CheckResult>(check.compute(q.input))
  const result = answered<CheckResult>(check.refine?.(q.input, () => {}))
  return { ...q, draft, result, shown: shownOf(q.settings, result, on) }
}

describe('the strips of a table', () => {
  it('are its heights, by set and by the roller that was fitted', () => {
    const { readings } = readTable(
      tableOf(['orchard,,,,3.1,', 'orchard,,,,3.2,', `orchard,,,,3.3,"${firstRoller}"`]),
    )
    const strips = stripsOf(readings)
    expect(strips.map(({ roller, heights }) => [roller, heights.length])).toEqual([
      [null, 2],
      [firstRoller, 1],
    ])
    expect(strips[0]?.standardError).toBe(null)
  })

  it('know how well their mean is known where every row says so', () => {
    const { readings } = readTable('set,height_mm,sd_mm,n\nA,3.1,0.06,4\nA,3.4,0.08,2')
    const [strip] = stripsOf(readings)
    expectNear(strip?.measured ?? 0, 3.2e-3, identity)
    expectNear(strip?.standardError ?? 0, Math.sqrt(4 * 0.06 ** 2 + 2 * 0.08 ** 2) / 6 / 1e3, identity)
    expect(strip?.count).toBe(6)
  })
})

describe('a check of heights', () => {
  it('agrees with what the turf in hand makes of the unit, and says by how much a height lies outside', () => {
    const { result } = checked([`orchard,,,,${mm(here)},`, `nursery,,,,${mm(here + 0.5e-3)},`], { fit: '' })
    const [agrees, high] = result.strips
    expectNear(agrees?.expected ?? 0, here, { ...identity, relative: 1e-9 })
    expect([agrees?.verdict, agrees?.outside]).toEqual(['agrees', 0])
    expect(high?.verdict).toBe('higher')
    // The turf is taken as exact: setting and gauge of 0.05 mm each, 95 % of both together.
    const half = 1.96 * Math.hypot(0.05e-3, 0.05e-3)
    expectNear(high?.outside ?? 0, 0.5e-3 - half, { ...identity, relative: 0.02 })
  })

  it('has a wider interval with a fit than without, and a narrower one for more heights', () => {
    const one = [`orchard,,,,${mm(here)},`]
    const width = ({ result }: { result: CheckResult }) => {
      const between = result.strips[0]?.between
      return between ? between[1] - between[0] : Number.NaN
    }
    expect(width(checked(one, { bench: 0 }))).toBeGreaterThan(width(checked(one, { bench: 0, fit: '' })))
    expect(width(checked([...one, ...one, ...one]))).toBeLessThan(width(checked(one)))
  })

  it('drafts the heights without saying whether they agree', () => {
    const { draft } = checked([`orchard,,,,${mm(here)},`])
    expect(draft).toMatchObject({ whole: false, strips: [{ between: null, verdict: null, outside: 0 }] })
    expect(draft.strips[0]?.expected).not.toBe(null)
  })

  it('says why a strip cannot be compared', () => {
    const { result, shown } = checked(['meadow,,,,3.1,', 'orchard,,,,3.1,nobody'])
    expect(result.strips.map(({ why }) => why)).toEqual(['no turf', 'no roller'])
    const verdicts = checkTable(shown).rows.map(row => row.at(-1))
    expect(verdicts).toEqual([
      reader.words.check.verdicts['no turf'],
      reader.words.check.verdicts['no roller'],
    ])
    expect(checkFinding(shown)).toBe(reader.words.check.found.unknown)
  })

  it('fits the roller that the strip was cut with', () => {
    const { result } = checked([`orchard,,,,3.1,"${firstRoller}"`, `orchard,,,,3.1,"${secondRoller}"`])
    const [one, other] = result.strips
    expect(one?.expected).not.toBe(other?.expected)
  })

  it('has nothing to say, and is whole at once, without heights', () => {
    const { q, result, shown } = { q: checked([]), ...checked([]) }
    expect(result.strips).toEqual([])
    expect(check.compute(q.input)).toMatchObject({ whole: true })
    expect(checkFinding(shown)).toBe(null)
  })

  it('tells in one sentence how many agree and which is furthest off', () => {
    const all = checked([`orchard,,,,${mm(here)},`, `nursery,,,,${mm(here)},`], { fit: '' })
    expect(checkFinding(all.shown)).toMatch(/^All 2 strips agree/)
    const some = checked([`orchard,,,,${mm(here)},`, `nursery,,,,${mm(here - 0.4e-3)},`], { fit: '' })
    expect(checkFinding(some.shown)).toMatch(
      /^One of 2 strips agrees\. Strip “nursery” is 0\.40\u202fmm lower than expected/,
    )
    const alone = checked([`orchard,,,,${mm(here)},`], { fit: '' })
    expect(checkFinding(alone.shown)).toMatch(/^Strip “orchard” agrees/)
  })

  it('offers how many agree and how far they lie on average', () => {
    const { result } = checked([`orchard,,,,${mm(here + 0.1e-3)},`], { fit: '' })
    const offers = check.offers?.(result)
    expect(offers?.agree).toEqual({ quantity: 'count', value: 1 })
    expectNear(offers?.difference?.value ?? 0, 0.1e-3, { ...identity, relative: 0.01 })
  })

  it('is worked out in lines that have their sentences', () => {
    const { result, input } = checked([`orchard,,,,${mm(here)},`])
    const lines = check.workedOut?.({ input, result, format: reader.format }) ?? []
    expect(lines).toHaveLength(2)
    for (const { what } of lines) expect(reader.words.workings[what]).toMatch(/\w/)
  })

  it('refuses to lean on what is no readings and no fit', () => {
    const entries = [{ id: 'map', kind: 'map', beside: false, settings: {} }]
    const settings = { readings: 'map', fit: 'map', bench: -1, gauge: 0 }
    expect(check.problems(settings, scenario, entries).map(({ path }) => path)).toEqual([
      'readings',
      'fit',
      'bench',
    ])
  })
})
