export { acrossFittedSets, type FittedSets, type FittedSetsQuestion } from './acrossFittedSets.ts'
export { type AcrossSets, type AcrossSetsQuestion, acrossSets } from './acrossSets.ts'
export { type BandPoint, type Bands, type BandsQuestion, bands } from './bands.ts'
export {
  type BootstrapFits,
  type BootstrapFitsQuestion,
  bootstrapFits,
} from './bootstrapFits.ts'
export type { Bootstrapped } from './bootstrapSets.ts'
export { cannotTell, type Untold } from './cannotTell.ts'
export type { ComparedFit, Comparison } from './compareFits.ts'
export { type CompareLawsQuestion, compareLaws, type LawComparison, type LawToTry } from './compareLaws.ts'
export type { FitAndQuestion } from './fittedModel.ts'
export type { FlatDirection } from './flatDirections.ts'
export { type Judgement, judgeFit } from './judgeFit.ts'
export type { LackOfFit } from './lackOfFit.ts'
export type { NestedTest } from './nestedTest.ts'
export type { Reason } from './reasonFor.ts'
export type { ResidualDiagnostics } from './residualDiagnostics.ts'
export type { JudgedResidual, Suspicion } from './suspicion.ts'
