/** A fenced block of a document. */
export type Fence = {
  readonly language: string
  readonly text: string
  /** Line of the opening fence, from 1. */
  readonly line: number
  /** The block that follows with nothing but blank lines between, if it shows an output. */
  readonly output?: string
}

/** Every fenced block of a Markdown text; a `text` block right after another is that one's output. */
export function fencesOf(markdown: string): readonly Fence[] {
  const pattern = /^```(\w*)[^\n]*\n([\s\S]*?)^```[ \t]*\n?(\s*)/gm
  const blocks = [...markdown.matchAll(pattern)].map(match => ({
    language: match[1] ?? '',
    text: match[2] ?? '',
    line: markdown.slice(0, match.index).split('\n').length,
    from: match.index,
    to: match.index + match[0].length,
  }))
  return blocks.map(({ language, text, line, to }, i) => {
    const next = blocks[i + 1]
    const shown = next?.language === 'text' && next.from === to ? { output: next.text } : {}
    return { language, text, line, ...shown }
  })
}
