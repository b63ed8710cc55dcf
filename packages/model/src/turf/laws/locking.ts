import { type Metres, numberProblem, type Problem } from '../../quantities/index.ts'

/** A locking depth must lie below the softness: at the reference pressure the turf has not locked yet. */
export const lockingProblems = (
  law: { readonly softness: Metres; readonly lockingDepth: Metres },
  path: string,
): Problem[] =>
  numberProblem(law.lockingDepth, `${path}.lockingDepth`, 'lockingDepth', {
    above: Number.isFinite(law.softness) ? Math.max(law.softness, 0) : 0,
  }).map(problem =>
    Number.isFinite(law.lockingDepth) && law.lockingDepth > 0
      ? { ...problem, expected: `${problem.expected}, the softness` }
      : problem,
  )
