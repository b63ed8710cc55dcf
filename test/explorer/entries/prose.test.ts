import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { namesIn, paragraphsOf, piecesOf } from '../../../packages/explorer/src/entries/text/prose.ts'

describe('prose with live values', () => {
  it('is words and names in turn', () => {
    expect(piecesOf('At {mass} it sinks {depth}.')).toEqual([
      { kind: 'words', text: 'At ' },
      { kind: 'value', name: 'mass' },
      { kind: 'words', text: ' it sinks ' },
      { kind: 'value', name: 'depth' },
      { kind: 'words', text: '.' },
    ])
  })

  it('breaks into paragraphs at an empty line', () => {
    expect(paragraphsOf('one\n\ntwo\nstill two\n\n\n').length).toBe(2)
  })

  it('names each value once', () => {
    expect(namesIn('{a} and {b}\n\nand {a}')).toEqual(['a', 'b'])
  })

  it('leaves a brace that closes nothing as it is', () => {
    expect(piecesOf('a } b { c')).toEqual([{ kind: 'words', text: 'a } b { c' }])
  })

  it('loses no character of the words', () => {
    fc.assert(
      fc.property(fc.string(), text => {
        const whole = piecesOf(text)
          .map(piece => (piece.kind === 'words' ? piece.text : null))
          .filter(piece => piece !== null)
          .join('')
        if (!/\{[^{}]+\}/.test(text)) expect(whole).toBe(text)
        expect(text.length).toBeGreaterThanOrEqual(whole.length)
      }),
    )
  })
})
