import { deflateRawSync } from 'node:zlib'
import { writeScenario } from '@swardsink/model'
import { describe, expect, it } from 'vitest'
import {
  readAddress,
  readLink,
  scenarioLink,
  writeAddress,
} from '../../../packages/explorer/src/book/index.ts'
import { firstBook } from '../entries/firstBook.ts'

const { scenario } = await firstBook()

describe('a scenario in an address', () => {
  it('comes back the same', async () => {
    expect(await readLink(await scenarioLink(scenario))).toEqual({ kind: 'scenario', scenario })
  })

  it('comes back the same with names in any letters', async () => {
    const turfs = { 'grün, 芝 & "rough"': scenario.turfs[scenario.turf] as (typeof scenario.turfs)[string] }
    const named = { ...scenario, turfs, turf: 'grün, 芝 & "rough"' }
    expect(await readLink(await scenarioLink(named))).toEqual({ kind: 'scenario', scenario: named })
  })

  it('needs no character that an address would change', async () => {
    expect(await scenarioLink(scenario)).toMatch(/^#scenario=~[A-Za-z0-9_-]+$/)
  })

  it('is read as well when it was not packed tight, as older links are', async () => {
    const text = JSON.stringify(writeScenario(scenario, { units: 'SI' }))
    const link = `#page=2&scenario=${Buffer.from(text).toString('base64url')}`
    expect(await readLink(link)).toEqual({ kind: 'scenario', scenario })
  })

  it('is damaged when it would unpack to more than any scenario', async () => {
    const bomb = deflateRawSync(Buffer.alloc(3e6, ' ')).toString('base64url')
    expect(bomb.length).toBeLessThan(5000)
    expect(await readLink(`#scenario=~${bomb}`)).toMatchObject({ kind: 'damaged' })
  })

  it('is nothing when the address carries none', async () => {
    expect(await readLink('')).toEqual({ kind: 'none' })
    expect(await readLink('#trust')).toEqual({ kind: 'none' })
  })

  it('says that it is damaged when part of it is missing', async () => {
    const link = await scenarioLink(scenario)
    expect(await readLink(link.slice(0, 200))).toMatchObject({ kind: 'damaged' })
    expect(await readLink('#scenario=%%%')).toMatchObject({ kind: 'damaged' })
  })

  it('says what is wrong with the values it carries', async () => {
    const bad = { ...scenario, unit: { ...scenario.unit, benchHeight: -1e-3 } }
    const read = await readLink(await scenarioLink(bad))
    expect(read.kind).toBe('damaged')
    expect(read.kind === 'damaged' && read.problems[0]?.path).toContain('benchHeight')
  })
})

describe('an address', () => {
  it.each([
    ['', { book: null, page: null, scenario: null, foreign: [] }],
    ['#page=2', { book: null, page: 2, scenario: null, foreign: [] }],
    ['#book=my-greens&page=12&scenario=~x', { book: 'my-greens', page: 12, scenario: '~x', foreign: [] }],
    ['#garbage', { book: null, page: null, scenario: null, foreign: ['garbage'] }],
    ['#page=0', { book: null, page: null, scenario: null, foreign: ['page=0'] }],
    ['#page=two&%E0%A4%A', { book: null, page: null, scenario: null, foreign: ['page=two', '%E0%A4%A'] }],
  ])('%j says which book, page and values', (hash, address) => {
    expect(readAddress(hash)).toEqual(address)
  })

  it('comes back the same', () => {
    const address = { book: 'grün & 芝', page: 3, scenario: '~abc' }
    expect(readAddress(writeAddress(address))).toEqual({ ...address, foreign: [] })
    expect(writeAddress({ book: null, page: 1 })).toBe('')
  })
})
