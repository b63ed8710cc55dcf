import {
  describe,
  type Metres,
  type MetresPerSecond,
  numberProblem,
  type Problem,
  refuse,
} from '../quantities/index.ts'

export type ClipQuestion = {
  readonly blades: number
  readonly turnsPerSecond: number
  readonly speed: MetresPerSecond
}

const clipProblems = ({ blades, turnsPerSecond, speed }: ClipQuestion): Problem[] => [
  ...(Number.isInteger(blades) && blades >= 1
    ? []
    : [{ path: 'blades', expected: 'a whole number, at least 1', received: describe(blades) }]),
  ...numberProblem(turnsPerSecond, 'turnsPerSecond', 'turning', { above: 0 }),
  ...numberProblem(speed, 'speed', 'speed', { atLeast: 0 }),
]

/**
 * Distance travelled from one blade's cut to the next.
 *
 *   clip = speed/(blades × turns per second)
 *
 * Units   [m]
 * Throws  InputError when blades are not a whole number from 1, turning is not positive or speed is negative
 * Source  geometry (docs/physics.md §4)
 */
export function clipOf(question: ClipQuestion): Metres {
  refuse(clipProblems(question))
  return question.speed / (question.blades * question.turnsPerSecond)
}
