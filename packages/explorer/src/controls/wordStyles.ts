import { css } from 'lit'

/** Underlined words that are pressed. Under a finger they are taller than the text: the line stays with the words. */
export const wordStyles = css`
  .word {
    border-bottom: 0;
    text-decoration: underline 1px var(--ink-3);
    text-underline-offset: 0.35em;
  }
  .word:hover {
    text-decoration-color: var(--ink);
  }
  .word[aria-pressed='true'],
  .word[aria-expanded='true'] {
    border-bottom: 0;
    text-decoration: underline 3px var(--ink);
  }
  .word:disabled {
    text-decoration-color: var(--rule);
  }
`
