import { type Descent, descend, descentRoom } from './descend.ts'
import { endings } from './endings.ts'
import type { LeastSquaresQuestion, Solved } from './question.ts'

export function leastSquares(question: LeastSquaresQuestion): Solved {
  const { residuals, start } = question
  const { size } = residuals
  const descent: Descent = {
    residuals,
    lower: question.lower ?? new Float64Array(size).fill(Number.NEGATIVE_INFINITY),
    upper: question.upper ?? new Float64Array(size).fill(Number.POSITIVE_INFINITY),
    least: question.scale ?? Float64Array.from(start, value => Math.abs(value) * 1e-4 || 1),
    tolerance: question.tolerance ?? 1e-8,
    most: question.most ?? 500,
    room: descentRoom(residuals),
  }
  const run = descend(descent, start)
  return {
    ...run,
    outcome: endings[run.ending].outcome,
    why: run.ending,
    robust: null,
    loss: null,
    restarts: 0,
  }
}
