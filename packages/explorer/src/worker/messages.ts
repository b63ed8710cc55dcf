import type { Answer } from '../book/index.ts'

/** To the worker: work this out. */
export type Job = { readonly ticket: number; readonly kind: string; readonly input: unknown }

/** From the worker: how far a job has come, or its answer. */
export type Reply =
  | { readonly ticket: number; readonly done: number }
  | { readonly ticket: number; readonly answer: Answer<unknown> }
