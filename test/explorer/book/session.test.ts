import { describe, expect, it } from 'vitest'
import {
  bookOf,
  changeEntry,
  choose,
  endGestureOf,
  enter,
  fittedName,
  openSession,
  replaceScenario,
  type Session,
  scalesOf,
  stepBack,
  stepForward,
} from '../../../packages/explorer/src/book/index.ts'
import { firstBook } from '../entries/firstBook.ts'

/** Kilograms: what rounding of sums of a few of them may leave. */
const IDENTITY = 1e-12

const book = await firstBook()
const open = (): Session => openSession(book)
const scenarioOf = (session: Session) => bookOf(session).scenario
const set = (session: Session, name: string, value: number | null, gesture?: string): Session =>
  enter(session, { name, value, text: String(value), ...(gesture ? { gesture } : {}) })

describe('a reader setting values', () => {
  it('changes the scenario and leaves the book that was alone', () => {
    const session = set(open(), 'unit.benchHeight', 4e-3)
    expect(scenarioOf(session).unit.benchHeight).toBe(4e-3)
    expect(book.scenario.unit.benchHeight).toBe(3.4e-3)
  })

  it('changes the fitted roller on the unit and in the rack alike, for it is one roller', () => {
    const session = set(open(), 'frontRoller.mass', 6.6)
    const { unit, rollers } = scenarioOf(session)
    expect(unit.frontRoller.mass).toBe(6.6)
    expect(fittedName(scenarioOf(session))).toBe('peg 1')
    expect(rollers['peg 1']?.mass).toBe(6.6)
  })

  it('keeps the body when the front roller is changed, so that the scales read the difference', () => {
    const before = scalesOf(scenarioOf(open()).unit)
    const after = scalesOf(scenarioOf(set(open(), 'frontRoller.mass', 7.2)).unit)
    expect(Math.abs(after.total - before.total - 1)).toBeLessThan(IDENTITY)
    expect(Math.abs(after.front - before.front - 1)).toBeLessThan(IDENTITY)
  })

  it('finds the body that answers the scales', () => {
    const session = set(set(open(), 'scales.total', 31), 'scales.front', 16)
    const scales = scalesOf(scenarioOf(session).unit)
    expect(Math.abs(scales.total - 31)).toBeLessThan(IDENTITY)
    expect(Math.abs(scales.front - 16)).toBeLessThan(IDENTITY)
    expect(scenarioOf(session).unit.body.height).toBe(book.scenario.unit.body.height)
  })

  it('fits another roller of the rack', () => {
    const session = choose(open(), { name: 'frontRoller', option: 'peg 3' })
    expect(scenarioOf(session).unit.frontRoller).toEqual(book.scenario.rollers['peg 3'])
  })

  it('gives a smooth roller grooves and takes them off again', () => {
    const grooved = choose(open(), { name: 'frontRoller.surface', option: 'grooved' })
    expect(scenarioOf(grooved).unit.frontRoller.surface.kind).toBe('grooved')
    const smooth = choose(grooved, { name: 'frontRoller.surface', option: 'smooth' })
    expect(scenarioOf(smooth).unit.frontRoller.surface).toEqual({ kind: 'smooth' })
  })
})

describe('what cannot be taken', () => {
  const grooved = (): Session => choose(open(), { name: 'frontRoller', option: 'peg 3' })

  it.each([
    ['a negative mass', open(), 'frontRoller.mass', -2, 'more than zero'],
    ['a land wider than the pitch', grooved(), 'frontRoller.land', 0.014, 'land against pitch'],
    [
      'a locking depth below the softness',
      open(),
      'turf.lockingDepth',
      0.2e-3,
      'locking depth against softness',
    ],
    ['a softness beyond the locking depth', open(), 'turf.softness', 5e-3, 'locking depth against softness'],
    ['an edge behind the rear roller', open(), 'unit.edge', 0.2, 'edge outside the wheelbase'],
    ['an edge ahead of the front roller', open(), 'unit.edge', -0.01, 'edge outside the wheelbase'],
    ['a roller heavier than its reading', open(), 'scales.front', 4, 'roller heavier than its reading'],
    [
      'a total that leaves the rear roller hanging',
      open(),
      'scales.total',
      16,
      'roller heavier than its reading',
    ],
    ['a spread below zero', open(), 'turf.spread', -1e-3, 'not negative'],
    ['no number', open(), 'frontRoller.mass', null, 'not a number'],
  ])('%s is held with its reason, and the scenario stays', (_, session, name, value, reason) => {
    const after = set(session, name, value)
    expect(after.held[name]?.refusal.reason).toBe(reason)
    expect(after.held[name]?.text).toBe(String(value))
    expect(scenarioOf(after)).toBe(scenarioOf(session))
  })

  it('is let go when a good value follows', () => {
    const session = set(set(open(), 'frontRoller.mass', -2), 'frontRoller.mass', 6.6)
    expect(session.held).toEqual({})
    expect(scenarioOf(session).unit.frontRoller.mass).toBe(6.6)
  })

  it('is tried again when what it was held against changes', () => {
    const held = set(grooved(), 'frontRoller.land', 0.014)
    const session = set(held, 'frontRoller.pitch', 0.02)
    expect(session.held).toEqual({})
    expect(scenarioOf(session).unit.frontRoller.surface).toMatchObject({ pitch: 0.02, land: 0.014 })
  })

  it('keeps its reason up to date while it is held', () => {
    const held = set(open(), 'unit.edge', 0.3)
    const session = set(held, 'unit.wheelbase', 0.25)
    expect(session.held['unit.edge']?.refusal).toMatchObject({ wheelbase: 0.25 })
  })

  it('goes with its field when the field goes', () => {
    const held = set(grooved(), 'frontRoller.land', 0.014)
    expect(choose(held, { name: 'frontRoller', option: 'peg 1' }).held).toEqual({})
  })
})

describe('undo', () => {
  it('takes back one change, and gives it again', () => {
    const session = set(open(), 'turf.softness', 0.5e-3)
    expect(scenarioOf(stepBack(session))).toBe(book.scenario)
    expect(scenarioOf(stepForward(stepBack(session)))).toBe(scenarioOf(session))
  })

  it('takes back a whole drag, and two drags one by one', () => {
    let session = open()
    for (const mass of [6.3, 6.4, 6.5]) session = set(session, 'frontRoller.mass', mass, 'drag')
    session = endGestureOf(session)
    for (const mass of [6.6, 6.7]) session = set(session, 'frontRoller.mass', mass, 'drag')
    expect(scenarioOf(stepBack(session)).unit.frontRoller.mass).toBe(6.5)
    expect(scenarioOf(stepBack(stepBack(session)))).toBe(book.scenario)
  })

  it('takes back other values and the entries’ own settings too', () => {
    const other = { ...book.scenario, condition: { kind: 'mowing', speed: 1.1 } } as const
    expect(scenarioOf(stepBack(replaceScenario(open(), other)))).toBe(book.scenario)
    const changed = changeEntry(open(), { id: 'map', settings: { quantity: 'drop' } })
    const settings = (session: Session) =>
      bookOf(session).pages[0]?.entries.find(entry => entry.id === 'map')?.settings
    expect(settings(changed)).toMatchObject({ quantity: 'drop' })
    expect(settings(stepBack(changed))).toMatchObject({ quantity: 'sinkage' })
  })
})
