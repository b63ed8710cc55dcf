import { patch as patchOf, type Scenario } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { patchFinding } from '../../../packages/explorer/src/entries/patch/finding.ts'
import {
  moreThanQuick,
  type PatchResult,
  type PatchSettings,
  patch,
} from '../../../packages/explorer/src/entries/patch/kind.ts'
import { patchTable } from '../../../packages/explorer/src/entries/patch/rows.ts'
import { patchView } from '../../../packages/explorer/src/entries/patch/view.ts'
import { settledOf } from '../../../packages/explorer/src/entries/settled.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { answered, asked, reader, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const grooved: Scenario = {
  ...scenario,
  unit: { ...scenario.unit, frontRoller: scenario.rollers['peg 3'] ?? scenario.unit.frontRoller },
}
const usual = { cells: 64 } as const

function draft(settings: Partial<PatchSettings> = usual, on = scenario) {
  const q = asked(patch, on, settings)
  return { ...q, answer: patch.compute(q.input) }
}

function refined(settings: Partial<PatchSettings> = usual, on = scenario) {
  const q = asked(patch, on, settings)
  const heard: number[] = []
  const answer = patch.refine?.(q.input, done => heard.push(done))
  return { ...q, answer, heard, result: answered(answer) }
}

const shown = (result: PatchResult, on = scenario) =>
  shownOf<PatchSettings, PatchResult>({ at: 'front', cells: 64 }, result, on)

describe('the contact patch', () => {
  it('begins with the quick model under the load of the unit at rest', () => {
    const settled = settledOf(scenario)
    if (settled.outcome !== 'settled') throw new Error(settled.outcome)
    const { load, quick, full } = answered(draft().answer)
    expect(load).toBe(settled.front.load)
    expectNear(quick.sinkage, settled.front.sinkage, { ...identity, relative: 1e-9 })
    expect(full).toBe(null)
  })

  it('ends with the model’s full solution, told how far it has come on the way', () => {
    const { result, heard, input } = refined(usual, grooved)
    const { unit, turf } = input
    const wanted = patchOf({ roller: unit.frontRoller, turf, load: result.load, cells: 64 })
    if (wanted.outcome !== 'settled' || !result.full) throw new Error('no full solution')
    expect(result.full.sinkage).toBe(wanted.sinkage)
    expect([...result.full.pressures]).toEqual(wanted.pressure.values)
    expect(heard).toEqual([...heard].sort((a, b) => a - b))
    expect(heard.at(-1)).toBe(1)
    expect(heard.length).toBeGreaterThan(5)
  })

  it('hands over the buffers of its fields, and none of a draft', () => {
    expect(patch.buffers?.(refined().result)?.length).toBe(4)
    expect(patch.buffers?.(answered(draft().answer))).toEqual([])
  })

  it('looks at the rear roller when asked to', () => {
    expect(answered(draft({ at: 'rear' }).answer).roller).toEqual(scenario.unit.rearRoller)
  })

  it('refuses mowing in the model’s own words', () => {
    const mowing: Scenario = { ...scenario, condition: { kind: 'mowing', speed: 1.2 } }
    for (const answer of [draft(usual, mowing).answer, patch.refine?.(draft(usual, mowing).input, () => {})])
      expect(answer).toMatchObject({
        outcome: 'no answer',
        why: { kind: 'problems', problems: [{ path: 'condition.kind', received: '"mowing"' }] },
      })
  })

  it('offers what the full solution found, and nothing before', () => {
    const { full, ...begun } = refined(usual, grooved).result
    if (!full) throw new Error('no full solution')
    const offered = patch.offers?.({ ...begun, full })
    expect(offered?.edgeForce?.value).toBe(full.edgeForce)
    expect(offered?.peakPressure?.value).toBe(Math.max(...full.pressures))
    for (const { value } of Object.values(patch.offers?.({ ...begun, full: null }) ?? {}))
      expect(value).toBe(null)
  })

  it('is worked out in lines that hold the printed numbers', () => {
    const { input, result } = refined(usual, grooved)
    const lines = patch.workedOut?.({ input, result, format: reader.format }) ?? []
    const filled = lines.map(line => line.filled).join(' ')
    expect(filled).toContain(reader.format(result.full?.edgeForce ?? 0, 'lineLoad'))
    expect(filled).toContain(reader.format(result.full?.sinkage ?? 0, 'sinkage'))
    for (const { what } of lines) expect(reader.words.workings[what]).toMatch(/\w/)
  })
})

describe('the finding of the contact patch', () => {
  const full = (fromPress: number, meshError: number) => {
    const { result } = refined(usual, grooved)
    if (!result.full) throw new Error('no full solution')
    return shown({ ...result, full: { ...result.full, fromPress, meshError } }, grooved)
  }

  it('says where it presses hardest and what hangs on the edges', () => {
    const { result } = refined(usual, grooved)
    const sentence = patchFinding(shown(result, grooved))
    expect(sentence).toContain(reader.format(Math.max(...(result.full?.pressures ?? [])), 'pressure'))
    expect(sentence).toContain(reader.words.percent(result.full?.edgePart ?? 0))
  })

  it('compares loads at the same sinkage, in the right direction', () => {
    expectNear(moreThanQuick({ fromPress: -0.02 }), 1 / 0.98 - 1, identity)
    expect(patchFinding(full(-0.02, 0.001))).toMatch(/carries 2\u202f% more than the quick model/)
    expect(patchFinding(full(0.02, 0.001))).toMatch(/carries 2\u202f% less than the quick model/)
  })

  it('tells what the mesh cannot tell as alike', () => {
    expect(patchFinding(full(0.0005, 0.001))).toMatch(/within 0\.1\u202f%/)
  })

  it('does not pass the quick model off as the full one', () => {
    const begun = shown(answered(draft(usual, grooved).answer), grooved)
    expect(patchFinding(begun)).toContain('has not come yet')
    expect(patchView.note(begun)).toContain('quick model')
  })
})

it('the table holds the pressure below the axis, and says free beyond the contact', () => {
  for (const on of [scenario, grooved])
    for (const result of [refined(usual, on).result, answered(draft(usual, on).answer)]) {
      const { rows, columns } = patchTable(shown(result, on))
      expect(rows[0]?.[0]).toBe('0.00')
      expect(rows.at(-1)?.[1]).toBe(reader.words.patch.table.free)
      for (const row of rows) expect(row.length).toBe(columns.length)
      expect(rows.flat().join(' ')).not.toMatch(/NaN|undefined/)
    }
})
