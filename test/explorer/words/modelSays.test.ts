import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { modelSays } from '../../../packages/explorer/src/words/german/modelSays.ts'
import {
  compareLaws,
  fitCompliance,
  type FreeChoice,
  judgeFit,
  methodsParagraph,
  readTable,
} from '../../../packages/model/src/index.ts'
import { gaugeTable, sandTable } from '../../../packages/explorer/src/books/ownGaugeReadings.ts'

const packages = new URL('../../../packages/', import.meta.url)

const sourcesIn = (folder: string): readonly string[] =>
  readdirSync(new URL(folder, packages), { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.ts'))
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
const ENGLISH = /\b(the|of|and|is|are|with|without|for|to|from|which|its|it|at least|at most|more than|by|one|than)\b/
const leftIn = (sentences: readonly string[]) =>
  [...new Set(sentences)].filter(said => /[a-z]{3}/.test(said) && (modelSays(said) === said || ENGLISH.test(modelSays(said))))

/** Said to callers of the library and on the command line, never on a page. */
const NOT_ON_A_PAGE = new Set<string>([])

describe('what the model says stands in the German phrasebook', () => {
  it.each(['turf', 'roller', 'unit', 'scenario', 'readings', 'quantities', 'study/fit', 'study/nextReading'])(
    'as what is wrong, in %s',
    room => {
      const said = told(`model/src/${room}`, 'expected|received')
      expect(leftIn(said).filter(one => !NOT_ON_A_PAGE.has(one))).toEqual([])
    },
  )

  it('as what is wrong with a book', () => {
    const said = told('explorer/src/book', 'expected|received')
    const entries = told('explorer/src/entries', 'expected|received')
    expect(said.length + entries.length).toBeGreaterThan(15)
    expect(leftIn([...said, ...entries])).toEqual([])
  })

  it.each([
    'study/fit',
    'study/report',
    'study/nextReading',
    'readings',
    'numerics/leastSquares',
  ])('as a reason or a judgement, in %s', room => {
    expect(leftIn(told(`model/src/${room}`, 'why|sentence'))).toEqual([])
  })
})
