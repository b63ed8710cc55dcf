import { readFileSync } from 'node:fs'

const STANDARD_INPUT = 0

/** Spreadsheets save "Unicode text" as UTF-16, with a mark that says which way round. */
function decoded(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  return bytes.toString('utf8').replace(/^\uFEFF/, '')
}

/** A file's text, of standard input for -, or a sentence that says why not. */
export function textFrom(file: string): { readonly text: string } | { readonly fault: string } {
  try {
    return { text: decoded(readFileSync(file === '-' ? STANDARD_INPUT : file)) }
  } catch (error) {
    const reason =
      (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'no such file' : (error as Error).message
    return { fault: `${file}: expected a file that can be read, received: ${reason}` }
  }
}

/** A file's JSON, or a sentence that says why not. */
export function jsonFrom(file: string): { readonly value: unknown } | { readonly fault: string } {
  const read = textFrom(file)
  if ('fault' in read) return read
  try {
    return { value: JSON.parse(read.text) }
  } catch (error) {
    return { fault: `${file}: expected JSON, received: ${(error as Error).message}` }
  }
}
