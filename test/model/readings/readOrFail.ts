import { readTable, type TableRead } from '@swardsink/model'
import { expect } from 'vitest'

/** The table read, or a failed test that tells the problems. */
export function readOrFail(
  text: string,
  ...options: Parameters<typeof readTable> extends [string, ...infer Rest] ? Rest : never
) {
  const read = readTable(text, ...options)
  return read.ok ? read : expect.fail(JSON.stringify(read.problems, null, 1))
}

/** The problems of a table that cannot be read whole. */
export function problemsOf(text: string): Extract<TableRead, { ok: false }> {
  const read = readTable(text)
  return read.ok ? expect.fail('the table was read') : read
}

/** "row 3, load_N: expected …" */
export const told = ({ path, expected, received }: { path: string; expected: string; received: string }) =>
  `${path}: expected ${expected}, received ${received}`

/** Lines put together as a table. */
export const lines = (...rows: readonly string[]): string => rows.join('\n')

/** Sinkages of a table, mm. */
export const sinkages = (text: string): readonly number[] =>
  readOrFail(text).readings.map(({ measured }) =>
    measured.kind === 'sinkage' ? measured.sinkage * 1e3 : Number.NaN,
  )
