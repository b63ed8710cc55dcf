import { GRAVITY, type Scenario } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { fieldsOf } from '../../../packages/explorer/src/book/fields.ts'
import { type Book, bookOf, choose, openSession } from '../../../packages/explorer/src/book/index.ts'
import { rackFinding } from '../../../packages/explorer/src/entries/rack/finding.ts'
import { columnsOf, isSettled, rack } from '../../../packages/explorer/src/entries/rack/kind.ts'
import { cellText, fittedHeight } from '../../../packages/explorer/src/entries/rack/rows.ts'
import { sideView } from '../../../packages/explorer/src/entries/sideView/kind.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'
import { answered, cautionsOf, shownOf } from './asked.ts'
import { firstBook } from './firstBook.ts'

const book: Book = await firstBook()
const usualRack = rack.read(fieldsOf({}, 'entry', []))
const usualSide = sideView.read(fieldsOf({}, 'entry', []))

function asked<Settings>(settings: Settings, scenario: Scenario = book.scenario) {
  return { settings, scenario, answers: {}, entries: [], offered: {} }
}

describe('the rack', () => {
  const input = rack.input(asked(usualRack))

  it('marks the fitted roller and no other', () => {
    const rows = answered(rack.compute(input))
    expect(rows.length).toBe(5)
    expect(rows.filter(row => row.fitted).map(row => row.name)).toEqual(['peg 1'])
  })

  it('tells a caution of each of a few rollers with its own value', () => {
    const cautions = cautionsOf(rack.compute(input))
    const steep = cautions.filter(caution => caution.kind === 'steep at the land')
    expect(steep.map(caution => caution.where)).toEqual(['peg 3', 'peg 5'])
    for (const { where, value } of steep) {
      const alone = bookOf(choose(openSession(book), { name: 'frontRoller', option: where ?? '' })).scenario
      const fitted = sideView.compute(sideView.input(asked(usualSide, alone)))
      expect(value).toBe(cautionsOf(fitted).find(caution => caution.kind === 'steep at the land')?.value)
    }
  })

  it('tells a caution once, with the worst value, for more rollers than can be told one by one', () => {
    const steep = book.scenario.rollers['peg 5']
    if (!steep) throw new Error('no peg 5')
    const many = Object.fromEntries([4.1, 4.4, 4.7, 5].map(mass => [`of ${mass}`, { ...steep, mass }]))
    const cautions = cautionsOf(rack.compute({ ...input, rollers: many }))
    const told = cautions.filter(caution => caution.kind === 'steep at the land')
    expect(told.map(caution => caution.where)).toEqual(['of 4.1, of 4.4, of 4.7, of 5'])
    const heaviest = rack.compute({ ...input, rollers: { heaviest: { ...steep, mass: 5 } } })
    expect(told[0]?.value).toBe(cautionsOf(heaviest).find(({ where }) => where === 'heaviest')?.value)
  })

  it('compares rollers at the rear, under what the rear carries', () => {
    const rear = rack.input(asked({ ...usualRack, position: 'rear' }))
    const rows = answered(rack.compute(rear)).filter(isSettled)
    const settled = answered(sideView.compute(sideView.input(asked(usualSide))))
    for (const row of rows) {
      const heavier = row.roller.mass - book.scenario.unit.rearRoller.mass
      const level = settled.rear.load + GRAVITY * heavier
      // the unit leans a little otherwise with each of them
      expectNear(row.rearLoad, level, stated(5e-3))
    }
  })

  it('knows the height of a fitted roller that is none of the rack', () => {
    const settings = { ...usualRack, position: 'rear' } as const
    const rows = answered(rack.compute(rack.input(asked(settings))))
    expect(rows.some(row => row.fitted)).toBe(false)
    const settled = answered(sideView.compute(sideView.input(asked(usualSide))))
    expectNear(fittedHeight(rows) ?? 0, settled.effectiveHeight.middle, identity)
    const sentence = rackFinding(shownOf(settings, rows, book.scenario))
    expect(sentence).not.toContain('\u2212')
  })

  it('tells sliding on a headland only where a turn is given', () => {
    const rows = (headlandRadius: number) =>
      answered(rack.compute(rack.input(asked({ ...usualRack, headlandRadius })))).filter(isSettled)
    expect(rows(0).every(row => row.sliding === undefined)).toBe(true)
    for (const { sliding, roller } of rows(4)) expectNear(sliding?.greatest ?? 0, roller.length / 8, identity)
    expect(columnsOf(usualRack)).not.toContain('sliding')
    expect(columnsOf({ ...usualRack, headlandRadius: 4 })).toContain('sliding')
  })

  it('says in words that no bench height holds a cut below what the turf leaves', () => {
    const [row] = answered(rack.compute(input)).filter(isSettled)
    if (!row) throw new Error('no row')
    const below = { ...row, benchHeight: -0.2e-3 }
    const reader = readerFor({ units: 'metric', figureText: 13 })
    expect(cellText(below, 'benchHeight', { reader, position: 'front' })).toBe(reader.words.rack.cannotHold)
    expect(cellText(row, 'benchHeight', { reader, position: 'front' })).toMatch(/^\d\.\d\d$/)
  })

  it('follows the roller that is fitted', () => {
    const other = bookOf(choose(openSession(book), { name: 'frontRoller', option: 'peg 4' })).scenario
    const rows = answered(rack.compute(rack.input(asked(usualRack, other))))
    expect(rows.filter(row => row.fitted).map(row => row.name)).toEqual(['peg 4'])
  })
})
