import { css } from 'lit'

/** A ruled list of rollers with their faces; the one that lies open has its numbers under the list. */
export const rollersStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .scrolls {
    overflow-x: auto;
  }
  table {
    width: 100%;
  }
  th[scope='row'] {
    text-align: left;
    border-bottom: 1px solid var(--rule);
    padding: 0 var(--s-2) 0 0;
    vertical-align: middle;
  }
  th .word {
    color: var(--ink);
    text-align: left;
  }
  td.face {
    padding: var(--s-1) var(--s-2);
    width: 12rem;
    vertical-align: middle;
  }
  th.face,
  td.where,
  th.where {
    text-align: left;
  }
  td.face svg {
    margin: 0 auto;
  }
  tr.open > * {
    font-weight: var(--weight-strong);
  }
  tbody tr:last-child > * {
    border-bottom: 1px solid var(--ink-3);
  }
  .unit {
    display: block;
    font-size: var(--t-axis);
    min-height: 1.35em;
  }
  .words {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s-4);
    padding: var(--s-2) 0;
  }
  .one {
    margin-top: var(--s-4);
  }
  h3 {
    font-size: var(--t-note);
  }
  @media (min-width: 48rem) {
    .fields {
      display: grid;
      grid-template-columns: repeat(2, minmax(0, 1fr));
      gap: 0 var(--gap);
    }
  }
  @media (min-width: 79rem) {
    .fields {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
  }
  @media (max-width: 66rem) {
    .length,
    .sections,
    .runout {
      display: none;
    }
  }
  @media (max-width: 48rem) {
    .where,
    .buildUp,
    .raises {
      display: none;
    }
    td.face {
      width: 8rem;
      padding: var(--s-1) 0;
    }
  }
  @media print {
    .words,
    .one {
      display: none;
    }
  }
`
