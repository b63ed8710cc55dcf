import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { gaugeTable, sandTable } from '../../../packages/explorer/src/books/ownGaugeReadings.ts'
import { parametersOf } from '../../../packages/explorer/src/entries/fit/settings.ts'
import { modelSays } from '../../../packages/explorer/src/words/german/modelSays.ts'
import { phrasebook } from '../../../packages/explorer/src/words/phrasebook.ts'
import {
  type ComplianceQuestion,
  compareLaws,
  exportFit,
  fitCompliance,
  judgeFit,
  laws,
  methodsParagraph,
  readTable,
} from '../../../packages/model/src/index.ts'

const packages = new URL('../../../packages/', import.meta.url)

/** Files of the library that no page asks, or whose words no page shows. */
const ASKED_BY_CALLERS =
  /(fitCurve|statement|acrossFittedSets|acrossSets|bootstrapFits|compareLaws|fittedModel|profileOf|resampleFit|addedTerms|normality|rate)\.ts$/

const sourcesIn = (folder: string): readonly string[] =>
  readdirSync(new URL(folder, packages), { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.ts') && !ASKED_BY_CALLERS.test(name))
    .map(name => readFileSync(new URL(`${folder}/${name}`, packages), 'utf8'))

/** Sentences that stand in the code as they are said, each value in them put as 7. */
function told(folder: string, names: string): readonly string[] {
  const plain = new RegExp(`\\b(?:${names}):?\\s*\\(?'((?:[^'\\\\]|\\\\.)+)'`, 'g')
  const filled = new RegExp(`\\b(?:${names}):?\\s*\\(?\`([^\`]+)\``, 'g')
  return sourcesIn(folder).flatMap(text => [
    ...[...text.matchAll(plain)].map(([, said = '']) => said.replaceAll("\\'", "'")),
    // A sentence with another one inside it is asked for by its parts.
    ...[...text.matchAll(filled)]
      .map(([, said = '']) => said.replaceAll(/\$\{[^{}]*\}/g, '7'))
      .filter(said => !/[{}$]/.test(said)),
  ])
}

/** Words that German has not. */
const ENGLISH =
  /\b(the|of|and|are|with|without|for|to|from|which|its|it|at least|at most|more than|less than|by|one|than)\b/
const leftIn = (sentences: readonly string[]) =>
  [...new Set(sentences)].filter(
    said => /[a-z]{3}/.test(said) && (modelSays(said) === said || ENGLISH.test(modelSays(said))),
  )

/** Words stand where the test puts a number: asked below, filled as the model fills them. */
const FILLED_WITH_WORDS = [
  '7 on the 7 roller: the unit would tip',
  "more than the 7 roller's own 77",
  'a number7',
  '"set"',
  '"per set"',
  'all drops 7 are read under one 7, and only their differences count',
  'it lies 7 standard deviations 7 the curve; among 7 readings one beyond 7 comes by chance in one fit of twenty',
]
/** Names of fields stay in a file. */
const IN_A_FILE = ['the name of a setting and one of by, times, to']
const isWhole = (said: string) => !FILLED_WITH_WORDS.includes(said) && !said.includes('readonly')

describe('what the model says stands in the German phrasebook', () => {
  it.each([
    ['what is wrong', 'turf', 'expected|received'],
    ['what is wrong', 'roller', 'expected|received'],
    ['what is wrong', 'unit', 'expected|received'],
    ['what is wrong', 'scenario', 'expected|received'],
    ['what is wrong', 'readings', 'expected|received'],
    ['what is wrong', 'quantities', 'expected|received'],
    ['what is wrong', 'study/fit', 'expected|received'],
    ['what is wrong', 'study/nextReading', 'expected|received'],
    ['why', 'study/fit', 'why|sentence'],
    ['why', 'study/report', 'why|sentence'],
    ['why', 'readings', 'why|sentence'],
    ['why', 'numerics/leastSquares', 'why|sentence'],
  ])('as %s, in %s', (_, room, names) => {
    expect(leftIn(told(`model/src/${room}`, names)).filter(isWhole)).toEqual([])
  })

  it('as what is wrong with a book', () => {
    const said = ['book', 'entries'].flatMap(room =>
      told(`explorer/src/${room}`, "expected|received|problem\\('\\w+',|problem\\(path,"),
    )
    expect(said.length).toBeGreaterThan(20)
    expect(leftIn(said)).toEqual(IN_A_FILE)
  })

  it('as where a law comes from', () => {
    const sources = Object.values(laws).map(({ source }: { readonly source: string }) => source)
    const worded = sources.filter(source => /\b(?!and\b)[a-z]{3}/.test(source))
    expect(worded.length).toBeGreaterThan(2)
    expect(leftIn(worded)).toEqual([])
    expect(sources.filter(source => / and /.test(modelSays(source)))).toEqual([])
  })

  it('where words are put into a sentence', () => {
    expect(
      leftIn([
        '27.4 N on the rear roller: the unit would tip',
        "more than the front roller's own 6.2 kg left on it",
        'a number, or pitch_mm',
        'all drops in its set are read under one load, and only their differences count',
        'it lies 3.1 standard deviations above the curve; among 16 readings one beyond 2.9 comes by chance in one fit of twenty',
        'more than 0 mm and less than 57 mm',
        'at most about 15 mm, or another unit (likely sinkage_mm or sinkage_um)',
        'unit.edge: expected more than 0 mm and less than 190 mm, the wheelbase, received 200 mm',
      ]),
    ).toEqual([])
  })
})

describe('what is judged of a fit', () => {
  const own = { name: 'softness', per: 'set' } as const
  /** Everything that a fit of these readings makes the model say. */
  function saidOf(table: string, free: ComplianceQuestion['free']): readonly string[] {
    const { readings } = readTable(table)
    const noise = { kind: 'estimated' } as const
    const question = { law: 'power', free, readings, noise } as const
    const fit = fitCompliance(question)
    if (fit.outcome === 'failed') return [fit.why]
    const { lackOfFit, cannotTell, residuals } = judgeFit({ question, fit })
    const tried = (['linear', 'power', 'stiffening', 'logarithmic'] as const).map(law => ({
      law,
      free: parametersOf(law)
        .filter(name => name !== 'spread')
        .map(name => (name === 'softness' ? own : name)),
    }))
    const intervals = fit.parameters.flatMap(({ interval }) => ('why' in interval ? [interval.why] : []))
    const exported = exportFit({ fit, language: 'R' })
    return [
      lackOfFit.sentence,
      ...cannotTell.map(({ sentence }) => sentence),
      ...residuals.sentences,
      ...fit.notes,
      ...fit.leftOut.map(({ why }) => why),
      ...intervals.filter(why => why !== ''),
      ...compareLaws({ readings, laws: tried, noise }).sentences,
      methodsParagraph({ fit, noise }),
      methodsParagraph({
        fit,
        noise: { kind: 'known', standardDeviation: 1e-4 },
        given: { standardDeviation: 0, gaugeStep: 2 },
      }),
      ...(exported.kind === 'script' ? [] : [exported.why]),
    ]
  }
  const said = [
    ...saidOf(gaugeTable, [own, 'exponent']),
    ...saidOf(gaugeTable, [own, 'exponent', 'spread']),
    ...saidOf(sandTable, [own, { name: 'exponent', per: 'set' }]),
    ...saidOf('set,plate_diameter_mm,load_N,sinkage_mm\nA,50,20,0.5\nA,50,21,0.52\nA,50,22,0.56', [
      'softness',
      'exponent',
      'spread',
    ]),
  ]

  it('is said in German, with decimal commas', () => {
    expect(said.length).toBeGreaterThan(30)
    const wrong = said
      .map(text => [text, modelSays(text)])
      .filter(
        ([text = '', german = '']) =>
          german === text || ENGLISH.test(german) || /\d\.\d/.test(german.replace(/§[\d.]+/g, '')),
      )
    expect(wrong).toEqual([])
  })
})

describe('a phrasebook', () => {
  const say = phrasebook({
    phrases: [
      ['{who} sees {what+}.', '{what} sieht {who}.'],
      ['the {n#} rollers', 'die {n} Walzen'],
      ['a bench', 'eine Bank'],
    ],
    list: items => items.join(' und '),
    number: text => text.replace('.', ','),
  })

  it('fills holes with what it knows, and leaves names as they are', () => {
    expect(say('Anna sees a bench, the 2 rollers and 3.5 mm.')).toBe(
      'eine Bank und die 2 Walzen und 3,5 mm sieht Anna.',
    )
  })

  it('keeps a capital, and tells several sentences one by one', () => {
    expect(say('A bench')).toBe('Eine Bank')
    expect(say('Anna sees a bench. Bert sees a bench.')).toBe('eine Bank sieht Anna. eine Bank sieht Bert.')
  })

  it('says what it has no phrase for as it came', () => {
    expect(say('nobody knows')).toBe('nobody knows')
  })
})
