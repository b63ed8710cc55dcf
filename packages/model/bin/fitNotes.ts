import { sentence, type TableProblem } from '../src/index.ts'

/** More of one kind are counted, not told. */
const TOLD = 3

/** Notes as lines, those of a column folded where they are many. */
export function noteLines(notes: readonly TableProblem[], before = ''): string[] {
  const groups = new Map<string, TableProblem[]>()
  for (const note of notes) {
    const key = note.column ?? note.path
    groups.set(key, [...(groups.get(key) ?? []), note])
  }
  return [...groups].flatMap(([column, group]) => [
    ...group.slice(0, TOLD).map(note => `${before}${sentence(note)}`),
    ...(group.length > TOLD ? [`${before}${column}: ${group.length - TOLD} more like these`] : []),
  ])
}
