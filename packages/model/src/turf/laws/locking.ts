import { type Metres, numberProblem, type Problem } from '../../quantities/index.ts'
import type { LawKind } from './lawKind.ts'

/** A locking depth must lie below the softness: at the reference pressure the turf has not locked yet. */
const lockingProblems = (
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

type LockingLaw = { readonly kind: string; readonly softness: Metres; readonly lockingDepth: Metres }

/** What every law with a locking depth has in common: its parameters, what is wrong with them, and its stretching. */
export const lockingLaw = <Law extends LockingLaw>(): Pick<
  LawKind<Law>,
  'parameters' | 'problems' | 'softness' | 'withSoftness' | 'stretched'
> => ({
  parameters: [
    { name: 'softness', quantity: 'softness', symbol: 's' },
    { name: 'lockingDepth', quantity: 'lockingDepth', symbol: 'H' },
  ],
  problems: (law, path) => [
    ...numberProblem(law.softness, `${path}.softness`, 'softness', { above: 0 }),
    ...lockingProblems(law, path),
  ],
  softness: law => law.softness,
  withSoftness: (law, softness) => ({ ...law, softness }),
  stretched: (law, factor) => ({
    ...law,
    softness: factor * law.softness,
    lockingDepth: factor * law.lockingDepth,
  }),
})
