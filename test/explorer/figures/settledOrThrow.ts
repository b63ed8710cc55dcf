import type { Settled, SettledUnit } from '@swardsink/model'

export function settledOrThrow(settled: Settled): SettledUnit {
  if (settled.outcome !== 'settled') throw new Error(`expected a settled unit, received ${settled.outcome}`)
  return settled
}
