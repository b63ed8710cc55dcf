import type { Refiner } from '../flow/index.ts'
import type { Job, Reply } from './messages.ts'

/** The part of a Worker that is used. */
export type Thread = {
  postMessage(job: Job): void
  terminate(): void
  onmessage: ((event: MessageEvent<Reply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

type Asked = Parameters<Refiner['refine']>[0]
type Running = { readonly ticket: number; readonly asked: Asked }

/**
 * One worker thread, asked for one thing at a time. Of several questions from one entry only the newest waits:
 * while a slider moves, what it left behind is never worked out.
 */
export function openWorker(start: () => Thread): Refiner {
  let thread: Thread | null = null
  let running: Running | null = null
  let tickets = 0
  const waiting = new Map<string, Asked>()

  function listen(to: Thread): Thread {
    to.onmessage = ({ data }) => {
      if (data.ticket !== running?.ticket) return
      if ('done' in data) {
        running.asked.onProgress(data.done)
        return
      }
      const { asked } = running
      running = null
      asked.onAnswer(data.answer)
      next()
    }
    to.onerror = event => {
      event.preventDefault()
      to.terminate()
      thread = null
      const lost = running
      running = null
      const message = event.message || 'the worker could not start'
      lost?.asked.onAnswer({ outcome: 'no answer', why: { kind: 'worker', message }, cautions: [] })
      next()
    }
    return to
  }

  function next(): void {
    if (running) return
    const [first] = waiting
    if (!first) return
    const [id, asked] = first
    waiting.delete(id)
    thread ??= listen(start())
    running = { ticket: ++tickets, asked }
    thread.postMessage({ ticket: running.ticket, kind: asked.kind, input: asked.input })
  }

  return {
    refine(asked) {
      waiting.set(asked.id, asked)
      next()
    },
    drop(id) {
      waiting.delete(id)
      if (running?.asked.id !== id) return
      // A thread in the middle of a sum hears nothing: end it, and start another when there is work.
      thread?.terminate()
      thread = null
      running = null
      next()
    },
  }
}
