import { type Book, readBook } from '../../../packages/explorer/src/book/index.ts'
import { books } from '../../../packages/explorer/src/books/index.ts'
import type { BookSpec } from '../../../packages/explorer/src/entries/kinds.ts'
import {
  type EntryState,
  type Flow,
  openFlow,
  type Refiner,
} from '../../../packages/explorer/src/flow/index.ts'
import { allKinds } from '../entries/firstBook.ts'

export type Shipped = {
  readonly name: string
  readonly title: string
  readonly about: string
  readonly spec: BookSpec
  readonly book: Book
}

/** Every book that ships, read as the page reads it; one that has a problem ends the test. */
export const shipped: readonly Shipped[] = await Promise.all(
  Object.entries(books).map(async ([name, { title, about, load }]) => {
    const { spec } = await load()
    const { book, problems } = await readBook(spec, allKinds)
    if (!book || problems.length > 0) throw new Error(`${name}: ${JSON.stringify(problems)}`)
    return { name, title, about, spec, book }
  }),
)

/** Does here, one after the other, what the worker would do. */
function workThrough(): { readonly refiner: Refiner; run(): void } {
  const jobs = new Map<string, Parameters<Refiner['refine']>[0]>()
  return {
    refiner: { refine: job => jobs.set(job.id, job), drop: id => jobs.delete(id) },
    run() {
      for (let [job] = jobs.values(); job; [job] = jobs.values()) {
        jobs.delete(job.id)
        const kind = allKinds.items[job.kind]
        if (kind?.refine) job.onAnswer(kind.refine(job.input, () => {}))
      }
    },
  }
}

/** What entries of a book have to show once all work is done: of all of them, or of some and what they need. */
export function answersOf({ pages, scenario }: Book, seen?: ReadonlySet<string>): (id: string) => EntryState {
  const { refiner, run } = workThrough()
  const flow: Flow = openFlow({ kinds: allKinds.items, refiner, onLater: () => {} })
  flow.update(
    pages.flatMap(({ entries }) => entries),
    scenario,
    seen,
  )
  run()
  return id => flow.stateOf(id)
}
