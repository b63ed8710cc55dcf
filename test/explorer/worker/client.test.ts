import { describe, expect, it } from 'vitest'
import type { Answer } from '../../../packages/explorer/src/book/index.ts'
import { openWorker, type Thread } from '../../../packages/explorer/src/worker/index.ts'
import type { Job, Reply } from '../../../packages/explorer/src/worker/messages.ts'

const answer = (result: unknown): Answer<unknown> => ({ outcome: 'answered', result, cautions: [] })

/** A thread that works when the test says so. */
class PuppetThread implements Thread {
  readonly jobs: Job[] = []
  ended = false
  onmessage: Thread['onmessage'] = null
  onerror: Thread['onerror'] = null
  postMessage(job: Job): void {
    this.jobs.push(job)
  }
  terminate(): void {
    this.ended = true
  }
  reply(reply: Reply): void {
    this.onmessage?.(new MessageEvent('message', { data: reply }))
  }
}

function open() {
  const threads: PuppetThread[] = []
  const worker = openWorker(() => {
    const thread = new PuppetThread()
    threads.push(thread)
    return thread
  })
  const heard: string[] = []
  const ask = (id: string, input: unknown) =>
    worker.refine({
      id,
      kind: 'map',
      input,
      onProgress: done => heard.push(`${id} ${input} at ${done}`),
      onAnswer: given =>
        heard.push(
          `${id} ${input}: ${given.outcome === 'answered' ? given.result : given.outcome === 'later' ? 'later' : given.why.kind}`,
        ),
    })
  return { worker, threads, heard, ask }
}

describe('the worker as the page sees it', () => {
  it('starts a thread only when there is work', () => {
    const { threads, ask } = open()
    expect(threads.length).toBe(0)
    ask('a', 1)
    expect(threads.length).toBe(1)
  })

  it('passes on how far it has come, and the answer', () => {
    const { threads, heard, ask } = open()
    ask('a', 1)
    const [thread] = threads
    const ticket = thread?.jobs[0]?.ticket ?? -1
    thread?.reply({ ticket, done: 0.5 })
    thread?.reply({ ticket, answer: answer('x') })
    expect(heard).toEqual(['a 1 at 0.5', 'a 1: x'])
  })

  it('of several questions from one entry works out the running and the newest only', () => {
    const { threads, heard, ask } = open()
    for (const input of [1, 2, 3, 4]) ask('a', input)
    const [thread] = threads
    thread?.reply({ ticket: thread.jobs[0]?.ticket ?? -1, answer: answer('x') })
    thread?.reply({ ticket: thread.jobs[1]?.ticket ?? -1, answer: answer('y') })
    expect(thread?.jobs.map(job => job.input)).toEqual([1, 4])
    expect(heard).toEqual(['a 1: x', 'a 4: y'])
  })

  it('ends the thread of dropped work and goes on with the rest in another', () => {
    const { worker, threads, heard, ask } = open()
    ask('a', 1)
    ask('b', 2)
    worker.drop('a')
    expect(threads[0]?.ended).toBe(true)
    expect(threads[1]?.jobs.map(job => job.input)).toEqual([2])
    threads[0]?.reply({ ticket: threads[0].jobs[0]?.ticket ?? -1, answer: answer('late') })
    expect(heard).toEqual([])
  })

  it('tells of a thread that could not run, and tries another for the next question', () => {
    const { threads, heard, ask } = open()
    ask('a', 1)
    const event = Object.assign(new Event('error', { cancelable: true }), { message: 'refused' })
    threads[0]?.onerror?.(event as ErrorEvent)
    expect(heard).toEqual(['a 1: worker'])
    ask('a', 2)
    expect(threads.length).toBe(2)
  })
})
