import { execFile } from 'node:child_process'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { repository } from './support/files.ts'
import { buildStale } from './support/servedPage.ts'

const run = promisify(execFile)
const enough_ms = 60_000

let consumer: string

beforeAll(async () => {
  await buildStale('model')
  // Below node_modules, so that the consumer finds the package as it would find any other.
  const caches = join(repository, 'node_modules/.cache/swardsink')
  await mkdir(caches, { recursive: true })
  consumer = await mkdtemp(join(caches, 'consumer-'))
  await writeFile(join(consumer, 'package.json'), '{ "type": "module" }')
}, enough_ms)
afterAll(() => rm(consumer, { recursive: true, force: true }))

test('a script finds the built model without a bundler', async () => {
  await writeFile(
    join(consumer, 'script.js'),
    `import { pressureAt } from '@swardsink/model'
     const law = { kind: 'linear', softness: 0.01 }
     console.log(import.meta.resolve('@swardsink/model').endsWith('/dist/index.js'), pressureAt(law, 0) === 0)`,
  )
  const { stdout } = await run(process.execPath, [join(consumer, 'script.js')])
  expect(stdout).toBe('true true\n')
})

test('a consumer in TypeScript sees its types, and a wrong use of them', async () => {
  const options = {
    strict: true,
    noEmit: true,
    module: 'nodenext',
    target: 'es2022',
    types: [],
    lib: ['es2022'],
  }
  await writeFile(
    join(consumer, 'tsconfig.json'),
    JSON.stringify({ compilerOptions: options, files: ['right.ts', 'wrong.ts'] }),
  )
  const begin = `import { pressureAt, type PressureLaw } from '@swardsink/model'
    const law: PressureLaw = { kind: 'linear', softness: 0.01 }\n`
  await writeFile(
    join(consumer, 'right.ts'),
    `${begin}export const pressure: number = pressureAt(law, 0.002)\n`,
  )
  await writeFile(
    join(consumer, 'wrong.ts'),
    `${begin}export const pressure: string = pressureAt(law, 0.002)\n`,
  )

  const compiler = join(repository, 'node_modules/typescript/bin/tsc')
  const said = await run(process.execPath, [compiler, '-p', consumer], { cwd: consumer }).then(
    ({ stdout }) => stdout,
    (error: { stdout: string }) => error.stdout,
  )
  expect(said.trim().split('\n')).toEqual([expect.stringMatching(/^wrong\.ts\(3,\d+\): error TS2322/)])
})

test('the command answers through its launcher', async () => {
  const { stdout } = await run(process.execPath, [
    join(repository, 'packages/model/bin/swardsink.js'),
    '--help',
  ])
  expect(stdout).toContain('usage: swardsink')
})
