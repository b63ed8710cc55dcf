/** Prose as a book writes it: paragraphs apart by an empty line, live values by name in braces. */
export type Piece =
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'value'; readonly name: string }

const VALUE = /\{([^{}]+)\}/g

export function piecesOf(paragraph: string): readonly Piece[] {
  const pieces: Piece[] = []
  let at = 0
  for (const found of paragraph.matchAll(VALUE)) {
    if (found.index > at) pieces.push({ kind: 'words', text: paragraph.slice(at, found.index) })
    pieces.push({ kind: 'value', name: (found[1] ?? '').trim() })
    at = found.index + found[0].length
  }
  if (at < paragraph.length) pieces.push({ kind: 'words', text: paragraph.slice(at) })
  return pieces
}

export function paragraphsOf(text: string): readonly (readonly Piece[])[] {
  return text
    .split(/\n\s*\n/)
    .filter(paragraph => paragraph.trim() !== '')
    .map(piecesOf)
}

export function namesIn(text: string): readonly string[] {
  const names = paragraphsOf(text).flatMap(pieces =>
    pieces.flatMap(piece => (piece.kind === 'value' ? [piece.name] : [])),
  )
  return [...new Set(names)]
}
