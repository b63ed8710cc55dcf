import {
  type BottomedOut,
  type Caution,
  describe,
  type Metres,
  type Newtons,
  type NewtonsPerMetre,
  type NotConverged,
  numberProblem,
  type Problem,
  refuse,
} from '../../quantities/index.ts'
import { isGrooved, type Roller } from '../../roller/index.ts'
import { curveOf, type Turf } from '../../turf/index.ts'
import type { Arc } from '../arc.ts'
import type { Condition } from '../condition.ts'
import { contactCautions } from '../contactCautions.ts'
import { contactProblems } from '../press.ts'
import { type RollerOnTurf, rollerOnTurf } from '../rollerOnTurf.ts'
import { type ContactMap, contactMap } from './contactMap.ts'
import { FEWEST_CELLS, findContact } from './findContact.ts'
import { type FullContact, fullContact } from './fullContact.ts'

export type PatchQuestion = {
  readonly roller: Roller
  readonly turf: Turf
  readonly arc?: Arc
  /** Standing is the only condition answered. */
  readonly condition?: Condition
  /** Cells of the quarter of the contact, along the rolling direction and as many across. */
  readonly cells: number
  /** Told the part done, 0 to 1, after every turn; work is stopped by ending the worker that does it. */
  readonly onStep?: (done: number) => void
} & (
  | { readonly sinkage: Metres; readonly load?: never }
  | { readonly load: Newtons; readonly sinkage?: never }
)

export type PatchSettled = ContactMap & {
  readonly outcome: 'settled'
  readonly sinkage: Metres
  /** Of the whole roller, free ends included. */
  readonly load: Newtons
  /** From the balance of the turf, so that line forces are in it; free ends left out. */
  readonly lineLoad: NewtonsPerMetre
  /** Line force on each land edge under the axis; 0 for a smooth roller, whose turf leaves without a kink. */
  readonly edgeForce: NewtonsPerMetre
  /** Part of the line load that the land edges carry as line forces. */
  readonly edgePart: number
  readonly grooveFloor: 'free' | 'touching'
  /** Multigrid cycles on the finest mesh. */
  readonly cycles: number
  /** How far the line load may be off for want of a finer mesh, relative. */
  readonly meshError: number
  /** How far the quick model's line load lies above this one at the same sinkage, relative. */
  readonly fromPress: number
  readonly cautions: readonly Caution[]
}

export type Patched = PatchSettled | BottomedOut | NotConverged

const MOST_CELLS = 1024
const STANDING: Condition = { kind: 'standing' }

function patchProblems(question: PatchQuestion): Problem[] {
  const { condition = STANDING, cells, load, sinkage } = question
  const problems = [
    ...contactProblems({ ...question, condition }),
    ...numberProblem(cells, 'cells', 'count', { atLeast: FEWEST_CELLS, atMost: MOST_CELLS }),
    ...(sinkage === undefined
      ? numberProblem(load, 'load', 'load', { above: 0 })
      : numberProblem(sinkage, 'sinkage', 'sinkage', { above: 0 })),
  ]
  if (problems.length > 0) return problems
  if (load !== undefined && sinkage !== undefined)
    return [{ path: 'load', expected: 'nothing beside a sinkage', received: describe(load, 'load') }]
  if (!Number.isInteger(cells))
    return [{ path: 'cells', expected: 'a whole number', received: describe(cells) }]
  if (condition.kind === 'standing') return []
  return [
    {
      path: 'condition.kind',
      expected: 'standing: the full patch knows no turf that remembers how deep it was pressed',
      received: describe(condition.kind),
    },
  ]
}

function describeContact(question: PatchQuestion, on: RollerOnTurf, full: FullContact): PatchSettled {
  const { roller, turf } = question
  const { mat, obstacle, lineLoad, load, meshError, fromPress } = full
  const { sinkage } = obstacle
  const map = contactMap(obstacle, mat)
  const { share } = mat.mesh.along
  const onEdge = map.edges.force.reduce((sum, force, i) => sum + force * share[i]!, 0)
  const perPitch = isGrooved(roller.surface) ? lineLoad * roller.surface.pitch : lineLoad
  return {
    outcome: 'settled',
    sinkage,
    load,
    lineLoad,
    edgeForce: map.edges.force[0]!,
    edgePart: (4 * onEdge) / perPitch,
    ...map,
    grooveFloor: map.outline.floor.length > 0 ? 'touching' : 'free',
    cycles: mat.cycles,
    meshError,
    fromPress,
    // the quick model's own limit is no limit of this one
    cautions: contactCautions({ roller, turf, condition: STANDING }, on.at(sinkage)).filter(
      ({ kind }) => kind !== 'wide spread under grooves',
    ),
  }
}

/** A mat whose balance is further off than this part of the load has not settled. */
const SETTLED = 1e-5

const unsettled = ({ mat }: FullContact): NotConverged | undefined =>
  mat.imbalance <= SETTLED
    ? undefined
    : {
        outcome: 'not converged',
        where: 'roller',
        iterations: mat.turns,
        residual: mat.imbalance,
        cautions: [],
      }

/**
 * One roller set down on turf in full: the mat bends along and across at once.
 *
 *   least ∫∫ ½G|∇u|² + Φ(u) dx dy with u ≥ r(x, y), one groove period, dying out ahead and behind
 *   load = ∫∫ p(u) dx dy: by the balance it holds the pressure on the roller and the line forces on its land edges
 *
 * Holds   standing; vertical flanks; sinkage small against the radius; slopes of the mat small
 * Sign    sinkage positive into the turf, load positive down
 * Units   sinkage [m] ↔ load [N]; pressure [Pa], edge force [N/m]
 * Throws  InputError when roller, turf, cells, sinkage or load make no sense, and for any condition but standing
 * Source  derived (docs/physics.md §3.4)
 */
export function patch(question: PatchQuestion): Patched {
  refuse(patchProblems(question))
  const { cells, onStep, sinkage, load } = question
  const on = rollerOnTurf({ ...question, condition: STANDING })
  if (sinkage === undefined) {
    const found = findContact(question, on, load)
    if ('outcome' in found) return found
    onStep?.(1)
    return unsettled(found) ?? describeContact(question, on, found)
  }
  const { pole, limit } = curveOf(question.turf.law)
  if (sinkage > on.limit)
    return on.limit === limit
      ? { outcome: 'bottomed out', where: 'roller', lockingDepth: pole, cautions: [] }
      : {
          outcome: 'not converged',
          where: 'roller',
          iterations: 0,
          residual: sinkage / on.limit - 1,
          cautions: [],
        }
  const full = fullContact(question, on, sinkage, cells, onStep)
  onStep?.(1)
  return unsettled(full) ?? describeContact(question, on, full)
}
