import { findSettled, heightsOf, type UnitQuestion, withBuildUp } from '../../unit/index.ts'
import type { HeightSample } from './heightSample.ts'
import type { Posed } from './posed.ts'
import { type NoAnswer, partsOfDraw, unsound } from './soundDraws.ts'

/** Height in the middle of the edge as settle tells it, without the rest of what that tells. */
function heightOf(asked: UnitQuestion): number | NoAnswer {
  const question = { ...asked, unit: withBuildUp(asked.unit) }
  const found = findSettled(question)
  if ('outcome' in found) return { why: found.outcome, where: found.where }
  const { drop, unrecovered } = heightsOf(question, found)
  return question.unit.benchHeight - drop + unrecovered
}

/** A draw's height, or why it has none. */
export function solvedHeight({ varied, arc, balance }: Posed, sample: HeightSample, draw: number) {
  const parts = partsOfDraw(varied, sample, draw)
  const problem = unsound(parts)
  if (problem || !parts) return problem ?? { why: 'not possible' as const, where: 'turf.law' }
  return heightOf({ ...parts, ...(arc ? { arc } : {}), ...(balance ? { balance } : {}) })
}
