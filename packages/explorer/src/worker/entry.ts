import { kindShelf } from '../entries/kinds.ts'
import { handle } from './handler.ts'
import type { Job, Reply } from './messages.ts'

const shelf = kindShelf()

/** The two things of a worker's own scope that are used; the page's types know only a window. */
type Scope = {
  onmessage: ((event: MessageEvent<Job>) => void) | null
  postMessage(reply: Reply, handOver: ArrayBuffer[]): void
}

const scope = self as unknown as Scope

scope.onmessage = async ({ data }) => {
  await shelf.fetch([data.kind])
  handle(data, {
    kinds: shelf.items,
    post: (reply, handOver) => scope.postMessage(reply, [...handOver]),
  })
}
