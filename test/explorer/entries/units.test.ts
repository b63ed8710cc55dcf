import { readFileSync } from 'node:fs'
import { readScenario, type Scenario, settle, withUnitInHand } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { changeUnit, copyUnit, presentTurf } from '../../../packages/explorer/src/book/index.ts'
import { unitsFinding } from '../../../packages/explorer/src/entries/units/finding.ts'
import { units } from '../../../packages/explorer/src/entries/units/kind.ts'
import { expectNear, ofSize, solver } from '../../support/tolerance.ts'
import { firstBook } from './firstBook.ts'
import { reader, shownIn } from './shownIn.ts'

const file = new URL('../../../docs/examples/ellerby-hollow-units.json', import.meta.url)
const reading = await readScenario(JSON.parse(readFileSync(file, 'utf8')))
const machine: Scenario = reading.ok ? reading.scenario : expect.fail(JSON.stringify(reading.problems))
const { scenario: single } = await firstBook()

describe('units of one machine', () => {
  it('stand in the order of the file, each with its own height on the same turf', () => {
    const { rows } = shownIn(units, machine).shown.result
    expect(rows.map(({ name, inHand }) => [name, inHand])).toEqual([
      ['left', true],
      ['middle', false],
      ['right', false],
    ])
    for (const { unit, settled } of rows) {
      const alone = settle({ unit, turf: presentTurf(machine), condition: machine.condition })
      expect(settled).toEqual(alone)
    }
  })

  it('cut as high as the one in hand once set to what the table says', () => {
    const { rows } = shownIn(units, machine).shown.result
    const wanted = rows[0]?.settled?.effectiveHeight.middle ?? Number.NaN
    for (const { name, toMatch } of rows) {
      const set = changeUnit(machine, name, unit => ({ ...unit, benchHeight: toMatch ?? Number.NaN }))
      const after = shownIn(units, set).shown.result.rows.find(row => row.name === name)
      // the weight of the body keeps its height above the bench line, so that the tilt moves by a trifle
      expectNear(after?.settled?.effectiveHeight.middle ?? 0, wanted, ofSize(1e-3, solver), name)
    }
  })

  it('are found apart with the pair that differs most and a setting that mends it', () => {
    const { shown } = shownIn(units, machine)
    const pairs = shown.result.match?.pairs ?? []
    const worst = pairs.toSorted((a, b) => Math.abs(b.difference) - Math.abs(a.difference))[0]
    expect(worst?.units).toEqual(['middle', 'right'])
    const said = unitsFinding(shown) ?? ''
    expect(said).toContain(
      `middle cuts highest, ${reader.format(Math.abs(worst?.difference ?? 0), 'height')} above right`,
    )
    expect(said).toMatch(/With 3\.\d\d\u202fmm on the bench, middle would cut as high as left/)
  })

  it('are alike where all lie within the tolerance', () => {
    const same = copyUnit(single, { of: null, name: 'left' }).scenario
    const { shown } = shownIn(units, same)
    expect(shown.result.match?.matched).toBe(true)
    expect(unitsFinding(shown)).toMatch(/^All 2 cut within 0\.25\u202fmm/)
    const wide = shownIn(units, machine, { tolerance: 1e-3 }).shown
    expect(wide.result.match?.matched).toBe(true)
  })

  it('say which of them has no height', () => {
    const heavy = changeUnit(machine, 'right', unit => ({ ...unit, body: { ...unit.body, mass: 9e4 } }))
    const { shown } = shownIn(units, heavy)
    expect(shown.result.rows[2]?.why?.kind).toBe('bottomed out')
    expect(shown.result.match?.pairs).toHaveLength(1)
    expect(unitsFinding(shown)).toContain('right')
  })

  it('are one where the scenario has one, and it may be copied', () => {
    const { shown } = shownIn(units, single)
    expect(shown.result.match).toBeNull()
    expect(unitsFinding(shown)).toMatch(/Copy it/)
  })

  it('put their cautions together, with the names of those they are about', () => {
    const { cautions } = shownIn(units, machine)
    const kinds = cautions.map(({ kind }) => kind)
    expect(new Set(kinds).size).toBe(kinds.length)
    for (const { where } of cautions) expect(where).toMatch(/^(left|middle|right)/)
  })

  it('are compared with another one when that is taken in hand', () => {
    const { rows } = shownIn(units, withUnitInHand(machine, 'middle')).shown.result
    expect(rows.find(({ inHand }) => inHand)?.name).toBe('middle')
    expect(rows.find(({ name }) => name === 'left')?.toMatch).toBeGreaterThan(machine.unit.benchHeight)
  })
})
