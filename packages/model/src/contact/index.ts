export { type AcrossGrooves, acrossGrooves } from './acrossGrooves.ts'
export type { Arc } from './arc.ts'
export { type Condition, conditionProblems } from './condition.ts'
export { meanMatDepth } from './hangingMat.ts'
export { type Headland, type HeadlandQuestion, headland } from './headland.ts'
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
export { type Pressing, type RollerOnTurf, rollerOnTurf } from './rollerOnTurf.ts'
export { type RollingQuestion, type RollingSettled, rollingAtSpeed } from './rollingAtSpeed.ts'
