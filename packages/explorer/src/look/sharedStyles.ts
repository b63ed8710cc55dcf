import { css } from 'lit'

/** What every element of the book shares: type, underlined words, fields, tables, focus. */
export const sharedStyles = css`
  :host {
    font-family: var(--face);
    font-weight: var(--weight);
    font-size: var(--t-text);
    line-height: var(--lh-text);
    font-variant-numeric: lining-nums tabular-nums;
    color: var(--ink);
    -webkit-text-size-adjust: none;
    text-size-adjust: none;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  h1,
  h2,
  h3,
  p,
  figure,
  table,
  dl,
  dd,
  ul,
  ol {
    margin: 0;
    padding: 0;
  }
  h1 {
    font-size: var(--t-lead);
    font-weight: var(--weight);
    line-height: var(--lh-tight);
  }
  h2,
  h3 {
    font-size: var(--t-title);
    font-weight: var(--weight-strong);
    line-height: var(--lh-tight);
  }
  h2 .number {
    font-weight: var(--weight);
    color: var(--ink-2);
  }
  p,
  li,
  dd {
    max-width: var(--measure);
  }
  strong,
  b {
    font-weight: var(--weight-strong);
  }
  .note {
    font-size: var(--t-axis);
    line-height: 1.45;
    color: var(--ink-2);
  }
  .small {
    font-size: var(--t-note);
    line-height: 1.45;
  }
  .rule {
    border: 0;
    border-top: 1px solid var(--rule);
    margin: 0;
  }
  a,
  .word {
    color: inherit;
    background: none;
    border: 0;
    border-bottom: 1px solid var(--ink-3);
    border-radius: 0;
    padding: 0;
    font: inherit;
    text-decoration: none;
    cursor: pointer;
  }
  .word {
    font-size: var(--t-note);
    color: var(--ink-2);
    min-height: var(--target);
    min-width: var(--target);
  }
  .word:hover,
  a:hover {
    color: var(--ink);
    border-bottom-color: var(--ink);
  }
  .word[aria-pressed='true'],
  .word[aria-expanded='true'] {
    color: var(--ink);
    font-weight: var(--weight-strong);
    border-bottom: 3px solid var(--ink);
  }
  .word:disabled {
    color: var(--ink-3);
    border-bottom-color: var(--rule);
    cursor: default;
  }
  /* A value in prose that can be set; a computed one carries no mark. */
  .settable {
    border-bottom: 2px dotted var(--present);
  }
  input.field,
  select.field,
  textarea.field {
    font: inherit;
    font-size: var(--t-text);
    font-variant-numeric: inherit;
    color: var(--ink);
    background: var(--field);
    border: 0;
    border-bottom: 1.5px solid var(--ink-3);
    border-radius: var(--corner) var(--corner) 0 0;
    padding: 0 var(--s-2);
    min-height: max(28px, var(--target));
    text-align: right;
  }
  .field[aria-invalid='true'] {
    border-bottom: 3px solid var(--caution);
  }
  table {
    border-collapse: collapse;
    font-size: var(--t-note);
    line-height: 1.35;
  }
  th {
    font-weight: var(--weight);
    color: var(--ink-2);
    text-align: right;
    vertical-align: bottom;
    padding: var(--s-1) var(--s-2);
    border-bottom: 1px solid var(--ink-3);
  }
  td {
    height: var(--row);
    text-align: right;
    padding: 0 var(--s-2);
    border-bottom: 1px solid var(--rule);
  }
  th:first-child,
  td:first-child {
    text-align: left;
    padding-left: 0;
  }
  /* A drawing in a row touches the drawings above and below it. */
  td.drawn {
    padding: 0;
  }
  td.drawn > svg {
    height: var(--row);
  }
  tfoot td.drawn > svg {
    height: auto;
  }
  tfoot td {
    border-bottom: 0;
    height: auto;
  }
  tbody tr:last-child > td {
    border-bottom-color: var(--ink-3);
  }
  .caution {
    border-left: 3px solid var(--caution);
    padding: var(--s-1) var(--s-3);
    background: var(--caution-wash);
    font-size: var(--t-note);
    line-height: 1.45;
    print-color-adjust: exact;
  }
  .stale {
    opacity: 0.4;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  :focus-visible {
    outline: 2px solid var(--ink);
    outline-offset: 2px;
    box-shadow: 0 0 0 2px var(--paper);
  }
  @media (forced-colors: active) {
    :focus-visible {
      outline-color: CanvasText;
    }
    .caution {
      border: 1px solid CanvasText;
      border-left-width: 6px;
    }
  }
`
