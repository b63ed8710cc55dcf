import {
  type ComplianceFit,
  catalogue,
  displayUnit,
  type FitReport,
  fitReport,
  formatQuantity,
  judgeFit,
  methodsParagraph,
  type Noise,
  parameterWord,
  parameterQuantity as quantityOf,
  type UnitSystem,
} from '../src/index.ts'
import type { FileFit } from './fitFiles.ts'
import type { FitWanted } from './fitWanted.ts'
import { table } from './table.ts'

export type Fitted = Omit<FileFit, 'fit'> & { readonly fit: ComplianceFit }

const LINE = 110

/** Prose over lines that a terminal shows whole. */
export function wrapped(text: string): string {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > LINE) {
      lines.push(line)
      line = word
    } else line += line === '' ? word : ` ${word}`
  }
  return [...lines, line].join('\n').replaceAll('\u00a0', ' ')
}

const notesText = ({ notes }: FitReport): string =>
  notes.length === 0 ? '' : `\n\nNotes\n${notes.map(note => wrapped(`- ${note}`)).join('\n')}`

function methodsText({ fit, question, table: read }: Fitted, units: UnitSystem): string {
  const given = {
    standardDeviation: read.readings.filter(({ standardDeviation }) => standardDeviation !== undefined)
      .length,
    gaugeStep: read.readings.filter(({ gaugeStep }) => gaugeStep !== undefined).length,
  }
  return `\n\nMethods\n${wrapped(methodsParagraph({ fit, noise: question.noise, given, units }))}`
}

/** One fit for people: a paragraph and a table; the methods, where a report is asked for. */
export function oneFitText(fitted: Fitted, { report, units }: FitWanted): string {
  const { fit, file, table: read, question } = fitted
  const told = fitReport({ fit, name: file, table: read, judgement: judgeFit({ question, fit }), units })
  const methods = report ? methodsText(fitted, units) : ''
  return `${wrapped(told.paragraph)}\n\n${table(told.table)}${notesText(told)}${methods}`
}

const DATUMS = ['datum', 'dropDatum']

/** Values of a parameter over the sets of a fit: one, or from the least to the greatest. */
function valuesOf(fit: ComplianceFit, name: string, shown: (name: string, value: number) => string): string {
  const values = fit.parameters.filter(one => one.name === name).map(({ value }) => value)
  if (values.length === 0) return ''
  const [low, high] = [Math.min(...values), Math.max(...values)].map(value => shown(name, value))
  return low === high ? low! : `${low} to ${high}`
}

/** Several fits in one table, a line each. */
export function manyFitsText(all: readonly Fitted[], units: UnitSystem): string {
  const names = [...new Set(all.flatMap(({ fit }) => fit.parameters.map(({ name }) => name)))].filter(
    name =>
      !DATUMS.includes(name) &&
      all.some(({ fit }) => fit.parameters.some(one => one.name === name && one.value !== 0)),
  )
  const shown = (name: string, value: number) => {
    const quantity = quantityOf(name)
    return quantity
      ? formatQuantity(value, quantity, { units, unit: false })
      : String(Number(value.toPrecision(4)))
  }
  const unitOf = (name: string) => {
    const quantity = quantityOf(name)
    return quantity ? displayUnit(quantity, units) : ''
  }
  const { factor, unit } = catalogue.sinkage[units]
  const scatter = ({ fit }: Fitted, noise: Noise['kind'], one: number): string =>
    fit.noise === noise && fit.residualStandardDeviation !== null
      ? String(Number((fit.residualStandardDeviation / one).toPrecision(3)))
      : ''
  const rows = all.map(one => [
    one.file,
    String(one.fit.readings.length),
    String(new Set(one.fit.readings.map(({ set }) => set)).size),
    ...names.map(name => valuesOf(one.fit, name, shown)),
    one.fit.noise,
    scatter(one, 'estimated', factor),
    scatter(one, 'known', 1),
    one.fit.r2 === null ? '' : one.fit.r2.toFixed(4),
    one.fit.outcome,
  ])
  const head = [
    'file',
    'readings',
    'sets',
    ...names.map(parameterWord),
    'noise',
    'scatter',
    '',
    'R²',
    'search',
  ]
  const under = ['', '', '', ...names.map(unitOf), '', unit, 'of known', '', '']
  const told = [head, under, ...rows]
  const empty = head.map((_, i) => rows.every(row => row[i] === ''))
  return table(told.map(row => row.filter((_, i) => !empty[i])))
}
