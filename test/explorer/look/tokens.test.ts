import { describe, expect, test } from 'vitest'
import {
  FIRST_DEEP_CONTOUR,
  type Role,
  rampAt,
  rampSteps,
  type ThemeName,
  themes,
} from '../../../packages/explorer/src/look/colour.ts'
import { hexOf, oklchToLinear } from '../../../packages/explorer/src/look/oklch.ts'
import { tokenText } from '../../../packages/explorer/src/look/tokens.ts'
import { contrast, differenceSeen, labSeen, type Vision, visions } from '../../support/colour.ts'

const themeNames = Object.keys(themes) as ThemeName[]
const seen = Object.keys(visions) as Vision[]
const colour = (theme: ThemeName, role: Role) => hexOf(themes[theme][role])
const wash = (theme: ThemeName) => rampSteps(theme).map(hexOf)
/** Rounding to 8 bits, and of the matrices' printed digits. */
const GAMUT = 1e-4

const text: readonly (readonly [Role, Role])[] = [
  ['ink', 'paper'],
  ['ink-2', 'paper'],
  ['ink', 'ground'],
  ['ink-2', 'ground'],
  ['ink', 'field'],
  ['ink-2', 'field'],
  ['ink', 'caution-wash'],
  ['ink', 'measured-wash'],
  ['ink-2', 'measured-wash'],
  ['paper', 'ink'],
]
const lines: readonly (readonly [Role, Role])[] = [
  ['ink-3', 'paper'],
  ['ink-3', 'field'],
  ['ink-3', 'ground'],
  ['ink-2', 'ground'],
  ['present', 'paper'],
  ['present', 'ground'],
  ['measured', 'paper'],
  ['measured', 'measured-wash'],
  ['caution', 'paper'],
]
const roles: readonly Role[] = ['ink', 'ink-3', 'present', 'measured', 'caution']

describe.each(themeNames)('in the theme %s', theme => {
  test('every colour lies inside what a screen can show', () => {
    for (const tone of [...Object.values(themes[theme]), ...rampSteps(theme)]) {
      for (const channel of oklchToLinear(tone)) {
        expect(channel).toBeGreaterThanOrEqual(-GAMUT)
        expect(channel).toBeLessThanOrEqual(1 + GAMUT)
      }
    }
  })

  test.each(text)('%s on %s can be read as text', (front, back) => {
    expect(contrast(colour(theme, front), colour(theme, back))).toBeGreaterThanOrEqual(4.5)
  })

  test.each(lines)('%s on %s can be seen as a line', (front, back) => {
    expect(contrast(colour(theme, front), colour(theme, back))).toBeGreaterThanOrEqual(3)
  })

  test('every contour can be seen against the wash on both of its sides', () => {
    const steps = wash(theme)
    for (let below = 1; below < steps.length; below++) {
      const ink = colour(theme, below < FIRST_DEEP_CONTOUR ? 'on-pale' : 'on-deep')
      for (const side of steps.slice(below - 1, below + 1))
        expect(contrast(ink, side)).toBeGreaterThanOrEqual(3)
    }
  })

  test.each(seen)('the wash grows darker step by step, %s vision', vision => {
    const steps = wash(theme)
    steps.slice(1).forEach((deeper, i) => {
      const shallower = steps[i] as string
      expect(labSeen(deeper, vision)[0]).toBeLessThan(labSeen(shallower, vision)[0])
      expect(differenceSeen(shallower, deeper, vision)).toBeGreaterThanOrEqual(5)
    })
  })

  test.each(seen.filter(vision => vision !== 'grey'))('no two roles look alike, %s vision', vision => {
    roles.forEach((a, i) => {
      for (const b of roles.slice(i + 1)) {
        expect(
          differenceSeen(colour(theme, a), colour(theme, b), vision),
          `${a}, ${b}`,
        ).toBeGreaterThanOrEqual(10)
      }
    })
  })
})

test('lightness of the wash is a straight line', () => {
  for (const theme of themeNames) {
    const half = (rampAt(theme, 0)[0] + rampAt(theme, 1)[0]) / 2
    expect(Math.abs(rampAt(theme, 0.5)[0] - half)).toBeLessThan(1e-12)
  }
})

test('a difference too small to see is found too small', () => {
  expect(differenceSeen('#85a788', '#86a888', 'usual')).toBeLessThan(1)
})

describe('the style sheet', () => {
  test('names every role and every step of the wash in every theme', () => {
    const blocks = tokenText.split('}')
    for (const theme of themeNames) {
      const paper = `--paper: ${colour(theme, 'paper')}`
      const ink = `--ink: ${colour(theme, 'ink')}`
      const block = blocks.find(candidate => candidate.includes(paper) && candidate.includes(ink)) ?? ''
      for (const role of Object.keys(themes[theme])) expect(block).toContain(`--${role}: #`)
      for (let step = 1; step <= 8; step++) expect(block).toContain(`--sink-${step}: #`)
    }
  })

  test('gives paper and forced colours the last word over a chosen theme', () => {
    const chosen = tokenText.indexOf("[data-theme='projector']")
    for (const query of ['@media print', '@media (forced-colors: active)']) {
      const at = tokenText.indexOf(query)
      expect(at).toBeGreaterThan(chosen)
      expect(tokenText.slice(at, at + 200)).toContain(':root:not([data-theme])')
      expect(tokenText.slice(at, at + 200)).toContain(':root[data-theme]')
    }
  })

  test('takes every colour of a forced theme from the system', () => {
    const forced = tokenText.slice(tokenText.indexOf('@media (forced-colors: active)'))
    expect(forced).not.toMatch(/#[0-9a-f]{6}/)
    for (const role of Object.keys(themes.light).filter(name => !name.startsWith('on-'))) {
      expect(forced).toContain(`--${role}: `)
    }
  })
})
