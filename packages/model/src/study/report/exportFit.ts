import type { Scenario } from '../../scenario/index.ts'
import type { ComplianceFit, FittedReading } from '../fit/compliance/complianceFit.ts'
import { pythonScript } from './pythonScript.ts'
import { rScript } from './rScript.ts'
import { scriptedFit } from './scriptedFit.ts'

export const exportLanguages = ['R', 'Python'] as const
export type ExportLanguage = (typeof exportLanguages)[number]

export type ExportQuestion = {
  readonly fit: ComplianceFit
  readonly language: ExportLanguage
  /** Of the readings: stands at the top. */
  readonly name?: string
  /** The rollers that readings name, and the unit. */
  readonly scenario?: Pick<Scenario, 'unit' | 'rollers'>
  /** Whether a robust loss was asked for. */
  readonly robust?: boolean
}

export type Exported =
  | { readonly kind: 'script'; readonly text: string }
  /** Readings, fitted values and residuals, where the fit is beyond a short script. */
  | { readonly kind: 'table'; readonly text: string; readonly why: string }

const foot = ({ foot: its }: FittedReading): string =>
  its.kind === 'roller'
    ? its.name === null
      ? 'roller of the unit'
      : `roller ${its.name}`
    : 'area' in its
      ? `plate of ${its.area} m2`
      : `plate of ${its.diameter} m`

const quoted = (text: string): string => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

function residualTable({ readings, residuals, weights }: ComplianceFit, title: readonly string[]): string {
  const rows = readings.map((reading, i) => [
    reading.row,
    quoted(reading.set),
    reading.kind,
    quoted(foot(reading)),
    reading.load ?? '',
    reading.measured,
    reading.predicted ?? '',
    residuals[i],
    weights[i],
  ])
  const header = 'row,set,kind,foot,load_N,measured_m,fitted_m,residual_m,weight'
  return `${[...title.map(line => `# ${line}`), header, ...rows.map(row => row.join(','))].join('\n')}\n`
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()

/**
 * The same fit as a short script for another program, for plates and for rollers without spread; otherwise the
 * table of what it was made of, and why.
 *
 * Holds   the script repeats values, standard errors and intervals to about six digits
 * Units   SI in the script and in the table
 */
export function exportFit({ fit, language, name = '', scenario, robust = false }: ExportQuestion): Exported {
  const scripted = scriptedFit(fit, scenario, robust)
  const of = name === '' ? '' : ` of ${oneLine(name)}`
  const told = `Fit of the ${fit.law} law to ${fit.readings.length} readings${of}`
  if (typeof scripted === 'string') {
    const title = [`${told}.`, `No script can repeat it: ${scripted}. Readings beside fitted values, SI.`]
    return { kind: 'table', why: scripted, text: residualTable(fit, title) }
  }
  const title = [`${told}, as Swardsink made it (docs/physics.md §7.2).`]
  return {
    kind: 'script',
    text: language === 'R' ? rScript(scripted, title) : pythonScript(scripted, title),
  }
}
