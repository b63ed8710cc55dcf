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
  /* A slide is laid out for 1280 × 720 and is the same on a larger wall; on a small screen it stays readable. */
  html[data-lecture] {
    font-size: max(100%, min(2.2222vh, 1.25vw));
    --w-hair: 0.09rem;
    --w-thin: 0.11rem;
    --w-line: 0.19rem;
    --w-ground: 0.25rem;
    --w-present: 0.28rem;
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
