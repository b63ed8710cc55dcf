import type { Scenario } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { settledInput, settledOf } from '../../../packages/explorer/src/entries/settled.ts'
import { liveValue } from '../../../packages/explorer/src/entries/text/values.ts'
import { expectNear, solver } from '../../support/tolerance.ts'
import { firstBook } from './firstBook.ts'

const { scenario } = await firstBook()

function valueCalled(name: string, of: Scenario): number | null {
  const settled = settledOf(of)
  const live = liveValue(name, {
    scenario: of,
    settled: settled.outcome === 'settled' ? settled : null,
    input: settledInput(of),
  })
  if (!live) throw new Error(`no value is called ${name}`)
  return live.value
}

describe('the setting that holds a wanted height', () => {
  const wanted = { ...scenario, effectiveHeight: 3.1e-3 }

  it('gives that height once the bench is set to it', () => {
    const benchHeight = valueCalled('toHold.benchHeight', wanted) ?? Number.NaN
    const set = { ...wanted, unit: { ...wanted.unit, benchHeight } }
    expectNear(valueCalled('effectiveHeight', set) ?? Number.NaN, wanted.effectiveHeight, solver)
    const change = valueCalled('toHold.change', wanted) ?? Number.NaN
    expectNear(change, benchHeight - wanted.unit.benchHeight, solver)
  })

  it('moves the front roller further than the edge, which lies between the rollers', () => {
    const { edge, wheelbase } = wanted.unit
    const change = valueCalled('toHold.change', wanted) ?? Number.NaN
    const travel = valueCalled('toHold.travel', wanted) ?? Number.NaN
    expectNear(travel * (1 - edge / wheelbase), change, solver)
  })

  it('is not known while no height is wanted', () => {
    const { effectiveHeight: _, ...unsaid } = wanted
    for (const name of ['toHold.benchHeight', 'toHold.change', 'toHold.travel'])
      expect(valueCalled(name, unsaid)).toBeNull()
  })
})
