// The look of the book: colours as data, the tokens written from them, and the styles that elements share.
export {
  FIRST_DEEP_CONTOUR,
  RAMP_STEPS,
  type Role,
  rampAt,
  rampSteps,
  type ThemeName,
  themes,
} from './colour.ts'
export { dress } from './documentStyles.ts'
export { figureStyles } from './figureStyles.ts'
export { hexOf } from './oklch.ts'
export { rangeStyles } from './rangeStyles.ts'
export { sharedStyles } from './sharedStyles.ts'
export { figureText, tokens, tokenText } from './tokens.ts'
