/**
 * The public face of the model, in the order data walks through its rooms. Everything is SI, readonly and plain.
 */

// contact: one roller on turf
export {
  type AcrossGrooves,
  type Arc,
  acrossGrooves,
  type Condition,
  type Headland,
  type HeadlandQuestion,
  headland,
  type Loaded,
  loadAt,
  type Pass,
  type Passes,
  type PassesQuestion,
  type Pressed,
  type PressedSettled,
  press,
  repeatedPasses,
  type RollingQuestion,
  type RollingSettled,
  rollingAtSpeed,
} from './contact/index.ts'
// quantities: what a number means, and the words for what is wrong with one
export {
  type BottomedOut,
  type Caution,
  type CautionKind,
  catalogue,
  cautionWords,
  displayUnit,
  type FormatOptions,
  formatQuantity,
  fromDisplay,
  GRAVITY,
  InputError,
  type Kilograms,
  type Metres,
  type MetresPerSecond,
  type Newtons,
  type NewtonsPerMetre,
  type NotConverged,
  type Pascals,
  type Problem,
  type Quantity,
  type QuantityName,
  type Radians,
  type Seconds,
  sentence,
  toDisplay,
  type UnitSystem,
} from './quantities/index.ts'

// roller: what its face looks like
export { type Roller, rollerProblems, type Surface } from './roller/index.ts'
// scenario: what a file says
export {
  readScenario,
  type Scenario,
  type ScenarioReading,
  scenarioProblems,
  writeScenario,
} from './scenario/index.ts'
// study: questions asked of all that
export {
  type Cell,
  type ComparedRoller,
  type CompareQuestion,
  cellOf,
  compareRollers,
  type MapQuantity,
  type MapQuestion,
  mapQuantities,
  mapToRows,
  type Position,
  type SinkageMap,
  sinkageMap,
} from './study/index.ts'
// turf: how turf answers being pressed
export {
  type LawName,
  laws,
  type PressureLaw,
  pressureAt,
  sinkageAt,
  slopeAt,
  softnessOf,
  spreadAt,
  type Turf,
  turfFromBekker,
  turfProblems,
  withSoftness,
  workTo,
} from './turf/index.ts'
// unit: the cutting unit, from the scales to the height it cuts at
export {
  type AxleSettled,
  type BenchSetting,
  benchHeightFor,
  type Force,
  levelLoads,
  type ScaleReadings,
  type ScalesQuestion,
  type Settled,
  type SettledUnit,
  type Sides,
  settle,
  type Unit,
  type UnitLoad,
  unitFromScales,
  unitProblems,
} from './unit/index.ts'
