export { freshAxle, meetsTrack, trackAxle } from './axle.ts'
export { type Balance, balanceOf, levelLoads, rearLoad } from './balance.ts'
export { type BenchSetting, benchFor, benchHeightFor } from './benchHeightFor.ts'
export { findSettled, isCoupled } from './findSettled.ts'
export type { Force } from './forces.ts'
export { raised, withBuildUp } from './raised.ts'
export {
  type AxleSettled,
  heightsOf,
  type Settled,
  type SettledUnit,
  type Sides,
  settle,
  settleSound,
  type UnitQuestion,
  unitProblems,
  unitQuestionProblems,
} from './settle.ts'
export { unrecoveredAtEdge } from './track.ts'
export { lengthProblems, type Unit, type UnitLoad } from './unit.ts'
export { type ScaleReadings, type ScalesQuestion, scaleProblems, unitFromScales } from './unitFromScales.ts'
