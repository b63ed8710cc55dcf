import type { Caution, Scenario } from '@swardsink/model'
import type { Failure } from '../book/index.ts'

/** What an entry shows. */
export type EntryState = {
  readonly status: 'waiting' | 'working' | 'done' | 'failed'
  /** The last good answer; kept while a newer one is being worked out, or cannot be. */
  readonly result: unknown
  /** What the last good answer was worked out from. */
  readonly input: unknown
  /** The scenario the last good answer is for. */
  readonly resultFor: Scenario | null
  /** The answer shown is not for the values that now stand. */
  readonly stale: boolean
  /** A quick answer that a finer one follows. */
  readonly draft: boolean
  readonly cautions: readonly Caution[]
  /** Names of the entries it waits for. */
  readonly waitsFor: readonly string[]
  readonly failure: Failure | null
  /** How far the work has come, 0 to 1. */
  readonly progress: number
  /** Changes whenever the result does: a figure drawn for one number need not be drawn again. */
  readonly edition: number
}

export const EMPTY: EntryState = {
  status: 'waiting',
  result: null,
  input: null,
  resultFor: null,
  stale: false,
  draft: false,
  cautions: [],
  waitsFor: [],
  failure: null,
  progress: 0,
  edition: 0,
}
