/** A link as a matrix code (ISO/IEC 18004), or why there is none. */
export type LinkCode =
  | {
      readonly kind: 'code'
      /** Modules on a side, the quiet margin counted in. */
      readonly size: number
      /** Its dark modules, one path in units of a module. */
      readonly path: string
      readonly version: number
    }
  | { readonly kind: 'too long' }
  | { readonly kind: 'unfetched' }

/** The quiet margin that the standard asks for, in modules. */
const MARGIN = 4

/** Draws a link as a code; what makes codes is fetched when the first one is asked for. */
export async function linkCode(text: string): Promise<LinkCode> {
  let maker: typeof import('uqr')
  try {
    maker = await import('uqr')
  } catch {
    return { kind: 'unfetched' }
  }
  try {
    const { data, size, version } = maker.encode(text, { ecc: 'L', border: MARGIN })
    return { kind: 'code', size, version, path: data.map(rowPath).join('') }
  } catch (error) {
    // The longest code holds 2,953 bytes.
    if (error instanceof Error && /too long/i.test(error.message)) return { kind: 'too long' }
    throw error
  }
}

/** Dark modules side by side are one bar: a bar a module would leave hairlines between them. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = ''
  for (let x = 0; x < row.length; x++) {
    if (!row[x]) continue
    const start = x
    while (row[x + 1]) x++
    path += `M${start} ${y}h${x - start + 1}v1H${start}z`
  }
  return path
}
