import { describe } from '../quantities/index.ts'
import { type Findings, joined, type Values } from './partReader.ts'

/** A kind among those known, or a problem. */
export function readKind<Kind extends string>(
  object: Values,
  path: string,
  kinds: readonly Kind[],
  findings: Findings,
): Kind | undefined {
  const found = kinds.find(kind => kind === object.kind)
  if (!found)
    findings.problems.push({
      path: joined(path, 'kind'),
      expected: `one of ${kinds.join(', ')}`,
      received: describe(object.kind),
    })
  return found
}
