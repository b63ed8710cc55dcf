import {
  formulaLaw,
  type LawName,
  laws,
  type Scenario,
  scenarioProblems,
  softnessOf,
  unitsOf,
  writeScenario,
} from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import {
  addRoller,
  changeRackRoller,
  changeUnit,
  copyRoller,
  copyTurf,
  copyUnit,
  fitRoller,
  fittedName,
  placesOf,
  renameRoller,
  renameTurf,
  renameUnit,
  takeOutRoller,
  takeOutTurf,
  takeOutUnit,
} from '../../../packages/explorer/src/book/index.ts'
import { firstExpression, lawOfKind } from '../../../packages/explorer/src/book/lawOfKind.ts'
import { freshName, refuseName } from '../../../packages/explorer/src/book/naming.ts'
import { expectNear, stated } from '../../support/tolerance.ts'
import { firstBook } from '../entries/firstBook.ts'

const { scenario } = await firstBook()
const sound = (one: Scenario): Scenario => {
  expect(scenarioProblems(one)).toEqual([])
  return one
}

describe('names', () => {
  it('are counted on where they are taken', () => {
    expect(freshName('peg', ['peg 1'])).toBe('peg')
    expect(freshName('peg', ['peg'])).toBe('peg 2')
    expect(freshName('peg 2', ['peg 1', 'peg 2', 'peg 3'])).toBe('peg 4')
  })

  it('are some letters, and only one thing’s', () => {
    expect(refuseName(' ', [])).toEqual({ reason: 'no name' })
    expect(refuseName('peg 1', ['peg 1'])).toEqual({ reason: 'name taken', name: 'peg 1' })
    expect(refuseName('peg 1', ['peg 2'])).toBeNull()
  })
})

describe('the rack', () => {
  it('has a copy right behind its original, and only the original fitted', () => {
    const { scenario: next, name } = copyRoller(scenario, 'peg 1')
    expect(Object.keys(sound(next).rollers).slice(0, 2)).toEqual(['peg 1', name])
    expect(fittedName(next)).toBe('peg 1')
    expect(placesOf(next, name)).toEqual([])
    const heavier = changeRackRoller(next, name, { ...next.rollers[name]!, mass: 9 })
    expect(heavier.unit.frontRoller.mass).toBe(6.2)
  })

  it('keeps what is fitted under its new name', () => {
    const next = renameRoller(fitRoller(scenario, 'front', 'peg 3'), 'peg 3', 'spiral')
    expect(fittedName(sound(next))).toBe('spiral')
    expect(Object.keys(next.rollers)).toEqual(['peg 1', 'peg 2', 'spiral', 'peg 4', 'peg 5'])
    expect(JSON.stringify(writeScenario(next).unit)).toContain('"frontRoller":"spiral"')
  })

  it('gives up a fitted roller, which stays on the unit, and never its last', () => {
    const next = takeOutRoller(scenario, 'peg 1')
    expect(fittedName(sound(next))).toBeNull()
    expect(next.unit.frontRoller).toEqual(scenario.unit.frontRoller)
    let rest = next
    for (const name of Object.keys(scenario.rollers)) rest = takeOutRoller(rest, name)
    expect(Object.keys(sound(rest).rollers)).toHaveLength(1)
  })

  it('takes a roller more', () => {
    const roller = scenario.unit.rearRoller
    const { scenario: next, name } = addRoller(scenario, { roller, name: 'rear', after: null })
    expect(Object.keys(sound(next).rollers).at(-1)).toBe(name)
    expect(placesOf(next, 'rear')).toEqual([{ unit: null, position: 'rear' }])
  })
})

describe('greens', () => {
  it('are copied, renamed and taken out, and the unit stands on one of them', () => {
    const copied = copyTurf(scenario, 'chapel green')
    const renamed = renameTurf(sound(copied.scenario), 'chapel green', 'mill green')
    expect(sound(renamed).turf).toBe('mill green')
    const without = takeOutTurf(renamed, 'mill green')
    expect(sound(without).turf).toBe(copied.name)
    expect(takeOutTurf(without, copied.name)).toBe(without)
  })

  const kinds = Object.keys(laws) as LawName[]
  it.each(kinds.flatMap(from => kinds.map(to => [from, to] as const)))(
    'of a %s law become as soft ones of a %s law',
    async (from, to) => {
      const stiffening = { kind: 'stiffening', softness: 0.3e-3, lockingDepth: 4e-3 } as const
      const written = await formulaLaw(firstExpression(stiffening))
      const formula = written.ok ? written.law : expect.fail(JSON.stringify(written.problems))
      const before = from === 'formula' ? formula : (lawOfKind(from, stiffening) ?? expect.fail(from))
      const after = lawOfKind(to, before)
      if (to === 'formula') expect(after).toBe(from === 'formula' ? before : null)
      else expectNear(softnessOf(after ?? expect.fail(to)), softnessOf(before), stated(1e-3), to)
    },
  )
})

describe('units', () => {
  const two = copyUnit(scenario, { of: null, name: 'left' })
  const pair = sound(two.scenario)

  it('are two after the first is copied, with the first still in hand', () => {
    expect(Object.keys(unitsOf(pair))).toEqual(['left', 'left 2'])
    expect(pair.unitName).toBe('left')
  })

  it('are renamed, changed and taken out', () => {
    const named = sound(renameUnit(renameUnit(pair, 'left 2', 'right'), 'left', 'near side'))
    expect(Object.keys(unitsOf(named))).toEqual(['near side', 'right'])
    const raised = changeUnit(named, 'right', unit => ({ ...unit, benchHeight: 4e-3 }))
    expect(unitsOf(sound(raised)).right?.benchHeight).toBe(4e-3)
    expect(raised.unit.benchHeight).toBe(scenario.unit.benchHeight)
    const rest = sound(takeOutUnit(raised, 'near side'))
    expect(rest.unitName).toBe('right')
    expect(rest.unit.benchHeight).toBe(4e-3)
    expect(takeOutUnit(rest, 'right')).toBe(rest)
  })
})
