export { type Amount, amountText } from './amountText.ts'
export { cautionSentence } from './cautionSentence.ts'
export { type Format, type FormatOptions, formatterFor } from './format.ts'
export { type Reader, readerFor, type Words } from './reader.ts'
