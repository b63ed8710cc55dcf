export { type AcrossGrooves, acrossGrooves } from './acrossGrooves.ts'
export type { Arc } from './arc.ts'
export { type Condition, conditionProblems } from './condition.ts'
export { meanMatDepth } from './hangingMat.ts'
export { type Headland, type HeadlandQuestion, headland } from './headland.ts'
export { type Patched, type PatchQuestion, type PatchSettled, patch } from './patch/patch.ts'
export { type PlatePressed, type PlateQuestion, pressPlate } from './plate.ts'
export { type Plate, type PlateOnTurf, plateOnTurf } from './plateOnTurf.ts'
export {
  type ContactQuestion,
  describePressing,
  findPressing,
  type Loaded,
  loadAt,
  type Pressed,
  type PressedSettled,
  press,
} from './press.ts'
export { type OutcomeName, outcomeNames, type PressedColumn, pressColumn } from './pressColumn.ts'
export { type Pass, type Passes, type PassesQuestion, repeatedPasses } from './repeatedPasses.ts'
export { describeOnTrack, type RollerOnTrack, rollerOnTrack, type TrackPressing } from './rollerOnTrack.ts'
export { type RollerOnTurf, rollerOnTurf } from './rollerOnTurf.ts'
export { type RollingQuestion, type RollingSettled, rollingAtSpeed } from './rollingAtSpeed.ts'
export { readSinkages, type SinkageTable, sinkageTable } from './sinkageTable.ts'
export { isOnSprings, springColumn, springShare } from './springColumn.ts'
export { trackBehind } from './trackBehind.ts'
export type { Track } from './trackCurve.ts'
export type { Pressing } from './wholeRoller.ts'
