import { type Problem, sentence } from '@swardsink/model'

/** Something that must not come of any input. */
export class Found extends Error {}

export function must(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Found(what)
}

/** Paths of numbers that are none, wherever they stand in an answer. Columns are drawn cell by cell and tell their own. */
export function notFinite(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`]
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return []
  return Object.entries(value).flatMap(([key, part]) => notFinite(part, path ? `${path}.${key}` : key))
}

export function mustBeFinite(answer: unknown, what: string): void {
  const found = notFinite(answer)
  must(found.length === 0, `${what}: ${found.slice(0, 3).join(', ')}`)
}

/** A refusal has reasons, each of which can be said. */
export function mustBeSaid(problems: readonly Problem[], what: string): void {
  must(problems.length > 0, `${what} refused without a reason`)
  for (const problem of problems) {
    const said = sentence(problem)
    must(
      /: expected \S/.test(said) && !/undefined|NaN|\[object/.test(said.split(', received')[0] ?? ''),
      said,
    )
  }
}

/** The same thing as plain data: what is absent and what is undefined are one. */
export function mustBeSame(one: unknown, other: unknown, what: string): void {
  const [a, b] = [JSON.stringify(one), JSON.stringify(other)]
  must(a === b, `${what}: ${firstDifference(a, b)}`)
}

function firstDifference(a = '', b = ''): string {
  let at = 0
  while (at < a.length && a[at] === b[at]) at++
  const from = Math.max(0, at - 40)
  return `${a.slice(from, at + 40)} became ${b.slice(from, at + 40)}`
}
