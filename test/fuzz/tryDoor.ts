import fc from 'fast-check'
import type { Door } from './door.ts'
import { Found } from './expectations.ts'

/** What was found: where, and how to find it again. */
export type Find = {
  readonly door: string
  readonly seed: number
  readonly path: string
  readonly what: string
  readonly counterexample: string
}

const USUAL_WITHIN = 1
const SHOWN = 2000
const SMALLER_WITHIN_ms = 30_000

/** CPU seconds of this process: a busy machine makes nothing slow but the clock on the wall. */
function cpuSeconds(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

/** One case, which must hold within its time; what was slow once is tried again, for a first time compiles. */
async function check<Case>({ check: holds, within = USUAL_WITHIN }: Door<Case>, odd: Case): Promise<void> {
  let least = Number.POSITIVE_INFINITY
  for (let turn = 0; turn < 2 && least > within; turn++) {
    const before = cpuSeconds()
    await holds(odd)
    least = Math.min(least, cpuSeconds() - before)
  }
  if (least > within) throw new Found(`takes ${least.toFixed(1)} s`)
}

/** So many cases of a door from a seed; null when all of them hold. */
export async function tryDoor(
  door: Door,
  {
    seed,
    runs,
    path,
    starts,
  }: {
    readonly seed: number
    readonly runs: number
    readonly path?: string
    readonly starts?: (odd: unknown) => void
  },
): Promise<Find | null> {
  const property = fc.asyncProperty(door.arbitrary, async odd => {
    starts?.(odd)
    await check(door, odd)
  })
  const told = await fc.check(property, {
    seed,
    numRuns: runs,
    // What is slow to fail is slow to make smaller: what has been reached by then will do.
    interruptAfterTimeLimit: SMALLER_WITHIN_ms,
    ...(path === undefined ? {} : { path }),
  })
  if (!told.failed) return null
  const error = told.errorInstance
  const what =
    error instanceof Found
      ? error.message
      : error instanceof Error
        ? (error.stack ?? error.message)
        : String(error)
  return {
    door: door.name,
    seed,
    path: told.counterexamplePath ?? '',
    what,
    counterexample: fc.stringify(told.counterexample?.[0]).slice(0, SHOWN),
  }
}
