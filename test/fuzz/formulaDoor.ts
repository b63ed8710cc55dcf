import { formulaLaw, type PressureLaw, press, pressureAt, softnessOf, workTo } from '@swardsink/model'
import fc from 'fast-check'
import { formula } from '../../packages/explorer/src/entries/formula/kind.ts'
import { formulaFunctions, readFormula } from '../../packages/explorer/src/entries/formula/readFormula.ts'
import { tears, torn } from './damage.ts'
import { door } from './door.ts'
import { Found, must, mustBeFinite, mustBeSaid } from './expectations.ts'

const functions = ['expm1', 'log1p', ...Object.keys(formulaFunctions)]
const joins = [
  '+',
  '-',
  '*',
  '/',
  '^',
  ' ',
  ',',
  '==',
  '?',
  ':',
  '=',
  ';',
  '.',
  '..',
  '!',
  "'",
  '|',
  '&',
  '%',
  'to',
  'in',
]

const leaves = (names: readonly string[]) =>
  fc.oneof(
    { weight: 6, arbitrary: fc.constantFrom(...names) },
    { weight: 3, arbitrary: fc.double({ min: 0, max: 1e7, noNaN: true }).map(value => String(value)) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        ...[
          '1e999',
          '0x1F',
          '1i',
          '"a"',
          '[1,2]',
          '{a: 1}',
          'true',
          'null',
          'NaN',
          'Infinity',
          'e',
          'mm',
          'kN',
          'µm',
        ],
        ...[
          'constructor',
          '__proto__',
          'import("fs")',
          'this',
          'a.b',
          'f(x)=x',
          'eval("1")',
          'x => x',
          'end',
          'z[1]',
        ],
      ),
    },
  )

/** Expressions of the usual grammar, with here and there what does not belong to it. */
const expressions = (names: readonly string[]): fc.Arbitrary<string> =>
  fc.letrec<{ whole: string; leaf: string }>(tie => ({
    leaf: leaves(names),
    whole: fc.oneof(
      { maxDepth: 5, withCrossShrink: true },
      tie('leaf'),
      fc
        .tuple(
          tie('whole'),
          fc.oneof(
            { weight: 9, arbitrary: fc.constantFrom('+', '-', '*', '/', '^') },
            { weight: 1, arbitrary: fc.constantFrom(...joins) },
          ),
          tie('whole'),
        )
        .map(([a, join, b]) => `${a} ${join} ${b}`),
      fc.tuple(fc.constantFrom(...functions), tie('whole')).map(([name, of]) => `${name}(${of})`),
      tie('whole').map(of => `(${of})`),
      tie('whole').map(of => `-${of}`),
    ),
  })).whole

const longOnes = fc
  .tuple(
    fc.constantFrom('(', '-', 'sqrt(', 'z^', '1+', '[', '{', 'z*', '2^'),
    fc.integer({ min: 50, max: 20_000 }),
  )
  .map(([part, times]) => `${part.repeat(times)}z`)

const texts = (names: readonly string[]) =>
  fc
    .tuple(
      fc.oneof(
        { weight: 16, arbitrary: expressions(names) },
        { weight: 2, arbitrary: fc.string({ unit: 'grapheme', maxLength: 30 }) },
        { weight: 1, arbitrary: longOnes },
      ),
      fc.oneof({ weight: 4, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: tears }),
    )
    .map(([text, damage]) => torn(text, damage))

/** What a made law says from nothing down to where it was checked, and beyond. */
function mustBeALaw(law: PressureLaw, deepest: number): void {
  let before = 0
  for (const z of [0, 0.01, 0.1, 0.3, 0.7, 1, 2].map(part => part * deepest)) {
    const pressure = pressureAt(law, z)
    must(Number.isFinite(pressure) && Number.isFinite(workTo(law, z)), `pressure ${pressure} at ${z} m`)
    must(pressure >= before, `pressure falls to ${pressure} at ${z} m`)
    before = pressure
  }
  must(softnessOf(law) > 0, 'no softness')
  const pressed = press({
    roller: { mass: 6, diameter: 0.058, length: 0.55, surface: { kind: 'smooth' } },
    turf: { law, spread: 0.001 },
    load: 140,
    condition: { kind: 'mowing', speed: 1 },
  })
  if (pressed.outcome === 'settled') mustBeFinite(pressed, 'press on a written law')
}

/** Laws that a reader writes: accepted and then sound, or refused with a reason. */
export const lawDoor = door({
  name: 'written laws',
  arbitrary: fc.record({
    expression: fc.oneof(
      texts(['z', 'z', 'k', 'n', 'pi']),
      expressions(['z', 'k', 'n']).map(text => `k * z + z * (${text})`),
      expressions(['z', 'k']).map(text => `k * z * exp(${text})`),
    ),
    values: fc.record({
      k: fc.double({ min: 1e3, max: 1e9, noNaN: true }),
      n: fc.oneof(fc.double({ min: 0.2, max: 2, noNaN: true }), fc.double()),
    }),
    deepest: fc.option(fc.double({ min: 1e-4, max: 0.1, noNaN: true }), { nil: undefined }),
  }),
  async check({ expression, values, deepest }) {
    const made = await formulaLaw({ expression, values, ...(deepest === undefined ? {} : { deepest }) })
    if (!made.ok) mustBeSaid(made.problems, 'a law')
    else mustBeALaw(made.law, made.range.sinkage)
  },
})

const known = { drop: { quantity: 'drop', value: null }, a_1: { unit: 'N/mm', value: 3 } } as const

/** Formulas of a book: a finite value with its unit, or a reason. */
export const bookFormulaDoor = door({
  name: 'book formulas',
  arbitrary: fc.record({
    from: texts(['front.load', 'drop', 'a_1', '3 mm', '2 kg', 'pi']),
    in: fc.constantFrom('', 'mm', 'N/mm', 'psi', 'mm^', '1/0', 'constructor', 'm^99', '°'),
  }),
  check({ from, in: unit }) {
    const found = readFormula(from, name => /^[a-z]/.test(name))
    if (!found.ok) must(found.reason.length > 0, 'a formula refused without a reason')
    const input = { settings: { name: 'x', from, in: unit }, refused: null, known, others: [] }
    const answer = formula.compute(input)
    if (answer.outcome !== 'answered') throw new Found('a formula without an answer')
    const { worked } = answer.result
    if (worked.outcome === 'none') must(worked.reason.length > 0, 'a formula without a value has no reason')
    else mustBeFinite(worked.value, 'a formula')
  },
})
