export { readScenario, type ScenarioReading } from './readScenario.ts'
export { type Scenario, scenarioProblems, unitsOf, withUnitInHand } from './scenario.ts'
export { writeScenario } from './writeScenario.ts'
