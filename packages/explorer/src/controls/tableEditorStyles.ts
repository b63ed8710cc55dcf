import { css } from 'lit'

/** Named columns, numbered rows, ruled lines; nothing that belongs to a spreadsheet. */
export const tableEditorStyles = css`
  :host {
    display: block;
    min-width: 0;
    max-width: 100%;
  }
  .scrolls {
    overflow: auto;
    max-height: min(32rem, 70vh);
    container-type: inline-size;
  }
  table {
    border-collapse: separate;
    border-spacing: 0;
  }
  caption {
    text-align: left;
    color: var(--ink-2);
    padding-bottom: var(--s-1);
  }
  thead th {
    position: sticky;
    top: 0;
    z-index: 1;
    background: var(--paper);
    white-space: nowrap;
  }
  thead th.words {
    text-align: left;
  }
  .unit {
    display: block;
    font-size: var(--t-axis);
    min-height: 1.35em;
  }
  tbody th {
    font-size: var(--t-axis);
    padding: 0 var(--s-3) 0 0;
    vertical-align: middle;
    text-align: right;
    border-bottom: 1px solid var(--rule);
  }
  tbody td {
    height: auto;
    padding: 2px 0 2px var(--s-2);
    white-space: nowrap;
    vertical-align: middle;
  }
  tbody th + td {
    text-align: right;
    padding-left: var(--s-2);
  }
  input.field {
    font-size: var(--t-note);
    border-bottom-color: transparent;
    display: block;
    margin-left: auto;
  }
  input.field.words {
    text-align: left;
    margin-left: 0;
  }
  input.field:hover,
  input.field:focus {
    border-bottom-color: var(--ink-3);
  }
  input.field:focus-visible {
    outline-offset: -1px;
    box-shadow: none;
  }
  .field[aria-invalid='true'] {
    border-bottom-color: var(--caution);
  }
  tbody td.told {
    padding: 0;
    text-align: left;
    font-size: var(--t-note);
    line-height: 1.35;
    border-bottom: 1px solid var(--rule);
    max-width: 1px;
    white-space: normal;
  }
  td.told p {
    /* What is said of a row stays in view, however far the row is scrolled sideways. */
    position: sticky;
    left: 0;
    max-width: min(var(--measure), 100cqi);
    padding: var(--s-1) var(--s-2);
    margin-bottom: 2px;
  }
  td.told p.remark {
    color: var(--ink-2);
  }
  .long td.told p {
    height: 2.9em;
    padding-block: 0;
    overflow-y: auto;
  }
  td.room {
    border: 0;
    padding: 0;
  }
  .under {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s-4);
    align-items: baseline;
    margin-top: var(--s-1);
  }
  .under .note {
    flex: 1 1 20rem;
    margin: 0;
  }
  ul {
    list-style: none;
    margin-top: var(--s-2);
  }
  li .word {
    color: inherit;
    text-align: left;
  }
  @media print {
    .scrolls {
      max-height: none;
      overflow: visible;
    }
    .under {
      display: none;
    }
    input.field {
      background: none;
    }
  }
`
