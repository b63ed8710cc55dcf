import { css } from 'lit'

/**
 * What is still for other values. A drawing fades; text that must stay readable takes the palest ink that can be
 * read, since four tenths of black on paper cannot.
 */
export const paleStyles = css`
  .pale,
  .pale * {
    color: var(--ink-3) !important;
  }
  .pale svg {
    opacity: 0.4;
  }
`
