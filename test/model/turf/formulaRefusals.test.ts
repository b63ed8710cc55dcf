import { formulaLaw, sentence } from '@swardsink/model'
import { beforeAll, describe, expect, test } from 'vitest'

const refused = async (expression: unknown, values: Record<string, number> = {}) => {
  const started = performance.now()
  const found = await formulaLaw({ expression: expression as string, values })
  const took = performance.now() - started
  if (found.ok) return expect.fail('accepted')
  return { took, said: found.problems.map(sentence) }
}

// the parser is fetched once, by whoever writes the first expression
beforeAll(async () => {
  await formulaLaw({ expression: '1e7*z' })
}, 30_000)

const MOST_MILLISECONDS = 50
const deep = (times: number) => `${'('.repeat(times)}z${')'.repeat(times)}`

const hostile: readonly (readonly [string, string])[] = [
  ['an import', 'import({pi: 3})'],
  ['an assignment', 'z = 5'],
  ['a property', 'z.constructor'],
  ['a property by name', 'z["constructor"]'],
  ['a call of what a property gives', 'cos.constructor("return 1")()'],
  ['a call of a call', 'sqrt(z)(z)'],
  ['a function of its own', 'f(x) = f(x) + 1; f(z)'],
  ['a function of the parser', 'evaluate(z)'],
  ['another function of the parser', 'parse(z)'],
  ['powers of powers', `${'9^'.repeat(200)}z`],
  ['a power out of all proportion', '1e7*z^9^9^9'],
  ['a number out of all proportion', '1e400*z'],
  ['deep brackets', deep(500)],
  ['brackets as deep as fit, never closed', '('.repeat(1999)],
  ['a long row of signs', `${'-'.repeat(1990)}z`],
  ['a sum that never ends', `${'z+'.repeat(999)}z`],
  ['a hundred thousand characters', 'z+'.repeat(50_000)],
  ['a matrix', '[1, z; z, 1]'],
  ['a range', '1:1e9'],
  ['an object', '{a: z}'],
  ['a unit', '5 kPa * z'],
  ['a string', '"z"'],
  ['a condition', 'z > 0 ? 1 : 2'],
  ['a factorial', '(z*1e6)!'],
  ['a transpose', "z'"],
  ['an imaginary number', '1e7*z*i'],
  ['a template', '$' + '{z}'],
  ['a comment with a line of its own', 'z # z\nz'],
  ['a word for an operator', 'z mod 2'],
  ['the prototype', '__proto__ * z'],
  ['nothing', ''],
  ['what is no text', undefined as unknown as string],
]

describe('expressions that mean harm, or nothing', () => {
  test.each(hostile)('%s is refused at once, with a sentence', async (_, expression) => {
    const { took, said } = await refused(expression)
    expect(took).toBeLessThan(MOST_MILLISECONDS)
    expect(said).toHaveLength(1)
    expect(said[0]).toMatch(/^law\.expression: expected .+, received .+/)
    expect(said[0]!.length).toBeLessThan(400)
  })

  test('names that mean something already, and values that are no numbers', async () => {
    for (const values of [{ z: 1 }, { sqrt: 1 }, { pi: 3 }, { 'a b': 1 }, { k: Number.NaN }, { k: '1' }])
      expect(
        (await refused('1e7*z', values as Record<string, number>)).said,
        JSON.stringify(values),
      ).toHaveLength(1)
  })
})

describe('a refusal says where the expression fails', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['1e7*z + 500', 'expected no pressure at z = 0 mm, received 0.5 kPa'],
    ['log(z)', 'expected no pressure at z = 0 mm, received -Infinity'],
    ['5e3', 'expected an expression in z, received one without it'],
    ['k*z', 'expected z, pi or a name that has a value, received k'],
    ['1e7*sqrt', 'expected an argument in brackets after sqrt, received none'],
    ['1e7*sqrt(z, z)', 'expected one argument for sqrt, received 2'],
    ['min(z)', 'expected two arguments or more for min, received 1'],
    ['1e7 z', 'expected a sign between two factors, received none'],
    ['1e4*z', 'expected at least 10 kPa within 50 mm, received 0.5 kPa'],
  ]
  test.each(cases)('%s', async (expression, expected) => {
    expect((await refused(expression)).said).toEqual([`law.expression: ${expected}`])
  })

  test('the depth from which pressure falls', async () => {
    const { said } = await refused('1e7*z*(1 - z/0.005)')
    const [, place] = /grows with sinkage at z = ([\d.]+) mm/.exec(said[0] ?? '') ?? []
    // a parabola turns at half its root; samples lie 0.025 mm apart
    expect(Number(place)).toBeGreaterThanOrEqual(2.5)
    expect(Number(place)).toBeLessThanOrEqual(2.53)
  })

  test('the depth from which it is no number', async () => {
    const { said } = await refused('1e7*z*(1 + 0*sqrt(0.002 - z))')
    expect(said[0]).toMatch(/(a finite pressure|a slope) at z = 2(\.0\d+)? mm/)
  })
})
