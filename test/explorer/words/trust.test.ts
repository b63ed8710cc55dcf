import { describe, expect, it } from 'vitest'
import { TRUST_NAMES } from '../../../packages/explorer/src/entries/view.ts'
import { viewShelf } from '../../../packages/explorer/src/entries/views.ts'
import { readerFor } from '../../../packages/explorer/src/words/index.ts'

const { words } = readerFor({ units: 'metric', figureText: 13 })

describe('what a figure cannot be trusted with', () => {
  it('has a sentence for every name, and no sentence without one', async () => {
    expect(Object.keys(await words.trust()).toSorted()).toEqual([...TRUST_NAMES].toSorted())
  })

  it('is told beside every figure that rests on a model of turf', async () => {
    const shelf = viewShelf()
    await shelf.fetch(shelf.names)
    const drawn = ['sideView', 'map', 'rack', 'section', 'curves', 'headland', 'patch']
    expect(drawn.filter(kind => !shelf.items[kind]?.trust?.length)).toEqual([])
  })

  it('uses no name that is told nowhere', async () => {
    const shelf = viewShelf()
    await shelf.fetch(shelf.names)
    const told = new Set(Object.values(shelf.items).flatMap(view => view.trust ?? []))
    expect(TRUST_NAMES.filter(name => !told.has(name))).toEqual([])
  })
})

describe('the words of the trade', () => {
  it('stand in the order of the alphabet, each once, with a meaning', async () => {
    const glossary = await words.glossary()
    const order = glossary.map(({ word }) => word)
    expect(order).toEqual([...new Set(order)].toSorted((a, b) => a.localeCompare(b)))
    for (const { means } of glossary) expect(means).toMatch(/^[A-Z].+\.$/)
  })

  it('give the US words where they differ', async () => {
    const elsewhere = (await words.glossary()).map(term => term.elsewhere ?? '').join(' ')
    for (const word of ['bedknife', 'reel', 'clean-up pass', 'topdressing', 'catcher'])
      expect(elsewhere).toContain(word)
  })
})
