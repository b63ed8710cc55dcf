import { writeFileSync } from 'node:fs'
import { exportFit, readScenario, type Scenario, sentence } from '../src/index.ts'
import { type FileFit, fitFile } from './fitFiles.ts'
import { noteLines } from './fitNotes.ts'
import { type Fitted, manyFitsText, oneFitText } from './fitText.ts'
import type { FitWanted } from './fitWanted.ts'
import { jsonFrom } from './input.ts'

/** What goes to standard output and to standard error, and whether there was an answer. */
export type Said = { readonly out: string; readonly notes: readonly string[]; readonly answered: boolean }

const refused = (faults: readonly string[]): Said => ({ out: '', notes: faults, answered: false })

async function scenarioFrom(
  file: string | undefined,
): Promise<
  { readonly scenario?: Scenario; readonly notes: readonly string[] } | { readonly faults: readonly string[] }
> {
  if (file === undefined) return { notes: [] }
  const json = jsonFrom(file)
  if ('fault' in json) return { faults: [json.fault] }
  const reading = await readScenario(json.value)
  if (!reading.ok) return { faults: reading.problems.map(problem => `${file}: ${sentence(problem)}`) }
  return {
    scenario: reading.scenario,
    notes: reading.doubts.map(doubt => `note: ${file}: ${sentence(doubt)}`),
  }
}

const isFitted = (one: FileFit): one is Fitted => one.fit.outcome !== 'failed'

/** Writes the exports asked for; one to - takes the place of the answer. */
function exported(fitted: Fitted, wanted: FitWanted, scenario: Scenario | undefined) {
  const notes: string[] = []
  let out: string | undefined
  for (const { language, file } of wanted.exports) {
    const { fit, file: name } = fitted
    const made = exportFit({ fit, language, name, ...(scenario ? { scenario } : {}) })
    if (made.kind === 'table')
      notes.push(`note: ${file} holds the readings beside their fitted values, no script: ${made.why}`)
    if (file === '-') out = made.text
    else
      try {
        writeFileSync(file, made.text)
      } catch (error) {
        return {
          faults: [`${file}: expected a file that can be written, received: ${(error as Error).message}`],
        }
      }
  }
  return { notes, out }
}

/** Fits every table named, and says so as a table for people or as data. */
export async function fitCommand(wanted: FitWanted): Promise<Said> {
  const read = await scenarioFrom(wanted.scenario)
  if ('faults' in read) return refused(read.faults)
  const { scenario } = read
  const answers = wanted.files.map(file => fitFile(file, wanted, scenario))
  const faults = answers.flatMap(one => ('faults' in one ? one.faults : []))
  if (faults.length > 0) return refused(faults)
  const all = answers.filter((one): one is FileFit => !('faults' in one))
  const several = all.length > 1
  const notes = [
    ...read.notes,
    ...all.flatMap(({ file, table }) => noteLines(table.notes, several ? `note: ${file}: ` : 'note: ')),
  ]
  const failed = all.filter(one => !isFitted(one))
  const failures = failed.map(({ file, fit }) => `${file}: ${fit.why}`)
  const fitted = all.filter(isFitted)
  const data = several ? all.map(({ file, fit }) => ({ file, fit })) : all[0]!.fit
  const json = `${JSON.stringify(data, null, 2)}\n`
  if (failed.length > 0)
    return { out: wanted.json ? json : '', notes: [...notes, ...failures], answered: false }
  const exports = fitted[0] ? exported(fitted[0], wanted, scenario) : { notes: [], out: undefined }
  if ('faults' in exports) return refused(exports.faults)
  const text = several
    ? [
        manyFitsText(fitted, wanted.units),
        ...(wanted.report ? fitted.map(one => oneFitText(one, wanted)) : []),
      ].join('\n\n')
    : oneFitText(fitted[0]!, wanted)
  return {
    out: exports.out ?? (wanted.json ? json : `${text}\n`),
    notes: [...notes, ...exports.notes],
    answered: true,
  }
}
