import { compareRollers, loadAt, type Pressed, press, readScenario, sentence, settle } from '@swardsink/model'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { across, bounded, conditions, rollers, turfs } from '../../support/arbitraries.ts'
import { fileWith } from '../../support/arbitraryScenario.ts'

const strange = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom(
    null,
    '',
    '63mm',
    -1,
    0,
    1e308,
    -1e-308,
    [],
    {},
    'constructor',
    '__proto__',
    'toString',
    true,
    [1],
    { kind: 'constructor' },
    { kind: '__proto__' },
    { kind: 'linear' },
  ),
)
const strangeKeys = fc.oneof(
  fc.string(),
  fc.constantFrom(
    'constructor',
    '__proto__',
    'hasOwnProperty',
    'toString',
    'mass_kg',
    'mass',
    'wheelbase_in',
    'body',
    'law',
  ),
)

/** Every number of an answer, wherever it stands. */
function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(numbersOf)
}

/** Either problems with a path and a sentence, or a scenario that settles or says why not, without NaN. */
async function judge(value: unknown): Promise<'refused' | 'settled' | 'unsettled'> {
  const reading = await readScenario(value)
  if (!reading.ok) {
    expect(reading.problems.length).toBeGreaterThan(0)
    for (const problem of reading.problems) {
      expect(sentence(problem)).toMatch(/: expected .+, received ./)
    }
    return 'refused'
  }
  const { unit, turfs, turf, condition, rollers } = reading.scenario
  const here = turfs[turf] ?? expect.fail('no turf in hand')
  const settled = settle({ unit, turf: here, condition })
  expect(sentence(settled).length).toBeGreaterThan(0)
  const compared = compareRollers({ unit, rollers, turf: here, condition })
  expect(compared.length).toBe(Object.keys(rollers).length)
  if (settled.outcome !== 'settled') return 'unsettled'
  expect(numbersOf(settled).every(Number.isFinite), JSON.stringify(value)).toBe(true)
  return 'settled'
}

describe('reading a scenario never throws', () => {
  test('on any JSON at all', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), async value => {
        expect(await judge(value)).toBe('refused')
      }),
      bounded(400),
    )
  })

  test('on a sound file with one part replaced by something strange', async () => {
    const seen = new Set<string>()
    const paths = placesOf(fileWith())
    expect(paths.length).toBeGreaterThan(30)
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...paths), strange, async (path, value) => {
        seen.add(await judge(fileWith({ [path]: value })))
      }),
      bounded(1500),
    )
    expect(seen).toContain('refused')
    expect(seen).toContain('settled')
  })

  test('on a sound file with a number of another size', async () => {
    const seen = new Set<string>()
    const numbers = placesOf(fileWith()).filter(path => /_(mm|kg|s)$|rebound|lasting/.test(path))
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...numbers), across(1e-6, 1e6), async (path, value) => {
        seen.add(await judge(fileWith({ [path]: value })))
      }),
      bounded(500),
    )
    expect(seen).toEqual(new Set(['refused', 'settled', 'unsettled']))
  })

  test('on a sound file with a strange name in it', async () => {
    const parts = [
      'unit',
      'unit.body',
      'rollers',
      'rollers.plain',
      'turfs',
      'condition',
      'rollers.plain.surface',
    ]
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...parts), strangeKeys, strange, async (part, key, value) => {
        const text = JSON.stringify(fileWith())
        const file: unknown = JSON.parse(text)
        const place = part
          .split('.')
          .reduce<unknown>((at, name) => (at as Record<string, unknown>)[name], file) as object
        Object.defineProperty(place, key, { value, enumerable: true, configurable: true, writable: true })
        await judge(file)
      }),
      bounded(600),
    )
  })

  test('on a part left out', async () => {
    const seen = new Map<string, string>()
    for (const path of placesOf(fileWith())) seen.set(path, await judge(fileWith({ [path]: undefined })))
    expect(seen.get('unit.wheelbase_mm')).toBe('refused')
    expect(seen.get('rollers.waisted')).toBe('refused')
    expect(seen.get('unit.body.height_mm')).toBe('settled')
    expect(seen.get('effectiveHeight_mm')).toBe('settled')
  })

  test('and a name of no letters has a path', async () => {
    const reading = await readScenario(JSON.parse('{ "": false }'))
    if (reading.ok) return expect.fail('read')
    expect(reading.problems.map(({ path }) => path)).not.toContain('')
  })
})

/** Paths of every part of a file, names without dots. */
function placesOf(value: unknown, path = ''): string[] {
  if (typeof value !== 'object' || value === null) return [path]
  const inside = Object.entries(value).flatMap(([key, part]) => placesOf(part, path ? `${path}.${key}` : key))
  return path ? [path, ...inside] : inside
}

describe('a settled answer holds no NaN', () => {
  const wild = fc.record({ roller: rollers, turf: turfs, condition: conditions, load: across(1e-6, 1e6) })
  const finite = (answer: Pressed, what: unknown) => {
    if (answer.outcome === 'settled')
      expect(numbersOf(answer).every(Number.isFinite), JSON.stringify(what)).toBe(true)
    else expect(sentence(answer)).toMatch(/bottoms out|no balance/)
  }

  test('under loads from a millionth to a million newtons', () => {
    const outcomes = new Set<string>()
    fc.assert(
      fc.property(wild, fc.constantFrom('parabola' as const, 'circle' as const), (one, arc) => {
        const answer = press({ ...one, arc })
        outcomes.add(answer.outcome)
        finite(answer, { ...one, arc })
      }),
      bounded(800),
    )
    expect(outcomes).toContain('settled')
    expect(outcomes).toContain('bottomed out')
  })

  test('at sinkages from a nanometre to a metre', () => {
    fc.assert(
      fc.property(wild, across(1e-9, 1), (one, sinkage) => {
        const answer = loadAt({ ...one, sinkage })
        if (answer.outcome === 'settled')
          expect(numbersOf(answer).every(Number.isFinite), JSON.stringify({ one, sinkage })).toBe(true)
        else expect(sentence(answer)).toMatch(/bottoms out|no balance/)
      }),
      bounded(500),
    )
  })
})
