import { parseArgs } from 'node:util'
import {
  catalogue,
  type ExportLanguage,
  exportLanguages,
  type Free,
  type Noise,
  type QuantityName,
  type UnitSystem,
} from '../src/index.ts'
import { oneOf, UsageError } from './wanted.ts'

/** What the caller of `fit` wants. */
export type FitWanted = {
  readonly files: readonly string[]
  /** The kind of a law, or the name of a turf of the scenario whose law is taken. */
  readonly law: string
  /** undefined: all numbers of the law. */
  readonly free: readonly Free[] | undefined
  readonly hold: Readonly<Record<string, number>>
  /** undefined: known where every reading says its standard deviation, else estimated. */
  readonly noise: Noise | undefined
  readonly datum: boolean
  readonly level: number | undefined
  readonly scenario: string | undefined
  readonly json: boolean
  readonly report: boolean
  readonly units: UnitSystem
  readonly exports: readonly { readonly language: ExportLanguage; readonly file: string }[]
}

const MM = 1e-3
const INCH = 0.0254
const lengths: Readonly<Record<string, number>> = { mm: MM, in: INCH, m: 1 }

const MEASURE = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)\s*([a-z]*)$/i

const isLength = (name: string): boolean => {
  const own = name.split('.').at(-1) ?? name
  const quantity = Object.hasOwn(catalogue, own) ? (own as QuantityName) : undefined
  return quantity !== undefined && catalogue[quantity].metric.unit === 'mm'
}

function lengthFrom(option: string, word: string): number {
  const [, number, unit = ''] = MEASURE.exec(word.trim()) ?? []
  const factor = lengths[unit]
  if (number === undefined || factor === undefined)
    throw new UsageError(
      `--${option}: expected a length with its unit, such as 0.05mm or 0.002in, received ${word}`,
    )
  return Number(number) * factor
}

function noiseFrom(word: string | undefined): Noise | undefined {
  if (word === undefined) return undefined
  if (word === 'estimated') return { kind: 'estimated' }
  if (!/\d/.test(word))
    throw new UsageError(`--noise: expected estimated, or a length such as 0.05mm, received ${word}`)
  const standardDeviation = lengthFrom('noise', word)
  if (!(standardDeviation > 0)) throw new UsageError(`--noise: expected more than 0, received ${word}`)
  return { kind: 'known', standardDeviation }
}

const namesFrom = (word: string | undefined): string[] =>
  (word ?? '')
    .split(',')
    .map(name => name.trim())
    .filter(name => name !== '')

function freeFrom(free: string | undefined, perSet: string | undefined): Free[] | undefined {
  const own = namesFrom(perSet)
  if (free === undefined && own.length === 0) return undefined
  const all = [...new Set([...namesFrom(free), ...own])]
  return all.map(name => (own.includes(name) ? { name, per: 'set' } : name))
}

function holdFrom(word: string | undefined): Record<string, number> {
  const pairs = namesFrom(word).map((pair): [string, number] => {
    const [name = '', value = '', more] = pair.split('=')
    if (name === '' || value === '' || more !== undefined)
      throw new UsageError(`--hold: expected NAME=VALUE with commas between them, received ${pair}`)
    if (isLength(name)) return [name, lengthFrom('hold', value)]
    const number = Number(value)
    if (!Number.isFinite(number))
      throw new UsageError(`--hold: expected a number for ${name}, received ${value}`)
    return [name, number]
  })
  return Object.fromEntries(pairs)
}

const options = {
  json: { type: 'boolean' },
  report: { type: 'boolean' },
  datum: { type: 'boolean' },
  law: { type: 'string' },
  free: { type: 'string' },
  'per-set': { type: 'string' },
  hold: { type: 'string' },
  noise: { type: 'string' },
  level: { type: 'string' },
  scenario: { type: 'string' },
  units: { type: 'string' },
} as const

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true })
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error))
  }
}

/** `--export R FILE` takes two words, which the parser of options cannot. */
function exportsIn(args: readonly string[]): { rest: string[]; exports: FitWanted['exports'] } {
  const rest: string[] = []
  const exports: { language: ExportLanguage; file: string }[] = []
  for (let i = 0; i < args.length; i++) {
    if (args[i] !== '--export') {
      rest.push(args[i]!)
      continue
    }
    const [word, file] = [args[i + 1], args[i + 2]]
    const language = exportLanguages.find(name => name.toLowerCase() === word?.toLowerCase())
    if (!language || file === undefined || file.startsWith('--'))
      throw new UsageError(
        `--export: expected ${exportLanguages.join(' or ')} and a file to write, received ${[word, file].filter(one => one !== undefined).join(' ') || 'nothing'}`,
      )
    exports.push({ language, file })
    i += 2
  }
  return { rest, exports }
}

function levelFrom(word: string | undefined): number | undefined {
  if (word === undefined) return undefined
  const level = Number(word)
  if (!(level > 0 && level < 1)) throw new UsageError(`--level: expected between 0 and 1, received ${word}`)
  return level
}

/** Reads the words after `fit`. Throws UsageError with a sentence. */
export function fitWantedFrom(args: readonly string[]): FitWanted {
  const { rest, exports } = exportsIn(args)
  const { values, positionals: files } = parsed(rest)
  if (files.length === 0) throw new UsageError('fit: expected a table of readings, or - for standard input')
  if (files.filter(file => file === '-').length > 1 || (files.includes('-') && values.scenario === '-'))
    throw new UsageError('fit: expected - once, as standard input can be read but once')
  if (exports.length > 0 && files.length > 1)
    throw new UsageError('--export: expected one table of readings, as an export is of one fit')
  return {
    files,
    law: values.law ?? 'power',
    free: freeFrom(values.free, values['per-set']),
    hold: holdFrom(values.hold),
    noise: noiseFrom(values.noise),
    datum: values.datum ?? false,
    level: levelFrom(values.level),
    scenario: values.scenario,
    json: values.json ?? false,
    report: values.report ?? false,
    units: oneOf('units', values.units, ['metric', 'US']),
    exports,
  }
}
