import type { Condition } from '../../contact/index.ts'
import type { Metres } from '../../quantities/index.ts'
import type { Turf } from '../../turf/index.ts'
import { findSettled, heightsOf, type Unit, withBuildUp } from '../../unit/index.ts'
import { type HeightInput, partsAt, turfInputs } from '../uncertainty/heightInput.ts'

type Question = { readonly unit: Unit; readonly turf: Turf; readonly condition: Condition }

/** Step of the differences, as a part of the number itself or, where that is nothing, of the turf's softness. */
const STEP = 1e-3
/** Five-point first difference: places, and weights over twelve steps. */
const STENCIL = [
  [-2, 1],
  [-1, -8],
  [1, 8],
  [2, -1],
] as const

function heightAt(
  question: Question,
  inputs: readonly HeightInput[],
  values: readonly number[],
): Metres | null {
  const parts = partsAt(question, inputs, k => values[k]!)
  if (!parts) return null
  const asked = { ...parts, unit: withBuildUp(parts.unit) }
  const found = findSettled(asked)
  if ('outcome' in found) return null
  const { drop, unrecovered } = heightsOf(asked, found)
  return asked.unit.benchHeight - drop + unrecovered
}

/**
 * How the effective height changes with numbers of the turf: the height, and a slope for each name; null where the unit,
 * or a near neighbour of it, has no answer.
 *
 * Holds   five-point differences of settle: to about 1e-8
 */
export function heightSlopes(
  question: Question,
  names: readonly string[],
): { readonly height: Metres; readonly slopes: ReadonlyMap<string, number> } | null {
  const all = new Map(turfInputs(question.turf).map(input => [input.name, input]))
  const inputs = names.flatMap(name => all.get(name) ?? [])
  const nominal = inputs.map(input => input.nominal)
  const height = heightAt(question, inputs, nominal)
  if (height === null) return null
  const slopes = new Map<string, number>()
  for (const [k, { name }] of inputs.entries()) {
    const size = Math.abs(nominal[k]!) || Math.abs(height)
    let slope = 0
    for (const [place, weight] of STENCIL) {
      const moved = nominal.map((value, j) => (j === k ? value + place * STEP * size : value))
      const there = heightAt(question, inputs, moved)
      if (there === null) return null
      slope += (weight * there) / (12 * STEP * size)
    }
    slopes.set(name, slope)
  }
  return { height, slopes }
}
