export { freshAxle, meetsTrack, trackAxle } from './axle.ts'
export { type Balance, balanceOf, levelLoads, rearLoad, tippingProblems } from './balance.ts'
export { type BenchSetting, benchFor, benchHeightFor } from './benchHeightFor.ts'
export { type Bounce, type BounceMode, type BounceQuestion, type BounceSupport, bounce } from './bounce.ts'
export { boxFilling, type Filling, type FillingQuestion, type FillingStep } from './boxFilling.ts'
export { type ClipQuestion, clipOf } from './clipOf.ts'
export { findSettled, isCoupled } from './findSettled.ts'
export type { Force } from './forces.ts'
export { type MatchedPair, type MatchQuestion, matchUnits, type UnitMatch } from './matchUnits.ts'
export { raised, withBuildUp } from './raised.ts'
export { rippleLength } from './rippleLength.ts'
export { type Runout, runoutOf } from './runoutOf.ts'
export {
  type AxleSettled,
  heightsOf,
  type Settled,
  type SettledUnit,
  type Sides,
  settle,
  settleSound,
} from './settle.ts'
export { unrecoveredAtEdge } from './track.ts'
export { lengthProblems, partProblems, type Unit, type UnitLoad } from './unit.ts'
export { type ScaleReadings, type ScalesQuestion, scaleProblems, unitFromScales } from './unitFromScales.ts'
export { type UnitQuestion, unitProblems, unitQuestionProblems } from './unitQuestion.ts'
