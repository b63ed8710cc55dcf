import { type Condition, conditionProblems } from '../contact/index.ts'
import { describe } from '../quantities/index.ts'
import { type Roller, rollerProblems, type Surface } from '../roller/index.ts'
import { type Turf, turfProblems } from '../turf/index.ts'
import { fields } from './fields.ts'
import { type Findings, joined, keepProblems, readNumbers, readObject } from './partReader.ts'
import { readKind } from './readKind.ts'
import { readLaw } from './readLaw.ts'

function readSurface(value: unknown, path: string, findings: Findings): Surface | undefined {
  const object = readObject(value, path, findings)
  const kind = object && readKind(object, path, ['smooth', 'grooved'] as const, findings)
  if (!object || !kind) return undefined
  const numbers = kind === 'grooved' ? fields.grooved : []
  const read = readNumbers(object, path, { numbers, others: ['kind'] }, findings)
  return read && ({ kind, ...read } as Surface)
}

export function readRoller(value: unknown, path: string, findings: Findings): Roller | undefined {
  const object = readObject(value, path, findings)
  if (!object) return undefined
  const read = readNumbers(object, path, { numbers: fields.roller, others: ['surface'] }, findings)
  const surface = readSurface(object.surface, joined(path, 'surface'), findings)
  if (!read || !surface) return undefined
  const roller = { ...read, surface } as Roller
  return keepProblems(rollerProblems(roller, path), findings) ? roller : undefined
}

export function readTurf(value: unknown, path: string, findings: Findings): Turf | undefined {
  const object = readObject(value, path, findings)
  if (!object) return undefined
  const read = readNumbers(object, path, { numbers: fields.turf, others: ['law', 'source'] }, findings)
  const law = readLaw(object.law, joined(path, 'law'), findings)
  const { source } = object
  const isText = source === undefined || typeof source === 'string'
  if (!isText)
    findings.problems.push({ path: joined(path, 'source'), expected: 'text', received: describe(source) })
  if (!read || !law || !isText) return undefined
  const turf: Turf = { law, ...read, ...(source === undefined ? {} : { source }) }
  return keepProblems(turfProblems(turf, path), findings) ? turf : undefined
}

export function readCondition(value: unknown, path: string, findings: Findings): Condition | undefined {
  const object = readObject(value, path, findings)
  const kind = object && readKind(object, path, ['standing', 'mowing'] as const, findings)
  if (!object || !kind) return undefined
  const mows = kind === 'mowing'
  const others = mows ? ['kind', 'recovery'] : ['kind']
  const read = readNumbers(object, path, { numbers: mows ? fields.mowing : [], others }, findings)
  const recovery = object.recovery
  const isFlag = recovery === undefined || typeof recovery === 'boolean'
  if (mows && !isFlag)
    findings.problems.push({
      path: joined(path, 'recovery'),
      expected: 'true or false',
      received: describe(recovery),
    })
  if (!read || !isFlag) return undefined
  const condition = { kind, ...read, ...(recovery === undefined ? {} : { recovery }) } as Condition
  return keepProblems(conditionProblems(condition, path), findings) ? condition : undefined
}

/** A list by name: every entry is read, whatever becomes of the others. */
export function readNamed<Part>(
  value: unknown,
  path: string,
  read: (value: unknown, path: string, findings: Findings) => Part | undefined,
  findings: Findings,
): Record<string, Part> {
  const object = readObject(value, path, findings)
  const entries = Object.entries(object ?? {})
  if (object && entries.length === 0)
    findings.problems.push({ path, expected: 'at least one, by name', received: 'none' })
  const parts: [string, Part][] = []
  for (const [name, one] of entries) {
    const part = read(one, joined(path, name), findings)
    if (part !== undefined) parts.push([name, part])
  }
  return Object.fromEntries(parts)
}
