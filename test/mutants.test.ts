import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { mutants, mutated } from './checks/mutants.ts'
import { repository } from './support/files.ts'

describe('lines of physics that npm run mutants makes wrong', () => {
  test('are ten or more, of every kind', () => {
    expect(mutants.length).toBeGreaterThanOrEqual(10)
    expect(new Set(mutants.map(({ kind }) => kind))).toEqual(new Set(['sign', 'exponent', 'factor']))
  })

  test.each(mutants)('stand where they are said to: $what', mutant => {
    const text = readFileSync(join(repository, 'packages/model/src', mutant.file), 'utf8')
    expect(mutated(text, mutant)).not.toBe(text)
    for (const path of mutant.tests) expect(existsSync(join(repository, 'test/model', path)), path).toBe(true)
  })

  test('that have moved or stand twice are told', () => {
    const [mutant] = mutants
    if (!mutant) return expect.fail('no mutants')
    expect(() => mutated('nothing of the kind', mutant)).toThrow('the line has moved or changed in turf/laws')
    expect(() => mutated(`${mutant.right}\n${mutant.right}`, mutant)).toThrow('the line stands 2 times')
  })
})
