export type { Foot, Measured, Reading, TableProblem } from './reading.ts'
export { type ColumnRead, readTable, type TableOptions, type TableRead } from './readTable.ts'
export { type TableCells, tableCells } from './tableCells.ts'
export { type WriteOptions, writeTable } from './writeTable.ts'
