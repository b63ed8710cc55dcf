import type { Scenario } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Entry, fieldsOf } from '../../../packages/explorer/src/book/index.ts'
import { domainOf, specOf } from '../../../packages/explorer/src/entries/question/drawing.ts'
import { questionFinding } from '../../../packages/explorer/src/entries/question/finding.ts'
import { readGuesses, tallied } from '../../../packages/explorer/src/entries/question/guesses.ts'
import { type QuestionResult, question } from '../../../packages/explorer/src/entries/question/kind.ts'
import { markAfter } from '../../../packages/explorer/src/entries/question/movedMark.ts'
import { otherwise } from '../../../packages/explorer/src/entries/question/otherwise.ts'
import { sentenceOf, valueName } from '../../../packages/explorer/src/entries/question/saying.ts'
import {
  type QuestionSettings,
  readQuestion,
} from '../../../packages/explorer/src/entries/question/settings.ts'
import { questionView } from '../../../packages/explorer/src/entries/question/view.ts'
import { settledOf } from '../../../packages/explorer/src/entries/settled.ts'
import { valueNames } from '../../../packages/explorer/src/entries/text/values.ts'
import { openFlow } from '../../../packages/explorer/src/flow/index.ts'
import { expectNear, identity } from '../../support/tolerance.ts'
import { answered, asked, reader, shownOf } from './asked.ts'
import { allKinds, firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const twice = { change: { name: 'frontRoller.mass', times: 2 } } as const
const heavier: Scenario = {
  ...scenario,
  unit: { ...scenario.unit, frontRoller: { ...scenario.unit.frontRoller, mass: 12.4 } },
}
const sinkage = (on: Scenario) => {
  const settled = settledOf(on)
  if (settled.outcome !== 'settled') throw new Error(settled.outcome)
  return settled.front.sinkage
}

function put(settings: Partial<QuestionSettings>, on = scenario) {
  const q = asked(question, on, settings)
  const result = answered(question.compute(q.input))
  return { ...shownOf<QuestionSettings, QuestionResult>(q.settings, result, on), input: q.input }
}

/** The same with something said, and revealed. */
const revealed = (settings: Partial<QuestionSettings>, on = scenario) =>
  put({ ...settings, state: 'revealed' }, on)

describe('what a question asks', () => {
  it('is answered by the model on a copy of the values, one of them made different', () => {
    const { result } = put(twice)
    expectNear(result.answer ?? 0, sinkage(heavier), identity)
    expectNear(result.now ?? 0, sinkage(scenario), identity)
  })

  it('is the value that stands where nothing is made different', () => {
    expectNear(put({ asks: 'front.load' }).result.answer ?? 0, 147.6, { ...identity, relative: 1e-2 })
    expect(put({ asks: 'front.load' }).result.now).toBe(null)
  })

  it('is a difference, or how many times what it was, if that is asked', () => {
    const [before, after] = [sinkage(scenario), sinkage(heavier)]
    expectNear(put({ ...twice, of: 'difference' }).result.answer ?? 0, after - before, identity)
    expectNear(put({ ...twice, of: 'ratio' }).result.answer ?? 0, after / before, identity)
    expect(put({ ...twice, of: 'ratio' }).result.told).toEqual({ unit: '' })
  })

  it('may be changed by an amount, to one, or to another choice', () => {
    const mass = (change: Parameters<typeof otherwise>[1]) => {
      const made = otherwise(scenario, change)
      return made.ok ? made.scenario.unit.frontRoller.mass : made.reason
    }
    expect(mass({ name: 'frontRoller.mass', by: 2 })).toBe(8.2)
    expect(mass({ name: 'frontRoller.mass', to: 9 })).toBe(9)
    expect(mass({ name: 'frontRoller', to: 'peg 3' })).toBe(5.1)
  })

  it('says why a change cannot be made, and leaves the values as they are', () => {
    const kept = JSON.stringify(scenario)
    const reasons = [
      { name: 'frontRoller.colour', to: 2 },
      { name: 'frontRoller', to: 'peg 99' },
      { name: 'frontRoller.pitch', to: 0.01 },
      { name: 'frontRoller.mass', to: 'heavy' },
      { name: 'frontRoller.mass', by: -40 },
    ].map(change => {
      const made = otherwise(scenario, change)
      return made.ok ? '' : made.reason
    })
    expect(new Set(reasons).size).toBe(reasons.length)
    for (const reason of reasons) expect(reader.words.failures.reasons[reason]?.({})).toMatch(/\.$/)
    expect(JSON.stringify(scenario)).toBe(kept)
  })

  it('has no answer where the changed turf bottoms out, and says so only once it is revealed', () => {
    const locked = { change: { name: 'turf.lockingDepth', to: 0.32e-3 }, prediction: 1e-3 } as const
    expect(put(locked).result.answer).toBe(null)
    expect(questionFinding(put(locked))).toBe(null)
    expect(questionFinding(revealed(locked))).toBe(reader.words.question.noAnswer)
  })

  it('can be a value that another entry gives, with its unit', () => {
    const entries: Entry[] = [
      {
        id: 'f',
        kind: 'formula',
        beside: false,
        settings: { name: 'perLength', from: 'front.load / frontRoller.length', in: 'N/mm' },
      },
      {
        id: 'q',
        kind: 'question',
        beside: false,
        settings: readQuestion(fieldsOf({ asks: 'perLength' }, '', [])),
      },
    ]
    const flow = openFlow({ kinds: allKinds.items, refiner: { refine() {}, drop() {} }, onLater() {} })
    flow.update(entries, scenario)
    const result = flow.stateOf('q').result as QuestionResult
    expect(result.told).toEqual({ unit: 'N/mm' })
    expectNear(result.answer ?? 0, 147.6 / 560, { ...identity, relative: 1e-2 })
  })

  it('is refused by name where there is no such value', () => {
    const { settings } = put({ asks: 'front.colour', question: 'So is {drop} and {then.drup}?' })
    expect(question.problems(settings, scenario, []).map(({ received }) => received)).toEqual([
      'front.colour',
      'then.drup',
    ])
  })

  it('has words for every value that can be asked for', () => {
    for (const name of valueNames()) expect(valueName(name, reader)).not.toBe(name)
  })

  it('is a sentence with live values, written or made', () => {
    const { settings, result } = put(twice)
    expect(sentenceOf(settings, result, reader)).toMatch(
      /^Mass of the front roller: \{then\.frontRoller\.mass\}/,
    )
    expect(result.values['then.frontRoller.mass']?.value).toBe(12.4)
    const own = put({ ...twice, question: 'From {front.load} to {then.front.load}?' })
    expect(own.result.values['then.front.load']?.value).toBeGreaterThan(
      own.result.values['front.load']?.value ?? Number.NaN,
    )
  })
})

describe('before it is revealed', () => {
  const said = { ...twice, prediction: 1.24e-3 }

  it('nothing of the answer is told: not in the finding, the table, the figure or to other entries', () => {
    for (const state of ['asked', 'locked'] as const) {
      const shown = put({ ...said, state })
      const answer = reader.format(shown.result.answer ?? 0, 'sinkage', { unit: false })
      expect(questionFinding(shown)).toBe(null)
      expect(questionView.table?.(shown).rows.flat().join(' ')).not.toContain(answer)
      expect(specOf(shown, 1).model).toBe(null)
      expect(question.offers?.(shown.result).answer?.value).toBe(null)
      expect(
        question.workedOut?.({ input: shown.input, result: shown.result, format: reader.format }),
      ).toEqual([])
    }
  })

  it('the scale already has room for the answer, and stays when it comes', () => {
    const [before, after] = [put(said), revealed(said)]
    expect(domainOf(before.settings, before.result)).toEqual(domainOf(after.settings, after.result))
    const [low, high] = domainOf(before.settings, before.result)
    expect(before.result.answer).toBeGreaterThan(low)
    expect(before.result.answer).toBeLessThan(high)
  })

  it('the mark goes where the key points, down for deeper, until it is locked', () => {
    const key = (name: string) => ({ key: name, altKey: false, ctrlKey: false, metaKey: false })
    expectNear(markAfter(put(said), key('ArrowDown')) ?? 0, 1.25e-3, identity)
    expectNear(markAfter(put(said), key('PageUp')) ?? 0, 1.14e-3, identity)
    expect(markAfter(put({ ...said, state: 'locked' }), key('ArrowDown'))).toBe(null)
    expect(markAfter(put(twice), key('ArrowDown'))).toBe(null)
    const load = put({ asks: 'front.load', prediction: 150 })
    expect(markAfter(load, key('ArrowUp'))).toBe(151)
  })
})

describe('the finding', () => {
  it('has the signed error in the same digits, and which way it is off', () => {
    const deep = questionFinding(revealed({ ...twice, prediction: 1.24e-3 }))
    const answer = sinkage(heavier)
    expect(deep).toContain(reader.format(1.24e-3 - answer, 'sinkage', { signed: true }))
    expect(deep).toContain(`${reader.words.percent((1.24e-3 - answer) / answer)} too deep`)
    expect(questionFinding(revealed({ ...twice, prediction: 0.5e-3 }))).toMatch(/\u2212.+not deep enough/)
    expect(questionFinding(revealed({ asks: 'effectiveHeight', prediction: 4e-3 }))).toMatch(/too high/)
    expect(questionFinding(revealed({ asks: 'front.load', prediction: 100 }))).toMatch(/too little/)
  })

  it('calls the same what is printed the same', () => {
    const near = sinkage(heavier) + 1e-9
    expect(questionFinding(revealed({ ...twice, prediction: near }))).toContain(
      'the same, as far as it is read',
    )
  })

  it('says how the guesses of a room lie about the answer', () => {
    const finding = questionFinding(revealed({ asks: 'front.load', guesses: [100, 120, 150, 180, 220] }))
    expect(finding).toMatch(
      /5 guesses of the room lie between 100 and 220\u202fN, their middle at 150: 3 above .+, 2 below/,
    )
  })

  it('says so when values were changed after it was locked', () => {
    const moved = revealed({ ...twice, prediction: 1e-3, stood: 0.5e-3 })
    expect(questionFinding(moved)).toContain('the model said 0.50')
    const still = revealed({ ...twice, prediction: 1e-3, stood: sinkage(heavier) })
    expect(questionFinding(still)).not.toContain('after it was locked')
  })
})

it('stands on paper as plain text, its answer only once it is revealed', () => {
  const said = { ...twice, prediction: 1.24e-3, why: 'twice the weight' }
  const asked = (shown: Parameters<typeof questionFinding>[0]) => questionView.asked?.(shown)
  expect(asked(put(said))).toMatchObject({
    said: '1.24\u202fmm',
    found: null,
    error: null,
    why: 'twice the weight',
  })
  expect(asked(put(said))?.question).toMatch(/12\.40\u202fkg instead of 6\.20\u202fkg/)
  expect(asked(revealed(said))).toMatchObject({
    found: reader.format(sinkage(heavier), 'sinkage'),
    error: reader.format(1.24e-3 - sinkage(heavier), 'sinkage', { signed: true }),
  })
  expect(asked(put(twice))?.said).toBe(null)
})

describe('a few options', () => {
  const options = [
    { text: 'less than twice', from: null, to: 1.95, right: false },
    { text: 'twice', from: 1.95, to: 2.05, right: false },
    { text: 'more', from: 2.05, to: null, right: false },
  ]
  const choice = { ...twice, of: 'ratio', options } as const

  it('are judged by where the model’s value lies', () => {
    expect(put(choice).result.right).toBe(0)
    const linear = {
      ...scenario,
      turf: 'l',
      turfs: { l: { law: { kind: 'linear', softness: 1e-5 } } },
    } as const
    const { result } = put({ ...choice, options: options.slice(1) }, linear)
    expect(result.right).toBe(null)
  })

  it('or by what is marked right, where no number answers', () => {
    const marked = ['yes', 'no'].map(text => ({ text, from: null, to: null, right: text === 'no' }))
    expect(put({ options: marked }).result.right).toBe(1)
  })

  it('are told right, wrong and by the room', () => {
    expect(questionFinding(revealed({ ...choice, prediction: 0 }))).toMatch(/so does the model/)
    expect(questionFinding(revealed({ ...choice, prediction: 2, guesses: [0, 0, 1] }))).toMatch(
      /You said “more”, the model says “less than twice”\. 2 of 3/,
    )
    expect(questionFinding(revealed({ ...choice, options: options.slice(1), prediction: 0 }))).toMatch(
      /^None of these/,
    )
  })
})

describe('guesses of a room', () => {
  it('are numbers with anything between them, or a tally', () => {
    expect(readGuesses('0.5 0,6; .7\n0.5 ×3').values).toEqual([0.5, 0.6, 0.7, 0.5, 0.5, 0.5])
    expect(readGuesses('0.5, 0.6, −1').values).toEqual([0.5, 0.6, -1])
    expect(readGuesses('2: 4').values).toEqual([2, 2, 2, 2])
  })

  it('leave out what is no number and say what it is', () => {
    expect(readGuesses('0.5 about 0.6')).toMatchObject({ values: [0.5, 0.6], unread: 'about' })
    expect(readGuesses('0.5 0.6').unread).toBe(null)
  })

  it('are sixty at most', () => {
    const read = readGuesses('1 ×61')
    expect(read).toMatchObject({ more: true })
    expect(read.values.length).toBe(60)
    expect(readGuesses('1 ×60').more).toBe(false)
  })

  it('read back as they were tallied', () => {
    const guess = fc.integer({ min: -50, max: 500 }).map(tenths => tenths / 10)
    fc.assert(
      fc.property(fc.array(guess, { maxLength: 60 }), guesses => {
        const { values, unread } = readGuesses(tallied(guesses, String))
        expect(unread).toBe(null)
        expect(values).toEqual([...guesses].sort((a, b) => a - b))
      }),
    )
  })
})

describe('a question in a file', () => {
  it('reads back whole', () => {
    const written = {
      ...readQuestion(fieldsOf({}, '', [])),
      ...twice,
      prediction: 1e-3,
      guesses: [1e-3, 2e-3],
      state: 'locked',
      scale: [0, 2e-3],
      options: [{ text: 'a', from: 1, to: null, right: false }],
    }
    const problems: never[] = []
    expect(readQuestion(fieldsOf(JSON.parse(JSON.stringify(written)), '', problems))).toEqual(written)
    expect(problems).toEqual([])
  })

  it('that is damaged says where, and is not locked with nothing said', () => {
    const problems: { path: string }[] = []
    const raw = {
      change: { name: 'frontRoller.mass' },
      options: [{ wrong: 1 }],
      scale: [2, 1],
      guesses: ['many'],
      prediction: 'deep',
      state: 'revealed',
    }
    const read = readQuestion(fieldsOf(raw, 'q', problems as never[]))
    expect(problems.map(({ path }) => path).sort()).toEqual(
      ['q.change', 'q.guesses', 'q.options', 'q.prediction', 'q.scale'].sort(),
    )
    expect(read).toMatchObject({ state: 'asked', change: null, options: [], guesses: [] })
  })

  it('is useful as soon as a reader adds it', () => {
    const settings = {
      ...readQuestion(fieldsOf({}, '', [])),
      ...question.whenAdded?.({ scenario, entries: [] }),
    }
    expect(question.problems(settings, scenario, [])).toEqual([])
    expect(put(settings).result.answer).toBeGreaterThan(sinkage(scenario))
  })
})
