import { InputError, readScenario, sentence } from '../src/index.ts'
import { answers } from './answers.ts'
import { fitCommand } from './fitCommand.ts'
import { type FitWanted, fitWantedFrom } from './fitWanted.ts'
import { jsonFrom } from './input.ts'
import { UsageError, usage, type Wanted, wantedFrom } from './wanted.ts'

const AT_FAULT = 1
const WRONG_USAGE = 2

const complain = (text: string, code: number): void => {
  process.stderr.write(`${text}\n`)
  process.exitCode = code
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

async function answerFit(wanted: FitWanted): Promise<void> {
  const { out, notes, answered } = await fitCommand(wanted)
  process.stdout.write(out)
  if (notes.length > 0) process.stderr.write(`${notes.join('\n')}\n`)
  if (!answered) process.exitCode = AT_FAULT
}

async function main(args: readonly string[]): Promise<void> {
  if (args.some(word => word === '--help' || word === '-h')) {
    process.stdout.write(usage)
    return
  }
  try {
    if (args[0] === 'fit') await answerFit(fitWantedFrom(args.slice(1)))
    else await answer(wantedFrom(args))
  } catch (error) {
    if (error instanceof UsageError) complain(`${error.message}\n\n${usage}`, WRONG_USAGE)
    else if (error instanceof InputError) complain(error.message, AT_FAULT)
    else throw error
  }
}

await main(process.argv.slice(2))
