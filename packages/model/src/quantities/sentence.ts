import type { UnitSystem } from './catalogue.ts'
import { type Caution, cautionSentence } from './caution.ts'
import type { BottomedOut, NotConverged } from './outcome.ts'
import { type Problem, tell } from './problem.ts'

type Sayable = Problem | Caution | BottomedOut | NotConverged | { readonly outcome: 'settled' }

function bottomedOut({ where, load, lockingDepth }: BottomedOut, system: UnitSystem): string {
  const who = where === 'roller' || where === 'plate' ? `the ${where}` : `the ${where} roller`
  const what = load === undefined ? 'that sinkage is' : `${tell(load, 'load', system)} would press it`
  return `the turf bottoms out under ${who}: ${what} to within 1 % of its locking depth, ${tell(lockingDepth, 'lockingDepth', system)}; take a lighter roller, a firmer turf or a deeper locking depth`
}

function notConverged({ where, iterations, residual }: NotConverged): string {
  const left = Number.isFinite(residual) ? ` (${tell(Math.abs(residual), 'ratio')} of it is left over)` : ''
  return `no balance was found for the ${where} in ${iterations} steps${left}`
}

/** The English sentence of a problem, a caution or an outcome, with what was worked out told in the units asked. */
export function sentenceIn(fact: Sayable, units: UnitSystem): string {
  if ('path' in fact) return `${fact.path}: expected ${fact.expected}, received ${fact.received}`
  if ('kind' in fact) return cautionSentence(fact, units)
  if (fact.outcome === 'bottomed out') return bottomedOut(fact, units)
  return fact.outcome === 'not converged' ? notConverged(fact) : 'settled'
}

/** The English sentence of a problem, a caution or an outcome, in metric units. */
export const sentence = (fact: Sayable): string => sentenceIn(fact, 'metric')
