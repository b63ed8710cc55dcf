import { describe } from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import {
  lengthProblems,
  type ScaleReadings,
  scaleProblems,
  type Unit,
  type UnitLoad,
  unitFromScales,
  unitProblems,
} from '../unit/index.ts'
import { fields } from './fields.ts'
import { type Findings, joined, keepProblems, readNumbers, readObject, type Values } from './partReader.ts'
import { readRoller } from './readParts.ts'

type Rack = Readonly<Record<string, Roller>>

/** A roller of the unit: the name of one in the rack, or a roller written out. */
function readFitted(
  value: unknown,
  path: string,
  rack: { readonly read: Rack; readonly named: readonly string[] },
  findings: Findings,
): Roller | undefined {
  if (typeof value !== 'string') return readRoller(value, path, findings)
  // a roller of the rack that has problems of its own is not complained of twice
  if (!rack.named.includes(value))
    findings.problems.push({
      path,
      expected: `a roller or one of ${rack.named.map(name => JSON.stringify(name)).join(', ') || 'the rollers'}`,
      received: describe(value),
    })
  return Object.hasOwn(rack.read, value) ? rack.read[value] : undefined
}

/** Which of the rollers are named after one of the rack. */
function namesFitted({ frontRoller, rearRoller }: Values): Unit['fitted'] {
  if (typeof frontRoller !== 'string' && typeof rearRoller !== 'string') return undefined
  return {
    ...(typeof frontRoller === 'string' ? { front: frontRoller } : {}),
    ...(typeof rearRoller === 'string' ? { rear: rearRoller } : {}),
  }
}

function readLoads(value: unknown, path: string, findings: Findings): UnitLoad[] | undefined {
  if (!Array.isArray(value)) {
    findings.problems.push({ path, expected: 'a list of loads', received: describe(value) })
    return undefined
  }
  const loads = value.map((one, i): UnitLoad | undefined => {
    const at = joined(path, String(i))
    const object = readObject(one, at, findings)
    const read = object && readNumbers(object, at, { numbers: fields.load, others: ['name'] }, findings)
    if (!object || !read) return undefined
    if (typeof object.name === 'string') return { name: object.name, ...read } as UnitLoad
    findings.problems.push({
      path: joined(at, 'name'),
      expected: 'a name',
      received: describe(object.name),
    })
    return undefined
  })
  return loads.every(load => load !== undefined) ? (loads as UnitLoad[]) : undefined
}

function readCylinder(value: unknown, path: string, findings: Findings): Unit['cylinder'] {
  if (value === undefined) return undefined
  const object = readObject(value, path, findings)
  const read = object && readNumbers(object, path, { numbers: fields.cylinder }, findings)
  return read as Unit['cylinder']
}

function readScales(
  value: unknown,
  path: string,
  findings: Findings,
): (ScaleReadings & { height?: number }) | undefined {
  const object = readObject(value, path, findings)
  const read = object && readNumbers(object, path, { numbers: fields.scales, others: ['box'] }, findings)
  if (!object || !read) return undefined
  if (object.box === undefined) return read
  const at = joined(path, 'box')
  const box = readObject(object.box, at, findings)
  const numbers = box && readNumbers(box, at, { numbers: fields.box }, findings)
  return numbers && { ...read, box: numbers as ScaleReadings['box'] & object }
}

type Frame = Omit<Unit, 'body' | 'loads'>

function withBody(object: Values, frame: Frame, path: string, findings: Findings): Unit | undefined {
  const at = joined(path, 'body')
  const given = readObject(object.body, at, findings)
  const body = given && readNumbers(given, at, { numbers: fields.body }, findings)
  const loads = object.loads === undefined ? [] : readLoads(object.loads, joined(path, 'loads'), findings)
  if (!body || !loads) return undefined
  const unit = { ...frame, body, ...(loads.length > 0 ? { loads } : {}) } as unknown as Unit
  return keepProblems(unitProblems(unit, path), findings) ? unit : undefined
}

function withScales(object: Values, frame: Frame, path: string, findings: Findings): Unit | undefined {
  const at = joined(path, 'scales')
  const readings = readScales(object.scales, at, findings)
  if (!readings) return undefined
  const rollers = { front: frame.frontRoller, rear: frame.rearRoller }
  if (!keepProblems(scaleProblems(readings, rollers, at), findings)) return undefined
  const { wheelbase, edge, benchHeight } = frame
  const weighed = { ...frame, ...unitFromScales({ ...readings, rollers, wheelbase, edge, benchHeight }) }
  const more = object.loads === undefined ? [] : readLoads(object.loads, joined(path, 'loads'), findings)
  if (!more) return undefined
  const unit: Unit = more.length > 0 ? { ...weighed, loads: [...(weighed.loads ?? []), ...more] } : weighed
  return keepProblems(unitProblems(unit, path), findings) ? unit : undefined
}

/** A unit with its body written out, or with what the scales said. */
export function readUnit(
  value: unknown,
  path: string,
  rack: { readonly read: Rack; readonly named: readonly string[] },
  findings: Findings,
): Unit | undefined {
  const object = readObject(value, path, findings)
  if (!object) return undefined
  const weighed = object.scales !== undefined
  const others = [
    'frontRoller',
    'rearRoller',
    'cylinder',
    'loads',
    ...(weighed ? ['scales'] : ['body', 'scales']),
  ]
  const read = readNumbers(object, path, { numbers: fields.unit, others }, findings)
  const frontRoller = readFitted(object.frontRoller, joined(path, 'frontRoller'), rack, findings)
  const rearRoller = readFitted(object.rearRoller, joined(path, 'rearRoller'), rack, findings)
  const lengths = read as unknown as Frame | undefined
  if (!lengths || !keepProblems(lengthProblems(lengths, path), findings)) return undefined
  const cylinder = readCylinder(object.cylinder, joined(path, 'cylinder'), findings)
  if (!frontRoller || !rearRoller || (object.cylinder !== undefined && !cylinder)) return undefined
  const fitted = namesFitted(object)
  const frame = {
    ...lengths,
    frontRoller,
    rearRoller,
    ...(fitted ? { fitted } : {}),
    ...(cylinder ? { cylinder } : {}),
  }
  return weighed ? withScales(object, frame, path, findings) : withBody(object, frame, path, findings)
}
