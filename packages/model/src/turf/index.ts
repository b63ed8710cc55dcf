export { turfFromBekker } from './bekker.ts'
export { type FormulaMade, formulaLaw } from './formula/formulaLaw.ts'
export type { FormulaCorner, FormulaRange } from './formula/formulaRange.ts'
export {
  curveOf,
  lawProblems,
  lawWithSoftness,
  pressureAt,
  sinkageAt,
  slopeAt,
  softnessOf,
  workTo,
} from './law.ts'
export {
  type Curve,
  type FarMat,
  type LawKind,
  newUnderArc,
  REFERENCE_PRESSURE,
  type UnderArc,
  type UnderParabola,
} from './laws/lawKind.ts'
export { type LawName, laws, type PressureLaw } from './laws/laws.ts'
export { depressionAfter } from './recovery.ts'
export { shearOf, spreadAt, type Turf, turfProblems, withSoftness } from './turf.ts'
