export { type ComparedRoller, type CompareQuestion, compareRollers } from './compareRollers.ts'
export {
  type ComplianceFailed,
  type ComplianceFit,
  type FittedReading,
  type Span,
  turfOf,
} from './fit/compliance/complianceFit.ts'
export { fitCompliance } from './fit/compliance/fitCompliance.ts'
export type { ComplianceQuestion, Free } from './fit/compliance/question.ts'
export type { LeftOut } from './fit/compliance/rows.ts'
export type { Fit, FittedParameter, Interval, Noise } from './fit/fit.ts'
export { type CurveQuestion, fitCurve } from './fit/fitCurve.ts'
export {
  type AcrossSets,
  type AcrossSetsQuestion,
  acrossFittedSets,
  acrossSets,
  type BandPoint,
  type Bands,
  type BandsQuestion,
  type Bootstrapped,
  bands,
  type ComparedFit,
  type CompareLawsQuestion,
  type Comparison,
  compareLaws,
  type FitAndQuestion,
  type FittedSets,
  type FittedSetsQuestion,
  type FlatDirection,
  type JudgedResidual,
  type Judgement,
  judgeFit,
  type LackOfFit,
  type LawComparison,
  type LawToTry,
  type NestedTest,
  type ProfileOfQuestion,
  profileOf,
  type Reason,
  type ResampledFit,
  type ResampleQuestion,
  type ResidualDiagnostics,
  resampleFit,
  type Suspicion,
  type Untold,
} from './fit/judge/index.ts'
export { type MapQuantity, mapQuantities } from './mapQuantity.ts'
export type { Aim } from './nextReading/aim.ts'
export type { Assumed } from './nextReading/beginning.ts'
export type { Candidate } from './nextReading/candidate.ts'
export type { NextQuestion } from './nextReading/nextQuestion.ts'
export {
  type Narrowed,
  type NextReading,
  nextReading,
  type RankedReading,
} from './nextReading/nextReading.ts'
export type { NotRated } from './nextReading/rate.ts'
export type { Chosen } from './nextReading/sequence.ts'
// in words, and as scripts of other programs
export {
  type Exported,
  type ExportLanguage,
  type ExportQuestion,
  exportFit,
  exportLanguages,
  type FitReport,
  fitReport,
  type MethodsQuestion,
  methodsParagraph,
  parameterQuantity,
  parameterWord,
  type ReportQuestion,
} from './report/index.ts'
export { type Cell, cellOf, type MapQuestion, mapToRows, type SinkageMap, sinkageMap } from './sinkageMap.ts'
export { type Position, refit } from './swapRoller.ts'
export type { Estimate, Histogram } from './uncertainty/distribution.ts'
export type { Share } from './uncertainty/firstOrderShares.ts'
export type { Method as HeightMethod } from './uncertainty/heightDraws.ts'
export type { HeightQuestion } from './uncertainty/posed.ts'
export { profileCurve } from './uncertainty/profileCurve.ts'
export { type ProfileQuestion, profileInterval } from './uncertainty/profileInterval.ts'
export type { Scatter } from './uncertainty/scatter.ts'
export {
  type NoHeight,
  type Unanswered,
  type UncertainHeight,
  uncertainHeight,
} from './uncertainty/uncertainHeight.ts'
