import { catalogue, cautionWords } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import { settableNames, settables } from '../../../packages/explorer/src/book/index.ts'
import { cautionSentence, readerFor, settableWords } from '../../../packages/explorer/src/words/index.ts'
import { firstBook, everyKind as kinds } from '../entries/firstBook.ts'

const reader = readerFor({ units: 'metric', figureText: 13 })
const american = readerFor({ units: 'US', figureText: 13 })

describe('the words', () => {
  it('name everything that can be set, and what it belongs to', async () => {
    const { scenario } = await firstBook()
    for (const name of [...Object.keys(settables), ...settableNames(scenario)]) {
      const said = settableWords(name, reader.words)
      expect(said.name).toMatch(/^[A-Z]/)
      if (name.startsWith('rollers.')) expect(said.note).toMatch(/^peg \d$/)
      if (name.startsWith('turfs.')) expect(said.note).toBe('chapel green')
    }
  })

  it('say which layer of which green a number belongs to', () => {
    expect(settableWords('turfs.mill green.upper.softness', reader.words)).toEqual({
      name: 'Softness',
      note: 'upper layer of mill green',
    })
    expect(settableWords('turfs.mill green.law.lower.upper.exponent', reader.words).note).toBe(
      'upper layer of lower layer of mill green',
    )
    expect(settableWords('rollers.peg 3.1.mass', reader.words)).toEqual({ name: 'Mass', note: 'peg 3.1' })
    expect(settableWords('rearRoller.diameter', reader.words).note).toBe('rear roller')
  })

  it('name every option of a choice that is not a reader’s own name', async () => {
    const { scenario } = await firstBook()
    const own = [...Object.keys(scenario.rollers), ...Object.keys(scenario.turfs)]
    for (const of of Object.values(settables)) {
      if (of.kind !== 'choice') continue
      for (const option of of.options(scenario))
        if (!own.includes(option)) expect(reader.words.options[option]).toMatch(/\w/)
    }
  })

  it('say what every line of a working works out', async () => {
    const { scenario, pages } = await firstBook()
    const said = pages
      .flatMap(page => page.entries)
      .flatMap(({ kind: name, settings }) => {
        const kind = kinds.find(({ kind }) => kind === name)
        if (!kind) return []
        const input = kind.input({ settings, scenario, answers: {}, entries: [], offered: {} })
        const answer = kind.compute(input)
        if (answer.outcome !== 'answered') return []
        const lines = kind.workedOut?.({ input, result: answer.result, format: reader.format }) ?? []
        return lines.map(line => line.what)
      })
    expect(said.length).toBeGreaterThan(5)
    for (const what of said) expect(reader.words.workings[what]).toMatch(/\w/)
  })

  it('have a sentence for every caution of the model, with its numbers in it', () => {
    for (const kind of Object.keys(cautionWords) as (keyof typeof cautionWords)[]) {
      const sentence = cautionSentence({ kind, value: 0.42, limit: 0.37, where: 'front roller' }, reader)
      expect(reader.words.cautions[kind]).toBeTypeOf('function')
      expect(sentence).toMatch(/^Front roller: .+\.$/)
    }
  })

  it('tell a length in a caution in the reader’s own units', () => {
    const caution = { kind: 'cuts into the turf', value: -0.001 } as const
    expect(cautionSentence(caution, reader)).toContain('\u22121.00\u202fmm')
    expect(cautionSentence(caution, american)).toContain('\u22120.039\u202fin')
  })
})

describe('the reader’s formatter', () => {
  it('has the units and decimals of the catalogue', () => {
    expect(reader.format(6.2, 'mass')).toBe('6.20\u202fkg')
    expect(american.format(0.0254, 'height')).toBe(`1.000\u202f${catalogue.height.US.unit}`)
  })

  it('can leave the unit off and carry a sign', () => {
    expect(reader.format(-1e-4, 'height', { unit: false, signed: true })).toBe('\u22120.10')
    expect(reader.format(1e-4, 'height', { unit: false, signed: true })).toBe('+0.10')
  })
})
