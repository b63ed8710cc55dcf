import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { patch } from '@swardsink/model'
import { beforeAll, expect, test } from 'vitest'
import { repository } from './support/files.ts'
import { buildStale } from './support/servedPage.ts'
import { expectNear, identity } from './support/tolerance.ts'

const mm = 1e-3
const question = {
  roller: {
    mass: 5.4,
    diameter: 58 * mm,
    length: 0.55,
    surface: { kind: 'grooved', pitch: 11 * mm, land: 4.5 * mm, depth: 5 * mm },
  },
  turf: { law: { kind: 'stiffening', softness: 0.7 * mm, lockingDepth: 7 * mm }, spread: 1.8 * mm },
  sinkage: 0.9 * mm,
} as const

type Message = { readonly step: number } | { readonly answer: ReturnType<typeof patch> }

let script: string

beforeAll(async () => {
  await buildStale('model')
  const built = new URL(`file://${join(repository, 'packages/model/dist/index.js')}`)
  const caches = join(repository, 'node_modules/.cache/swardsink')
  await mkdir(caches, { recursive: true })
  script = join(caches, 'patch-worker.mjs')
  await writeFile(
    script,
    `import { parentPort, workerData } from 'node:worker_threads'
     import { patch } from ${JSON.stringify(built.href)}
     const onStep = step => parentPort.postMessage({ step })
     parentPort.postMessage({ answer: patch({ ...workerData, onStep }) })`,
  )
}, 60_000)

test('the full patch works in a worker, tells how far it is, and answers as it does here', async () => {
  const worker = new Worker(script, { workerData: { ...question, cells: 96 } })
  const steps: number[] = []
  const answer = await new Promise<ReturnType<typeof patch>>((resolve, reject) => {
    worker.on('error', reject)
    worker.on('message', (message: Message) => {
      if ('step' in message) steps.push(message.step)
      else resolve(message.answer)
    })
  })
  await worker.terminate()
  expect(steps.length).toBeGreaterThan(3)
  for (let i = 1; i < steps.length; i++) expect(steps[i]!).toBeGreaterThanOrEqual(steps[i - 1]!)
  const here = patch({ ...question, cells: 96 })
  if (answer.outcome !== 'settled' || here.outcome !== 'settled') throw new Error(answer.outcome)
  expectNear(answer.load, here.load, identity)
})

test('it is stopped by ending its worker, in the middle of the work', async () => {
  const worker = new Worker(script, { workerData: { ...question, cells: 1024 } })
  const seen: Message[] = []
  const ended = new Promise(resolve => worker.on('exit', resolve))
  await new Promise<void>((resolve, reject) => {
    worker.on('error', reject)
    worker.on('message', (message: Message) => {
      seen.push(message)
      resolve()
    })
  })
  await worker.terminate()
  await ended
  expect(seen.some(message => 'answer' in message)).toBe(false)
})
