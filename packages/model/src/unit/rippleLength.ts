import { type Metres, type MetresPerSecond, numberProblem, refuse } from '../quantities/index.ts'

/**
 * Distance from crest to crest of the ripple that a bouncing unit cuts.
 *
 *   speed/frequency
 *
 * Units   speed [m/s], frequency [1/s] → [m]
 * Throws  InputError when the speed is negative or the frequency not positive
 * Source  docs/physics.md §4
 */
export function rippleLength(speed: MetresPerSecond, frequency: number): Metres {
  refuse([
    ...numberProblem(speed, 'speed', 'speed', { atLeast: 0 }),
    ...numberProblem(frequency, 'frequency', 'ratio', { above: 0 }),
  ])
  return speed / frequency
}
