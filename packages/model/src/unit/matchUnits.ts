import { type Metres, numberProblem, type Problem, refuse } from '../quantities/index.ts'

export type MatchQuestion = {
  /** Effective height of each unit, by name. */
  readonly heights: Readonly<Record<string, Metres>>
  /** Difference that is still no difference; 0.25 mm unless given. */
  readonly tolerance?: Metres
}

export type MatchedPair = {
  readonly units: readonly [string, string]
  /** Height of the second minus that of the first. */
  readonly difference: Metres
  readonly matched: boolean
}

export type UnitMatch = {
  readonly pairs: readonly MatchedPair[]
  /** Highest minus lowest. */
  readonly spread: Metres
  readonly matched: boolean
}

/** Two units of one machine are seen to differ at about this (from memory; common practice, no source). */
const SEEN: Metres = 0.25e-3

function matchProblems({ heights, tolerance }: MatchQuestion): Problem[] {
  const names = Object.keys(heights)
  return [
    ...(names.length >= 2
      ? []
      : [{ path: 'heights', expected: 'at least two units', received: String(names.length) }]),
    ...names.flatMap(name => numberProblem(heights[name], `heights.${name}`, 'height')),
    ...(tolerance === undefined ? [] : numberProblem(tolerance, 'tolerance', 'height', { atLeast: 0 })),
  ]
}

/**
 * Whether the units of a machine cut at one height: every pair's difference against what is seen.
 *
 * Units   [m]
 * Throws  InputError when fewer than two heights are given or one is not finite
 */
export function matchUnits(question: MatchQuestion): UnitMatch {
  refuse(matchProblems(question))
  const { tolerance = SEEN } = question
  const units = Object.entries(question.heights)
  const pairs = units.flatMap(([one, low], i) =>
    units.slice(i + 1).map(([other, high]): MatchedPair => {
      const difference = high - low
      return { units: [one, other], difference, matched: Math.abs(difference) <= tolerance }
    }),
  )
  const spread = Math.max(...pairs.map(({ difference }) => Math.abs(difference)))
  return { pairs, spread, matched: spread <= tolerance }
}
