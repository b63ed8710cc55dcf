import { css } from 'lit'

/** The rack is a table whose last column is a drawing: rows have no gaps, so that the lines of all rows join. */
export const rackStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .scrolls {
    overflow-x: auto;
    position: relative;
  }
  table {
    width: 100%;
    min-width: 60rem;
  }
  th[scope='row'] {
    text-align: left;
    color: var(--ink);
    border-bottom: 1px solid var(--rule);
    padding: 0 var(--s-2) 0 0;
    vertical-align: middle;
    white-space: nowrap;
  }
  th[scope='row'] .word {
    margin-left: var(--s-2);
    text-align: left;
  }
  tr.fitted > * {
    font-weight: var(--weight-strong);
  }
  .unit {
    display: block;
    font-size: var(--t-axis);
  }
  .sort {
    font: inherit;
    color: inherit;
    background: none;
    border: 0;
    padding: 0;
    min-height: var(--target);
    cursor: pointer;
    text-align: right;
    white-space: nowrap;
  }
  .sort:hover {
    color: var(--ink);
  }
  th[aria-sort='ascending'] .sort,
  th[aria-sort='descending'] .sort {
    color: var(--ink);
    font-weight: var(--weight-strong);
  }
  @media print {
    th[scope='row'] .word {
      display: none;
    }
  }
  .plot-head {
    width: 20rem;
    min-width: 14rem;
    font-size: var(--t-axis);
    text-align: left;
    padding-left: 20px;
    padding-right: 0;
  }
  td.plot {
    padding: 0;
    height: var(--row);
    position: relative;
  }
  tbody td.plot svg {
    position: absolute;
    inset: 0;
  }
  tfoot td {
    border: 0;
    height: auto;
  }
  tbody tr:last-child > * {
    border-bottom: 1px solid var(--ink-3);
  }
  /* Where there is less room the drawing stays, with what is set and what is cut; "As a table" has the rest. */
  /* What a slide has no room for. */
  .load,
  .relief {
    display: var(--lesser, revert);
  }
  @media (max-width: 66rem) {
    table {
      min-width: 0;
    }
    .load,
    .pressure,
    .relief {
      display: none;
    }
    .plot-head {
      width: 12rem;
      min-width: 9rem;
    }
  }
  @media (max-width: 48rem) {
    .mass,
    .sinkage,
    .change {
      display: none;
    }
    th[scope='row'] {
      white-space: normal;
      padding: var(--s-1) var(--s-2) var(--s-1) 0;
    }
    th[scope='row'] .word {
      margin-left: 0;
    }
    .sort {
      white-space: normal;
    }
    .plot-head {
      width: 40%;
      min-width: 7rem;
    }
  }
`
