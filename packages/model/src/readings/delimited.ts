import { namesKnown } from './header.ts'
import { type Delimiter, delimiters, firstLine } from './tokens.ts'

/** The delimiter under which most of the first row are names we know: commas may be decimals, names hold none. */
function delimiterOf(text: string): Delimiter {
  const scored = delimiters.map(delimiter => {
    const cells = firstLine(text, delimiter)?.cells ?? []
    return { delimiter, known: namesKnown(cells), cells: cells.length }
  })
  return scored.reduce((best, one) =>
    one.known > best.known || (one.known === best.known && one.cells > best.cells) ? one : best,
  ).delimiter
}

/** A first line by which spreadsheets tell the delimiter. */
const TOLD = /^"?sep=([,;\t])"?[^\S\n]*(?=\n|$)/i

/** A text with its delimiter: given, told by its first line, or found. Its lines keep their numbers. */
export function delimited(text: string, given?: Delimiter): { plain: string; delimiter: Delimiter } {
  const told = TOLD.exec(text)
  const plain = told ? text.slice(told[0].length) : text
  return { plain, delimiter: given ?? (told?.[1] as Delimiter | undefined) ?? delimiterOf(plain) }
}
