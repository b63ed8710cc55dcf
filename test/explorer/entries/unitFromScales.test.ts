import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { unitFromScales } from '../../../packages/explorer/src/entries/unitFromScales/kind.ts'
import {
  contradictionSentence,
  scalesFinding,
} from '../../../packages/explorer/src/entries/unitFromScales/sentences.ts'
import {
  fullBoxAdds,
  type Readings,
  weigh,
  weighAlike,
  wouldRead,
} from '../../../packages/explorer/src/entries/unitFromScales/weigh.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { firstBook } from './firstBook.ts'
import { reader, shownIn } from './shownIn.ts'

const { scenario } = await firstBook()
const { unit } = scenario
/** Kilograms that sums of decimals may be off by. */
const dust = { ...identity, absolute: 1e-9 }

function weighedOf(readings: Readings, from = unit) {
  const weighed = weigh(readings, from)
  return weighed.state === 'weighed' ? weighed.unit : expect.fail(JSON.stringify(weighed))
}

function said(readings: Readings): string {
  const weighed = weigh(readings, unit)
  return weighed.state === 'contradiction'
    ? contradictionSentence(weighed.why, reader)
    : expect.fail(weighed.state)
}

describe('a unit on the scales', () => {
  it('is the same whichever two of the three readings are given', () => {
    const { total, front, rear } = wouldRead(weighedOf({ total: 29.6, front: 14.2 }))
    expectNear(total, 29.6, dust)
    expectNear(front, 14.2, dust)
    expectNear(rear, 15.4, dust)
    for (const two of [
      { total, rear },
      { front, rear },
    ])
      expect(weighAlike(weighedOf(two), weighedOf({ total, front }))).toBe(true)
  })

  it('reads what it was told, whatever was told', () => {
    const reading = fc.double({ min: 7.2, max: 40, noNaN: true })
    fc.assert(
      fc.property(reading, reading, (front, rear) => {
        const read = wouldRead(weighedOf({ front, rear }))
        expectNear(read.front, front, dust)
        expectNear(read.rear, rear, dust)
      }),
    )
  })

  it('leaves a unit alone that reads as it should', () => {
    const { front, rear } = wouldRead(unit)
    const again = weighedOf({ front, rear })
    expect(weighAlike(again, unit)).toBe(true)
    expect(again.body.height).toBe(unit.body.height)
  })

  it('leaves what it carries on it, and the box off', () => {
    const loads = [
      { name: 'grass box', mass: 2.2, at: -0.06 },
      { name: 'brush', mass: 1.4, at: 0.24 },
    ]
    const laden = { ...unit, loads }
    const read = wouldRead(weighedOf({ total: 31, front: 15 }, laden))
    expectNear(read.total, 31, dust)
    expectNear(read.front, 15, dust)
    expect(weighedOf({ total: 31, front: 15 }, laden).loads?.map(({ name }) => name)).toEqual([
      'brush',
      'grass box',
    ])
  })

  it('takes its middle from what the ends read', () => {
    const even = weighedOf({ front: 14, rear: 15, left: 14.5, right: 14.5 })
    expectNear(even.body.offset ?? Number.NaN, 0, dust)
    expect(weighedOf({ front: 14, rear: 15, left: 13.5 }).body.offset).toBeGreaterThan(0)
  })

  it('gets its box empty, and says what a full one adds', () => {
    const box = { boxEmpty: 1.8, boxFull: 5.8, boxAt: -0.095 }
    const weighed = weighedOf({ front: 14, rear: 15, ...box })
    expect(weighed.loads).toEqual([{ name: 'grass box', mass: 1.8, at: -0.095 }])
    const adds = fullBoxAdds(box, unit)
    expectNear((adds?.front ?? 0) + (adds?.rear ?? 0), 4, dust)
    // half a wheelbase ahead of the front roller: half as much again in front, half of it off the rear
    expectNear(adds?.front ?? 0, 6, dust)
  })
})

describe('readings that cannot be', () => {
  it('are told apart with their difference where three disagree', () => {
    expect(said({ total: 29, front: 14, rear: 15.4 })).toMatch(
      /Front and rear come to 29\.40\u202fkg, the whole unit to 29\.00\u202fkg: 0\.40\u202fkg apart/,
    )
    expect(weigh({ total: 29, front: 14, rear: 15.15 }, unit).state).toBe('weighed')
  })

  it('are told apart at the ends, and under a roller that weighs more', () => {
    expect(said({ front: 14, rear: 15, left: 14, right: 16 })).toMatch(/Left and right come to 30\.00/)
    expect(said({ front: 6, rear: 15 })).toMatch(/front would read 6\.00.+front roller alone weighs 6\.20/)
    expect(said({ total: 20, front: 16 })).toMatch(/rear would read 4\.00.+rear roller alone weighs 4\.20/)
  })

  it('are too few with one of the three', () => {
    expect(weigh({ total: 29 }, unit).state).toBe('too few')
    expect(weigh({ left: 14, right: 15 }, unit).state).toBe('too few')
  })

  it('never throw', () => {
    const any = fc.option(fc.double({ noNaN: true, min: -1e4, max: 1e4 }), { nil: undefined })
    const names = [
      'total',
      'front',
      'rear',
      'left',
      'right',
      'boxEmpty',
      'boxFull',
      'boxAt',
      'height',
    ] as const
    fc.assert(
      fc.property(fc.tuple(...names.map(() => any)), values => {
        const readings = Object.fromEntries(
          names.flatMap((name, i) => (values[i] === undefined ? [] : [[name, values[i]]])),
        )
        const weighed = weigh(readings, unit)
        if (weighed.state === 'contradiction')
          expect(contradictionSentence(weighed.why, reader)).toMatch(/\w/)
      }),
    )
  })
})

describe('the entry', () => {
  it('says whether the unit in hand answers its readings', () => {
    const { front, rear } = wouldRead(unit)
    expect(shownIn(unitFromScales, scenario, { front, rear }).shown.result.answers).toBe(true)
    expect(shownIn(unitFromScales, scenario, { front, rear: rear + 0.5 }).shown.result.answers).toBe(false)
  })

  it('finds the body and where its weight acts', () => {
    const { shown } = shownIn(unitFromScales, scenario, { total: 29.6, front: 14.2 })
    const { body } = weighedOf({ total: 29.6, front: 14.2 })
    expect(scalesFinding(shown)).toContain(reader.format(body.mass, 'mass'))
    expect(scalesFinding(shown)).toContain(reader.format(body.at, 'place'))
    expect(scalesFinding(shownIn(unitFromScales, scenario).shown)).toMatch(/Two of the three/)
    expect(scalesFinding(shownIn(unitFromScales, scenario, { from: 'dimensions' }).shown)).toContain(
      reader.format(unit.body.mass, 'mass'),
    )
  })
})
