import { describe, expect, it } from 'vitest'
import { type Kind, kindsByName } from '../../../packages/explorer/src/book/index.ts'
import { handle } from '../../../packages/explorer/src/worker/handler.ts'
import type { Reply } from '../../../packages/explorer/src/worker/messages.ts'

const doubling: Kind<'doubling', object, Float64Array, Float64Array> = {
  kind: 'doubling',
  read: () => ({}),
  problems: () => [],
  needs: () => [],
  input: () => new Float64Array(),
  compute: input => ({ outcome: 'answered', result: input, cautions: [] }),
  refine(input, onStep) {
    if (input.length === 0) throw new Error('nothing to double')
    onStep(1)
    return { outcome: 'answered', result: input.map(value => 2 * value), cautions: [] }
  },
  buffers: result => [result.buffer as ArrayBuffer],
  section: '',
  check: '',
}

function ask(kind: string, input: unknown) {
  const posted: { reply: Reply; handOver: readonly ArrayBuffer[] }[] = []
  handle(
    { ticket: 7, kind, input },
    { kinds: kindsByName([doubling]), post: (reply, handOver) => posted.push({ reply, handOver }) },
  )
  return posted
}

describe('a job in the worker', () => {
  it('posts how far it has come, then its answer with the buffers handed over', () => {
    const [step, last] = ask('doubling', Float64Array.of(1, 2))
    expect(step?.reply).toEqual({ ticket: 7, done: 1 })
    expect(last?.reply).toMatchObject({
      ticket: 7,
      answer: { outcome: 'answered', result: Float64Array.of(2, 4) },
    })
    expect(last?.handOver.map(buffer => buffer.byteLength)).toEqual([16])
  })

  it('posts a failure when the sum throws', () => {
    expect(ask('doubling', new Float64Array())[0]?.reply).toMatchObject({
      answer: { outcome: 'no answer', why: { kind: 'worker', message: 'nothing to double' } },
    })
  })

  it('posts a failure for a kind it does not know, also when the name is one of every object', () => {
    for (const kind of ['unheard of', 'toString', '__proto__'])
      expect(ask(kind, null)[0]?.reply).toMatchObject({ answer: { outcome: 'no answer' } })
  })
})
