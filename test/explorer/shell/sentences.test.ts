import { describe, expect, it } from 'vitest'
import { bookOf, enter, openSession, type Refusal } from '../../../packages/explorer/src/book/index.ts'
import { refusalSentence } from '../../../packages/explorer/src/controls/refusalSentence.ts'
import { failureSentence } from '../../../packages/explorer/src/shell/failureSentence.ts'
import { keepPreferences, readPreferences } from '../../../packages/explorer/src/shell/preferences.ts'
import { whatChanged } from '../../../packages/explorer/src/shell/whatChanged.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { memory } from '../../support/memoryStore.ts'
import { firstBook } from '../entries/firstBook.ts'

const reader = readerFor({ units: 'metric', figureText: 13 })
const american = readerFor({ units: 'US', figureText: 13 })
const book = await firstBook()

describe('a sentence about what cannot be taken', () => {
  const refusals: readonly [Refusal, RegExp][] = [
    [{ reason: 'not a number', text: 'six' }, /“six”/],
    [{ reason: 'not a number', text: '' }, /number/],
    [{ reason: 'more than zero' }, /more than 0/],
    [{ reason: 'not negative' }, /less than 0/],
    [{ reason: 'land against pitch', land: 0.014, pitch: 0.012 }, /14\.0\u202fmm.+12\.0\u202fmm/],
    [
      { reason: 'locking depth against softness', lockingDepth: 2e-4, softness: 3e-4 },
      /0\.20\u202fmm.+0\.30\u202fmm/,
    ],
    [{ reason: 'edge outside the wheelbase', edge: 0.2, wheelbase: 0.19 }, /200\.0\u202fmm.+190\.0\u202fmm/],
    [
      { reason: 'roller heavier than its reading', where: 'front', reading: 4, roller: 6.2 },
      /front.+4\.00\u202fkg.+6\.20\u202fkg/,
    ],
    [
      { reason: 'model', problem: { path: 'unit.body.at', expected: 'more than 0', received: '-1' } },
      /unit\.body\.at/,
    ],
  ]
  it.each(refusals)('names the numbers of %j', (refusal, expected) => {
    expect(refusalSentence(refusal, reader)).toMatch(expected)
  })

  it('speaks in the reader’s units', () => {
    const refusal = { reason: 'land against pitch', land: 0.0254, pitch: 0.0127 } as const
    expect(refusalSentence(refusal, american)).toMatch(/1\.00\u202fin.+0\.50\u202fin/)
  })
})

describe('a sentence about an answer that is not there', () => {
  it('says under which roller, with what load, and what to change', () => {
    const failure = { kind: 'bottomed out', where: 'front', load: 148, lockingDepth: 3e-4 } as const
    const sentence = failureSentence(failure, reader)
    expect(sentence).toMatch(/front roller.+148\u202fN.+0\.30\u202fmm.+Raise/)
    expect(failureSentence({ ...failure, load: null }, reader)).not.toMatch(/null|NaN/)
  })

  it('says how many steps were taken', () => {
    const failure = { kind: 'not converged', where: 'unit', iterations: 30, residual: 0.1 } as const
    expect(failureSentence(failure, reader)).toContain('30 steps')
  })
})

describe('what a pale figure is still for', () => {
  const held = (value: number) =>
    enter(openSession(book), { name: 'frontRoller.mass', value, text: String(value) })

  it('is the value that was, against what now stands in the field', () => {
    const session = held(-2)
    const changed = whatChanged(book.scenario, { now: book.scenario, held: session.held, reader })
    expect(changed).toEqual({
      what: 'Mass of the front roller',
      was: '6.20\u202fkg',
      now: '\u22122.00\u202fkg',
    })
  })

  it('is the value that was, against the one that was set', () => {
    const now = bookOf(held(9)).scenario
    expect(whatChanged(book.scenario, { now, held: {}, reader })).toEqual({
      what: 'Mass of the front roller',
      was: '6.20\u202fkg',
      now: '9.00\u202fkg',
    })
  })

  it('is nothing when nothing changed', () => {
    expect(whatChanged(book.scenario, { now: book.scenario, held: {}, reader })).toBe(null)
  })
})

describe('a reader’s own choices', () => {
  const store = memory()

  it('are kept', () => {
    const chosen = { language: 'de', units: 'US', paper: 'projector', workshop: true } as const
    keepPreferences(store, chosen)
    expect(readPreferences(store)).toEqual(chosen)
  })

  it('are the usual ones where what is kept makes no sense', () => {
    for (const text of ['', 'null', '3', '{"units":"furlongs","paper":7,"workshop":"yes"}', '{']) {
      store.setItem('swardsink/reader', text)
      expect(readPreferences(store, [])).toEqual({
        language: 'en',
        units: 'metric',
        paper: 'system',
        workshop: false,
      })
    }
  })

  it('begin with the first language of the browser that there is', () => {
    expect(readPreferences(memory(), ['fr-CH', 'de-CH', 'en']).language).toBe('de')
    expect(readPreferences(memory(), ['fr', 'it']).language).toBe('en')
  })
})
