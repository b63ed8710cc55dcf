import { describe, type MetresPerSecond, numberProblem, type Problem } from '../quantities/index.ts'

/** Set down at rest, or rolling at a speed; `recovery: false` leaves the depression out of the height. */
export type Condition =
  | { readonly kind: 'standing' }
  | { readonly kind: 'mowing'; readonly speed: MetresPerSecond; readonly recovery?: boolean }

export function conditionProblems(condition: Condition, path: string): Problem[] {
  const kind: unknown = condition?.kind
  if (kind === 'standing') return []
  if (kind === 'mowing')
    return numberProblem((condition as { speed: number }).speed, `${path}.speed`, 'speed', { above: 0 })
  return [{ path: `${path}.kind`, expected: 'one of standing, mowing', received: describe(kind) }]
}
