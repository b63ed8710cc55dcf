export { type ComparedRoller, type CompareQuestion, compareRollers } from './compareRollers.ts'
export { type MapQuantity, mapQuantities } from './mapQuantity.ts'
export { type Cell, cellOf, type MapQuestion, mapToRows, type SinkageMap, sinkageMap } from './sinkageMap.ts'
export type { Position } from './swapRoller.ts'
