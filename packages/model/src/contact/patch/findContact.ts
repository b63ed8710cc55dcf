import { increasingRoot } from '../../numerics/index.ts'
import type { BottomedOut, Newtons, NotConverged } from '../../quantities/index.ts'
import type { Roller } from '../../roller/index.ts'
import { curveOf, type Turf } from '../../turf/index.ts'
import type { Arc } from '../arc.ts'
import { findPressing } from '../press.ts'
import type { RollerOnTurf } from '../rollerOnTurf.ts'
import { type FullContact, fullContact } from './fullContact.ts'

/** On fewer cells neither land nor gap would be seen. */
export const FEWEST_CELLS = 16
/** On ln(load): the mat's own balance is held ten times tighter than this can notice. */
const BALANCED = 2e-6
/** A load is first looked for on a mesh this much coarser, where a look costs a sixteenth. */
const COARSER = 4
/** Part of the whole that the search on the coarse mesh is said to be. */
const SEARCH = 0.1

type Question = {
  readonly roller: Roller
  readonly turf: Turf
  readonly arc?: Arc
  readonly cells: number
  readonly onStep?: (done: number) => void
}

/** The full contact that carries a load: looked for on a coarse mesh, settled on the fine one. */
export function findContact(
  question: Question,
  on: RollerOnTurf,
  load: Newtons,
): FullContact | BottomedOut | NotConverged {
  const { cells, onStep } = question
  const quick = findPressing({ ...question, condition: { kind: 'standing' } }, load, 'roller', on)
  if ('outcome' in quick) return quick
  let full: FullContact | undefined
  const search = (
    start: number,
    fineness: number,
    watch: (look: number) => ((done: number) => void) | undefined,
  ) => {
    let look = 0
    return increasingRoot({
      evaluate: x => {
        full = fullContact(question, on, Math.exp(x), fineness, watch(look++))
        return { value: Math.log(full.load / load), slope: full.growth }
      },
      start,
      tolerance: BALANCED,
      ...(Number.isFinite(on.limit) ? { high: Math.log(on.limit) } : {}),
    })
  }
  const coarse = search(
    Math.log(quick.sinkage),
    Math.max(FEWEST_CELLS, Math.round(cells / COARSER)),
    () => undefined,
  )
  onStep?.(SEARCH)
  // each further look is rarer than the one before: it gets half of what is left
  const fine = search(coarse.at, cells, look => {
    const left = (1 - SEARCH) * 2 ** -look
    return onStep && (done => onStep(1 - left + (left / 2) * done))
  })
  if (fine.outcome === 'converged' && full) return full
  const { pole, limit } = curveOf(question.turf.law)
  return fine.outcome === 'beyond' && on.limit === limit
    ? { outcome: 'bottomed out', where: 'roller', load, lockingDepth: pole, cautions: [] }
    : {
        outcome: 'not converged',
        where: 'roller',
        iterations: fine.iterations,
        residual: fine.residual,
        cautions: [],
      }
}
