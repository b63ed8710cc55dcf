import { describe, expect, it } from 'vitest'
import { readLink, scenarioLink } from '../../../packages/explorer/src/book/index.ts'
import { firstBook } from '../entries/firstBook.ts'

const { scenario } = await firstBook()

describe('a scenario in an address', () => {
  it('comes back the same', async () => {
    expect(await readLink(scenarioLink(scenario))).toEqual({ kind: 'scenario', scenario })
  })

  it('comes back the same with names in any letters', async () => {
    const turfs = { 'grün, 芝 & "rough"': scenario.turfs[scenario.turf] as (typeof scenario.turfs)[string] }
    const named = { ...scenario, turfs, turf: 'grün, 芝 & "rough"' }
    expect(await readLink(scenarioLink(named))).toEqual({ kind: 'scenario', scenario: named })
  })

  it('needs no character that an address would change', () => {
    expect(scenarioLink(scenario)).toMatch(/^#scenario=[A-Za-z0-9_-]+$/)
  })

  it('is nothing when the address carries none', async () => {
    expect(await readLink('')).toEqual({ kind: 'none' })
    expect(await readLink('#trust')).toEqual({ kind: 'none' })
  })

  it('says that it is damaged when part of it is missing', async () => {
    const link = scenarioLink(scenario)
    expect(await readLink(link.slice(0, 200))).toMatchObject({ kind: 'damaged' })
    expect(await readLink('#scenario=%%%')).toMatchObject({ kind: 'damaged' })
  })

  it('says what is wrong with the values it carries', async () => {
    const bad = { ...scenario, unit: { ...scenario.unit, benchHeight: -1e-3 } }
    const read = await readLink(scenarioLink(bad))
    expect(read.kind).toBe('damaged')
    expect(read.kind === 'damaged' && read.problems[0]?.path).toContain('benchHeight')
  })
})
