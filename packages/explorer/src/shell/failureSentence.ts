import { sentence } from '@swardsink/model'
import type { Failure } from '../book/index.ts'
import type { Reader } from '../words/index.ts'

/** Why an entry has no answer, with what to change. */
export function failureSentence(failure: Failure, { words, format }: Reader): string {
  const { failures } = words
  switch (failure.kind) {
    case 'bottomed out':
      return failures.bottomedOut({
        where: failures.places[failure.where] ?? failure.where,
        load: failure.load === null ? failures.thatLoad : format(failure.load, 'load'),
        lockingDepth: format(failure.lockingDepth, 'lockingDepth'),
      })
    case 'not converged':
      return failures.notConverged({
        where: failures.places[failure.where] ?? failure.where,
        iterations: String(failure.iterations),
      })
    case 'worker':
      return failures.worker(failure.message)
    case 'fault':
      return failures.fault(failure.message)
    case 'reason':
      return failures.reasons[failure.reason]?.(failure.values) ?? failure.reason
    case 'problems':
      return failure.problems.map(problem => words.modelSays(sentence(problem))).join(' ')
  }
}
