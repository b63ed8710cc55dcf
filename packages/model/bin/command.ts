import { readFileSync } from 'node:fs'
import { InputError, readScenario, sentence } from '../src/index.ts'
import { answers } from './answers.ts'
import { UsageError, usage, type Wanted, wantedFrom } from './wanted.ts'

const AT_FAULT = 1
const WRONG_USAGE = 2
const STANDARD_INPUT = 0

const complain = (text: string, code: number): void => {
  process.stderr.write(`${text}\n`)
  process.exitCode = code
}

/** The file's JSON, or a sentence that says why not. */
function jsonFrom(file: string): { readonly value: unknown } | { readonly fault: string } {
  let text: string
  try {
    text = readFileSync(file === '-' ? STANDARD_INPUT : file, 'utf8')
  } catch (error) {
    const reason =
      (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'no such file' : (error as Error).message
    return { fault: `${file}: expected a file that can be read, received: ${reason}` }
  }
  try {
    return { value: JSON.parse(text.replace(/^\uFEFF/, '')) }
  } catch (error) {
    return { fault: `${file}: expected JSON, received: ${(error as Error).message}` }
  }
}

async function answer(wanted: Wanted): Promise<void> {
  const json = jsonFrom(wanted.file)
  if ('fault' in json) return complain(json.fault, AT_FAULT)
  const reading = await readScenario(json.value)
  if (!reading.ok) return complain(reading.problems.map(sentence).join('\n'), AT_FAULT)
  for (const doubt of reading.doubts) process.stderr.write(`note: ${sentence(doubt)}\n`)
  const { text, data, answered } = answers[wanted.command](reading.scenario, wanted)
  if (wanted.json) process.stdout.write(`${JSON.stringify(data, null, 2)}\n`)
  else if (answered) process.stdout.write(`${text}\n`)
  if (!answered) complain(text, AT_FAULT)
}

async function main(args: readonly string[]): Promise<void> {
  if (args.some(word => word === '--help' || word === '-h')) {
    process.stdout.write(usage)
    return
  }
  try {
    await answer(wantedFrom(args))
  } catch (error) {
    if (error instanceof UsageError) complain(`${error.message}\n\n${usage}`, WRONG_USAGE)
    else if (error instanceof InputError) complain(error.message, AT_FAULT)
    else throw error
  }
}

await main(process.argv.slice(2))
