export {
  catalogue,
  displayUnit,
  fromDisplay,
  type Quantity,
  type QuantityName,
  toDisplay,
  type UnitSystem,
} from './catalogue.ts'
export { type Caution, type CautionKind, cautionWords } from './caution.ts'
export { type FormatOptions, formatQuantity } from './formatQuantity.ts'
export type { BottomedOut, NotConverged } from './outcome.ts'
export { describe, InputError, numberProblem, objectProblem, type Problem, refuse, tell } from './problem.ts'
export { sentence, sentenceIn } from './sentence.ts'
export { dimensionOf, unitFactor, unitWords } from './unitFactor.ts'
export {
  type Dimension,
  GRAVITY,
  type Kilograms,
  type Metres,
  type MetresPerSecond,
  type Newtons,
  type NewtonsPerMetre,
  type Pascals,
  type Radians,
  type Seconds,
  type UnitName,
  units,
} from './units.ts'
