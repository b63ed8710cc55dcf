import { type Answer, type Book, completeBook, type Kinds } from '../../packages/explorer/src/book/index.ts'
import { kindShelf } from '../../packages/explorer/src/entries/kinds.ts'
import { openFlow, type Refiner } from '../../packages/explorer/src/flow/index.ts'
import { handle } from '../../packages/explorer/src/worker/handler.ts'
import { must, mustBeFinite } from './expectations.ts'

/** Every kind of entry, fetched once. */
export const shelf = kindShelf()
const missing = await shelf.fetch(shelf.names)
if (missing.length > 0) throw new Error(`not fetched: ${missing.join(', ')}`)
export const kinds: Kinds = shelf.items

type Asked = Parameters<Refiner['refine']>[0]

/** A job as the worker does it; what goes wrong there is told as the page would tell it. */
function answerOf({ kind, input }: Asked): Answer<unknown> {
  let last: Answer<unknown> | null = null
  handle(
    { ticket: 1, kind, input: structuredClone(input) },
    {
      kinds,
      post: reply => {
        if ('answer' in reply) last = reply.answer
      },
    },
  )
  must(last !== null, `the worker says nothing of ${kind}`)
  return last
}

/** Works a book out as the page does: each entry has a finite answer, or says why it has none. */
export function workOutBook(book: Book, { refined }: { readonly refined: readonly string[] }): void {
  const waiting: Asked[] = []
  const flow = openFlow({
    kinds,
    refiner: { refine: asked => void waiting.push(asked), drop: () => {} },
    onLater: () => {},
  })
  const entries = completeBook(book, kinds).book.pages.flatMap(page => page.entries)
  flow.update(entries, book.scenario)
  for (let asked = waiting.shift(); asked; asked = waiting.shift()) {
    if (!refined.includes(asked.kind)) continue
    const answer = answerOf(asked)
    must(
      answer.outcome !== 'no answer' || answer.why.kind !== 'worker',
      `the worker breaks down on ${asked.kind}: ${JSON.stringify(answer)}`,
    )
    asked.onAnswer(answer)
  }
  for (const { id, kind } of entries) {
    const { status, result, failure } = flow.stateOf(id)
    if (status === 'done') mustBeFinite(result, `${kind} answers`)
    if (status === 'failed') must(failure !== null, `${kind} fails without a reason`)
  }
}
