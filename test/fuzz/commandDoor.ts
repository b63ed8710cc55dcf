import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { InputError, readScenario, writeScenario } from '@swardsink/model'
import fc from 'fast-check'
import { answers } from '../../packages/model/bin/answers.ts'
import { fitCommand } from '../../packages/model/bin/fitCommand.ts'
import { fitWantedFrom } from '../../packages/model/bin/fitWanted.ts'
import { jsonFrom } from '../../packages/model/bin/input.ts'
import { UsageError, wantedFrom } from '../../packages/model/bin/wanted.ts'
import { scenarios } from '../support/arbitraries.ts'
import { door } from './door.ts'
import { must, mustBeFinite } from './expectations.ts'

const folder = mkdtempSync(join(tmpdir(), 'swardsink-fuzz-'))
const scenarioFile = join(folder, 'scenario.json')
const tableFile = join(folder, 'readings.csv')
const tornFile = join(folder, 'torn.json')
writeFileSync(tornFile, '{ "unit": {')

const numbers = fc.array(
  fc.oneof(fc.double({ min: -1, max: 60, noNaN: true }).map(String), fc.constantFrom('', 'x', '1e400', '0')),
  {
    maxLength: 4,
  },
)
const words = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(scenarioFile, tableFile, '--json', '--report', '--datum') },
  {
    weight: 3,
    arbitrary: fc.constantFrom(
      tornFile,
      folder,
      join(folder, 'none'),
      '',
      '--',
      '-x',
      '--nothing',
      '--json=1',
    ),
  },
  {
    weight: 4,
    arbitrary: fc
      .tuple(
        fc.constantFrom(
          '--units',
          '--arc',
          '--balance',
          '--position',
          '--quantity',
          '--law',
          '--free',
          '--per-set',
          '--noise',
        ),
        fc.constantFrom(
          ...[
            'metric',
            'US',
            'circle',
            'level',
            'rear',
            'drop',
            'peakPressure',
            'power',
            'linear',
            'stiffening',
            'layered',
          ],
          ...[
            'softness',
            'exponent',
            'spread,softness',
            'estimated',
            '0.05mm',
            '-1mm',
            'constructor',
            '__proto__',
            '',
          ],
        ),
      )
      .map(pair => pair.join('=')),
  },
  { weight: 2, arbitrary: numbers.map(list => `--masses=${list.join(',')}`) },
  { weight: 2, arbitrary: numbers.map(list => `--softnesses=${list.join(',')}`) },
  { weight: 1, arbitrary: numbers.map(list => `--hold=spread=${list.join(',')}mm`) },
  { weight: 1, arbitrary: numbers.map(list => `--level=${list.join('')}`) },
  { weight: 1, arbitrary: fc.string({ maxLength: 8 }).filter(word => word !== '-') },
)

const rows = fc.array(
  fc.tuple(fc.double({ min: 1, max: 300, noNaN: true }), fc.double({ min: 0.01, max: 5, noNaN: true })),
  { minLength: 3, maxLength: 9 },
)

/** What the words ask for, as the command does it: an answer, a sentence that says what is wrong, never a trace. */
async function answer(args: readonly string[]): Promise<void> {
  if (args[0] === 'fit') {
    const wanted = fitWantedFrom(args.slice(1))
    // Only the answer is looked at: a case must not write files, nor wait for somebody to type.
    if (wanted.exports.length > 0 || wanted.files.includes('-') || wanted.scenario === '-') return
    const said = await fitCommand(wanted)
    must(said.answered ? said.out.length > 0 : said.notes.length > 0, 'neither an answer nor a reason')
    must(
      !/\bNaN\b|undefined|\[object/.test(said.out),
      `a fit says ${/.*(NaN|undefined|\[object).*/.exec(said.out)?.[0]}`,
    )
    return
  }
  const wanted = wantedFrom(args)
  if (wanted.file === '-') return
  const json = jsonFrom(wanted.file)
  if ('fault' in json) {
    must(json.fault.length > 0, 'a file refused without a reason')
    return
  }
  const reading = await readScenario(json.value)
  if (!reading.ok) return
  const { text, data, answered } = answers[wanted.command](reading.scenario, wanted)
  must(text.length > 0 && !/\bNaN\b|undefined|\[object/.test(text), `the answer says ${text.slice(0, 80)}`)
  if (answered) mustBeFinite(data, wanted.command)
}

/** Words on the command line. */
export const commandDoor = door({
  name: 'command lines',
  arbitrary: fc.record({
    command: fc.oneof(
      { weight: 9, arbitrary: fc.constantFrom('settle', 'compare', 'map', 'fit') },
      { weight: 1, arbitrary: fc.string({ maxLength: 6 }) },
    ),
    words: fc.array(words, { maxLength: 6 }),
    scenario: scenarios,
    rows,
  }),
  // A command may take its time, which a page may not: a map on turf that hardly locks takes some seconds.
  within: 15,
  async check({ command, words: rest, scenario, rows: readings }) {
    writeFileSync(scenarioFile, JSON.stringify(writeScenario(scenario)))
    writeFileSync(
      tableFile,
      `plate_diameter_mm,load_N,sinkage_mm\n${readings.map(([load, sinkage]) => `50,${load},${sinkage}`).join('\n')}\n`,
    )
    const file = command === 'fit' ? tableFile : scenarioFile
    try {
      await answer([command, file, ...rest.filter(word => word !== scenarioFile && word !== tableFile)])
      await answer([command, ...rest])
    } catch (error) {
      if (!(error instanceof UsageError || error instanceof InputError)) throw error
      must(error.message.length > 0, 'refused without words')
    }
  },
})
