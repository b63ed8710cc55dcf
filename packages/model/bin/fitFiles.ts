import {
  type ComplianceFailed,
  type ComplianceFit,
  type ComplianceQuestion,
  type Free,
  fitCompliance,
  InputError,
  type LawName,
  laws,
  type Noise,
  type Reading,
  readTable,
  type Scenario,
  sentence,
  type TableRead,
} from '../src/index.ts'
import type { FitWanted } from './fitWanted.ts'
import { textFrom } from './input.ts'
import { UsageError } from './wanted.ts'

/** The fit of one table, with what it was made from. */
export type FileFit = {
  readonly file: string
  readonly table: Extract<TableRead, { ok: true }>
  readonly question: ComplianceQuestion
  readonly fit: ComplianceFit | ComplianceFailed
}

/** A table's fit, or every sentence that says why there is none. */
export type FileAnswer = FileFit | { readonly faults: readonly string[] }

/** Known where every reading to be fitted says its standard deviation; that of the noise is then never asked for. */
function usualNoise(readings: readonly Reading[]): Noise {
  const fitted = readings.filter(({ measured }) => measured.kind !== 'height')
  const variances = fitted.flatMap(({ standardDeviation: sd }) => (sd === undefined ? [] : [sd ** 2]))
  if (fitted.length === 0 || variances.length < fitted.length) return { kind: 'estimated' }
  const mean = variances.reduce((sum, variance) => sum + variance, 0) / variances.length
  return { kind: 'known', standardDeviation: Math.sqrt(mean) }
}

type Law = Pick<ComplianceQuestion, 'law' | 'free' | 'start'>

/** A law by its kind, or the law of a turf of the scenario with its numbers. */
function lawWanted({ law, free, hold }: FitWanted, scenario: Scenario | undefined): Law {
  const turf = scenario && Object.hasOwn(scenario.turfs, law) ? scenario.turfs[law] : undefined
  if (turf) {
    const chosen: readonly Free[] = free ?? ['softness']
    const spread = turf.spread && !chosen.some(one => (typeof one === 'string' ? one : one.name) === 'spread')
    return { law: turf.law, free: chosen, start: { ...(spread ? { spread: turf.spread } : {}), ...hold } }
  }
  if (!Object.hasOwn(laws, law)) {
    const turfs = Object.keys(scenario?.turfs ?? {})
    const also = turfs.length > 0 ? `, or a turf of the scenario: ${turfs.join(', ')}` : ''
    throw new UsageError(`--law: expected one of ${Object.keys(laws).join(', ')}${also}, received ${law}`)
  }
  const kind = law as LawName
  const all = laws[kind].parameters.map(({ name }) => name).filter(name => !Object.hasOwn(hold, name))
  return { law: kind, free: free ?? all, start: hold }
}

/** Options of the fit that the caller named, as the fit names them. */
const optionOf: Readonly<Record<string, string>> = {
  free: '--free',
  law: '--law',
  start: '--hold',
  level: '--level',
  scenario: '--scenario',
}

/** A mistake in an option is wrong usage; one in the readings is a fault of the file. */
function asFault(error: unknown, file: string): string {
  if (!(error instanceof InputError)) throw error
  const [place = ''] = error.quantity.split('.')
  const option = optionOf[place]
  const said = `expected ${error.expected}, received ${error.received}`
  if (option) throw new UsageError(`${option}: ${said}`)
  return `${file}: ${error.quantity}: ${said}`
}

export function fitFile(file: string, wanted: FitWanted, scenario: Scenario | undefined): FileAnswer {
  const read = textFrom(file)
  if ('fault' in read) return { faults: [read.fault] }
  const table = readTable(read.text)
  if (!table.ok) return { faults: table.problems.map(problem => `${file}: ${sentence(problem)}`) }
  const noise = wanted.noise ?? usualNoise(table.readings)
  try {
    const question: ComplianceQuestion = {
      readings: table.readings,
      ...lawWanted(wanted, scenario),
      noise,
      ...(wanted.datum ? { datum: 'per set' as const } : {}),
      ...(wanted.level === undefined ? {} : { level: wanted.level }),
      ...(scenario ? { scenario } : {}),
    }
    return { file, table, question, fit: fitCompliance(question) }
  } catch (error) {
    return { faults: [asFault(error, file)] }
  }
}
