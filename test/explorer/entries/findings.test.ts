import { type SettledUnit, settle } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { fieldsOf } from '../../../packages/explorer/src/book/fields.ts'
import {
  type Book,
  bookOf,
  choose,
  enter,
  openSession,
  presentTurf,
  type Session,
} from '../../../packages/explorer/src/book/index.ts'
import { rackFinding } from '../../../packages/explorer/src/entries/rack/finding.ts'
import { rack } from '../../../packages/explorer/src/entries/rack/kind.ts'
import { settingFinding } from '../../../packages/explorer/src/entries/setting/finding.ts'
import { sideViewFinding } from '../../../packages/explorer/src/entries/sideView/finding.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { firstBook } from './firstBook.ts'

const reader = readerFor({ units: 'metric', figureText: 13 })
const book: Book = await firstBook()
const usualRack = rack.read(fieldsOf({}, 'entry', []))
const open = openSession(book)
const set = (session: Session, name: string, value: number) =>
  enter(session, { name, value, text: String(value) })

function settledOf(session: Session): SettledUnit {
  const { scenario } = bookOf(session)
  const settled = settle({ unit: scenario.unit, turf: presentTurf(scenario), condition: scenario.condition })
  if (settled.outcome !== 'settled') throw new Error(settled.outcome)
  return settled
}

function shown<Settings extends object, Result>(session: Session, settings: Settings, result: Result) {
  const { scenario } = bookOf(session)
  return { id: 'it', settings, result, scenario, now: scenario, held: {}, stale: false, edition: 1, reader }
}

const side = (session: Session): string =>
  sideViewFinding(shown(session, { exaggeration: 5, settings: [] }, settledOf(session)))

describe('the finding of the side view', () => {
  it('is the drop of the edge on turf that the unit stands on', () => {
    const { drop } = settledOf(open)
    expect(side(open)).toContain(`goes down with them: ${reader.format(drop.middle, 'drop')}`)
  })

  it('tells what has not recovered from what is lost when mowing', () => {
    const mowing = choose(open, { name: 'condition', option: 'mowing' })
    const { drop, unrecovered, effectiveHeight } = settledOf(mowing)
    const lost = bookOf(mowing).scenario.unit.benchHeight - effectiveHeight.middle
    const sentence = side(mowing)
    for (const value of [drop.middle, unrecovered, lost])
      expect(sentence).toContain(reader.format(value, 'drop'))
    expect(Math.abs(drop.middle - unrecovered - lost)).toBeLessThan(1e-15)
  })
})

describe('the finding of the rack', () => {
  const find = (session: Session): string | null => {
    const input = rack.input({
      settings: usualRack,
      scenario: bookOf(session).scenario,
      answers: {},
      entries: [],
      offered: {},
    })
    const answer = rack.compute(input)
    if (answer.outcome !== 'answered') throw new Error('no answer')
    return rackFinding(shown(session, usualRack, answer.result))
  }

  it('names the roller that cuts lowest, and the bench height that makes up for it', () => {
    expect(find(open)).toMatch(
      /peg 5 cuts lowest, 0\.\d\d\u202fmm below the one fitted; .+ set 3\.\d\d\u202fmm/,
    )
  })

  it('says so when none cuts lower than the one fitted', () => {
    expect(find(choose(open, { name: 'frontRoller', option: 'peg 5' }))).toMatch(
      /none cuts lower.+peg 1 cuts highest/,
    )
  })

  it('says so when all cut alike', () => {
    const scenario = { ...book.scenario, rollers: { one: book.scenario.unit.frontRoller } }
    const session = openSession({ ...book, scenario })
    expect(find(session)).toBe(reader.words.rack.allAlike)
  })
})

describe('the finding of settings', () => {
  const find = (session: Session, ...names: string[]) =>
    settingFinding(names, { scenario: bookOf(session).scenario, reader })

  it('says how much of a smooth roller’s load a grooved one carries at the same depth', () => {
    const grooved = choose(open, { name: 'frontRoller', option: 'peg 3' })
    const { front } = settledOf(grooved)
    expect(find(grooved, 'frontRoller.pitch')).toContain(reader.words.percent(front.bearingFraction))
    expect(find(grooved, 'frontRoller.pitch')).toContain(reader.words.percent(5 / 12))
    expect(find(open, 'frontRoller.surface')).toContain('whole of its face')
  })

  it('says when turf has reached the floor of the grooves', () => {
    const full = set(
      set(choose(open, { name: 'frontRoller', option: 'peg 5' }), 'frontRoller.depth', 1e-3),
      'turf.softness',
      1e-3,
    )
    expect(settledOf(full).front.grooveFloor).toBe('touching')
    expect(find(full, 'frontRoller.pitch')).toContain('reached the floor')
  })

  it('says how deep the front roller is against the locking depth', () => {
    expect(find(open, 'turf.lockingDepth')).toMatch(/\d+\u202f% of the 4\.00\u202fmm/)
  })

  it('says what share of the weight the front roller carries', () => {
    const { front, rear } = settledOf(open)
    expect(find(open, 'scales.total')).toContain(reader.words.percent(front.load / (front.load + rear.load)))
  })

  it('says what it would cut at the other way', () => {
    const mowing = choose(open, { name: 'condition', option: 'mowing' })
    const heights = [open, mowing].map(session =>
      reader.format(settledOf(session).effectiveHeight.middle, 'height'),
    )
    for (const height of heights) {
      expect(find(open, 'condition')).toContain(height)
      expect(find(mowing, 'condition')).toContain(height)
    }
  })

  it('says nothing where there is no answer', () => {
    expect(find(set(open, 'turf.lockingDepth', 0.32e-3), 'turf.lockingDepth')).toBe(null)
  })
})
