export { type Flow, openFlow, type Refiner } from './flow.ts'
export type { EntryState } from './state.ts'
