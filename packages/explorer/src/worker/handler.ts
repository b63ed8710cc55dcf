import type { Answer, Kinds } from '../book/index.ts'
import type { Job, Reply } from './messages.ts'

export type Post = (reply: Reply, handOver: readonly ArrayBuffer[]) => void

/** Does one job and posts what it comes to. Apart from the worker's entry, so that tests and coverage reach it. */
export function handle(job: Job, { kinds, post }: { readonly kinds: Kinds; readonly post: Post }): void {
  const { ticket, input } = job
  const kind = Object.hasOwn(kinds, job.kind) ? kinds[job.kind] : undefined
  const fail = (message: string): void => {
    const answer: Answer<unknown> = { outcome: 'no answer', why: { kind: 'worker', message }, cautions: [] }
    post({ ticket, answer }, [])
  }
  if (!kind?.refine) {
    fail(`nothing to work out for ${job.kind}`)
    return
  }
  try {
    const answer = kind.refine(input, done => post({ ticket, done }, []))
    const buffers = answer.outcome === 'answered' ? (kind.buffers?.(answer.result) ?? []) : []
    post({ ticket, answer }, buffers)
  } catch (error) {
    fail(error instanceof Error ? error.message : String(error))
  }
}
