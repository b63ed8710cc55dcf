import { formatQuantity, sentenceIn, tell, type UnitSystem } from '../../quantities/index.ts'
import type { TableRead } from '../../readings/index.ts'
import { type LawName, laws } from '../../turf/index.ts'
import type { ComplianceFit } from '../fit/compliance/complianceFit.ts'
import type { FittedParameter } from '../fit/fit.ts'
import type { Judgement } from '../fit/judge/index.ts'
import { levelOf } from './scriptedFit.ts'
import { parameterUnit, parameterWord, shownParameter } from './shownParameter.ts'

export type ReportQuestion = {
  readonly fit: ComplianceFit
  /** Of the readings. */
  readonly name?: string
  /** The table they were read from: what it left out is told. */
  readonly table?: Pick<TableRead, 'leftOut' | 'missing' | 'columns'>
  /** What the fit says beyond its numbers (judgeFit). */
  readonly judgement?: Judgement
  readonly units?: UnitSystem
}

export type FitReport = {
  readonly paragraph: string
  /** A row a parameter under one row of headings. */
  readonly table: readonly (readonly string[])[]
  /** What did not go into the fit, and what to look at before it is believed. */
  readonly notes: readonly string[]
}

const PERCENT = 100
const percent = (part: number): string => `${Number((PERCENT * part).toPrecision(4))} %`

export const joined = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`

export const counted = (count: number, word: string, plural = `${word}s`): string =>
  `${count} ${count === 1 ? word : plural}`

const named = ({ name, set }: FittedParameter): string =>
  set === undefined || set === '' ? parameterWord(name) : `${parameterWord(name)} of ${set}`

/** "softness 0.412 mm (0.39 to 0.44)". */
function valueSentence(parameter: FittedParameter, units: UnitSystem): string {
  const { value, low, high } = shownParameter(parameter, units)
  const unit = parameterUnit(parameter.name, units)
  const range = low !== '' && high !== '' ? ` (${low} to ${high})` : ''
  return `${named(parameter)} ${value}${unit === '' ? '' : ` ${unit}`}${range}`
}

/** More than this, and the table says it better. */
const FEW = 4

function valuesSentence(fit: ComplianceFit, units: UnitSystem): string {
  const free = fit.parameters.filter(({ state }) => state !== 'fixed')
  const shared = free.filter(({ set }) => set === undefined)
  const told = free.length <= FEW ? free : shared
  if (told.length === 0) return 'Every set has values of its own (table).'
  const intervals = told.some(({ interval }) => interval.kind === 'interval')
  const level = intervals ? `, with ${percent(levelOf(fit.parameters))} intervals` : ''
  const rest = told.length < free.length ? '; numbers of single sets are in the table' : ''
  return `Found${level}: ${joined(told.map(parameter => valueSentence(parameter, units)))}${rest}.`
}

/** A spread that nobody asked for. */
export const isAbsent = ({ name, value, state }: FittedParameter): boolean =>
  name === 'spread' && value === 0 && state === 'fixed'

function heldSentence({ parameters }: ComplianceFit, units: UnitSystem): string {
  const held = parameters.filter(parameter => parameter.state === 'fixed' && !isAbsent(parameter))
  return held.length === 0
    ? ''
    : `Held: ${joined(held.map(({ name, value }) => `${parameterWord(name)} ${toldValue(name, value, units)}`))}.`
}

const toldValue = (name: string, value: number, units: UnitSystem): string => {
  const unit = parameterUnit(name, units)
  const { value: shown } = shownParameter(
    { name, value, standardError: null, interval: { kind: 'undetermined', why: '' }, state: 'fixed' },
    units,
  )
  return unit === '' ? shown : `${shown} ${unit}`
}

export function scatterSentence(fit: ComplianceFit, units: UnitSystem): string {
  const { noise, residualStandardDeviation: scatter, degreesOfFreedom, r2 } = fit
  const freedom = counted(degreesOfFreedom, 'degree of freedom', 'degrees of freedom')
  const good = r2 === null ? '' : `; R² ${Number(r2.toFixed(4))}`
  if (scatter === null) return `As many numbers as readings: nothing is left to tell the scatter by${good}.`
  return noise === 'known'
    ? `The scatter of a reading was known beforehand; the residuals are ${Number(scatter.toPrecision(3))} times that, on ${freedom}${good}.`
    : `The scatter was taken from the residuals: ${tell(scatter, 'sinkage', units)} for a single reading, on ${freedom}${good}.`
}

function rangeSentence({ loads, pressures }: ComplianceFit, units: UnitSystem): string {
  if (!pressures) return ''
  const told = (value: number, quantity: 'load' | 'pressure') =>
    formatQuantity(value, quantity, { units }).replace('\u202f', ' ')
  const load = loads ? `loads from ${told(loads.low, 'load')} to ${told(loads.high, 'load')}, ` : ''
  return `Readings cover ${load}pressures from ${told(pressures.low, 'pressure')} to ${told(pressures.high, 'pressure')}; outside these pressures the turf is extrapolated.`
}

const UNBROKEN = '\u00a0'
/** An equation that no end of a line parts. */
export const equationOf = (law: LawName): string => laws[law].equation.replaceAll(' ', UNBROKEN)

const setsOf = ({ readings }: ComplianceFit): readonly string[] => [
  ...new Set(readings.map(({ set }) => set)),
]

function feetOf({ readings }: ComplianceFit): string {
  const has = (kind: 'plate' | 'roller') =>
    readings.some(({ foot, load }) => foot.kind === kind && load !== null)
  const feet = [
    ...(has('plate') ? ['plates'] : []),
    ...(has('roller') ? ['rollers'] : []),
    ...(readings.some(({ load }) => load === null) ? ['the whole unit'] : []),
  ]
  return `with ${joined(feet)}`
}

function leftOutNotes({ fit, table }: ReportQuestion): string[] {
  const reasons = new Map<string, number[]>()
  const all = [...(table?.leftOut ?? []), ...fit.leftOut]
  for (const { row, why } of all) reasons.set(why, [...(reasons.get(why) ?? []), row])
  const SHOWN = 6
  return [...reasons].map(([why, rows]) => {
    const more = rows.length > SHOWN ? ` and ${rows.length - SHOWN} more` : ''
    const word = rows.length === 1 ? 'Row' : 'Rows'
    return `${word} ${rows.slice(0, SHOWN).join(', ')}${more} left out: ${why}.`
  })
}

/** Columns that may well be empty: nothing is lost with them. */
const OFTEN_EMPTY = ['note', 'n', 'replicate']

function missingNote({ table }: ReportQuestion): string[] {
  const usual = (header: string) =>
    table?.columns.some(column => column.header === header && OFTEN_EMPTY.includes(column.name ?? ''))
  const told = (table?.missing ?? []).filter(({ column }) => !usual(column))
  return told.length === 0
    ? []
    : [`Missing: ${joined(told.map(({ column, count }) => `${column} in ${counted(count, 'row')}`))}.`]
}

function judgedNotes({ judgement }: ReportQuestion): string[] {
  if (!judgement) return []
  const { residuals, lackOfFit, cannotTell } = judgement
  return [
    ...cannotTell.map(({ sentence }) => `What the readings cannot tell: ${sentence}`),
    lackOfFit.sentence,
    ...residuals.sentences,
  ].map(sentenceLike)
}

const ended = ({ outcome, why }: ComplianceFit): string[] =>
  outcome === 'converged' ? [] : [`The search did not end at a minimum: ${why.replace(/\.$/, '')}.`]

const sentenceLike = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`

/** What a fit says, for people: a paragraph, a table of its numbers, and notes. */
export function fitReport(question: ReportQuestion): FitReport {
  const { fit, name = '', units = 'metric' } = question
  const sets = setsOf(fit)
  const where = sets.length > 1 ? ` in ${sets.length} sets` : ''
  const of = name === '' ? '' : `${name}: `
  const paragraph = [
    `${of}${counted(fit.readings.length, 'reading')}${where} ${feetOf(fit)}, fitted with the ${fit.law} law (${equationOf(fit.law)}).`,
    valuesSentence(fit, units),
    heldSentence(fit, units),
    scatterSentence(fit, units),
    rangeSentence(fit, units),
  ]
  return {
    paragraph: paragraph.filter(text => text !== '').join(' '),
    table: parameterTable(fit, units),
    notes: [
      ...ended(fit),
      ...leftOutNotes(question),
      ...missingNote(question),
      ...judgedNotes(question),
      ...fit.notes.map(sentenceLike),
      ...fit.cautions.map(caution => sentenceLike(sentenceIn(caution, units))),
    ],
  }
}

const NARROW = '\u202f'

function parameterTable({ parameters }: ComplianceFit, units: UnitSystem): string[][] {
  const level = percent(levelOf(parameters)).replace(' ', NARROW)
  const rows = parameters
    .filter(parameter => !isAbsent(parameter))
    .map(parameter => {
      const { value, standardError, low, high, why } = shownParameter(parameter, units)
      const { name, set = '', state } = parameter
      return [
        parameterWord(name),
        set,
        parameterUnit(name, units),
        value,
        standardError,
        low,
        high,
        state === 'free' && why === '' ? '' : state === 'free' ? why : state,
      ]
    })
  const head = ['parameter', 'set', 'unit', 'value', 'std error', `${level} low`, 'high', '']
  const all = [head, ...rows]
  // Columns that say nothing in any row are left out.
  const needed = head.map((_, i) => rows.some(row => row[i] !== ''))
  return all.map(row => row.filter((_, i) => needed[i]))
}
