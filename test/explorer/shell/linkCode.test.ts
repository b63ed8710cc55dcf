import { describe, expect, it } from 'vitest'
import { linkCode } from '../../../packages/explorer/src/shell/linkCode.ts'
import { readCode } from '../../support/readCode.ts'

/** Dark modules of the path a page draws, back on their grid. */
function modulesOf(path: string, size: number): boolean[][] {
  const grid = Array.from({ length: size }, () => Array<boolean>(size).fill(false))
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\1z/g))
    for (let at = 0; at < Number(width); at++) grid[Number(y)]![Number(x) + at] = true
  return grid
}

const QUIET = 4

describe('a link as a code', () => {
  it.each([1, 17, 100, 400, 900])(
    'says what the link says when it is read again, %d letters long',
    async length => {
      const text = `https://ellerby.example/#scenario=~${'aZ09-_'.repeat(200).slice(0, length)}`
      const code = await linkCode(text)
      if (code.kind !== 'code') throw new Error(code.kind)
      expect(code.size).toBe(17 + 4 * code.version + 2 * QUIET)
      const grid = modulesOf(code.path, code.size)
      const quiet = grid.flatMap((row, y) =>
        row.filter((dark, x) => dark && (Math.min(x, y) < QUIET || Math.max(x, y) >= code.size - QUIET)),
      )
      expect(quiet).toEqual([])
      expect(readCode(grid.slice(QUIET, -QUIET).map(row => row.slice(QUIET, -QUIET)))).toBe(text)
    },
  )

  it('holds as much as the largest code of the standard, 2,953 bytes, and no more', async () => {
    expect(await linkCode('~'.repeat(2953))).toMatchObject({ kind: 'code', version: 40 })
    expect(await linkCode('~'.repeat(2954))).toEqual({ kind: 'too long' })
  })
})
