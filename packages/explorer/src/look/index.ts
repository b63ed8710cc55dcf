// The look of the book: colours as data, the tokens written from them, and the styles that elements share.
export { FIRST_DEEP_CONTOUR, RAMP_STEPS, type ThemeName } from './colour.ts'
export { dress } from './documentStyles.ts'
export { figureStyles } from './figureStyles.ts'
export { rangeStyles } from './rangeStyles.ts'
export { sharedStyles } from './sharedStyles.ts'
export { figureText, tokenText } from './tokens.ts'
