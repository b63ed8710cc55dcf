import fc from 'fast-check'
import { type Unit as LibraryUnit, evaluate as reference } from 'mathjs'
import { describe, expect, it } from 'vitest'
import type { Entry } from '../../../packages/explorer/src/book/index.ts'
import { type FormulaSettings, formula } from '../../../packages/explorer/src/entries/formula/kind.ts'
import { nearest } from '../../../packages/explorer/src/entries/formula/nearest.ts'
import { readFormula } from '../../../packages/explorer/src/entries/formula/readFormula.ts'
import { workOut } from '../../../packages/explorer/src/entries/formula/workOut.ts'
import { settledOf } from '../../../packages/explorer/src/entries/settled.ts'
import { text } from '../../../packages/explorer/src/entries/text/kind.ts'
import { openFlow } from '../../../packages/explorer/src/flow/index.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'
import { expectNear, identity, stated } from '../../support/tolerance.ts'
import { allKinds, firstBook } from './firstBook.ts'

const { scenario } = await firstBook()
const { words } = readerFor({ units: 'metric', figureText: 13 })

const settings = (from: string, q: Partial<FormulaSettings> = {}): FormulaSettings => ({
  name: 'mine',
  from,
  in: '',
  ...q,
})

function entryOf(id: string, of: FormulaSettings): Entry {
  return { id, kind: 'formula', beside: false, settings: of }
}

/** What comes of one formula alone in a book. */
function workedFrom(from: string, q: Partial<FormulaSettings> = {}) {
  const of = settings(from, q)
  const input = formula.input({
    settings: of,
    scenario,
    answers: {},
    entries: [entryOf('f', of)],
    offered: {},
  })
  const answer = formula.compute(input)
  if (answer.outcome !== 'answered') throw new Error('a formula always has an answer')
  return answer.result.worked
}

function sentenceOf(from: string, q: Partial<FormulaSettings> = {}): string {
  const worked = workedFrom(from, q)
  if (worked.outcome === 'value') throw new Error(`${from} has a value, ${worked.value} ${worked.unit}`)
  const say = words.failures.reasons[worked.reason]
  if (!say) throw new Error(`no sentence for ${worked.reason}`)
  return say(worked.values)
}

function amountFrom(from: string, q: Partial<FormulaSettings> = {}) {
  const worked = workedFrom(from, q)
  if (worked.outcome !== 'value')
    throw new Error(`${from}: ${worked.reason} ${JSON.stringify(worked.values)}`)
  return worked
}

/** The library rounds its psi to eleven digits; ours follows from the pound and the inch. */
const libraryUnits = stated(1e-10)

describe('a formula of plain numbers and units', () => {
  // Reference: mathjs 15.2, whose own evaluator with units is not used by the page.
  it.each([
    ['3 kPa / 2 mm', 'kPa/mm'],
    ['5 N * 3 mm + 2 J', 'J'],
    ['(12 lbf) / (2 in)^2', 'psi'],
    ['sqrt(2 m^2) + 3 cm', 'mm'],
    ['cbrt(8 mm^3)', 'mm'],
    ['3 km/h * 2 s', 'm'],
    ['max(3 mm, 0.2 in, 1 cm)', 'mm'],
    ['abs(2 kg - 3 lb)', 'g'],
    ['-2 mm^2 / 4 mm', 'mm'],
    ['1/2 * 3 N', 'N'],
  ])('%s is what the library’s own evaluator says', (from, unit) => {
    const wanted: LibraryUnit = reference(from)
    expectNear(amountFrom(from, { in: unit }).value, wanted.toNumber(unit), libraryUnits)
  })

  it('follows the library on random sums, products and powers', () => {
    const leaf = fc.oneof(
      fc.double({ min: 0.1, max: 9, noNaN: true }).map(value => value.toPrecision(4)),
      fc.constantFrom('pi', '2.5', '7'),
    )
    const { tree } = fc.letrec<{ tree: string }>(tie => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        leaf,
        fc
          .tuple(tie('tree'), fc.constantFrom('+', '-', '*', '/'), tie('tree'))
          .map(([a, sign, b]) => `(${a} ${sign} ${b})`),
        tie('tree').map(a => `sqrt(abs(${a}))`),
        tie('tree').map(a => `atan(${a})^2`),
        tie('tree').map(a => `-${a}`),
      ),
    }))
    fc.assert(
      fc.property(tree, from => {
        const read = readFormula(from)
        if (!read.ok) return from.length > 500
        const worked = workOut(read.tree, () => null)
        const wanted = Number(reference(from))
        return (
          worked.ok &&
          (worked.value === wanted ||
            Math.abs(worked.value - wanted) <= 1e-9 * Math.abs(wanted) ||
            !Number.isFinite(wanted))
        )
      }),
      { numRuns: 300 },
    )
  })

  it('takes a value without “in” in a usual unit of its kind', () => {
    expect(amountFrom('2 m / 4')).toMatchObject({ unit: 'mm', value: 500 })
    expect(amountFrom('2 + 3')).toMatchObject({ unit: '', value: 5 })
  })

  it('reads the signs people type', () => {
    expect(amountFrom('3 × 4 ÷ 2 − 1').value).toBe(5)
    expectNear(amountFrom('3 mm²', { in: 'mm^2' }).value, 3, identity)
  })
})

describe('a formula over the scenario', () => {
  it('calls what is set and what follows from it', () => {
    const settled = settledOf(scenario)
    if (settled.outcome !== 'settled') throw new Error('the first book settles')
    const { load, sinkage } = settled.front
    expectNear(
      amountFrom('front.load / front.sinkage', { in: 'N/mm' }).value,
      load / sinkage / 1000,
      identity,
    )
    expect(amountFrom('frontRoller.mass', { in: 'kg' }).value).toBe(scenario.unit.frontRoller.mass)
    expect(amountFrom('unit.benchHeight - drop - effectiveHeight', { in: 'mm' }).value).toBeLessThan(1e-9)
  })

  it('can be called by another and by prose, in whatever order they stand', () => {
    const a = entryOf('a', settings('2 * b', { name: 'a' }))
    const b = entryOf('b', settings('front.load', { name: 'b', in: 'N' }))
    const prose: Entry = { id: 'prose', kind: 'text', beside: false, settings: { text: 'So it is {a}.' } }
    const flow = openFlow({ kinds: allKinds.items, refiner: { refine() {}, drop() {} }, onLater() {} })
    flow.update([prose, a, b], scenario)
    const settled = settledOf(scenario)
    if (settled.outcome !== 'settled') throw new Error('the first book settles')
    const result = flow.stateOf('prose').result as Record<string, { value: number; unit: string }>
    expectNear(result.a?.value ?? Number.NaN, 2 * settled.front.load, identity)
    expect(result.a?.unit).toBe('N')
  })

  it('can call a number that another entry offers, by its id and name', () => {
    const of = settings('fit_2.softness * 2', { in: 'mm' })
    const entries: Entry[] = [entryOf('f', of), { id: 'fit-2', kind: 'fit', beside: false, settings: {} }]
    expect(formula.needs(of, entries)).toEqual(['fit-2'])
    const input = formula.input({
      settings: of,
      scenario,
      answers: {},
      entries,
      offered: { 'fit-2': { softness: { quantity: 'softness', value: 0.0004 } } },
    })
    const answer = formula.compute(input)
    if (answer.outcome !== 'answered' || answer.result.worked.outcome !== 'value') throw new Error('no value')
    expectNear(answer.result.worked.value, 0.8, identity)
  })
})

describe('a formula that cannot be worked out says why', () => {
  it.each([
    ['', /Write what it is worked from/],
    ['front.lod * 2', /“front\.lod”; did you mean front\.load\?/],
    ['sinkage', /did you mean (front|rear)\.sinkage\?/],
    ['drop + front.load', /^A length and a force are different things/],
    ['exp(drop)', /exp takes a plain number, not a length/],
    ['2 ^ drop', /A power takes a plain number, not a length/],
    ['2 drop', /“2 drop” has neither/],
    ['evaluate(2)', /“evaluate” is no function known here/],
    ['sqrt(2, 3)', /sqrt takes one value/],
    ['2 +', /cannot be read/],
    ['a = 3', /“=” at character 3/],
    ['[1, 2]', /“\[” at character 1/],
    ['"text"', /has no meaning here/],
    ['f(x) = 2', /“=”/],
    ['constructor', /Nothing here is called “constructor”/],
    ['--sqrt(constructor)', /Nothing here is called “constructor”/],
    ['1 / 0', /divides by nothing/],
    ['1 / 1e-308 / 1e-3', /divides by nothing/],
    ['sqrt(0 - 1)', /takes a root of less/],
  ])('“%s”', (from, sentence) => {
    expect(sentenceOf(from)).toMatch(sentence)
  })

  it('when the unit does not fit, with one that does', () => {
    expect(sentenceOf('drop', { in: 'kPa' })).toBe(
      'What is worked out is a length; it cannot be told in kPa, but in mm.',
    )
    expect(sentenceOf('drop', { in: 'furlong' })).toMatch(/“furlong” is no unit known here/)
    expect(sentenceOf('drop', { in: 'constructor' })).toMatch(/“constructor” is no unit known here/)
    expect(sentenceOf('drop', { in: 'kPaa' })).toMatch(/did you mean kPa\?/)
  })

  it('when its name is missing, impossible or taken', () => {
    expect(sentenceOf('drop', { name: '' })).toMatch(/Give it a name/)
    expect(sentenceOf('drop', { name: '2nd' })).toMatch(/cannot be its name/)
    expect(sentenceOf('2', { name: 'drop' })).toMatch(/already means something else/)
    expect(sentenceOf('2', { name: 'mm' })).toMatch(/already means something else/)
  })

  it('when it needs itself, however far round', () => {
    const entries = [
      entryOf('a', settings('b + 1', { name: 'a' })),
      entryOf('b', settings('c', { name: 'b' })),
      entryOf('c', settings('2 * a', { name: 'c' })),
      entryOf('d', settings('a', { name: 'd' })),
    ]
    const flow = openFlow({ kinds: allKinds.items, refiner: { refine() {}, drop() {} }, onLater() {} })
    flow.update(entries, scenario)
    for (const id of ['a', 'b', 'c']) {
      const result = flow.stateOf(id).result as { worked: { reason: string; values: { names: string } } }
      expect(result.worked.reason).toBe('circle')
      expect(result.worked.values.names.split(', ').sort()).toEqual(['a', 'b', 'c'])
    }
    expect(flow.stateOf('d').result).toMatchObject({
      worked: { reason: 'value not known', values: { name: 'a' } },
    })
  })

  it('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 60, unit: 'binary' }),
        fc.string({ maxLength: 12 }),
        (from, unit) => {
          const worked = workedFrom(from, { in: unit })
          return worked.outcome === 'value' ? Number.isFinite(worked.value) : worked.reason !== ''
        },
      ),
      { numRuns: 100 },
    )
  })
})

it('prose refuses a name that neither it nor an entry knows', () => {
  const entries = [entryOf('f', settings('2', { name: 'mine' }))]
  expect(text.problems({ text: '{mine} and {yours}' }, scenario, entries)).toEqual([
    { path: 'text', expected: 'the name of a value', received: 'yours' },
  ])
})

it('the nearest name is one that differs by a slip of the finger', () => {
  expect(nearest('sofntess', ['softness', 'stiffness'])).toBe('softness')
  expect(nearest('quark', ['softness', 'drop'])).toBe('')
})
