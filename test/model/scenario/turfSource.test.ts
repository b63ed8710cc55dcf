import { readScenario, writeScenario } from '@swardsink/model'
import { expect, test } from 'vitest'
import { fileWith } from '../../support/arbitraryScenario.ts'

const place = 'turfs.beech lawn (invented).source'

test('a green says where its numbers come from, and a file keeps it', async () => {
  const said = 'twelve readings of beech lawn, invented'
  const read = await readScenario(fileWith({ [place]: said }))
  if (!read.ok) return expect.fail(JSON.stringify(read.problems))
  expect(read.scenario.turfs['beech lawn (invented)']?.source).toBe(said)
  expect(JSON.stringify(writeScenario(read.scenario))).toContain(said)
})

test('what is no text is no source', async () => {
  const read = await readScenario(fileWith({ [place]: 12 }))
  expect(read).toEqual({ ok: false, problems: [{ path: place, expected: 'text', received: '12' }] })
})
