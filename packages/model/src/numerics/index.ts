export { beta, logGamma } from './gamma.ts'
export { gaussLegendre, type Rule } from './gaussLegendre.ts'
export { type Evaluation, increasingRoot, type Root } from './increasingRoot.ts'
