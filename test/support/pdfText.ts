import { inflateSync } from 'node:zlib'

/** What a printed page says, as far as a browser's own writer of PDF goes: its fonts carry what each glyph means. */
export type PdfText = { readonly pages: number; readonly text: string }

type Objects = ReadonlyMap<number, string>

const latin1 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1')

function objectsOf(file: string): Objects {
  const found = new Map<number, string>()
  for (const [, number, body] of file.matchAll(/(\d+) 0 obj\b([\s\S]*?)endobj/g))
    found.set(Number(number), body ?? '')
  return found
}

function streamOf(body: string): string {
  const at = /stream\r?\n/.exec(body)
  const end = body.lastIndexOf('endstream')
  if (!at || end < 0) return ''
  const bytes = Buffer.from(body.slice(at.index + at[0].length, end), 'latin1')
  return body.includes('/FlateDecode') ? latin1(inflateSync(bytes)) : latin1(bytes)
}

const lettersOf = (hex: string): string =>
  (hex.match(/.{4}/g) ?? []).map(code => String.fromCharCode(Number.parseInt(code, 16))).join('')

/** Glyph to letters, from the table a font carries. */
function meaningsOf(table: string): ReadonlyMap<number, string> {
  const meanings = new Map<number, string>()
  for (const [, lines] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph, letters] of (lines ?? '').matchAll(/<(\w+)>\s*<(\w+)>/g))
      meanings.set(Number.parseInt(glyph ?? '', 16), lettersOf(letters ?? ''))
  for (const [, lines] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from, to, first] of (lines ?? '').matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g)) {
      const [low, high, code] = [from, to, first].map(hex => Number.parseInt(hex ?? '', 16))
      for (let glyph = low ?? 0; glyph <= (high ?? -1); glyph++)
        meanings.set(glyph, String.fromCharCode((code ?? 0) + glyph - (low ?? 0)))
    }
  return meanings
}

/** Fonts of the whole file by the names that pages give them. */
function fontsOf(objects: Objects): ReadonlyMap<string, ReadonlyMap<number, string>> {
  const fonts = new Map<string, ReadonlyMap<number, string>>()
  for (const body of objects.values()) {
    for (const [, name, number] of body.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const table = /\/ToUnicode (\d+) 0 R/.exec(objects.get(Number(number)) ?? '')?.[1]
      if (name && table) fonts.set(name, meaningsOf(streamOf(objects.get(Number(table)) ?? '')))
    }
  }
  return fonts
}

export function pdfText(bytes: Uint8Array): PdfText {
  const objects = objectsOf(latin1(bytes))
  const fonts = fontsOf(objects)
  let pages = 0
  let text = ''
  for (const body of objects.values()) {
    if (!/\/Type\s*\/Page\b/.test(body)) continue
    pages++
    const contents = /\/Contents (\d+) 0 R/.exec(body)?.[1]
    let font: ReadonlyMap<number, string> | undefined
    const drawn = streamOf(objects.get(Number(contents)) ?? '')
    for (const [said, name] of drawn.matchAll(/\/(F\d+) [\d.]+ Tf|<[0-9A-Fa-f]+>|\bET\b/g)) {
      if (name) font = fonts.get(name)
      else if (said === 'ET') text += ' '
      else
        for (const glyph of said.slice(1, -1).match(/.{4}/g) ?? [])
          text += font?.get(Number.parseInt(glyph, 16)) ?? ''
    }
  }
  return { pages, text: text.replace(/\s+/g, ' ') }
}
