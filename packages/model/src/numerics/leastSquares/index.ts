export { covarianceOf, leverageOf } from './covariance.ts'
export { type Ending, endings } from './endings.ts'
export { leastSquares } from './leastSquares.ts'
export type { LeastSquaresQuestion, Loss, Residuals, Solved } from './question.ts'
