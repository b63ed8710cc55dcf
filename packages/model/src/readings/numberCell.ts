/** The mark before the decimals: settled for the whole table, both in use, or not to be told from the table. */
export type DecimalMark = '.' | ',' | 'both' | 'unclear'

/** A number as written, and half of its last digit. */
export type Written = { readonly value: number; readonly half: number }

export const PLAIN = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?$/
/** Three figures after a mark, one to three before it that do not start with a nought: decimals or thousands. */
export const EITHER = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/
const THOUSANDS = /^[+-]?\d{1,3}(?:[ '’.,]\d{3})+(?:[.,]\d+)?$/
const FRACTION = /^([+-]?)(?:(\d+)(?: +|-))?(\d+) ?[/⁄] ?(\d+)$/

/** ½ and its kin as 1/2, with a space after the whole inches before them. */
const spelledOut = (text: string): string =>
  text.replace(/(\d?)([¼½¾⅐-⅞])/g, (_, whole: string, sign: string) => `${whole} ${sign.normalize('NFKC')}`)

/** As a person meant it: a true minus, any space, no space around it. */
export const tidied = (text: string): string => text.replace(/[−‒]/g, '-').replace(/\s+/g, ' ').trim()

function written(text: string): Written {
  const exponent = text.search(/e/i)
  const mantissa = exponent < 0 ? text : text.slice(0, exponent)
  const point = mantissa.indexOf('.')
  const decimals = point < 0 ? 0 : mantissa.length - point - 1
  const tens = exponent < 0 ? -decimals : Number(text.slice(exponent + 1)) - decimals
  return { value: Number(text), half: 0.5 * 10 ** tens }
}

/** A number of a cell by the mark of its table; otherwise what was expected in its place. */
export function readNumber(cell: string, mark: DecimalMark): Written | string {
  const text = PLAIN.test(cell) ? cell : tidied(cell)
  if (!PLAIN.test(text)) {
    if (FRACTION.test(text)) return 'a decimal number (fractions are for inches)'
    return THOUSANDS.test(text) ? 'a number without thousands separators' : 'a number'
  }
  const used = text.includes(',') ? ',' : text.includes('.') ? '.' : undefined
  if (used !== undefined && used !== mark) {
    if (EITHER.test(text) && !(mark === 'unclear' && used === '.'))
      return `a number without thousands separators (${text.replace(/[.,]/, '')}), or with decimals that cannot be mistaken for them (${text.replace(/[.,]/, mark === ',' ? ',' : '.')}0)`
    if (mark === '.' || mark === ',') return `a decimal ${mark === '.' ? 'point' : 'comma'}`
  }
  const read = written(text.replace(',', '.'))
  return Number.isFinite(read.value) ? read : 'a finite number'
}

/** Inches: a number, or a fraction such as 5/32 and 1 5/32, with or without the inch mark. */
export function readInches(cell: string, mark: DecimalMark): Written | string {
  const text = tidied(spelledOut(cell).replace(/(?:["″”]|'')\s*$/, ''))
  const found = FRACTION.exec(text)
  if (!found) return readNumber(text, mark)
  const [, sign, whole = '0', over, under] = found
  const parts = Number(under)
  if (parts === 0) return 'a fraction of something'
  const size = Number(whole) + Number(over) / parts
  return { value: sign === '-' ? -size : size, half: 0.5 / parts }
}
