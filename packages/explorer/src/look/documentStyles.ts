import { css } from 'lit'
import { tokens } from './tokens.ts'

const page = css`
  html {
    background: var(--paper);
    color: var(--ink);
  }
  body {
    margin: 0;
    background: var(--paper);
    font-family: var(--face);
  }
  @page {
    size: A4;
    margin: 15mm;
  }
`

/** Gives a document the tokens and the paper. Constructed sheets need no exception in a strict content policy. */
export function dress(target: Document): void {
  const sheets = [tokens, page].flatMap(({ styleSheet }) => (styleSheet ? [styleSheet] : []))
  target.adoptedStyleSheets = [...target.adoptedStyleSheets, ...sheets]
}
