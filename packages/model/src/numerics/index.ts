export { besselRatio } from './besselRatio.ts'
export { digamma } from './digamma.ts'
export { chiSquared, fDistribution, normal, studentT, twoSided } from './distributions.ts'
export { beta, logGamma } from './gamma.ts'
export { gaussLegendre, type Rule } from './gaussLegendre.ts'
export { type Evaluation, increasingRoot, type Root } from './increasingRoot.ts'
export {
  covarianceOf,
  type Ending,
  endings,
  type LeastSquaresQuestion,
  type Loss,
  leastSquares,
  leverageOf,
  type Residuals,
  type Solved,
} from './leastSquares/index.ts'
export {
  backSubstitute,
  factorise,
  type PivotedQr,
  pivotedQr,
  rankOf,
  turn,
} from './leastSquares/pivotedQr.ts'
export { type Random, randomFrom } from './random.ts'
export { type Singular, singularValues } from './singularValues.ts'
