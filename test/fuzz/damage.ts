import fc from 'fast-check'

/** What a hand, a program or an enemy may write in place of a value. */
export const oddValues: fc.Arbitrary<unknown> = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom<unknown>(
    null,
    '',
    0,
    -1,
    1e-320,
    1e308,
    -1e308,
    Number.MAX_SAFE_INTEGER,
    '63mm',
    'NaN',
    true,
    [],
    {},
    [[]],
    'constructor',
    '__proto__',
    'toString',
    { kind: 'constructor' },
    { kind: '__proto__' },
    '<img src=x onerror=alert(1)>',
    '{front.load}',
    '\u0000',
    '\u202e',
    '\ud800',
    'x'.repeat(5000),
  ),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
)

const oddKeys = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom(
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    'length',
    'kind',
    'id',
    'mass',
    '',
  ),
)

type Change =
  | { readonly do: 'put'; readonly value: unknown }
  | { readonly do: 'scale'; readonly tens: number }
  | { readonly do: 'leave out' }
  | { readonly do: 'add'; readonly key: string; readonly value: unknown }
  | { readonly do: 'again' }
type Edit = { readonly at: number; readonly change: Change }

/** Changes to places of a JSON value, which are counted off and taken round. */
export const edits = (maxLength: number): fc.Arbitrary<readonly Edit[]> =>
  fc.array(
    fc.record({
      at: fc.nat(5000),
      change: fc.oneof<fc.Arbitrary<Change>[]>(
        fc.record({ do: fc.constant('put' as const), value: oddValues }),
        fc.record({ do: fc.constant('scale' as const), tens: fc.double({ min: -8, max: 8, noNaN: true }) }),
        fc.record({ do: fc.constant('leave out' as const) }),
        fc.record({ do: fc.constant('add' as const), key: oddKeys, value: oddValues }),
        fc.record({ do: fc.constant('again' as const) }),
      ),
    }),
    { maxLength },
  )

type Place = { readonly of: Record<string, unknown> | unknown[]; readonly key: string }

function placesOf(value: unknown): readonly Place[] {
  if (typeof value !== 'object' || value === null) return []
  const of = value as Record<string, unknown>
  return Object.keys(of).flatMap(key => [{ of, key }, ...placesOf(of[key])])
}

/** An own property under any name, "__proto__" too, as a parser of JSON makes it. */
const put = (of: object, key: string, value: unknown): void => {
  Object.defineProperty(of, key, { value, enumerable: true, configurable: true, writable: true })
}

function apply({ of, key }: Place, change: Change): void {
  const value = (of as Record<string, unknown>)[key]
  if (change.do === 'put') put(of, key, change.value)
  else if (change.do === 'scale' && typeof value === 'number') put(of, key, value * 10 ** change.tens)
  else if (change.do === 'leave out') {
    if (Array.isArray(of)) of.splice(Number(key), 1)
    else Reflect.deleteProperty(of, key)
  } else if (change.do === 'add' && typeof value === 'object' && value !== null && !Array.isArray(value))
    put(value, change.key, change.value)
  else if (change.do === 'again' && Array.isArray(of)) of.push(structuredClone(value))
}

/** A JSON value with some places changed. */
export function edited(value: unknown, list: readonly Edit[]): unknown {
  const copy: unknown = JSON.parse(JSON.stringify(value))
  for (const { at, change } of list) {
    const places = placesOf(copy)
    const place = places[at % Math.max(1, places.length)]
    if (place) apply(place, change)
  }
  return JSON.parse(JSON.stringify(copy))
}

type Tear =
  | { readonly do: 'cut'; readonly at: number }
  | { readonly do: 'drop'; readonly at: number; readonly count: number }
  | { readonly do: 'insert'; readonly at: number; readonly text: string }
  | { readonly do: 'twice' }

/** Damage to a text, as a full disk, a mail program or a cat on the keys does it; mostly none. Places are shares. */
export const tears: fc.Arbitrary<readonly Tear[]> = fc.array(
  fc.oneof<fc.Arbitrary<Tear>[]>(
    fc.record({ do: fc.constant('cut' as const), at: fc.double({ min: 0, max: 1, noNaN: true }) }),
    fc.record({
      do: fc.constant('drop' as const),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      count: fc.integer({ min: 1, max: 40 }),
    }),
    fc.record({
      do: fc.constant('insert' as const),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      text: fc.oneof(
        fc.string({ unit: 'binary', maxLength: 8 }),
        fc.constantFrom(
          '\uFEFF',
          '\u0000',
          '"',
          ',',
          ';',
          '\t',
          '\n',
          '\r',
          '[[[[',
          '{',
          '}',
          '\\',
          '#',
          '%',
          '&',
        ),
      ),
    }),
    fc.record({ do: fc.constant('twice' as const) }),
  ),
  { maxLength: 3 },
)

export function torn(text: string, list: readonly Tear[]): string {
  return list.reduce((whole, tear) => {
    if (tear.do === 'twice') return whole.length < 50_000 ? whole + whole : whole
    const at = Math.floor(tear.at * whole.length)
    if (tear.do === 'cut') return whole.slice(0, at)
    if (tear.do === 'drop') return whole.slice(0, at) + whole.slice(at + tear.count)
    return whole.slice(0, at) + tear.text + whole.slice(at)
  }, text)
}
