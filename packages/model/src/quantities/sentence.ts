import { type Caution, cautionSentence } from './caution.ts'
import type { BottomedOut, NotConverged } from './outcome.ts'
import { describe, type Problem, rounded } from './problem.ts'

type Sayable = Problem | Caution | BottomedOut | NotConverged | { readonly outcome: 'settled' }

function bottomedOut({ where, load, lockingDepth }: BottomedOut): string {
  const who = where === 'roller' || where === 'plate' ? `the ${where}` : `the ${where} roller`
  const what = load === undefined ? 'that sinkage is' : `${describe(rounded(load), 'load')} would press it`
  return `the turf bottoms out under ${who}: ${what} to within 1 % of its locking depth, ${describe(lockingDepth, 'lockingDepth')}; take a lighter roller, a firmer turf or a deeper locking depth`
}

/** The English sentence of a problem, a caution or an outcome. */
export function sentence(fact: Sayable): string {
  if ('path' in fact) return `${fact.path}: expected ${fact.expected}, received ${fact.received}`
  if ('kind' in fact) return cautionSentence(fact)
  if (fact.outcome === 'bottomed out') return bottomedOut(fact)
  if (fact.outcome === 'not converged')
    return `no balance was found for the ${fact.where} in ${fact.iterations} steps (${describe(rounded(fact.residual))} of it is left over)`
  return 'settled'
}
