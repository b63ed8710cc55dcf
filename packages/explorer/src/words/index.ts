export { type Amount, amountText } from './amountText.ts'
export { cautionSentence } from './cautionSentence.ts'
export { decimalText } from './decimalText.ts'
export { type Format, type FormatOptions, formatterFor } from './format.ts'
export {
  fetchMoreWords,
  fetchWords,
  LANGUAGE_NAMES,
  LANGUAGES,
  type Language,
  type Words,
} from './language.ts'
export { type Reader, readerFor } from './reader.ts'
export { briefly, type SettableWords, settableWords } from './settableWords.ts'
