import { laws, type PressureLaw, settle, softnessOf } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { addTurf, copyTurf, lawOfKind } from '../../../packages/explorer/src/book/index.ts'
import { turfsFinding } from '../../../packages/explorer/src/entries/turfs/finding.ts'
import { turfs } from '../../../packages/explorer/src/entries/turfs/kind.ts'
import { lawName } from '../../../packages/explorer/src/entries/turfs/rows.ts'
import { firstBook } from './firstBook.ts'
import { reader, shownIn } from './shownIn.ts'

const { scenario } = await firstBook()
const chapel = scenario.turfs['chapel green']!
const soft = addTurf(scenario, {
  turf: { ...chapel, law: { kind: 'stiffening', softness: 0.8e-3, lockingDepth: 6e-3 } },
  name: 'mill green',
  after: null,
}).scenario

describe('the greens', () => {
  it('each have the height this unit would cut at on them', () => {
    const { rows } = shownIn(turfs, soft).shown.result
    for (const { name, height, softness } of rows) {
      const turf = soft.turfs[name]!
      const settled = settle({ unit: soft.unit, turf, condition: soft.condition })
      expect(height).toBe(settled.outcome === 'settled' ? settled.effectiveHeight.middle : null)
      expect(softness).toBe(softnessOf(turf.law))
    }
  })

  it('are told of from the one cut lowest on to the one cut highest on', () => {
    const said = turfsFinding(shownIn(turfs, soft).shown) ?? ''
    expect(said).toMatch(/^chapel green sinks 0\.30\u202fmm at 10 kPa/)
    expect(said).toMatch(/lowest it would cut on mill green.+highest on chapel green/)
    expect(turfsFinding(shownIn(turfs, scenario).shown)).toMatch(/this unit cuts at 2\.\d\d\u202fmm on it/)
  })

  it('say so where the unit bottoms out', () => {
    const law: PressureLaw = { kind: 'logarithmic', softness: 0.3e-3, lockingDepth: 0.31e-3 }
    const hard = { ...scenario, turfs: { 'chapel green': { ...chapel, law } } }
    const { shown } = shownIn(turfs, hard)
    expect(shown.result.rows[0]?.height).toBe('bottoms out')
    expect(turfsFinding(shown)).toMatch(/bottoms out/)
  })

  it('draft the dear ones without a height, which then comes', () => {
    const { scenario: next, name } = copyTurf(scenario, 'chapel green')
    const law = lawOfKind('measured', chapel.law) ?? expect.fail('no law')
    const three = { ...next, turfs: { ...next.turfs, [name]: { ...chapel, law } } }
    const { input } = shownIn(turfs, three)
    const draft = turfs.compute(input)
    const whole = turfs.refine?.(input, () => {})
    const height = (answer: typeof draft | undefined) =>
      answer?.outcome === 'answered' ? answer.result.rows.find(row => row.name === name)?.height : undefined
    expect(height(draft)).toBeNull()
    expect(height(whole)).toBeGreaterThan(0)
  })

  it('have a word for every law there is', () => {
    for (const kind of Object.keys(laws)) expect(lawName(kind, reader)).toMatch(/^[a-z]/)
    expect(lawName('exponential', reader)).toBe('exponential')
  })
})
