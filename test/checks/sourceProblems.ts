import { citationsIn } from './citations.ts'

/** A row of a table of docs/sources.md: what it cites, and the tests that it says compare with that. */
type SourceRow = { readonly cites: ReadonlySet<string>; readonly tests: readonly string[] }

export type Texts = {
  readonly physics: string
  readonly sources: string
  /** Every file of the tests by its path. */
  readonly tests: ReadonlyMap<string, string>
}

const cellsOf = (line: string) =>
  line
    .split('|')
    .slice(1, -1)
    .map(cell => cell.trim())

/** Rows whose last cell names tests; "the same" goes on with the source of the row above. */
export function sourceRows(sources: string): readonly SourceRow[] {
  let above: ReadonlySet<string> = new Set()
  return sources.split('\n').flatMap(line => {
    const cells = cellsOf(line)
    const tests = [...(cells.at(-1) ?? '').matchAll(/test\/[\w/.-]+\.ts/g)].map(([path]) => path)
    if (tests.length === 0) return []
    const cites = cells[0]?.startsWith('the same') ? above : citationsIn(cells[0] ?? '')
    above = cites
    return [{ cites, tests }]
  })
}

/** Whether a file, or one of the tests named, which hands its numbers on, is among these. */
function namedIn(path: string, named: readonly string[], tests: Texts['tests']): boolean {
  const file = path.split('/').at(-1) ?? path
  return named.some(test => test === path || (tests.get(test) ?? '').includes(`/${file}'`))
}

/** What is wrong between docs/physics.md, the tables of docs/sources.md and the tests: a line each. */
export function sourceProblems({ physics, sources, tests }: Texts): readonly string[] {
  const rows = sourceRows(sources)
  const inTable = new Set(rows.flatMap(({ cites }) => [...cites]))

  const untold = [...citationsIn(physics)]
    .filter(cited => !inTable.has(cited))
    .map(cited => `docs/physics.md names ${cited}, which no row of docs/sources.md has`)
  const unrowed = [...citationsIn(sources)]
    .filter(cited => !inTable.has(cited))
    .map(cited => `docs/sources.md names ${cited} without a row that says which test`)

  const silent = rows.flatMap(({ cites, tests: named }) =>
    named.flatMap(path => {
      const text = tests.get(path)
      if (text === undefined) return [`docs/sources.md names ${path}, which is not there`]
      const says = citationsIn(text)
      const handedOn = [...tests].filter(([other]) => other !== path && namedIn(other, [path], tests))
      return [...cites]
        .filter(cited => !says.has(cited) && !handedOn.some(([, own]) => citationsIn(own).has(cited)))
        .map(cited => `docs/sources.md says that ${path} compares with ${cited}, which it does not name`)
    }),
  )

  const unlisted = [...tests].flatMap(([path, text]) =>
    [...citationsIn(text)]
      .filter(cited => !rows.some(row => row.cites.has(cited) && namedIn(path, row.tests, tests)))
      .map(cited => `${path} names ${cited}, and no row of docs/sources.md says so`),
  )
  return [...untold, ...unrowed, ...silent, ...unlisted]
}
