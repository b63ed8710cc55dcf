import { kindsByName } from '../book/index.ts'
import { kinds } from '../entries/kinds.ts'
import { handle } from './handler.ts'
import type { Job, Reply } from './messages.ts'

const table = kindsByName(kinds)

/** The two things of a worker's own scope that are used; the page's types know only a window. */
type Scope = {
  onmessage: ((event: MessageEvent<Job>) => void) | null
  postMessage(reply: Reply, handOver: ArrayBuffer[]): void
}

const scope = self as unknown as Scope

scope.onmessage = event =>
  handle(event.data, {
    kinds: table,
    post: (reply, handOver) => scope.postMessage(reply, [...handOver]),
  })
