import { describe } from '../quantities/index.ts'
import { type FormulaMade, formulaLaw, type LawName, laws, type PressureLaw } from '../turf/index.ts'
import { type LawFields, lawFields } from './fields.ts'
import { type Findings, joined, newFindings, readNumbers, readObject, type Values } from './partReader.ts'
import { readKind } from './readKind.ts'

/** A file may hold layers in layers; deeper than a model takes is not looked at. */
const MOST_NESTED = 8

function readTable(
  value: unknown,
  path: string,
  { columns }: NonNullable<LawFields['table']>,
  findings: Findings,
): Record<string, number>[] | undefined {
  if (!Array.isArray(value)) {
    findings.problems.push({ path, expected: 'a list', received: describe(value) })
    return undefined
  }
  const rows = value.map((one, i) => {
    const at = joined(path, String(i))
    const object = readObject(one, at, findings)
    return object && readNumbers(object, at, { numbers: columns }, findings)
  })
  return rows.every(row => row !== undefined) ? (rows as Record<string, number>[]) : undefined
}

/** A written law, made before the file was read; numbers of its own may carry units. */
function readWritten(
  object: Values,
  path: string,
  numbers: Record<string, number>,
  findings: Findings,
): PressureLaw | undefined {
  const made = findings.formulas.get(object)
  if (!made) return undefined
  if (made.ok) return { ...made.law, ...numbers }
  findings.problems.push(
    ...made.problems.map(problem => ({ ...problem, path: problem.path.replace(/^law\b/, path) })),
  )
  return undefined
}

/** A law of any kind, as its entry in the list of laws says it is written. */
export function readLaw(
  value: unknown,
  path: string,
  findings: Findings,
  nested = 0,
): PressureLaw | undefined {
  const object = readObject(value, path, findings)
  const kind = object && readKind(object, path, Object.keys(laws) as LawName[], findings)
  if (!object || !kind) return undefined
  const { numbers, layers, table, written } = lawFields(kind)
  if (layers.length > 0 && nested >= MOST_NESTED) {
    findings.problems.push({ path, expected: `layers nested at most ${MOST_NESTED} deep`, received: 'more' })
    return undefined
  }
  const others = [
    'kind',
    ...layers,
    ...(table ? [table.name] : []),
    // a program may stand in data that were kept as they ran: it is passed over and made again
    ...(written ? ['expression', 'values', 'program'] : []),
  ]
  const read = readNumbers(object, path, { numbers, others }, findings)
  const within = layers.map(
    name => [name, readLaw(object[name], joined(path, name), findings, nested + 1)] as const,
  )
  const rows = table && readTable(object[table.name], joined(path, table.name), table, findings)
  if (!read || within.some(([, law]) => !law) || (table && !rows)) return undefined
  if (written) return readWritten(object, path, read, findings)
  return {
    kind,
    ...read,
    ...Object.fromEntries(within),
    ...(table ? { [table.name]: rows } : {}),
  } as unknown as PressureLaw
}

/** Every object of a file that says it is a written law, however deep it stands in layers. */
function writtenIn(value: unknown, nested = 0): Values[] {
  if (typeof value !== 'object' || value === null || nested > MOST_NESTED) return []
  const object = value as Values
  const name = Object.keys(laws).find(kind => kind === object.kind) as LawName | undefined
  if (!name) return []
  const { layers, written } = lawFields(name)
  return written ? [object] : layers.flatMap(layer => writtenIn(object[layer], nested + 1))
}

/** Makes the written laws of a file, before anything else of it is read. */
export async function makeFormulas(turfs: unknown): Promise<ReadonlyMap<object, FormulaMade>> {
  const list = typeof turfs === 'object' && turfs !== null ? Object.values(turfs) : []
  const objects = list.flatMap(turf => writtenIn((turf as Values | null)?.law))
  const made = new Map<object, FormulaMade>()
  for (const object of objects) {
    const deepest = readNumbers(
      object,
      'law',
      { numbers: lawFields('formula').numbers, others: Object.keys(object) },
      newFindings(),
    )?.deepest
    made.set(
      object,
      await formulaLaw({
        // formulaLaw tells what is wrong with whatever stands here
        expression: object.expression as string,
        values: (object.values ?? {}) as Record<string, number>,
        ...(deepest === undefined ? {} : { deepest }),
      }),
    )
  }
  return made
}
