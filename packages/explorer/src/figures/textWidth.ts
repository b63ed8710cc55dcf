/**
 * Advance widths of the widest face in the family, in ems. A figure is laid out before anything is drawn, so
 * widths are estimated, never measured; the estimate must not be short, or labels would touch.
 */
const classes: readonly (readonly [letters: string, em: number])[] = [
  ["iljI.,:;'’|! ", 0.29],
  ['\u202f\u2009', 0.22],
  ['ftr-()/°', 0.43],
  ['mw', 0.94],
  ['MW', 0.95],
  ['−×=+', 0.6],
]
const byLetter = new Map(
  classes.flatMap(([letters, em]) => [...letters].map(letter => [letter, em] as const)),
)
const DIGIT = 0.58
const UPPER = 0.7
const OTHER = 0.62
const STRONG = 1.07

export function textWidth(text: string, size: number, strong = false): number {
  let ems = 0
  for (const letter of text) {
    ems += byLetter.get(letter) ?? (/\d/.test(letter) ? DIGIT : /\p{Lu}/u.test(letter) ? UPPER : OTHER)
  }
  return ems * size * (strong ? STRONG : 1)
}
