// npm run mutants: lines of physics made wrong one by one in a copy of the model; a test has to fail each time.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { repository } from '../support/files.ts'
import { type Mutant, mutants, mutated } from './mutants.ts'

type Report = {
  readonly numTotalTests: number
  readonly testResults: readonly {
    readonly name: string
    readonly message: string
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[]
  }[]
}

const tooLong_ms = 120_000

/** A copy of the model and its tests below the repository, where packages are found as ever. */
function copyOfModel(): string {
  const cache = join(repository, '.cache')
  mkdirSync(cache, { recursive: true })
  const copy = mkdtempSync(join(cache, 'mutants-'))
  for (const folder of ['packages/model/src', 'test/model', 'test/support', 'test/reference'])
    cpSync(join(repository, folder), join(copy, folder), { recursive: true })
  writeFileSync(
    join(copy, 'vitest.config.ts'),
    `export default {
       resolve: { alias: { '@swardsink/model': ${JSON.stringify(join(copy, 'packages/model/src/index.ts'))} } },
       // A slow machine is no mutant caught.
       test: { setupFiles: ['./test/support/seeded.ts'], testTimeout: 60_000 },
     }`,
  )
  return copy
}

/** Names of the tests that failed, and how many ran; a test file that does not load has failed. */
function failures(copy: string, tests: readonly string[], stopAtFirst: boolean) {
  const out = join(copy, 'report.json')
  rmSync(out, { force: true })
  const runner = join(repository, 'node_modules/vitest/vitest.mjs')
  const words = ['run', '--root', copy, '--reporter=json', `--outputFile=${out}`]
  const bail = stopAtFirst ? ['--bail=1'] : []
  const files = tests.map(test => join('test/model', test))
  const ended = spawnSync(process.execPath, [runner, ...words, ...bail, ...files], {
    cwd: copy,
    timeout: tooLong_ms,
    encoding: 'utf8',
  })
  if (ended.signal) return { ran: 1, failed: [`no end within ${tooLong_ms / 1000} s`] }
  const report = JSON.parse(readFileSync(out, 'utf8')) as Report
  const failed = report.testResults.flatMap(({ assertionResults, message, name }) => [
    ...assertionResults
      .filter(({ status }) => status === 'failed')
      .map(({ fullName }) => `${relative(copy, name)}: ${fullName}`),
    // A file that was not begun, because another had failed, has no message.
    ...(assertionResults.length === 0 && message !== ''
      ? [`${relative(copy, name)} does not load: ${message.split('\n')[0]}`]
      : []),
  ])
  return { ran: report.numTotalTests, failed }
}

const copy = copyOfModel()
try {
  const pathOf = ({ file }: Mutant) => join(copy, 'packages/model/src', file)
  const made = mutants.map(mutant => ({
    mutant,
    text: mutated(readFileSync(pathOf(mutant), 'utf8'), mutant),
  }))

  const sound = failures(copy, [...new Set(mutants.flatMap(({ tests }) => tests))], false)
  if (sound.failed.length > 0 || sound.ran === 0)
    throw new Error(`the model as it stands does not pass:\n${sound.failed.join('\n')}`)
  console.log(`${sound.ran} tests pass on the model as it stands`)

  let missed = 0
  for (const { mutant, text } of made) {
    const right = readFileSync(pathOf(mutant), 'utf8')
    writeFileSync(pathOf(mutant), text)
    const { failed } = failures(copy, mutant.tests, true)
    writeFileSync(pathOf(mutant), right)
    if (failed.length === 0) missed++
    const verdict = failed.length > 0 ? `caught by ${failed[0]}` : 'MISSED'
    console.log(`${mutant.kind.padEnd(8)} ${mutant.file}, ${mutant.what}: ${verdict}`)
  }
  console.log(`${mutants.length - missed} of ${mutants.length} caught`)
  if (missed > 0) process.exitCode = 1
} finally {
  rmSync(copy, { recursive: true, force: true })
}
