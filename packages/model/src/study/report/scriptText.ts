/** Text in quotes that Python and R both read, whatever the encoding of the file. */
export const inQuotes = (text: string): string =>
  `"${[...text]
    .map(letter => {
      const code = letter.codePointAt(0) ?? 0
      if (letter === '"' || letter === '\\') return `\\${letter}`
      if (code >= SPACE && code < DELETE) return letter
      return code > WIDE
        ? `\\U${code.toString(16).padStart(8, '0')}`
        : `\\u${code.toString(16).padStart(4, '0')}`
    })
    .join('')}"`

const SPACE = 32
const DELETE = 127
const WIDE = 0xffff
const WIDTH = 100

/** A list over as many lines as it needs. */
export function listed(items: readonly string[], indent: string): string {
  const lines: string[] = []
  let line = ''
  for (const item of items) {
    if (line !== '' && line.length + item.length + 2 > WIDTH) {
      lines.push(`${line},`)
      line = ''
    }
    line += line === '' ? indent + item : `, ${item}`
  }
  return [...lines, line].join('\n')
}

/** A start near the answer that is not the answer: a script that begins there has to find it. */
export const nearby = (value: number): number => Number(value.toPrecision(2))
