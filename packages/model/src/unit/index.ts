export { type Balance, balanceOf, type Force, rearLoad, tiltFor } from './balance.ts'
export { type BenchSetting, benchFor, benchHeightFor } from './benchHeightFor.ts'
export {
  type AxleSettled,
  axlesOf,
  findSettled,
  heightsOf,
  type Settled,
  type SettledUnit,
  type Sides,
  settle,
  type UnitQuestion,
  unitQuestionProblems,
} from './settle.ts'
export { unrecoveredAtEdge } from './track.ts'
export { frameProblems, lengthProblems, levelLoads, type Unit, type UnitLoad, unitProblems } from './unit.ts'
export { type ScaleReadings, type ScalesQuestion, scaleProblems, unitFromScales } from './unitFromScales.ts'
