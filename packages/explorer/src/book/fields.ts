import type { Problem } from '@swardsink/model'

/** Names a value as a person would see it in a file: short, quoted if it is text. */
export function received(value: unknown): string {
  if (value === undefined) return 'nothing'
  const text = JSON.stringify(value) ?? String(value)
  const longest = 60
  return text.length > longest ? `${text.slice(0, longest)}…` : text
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/**
 * The fields of one record of a file, read loosely: what is absent or wrong takes the default, and everything
 * wrong is kept with its path, so that one mistake never hides the next.
 */
export type Fields = {
  readonly path: string
  text(name: string, fallback: string): string
  flag(name: string, fallback: boolean): boolean
  oneOf<Option extends string | number>(name: string, options: readonly Option[], fallback: Option): Option
  number(name: string, fallback: number): number
  texts(name: string, fallback: readonly string[]): readonly string[]
  /** As it stands in the file: whoever asks reads it and says what is wrong with it, to `problem`. */
  raw(name: string): unknown
  problem(name: string, expected: string): void
  /** Call last: a field nobody asked for is reported, since it is likely a misspelling. */
  rest(): void
}

export function fieldsOf(
  record: Readonly<Record<string, unknown>>,
  path: string,
  problems: Problem[],
): Fields {
  const asked = new Set<string>()
  function take<Value>(
    name: string,
    fallback: Value,
    expected: string,
    fits: (value: unknown) => value is Value,
  ): Value {
    asked.add(name)
    const value = record[name]
    if (value === undefined) return fallback
    if (fits(value)) return value
    problems.push({ path: `${path}.${name}`, expected, received: received(value) })
    return fallback
  }
  const isText = (value: unknown): value is string => typeof value === 'string'
  return {
    path,
    text: (name, fallback) => take(name, fallback, 'text', isText),
    flag: (name, fallback) =>
      take(name, fallback, 'true or false', (value): value is boolean => typeof value === 'boolean'),
    oneOf: (name, options, fallback) =>
      take(name, fallback, `one of ${options.join(', ')}`, (value): value is (typeof options)[number] =>
        options.some(option => option === value),
      ),
    number: (name, fallback) =>
      take(name, fallback, 'a number', (value): value is number => Number.isFinite(value)),
    texts: (name, fallback) =>
      take(
        name,
        fallback,
        'a list of texts',
        (value): value is readonly string[] => Array.isArray(value) && value.every(isText),
      ),
    raw(name) {
      asked.add(name)
      return record[name]
    },
    problem(name, expected) {
      problems.push({ path: `${path}.${name}`, expected, received: received(record[name]) })
    },
    rest() {
      for (const name of Object.keys(record)) {
        if (!asked.has(name))
          problems.push({
            path: `${path}.${name}`,
            expected: 'no such field',
            received: received(record[name]),
          })
      }
    },
  }
}
