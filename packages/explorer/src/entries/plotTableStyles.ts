import { css } from 'lit'

/** A table whose last column is a drawing on one scale: rows have no gaps, so that the lines of all rows join. */
export const plotTableStyles = css`
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
  }
  th[scope='row'] {
    text-align: left;
    color: var(--ink);
    border-bottom: 1px solid var(--rule);
    padding: 0 var(--s-2) 0 0;
    vertical-align: middle;
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
    min-height: 1.35em;
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
  @media print {
    th[scope='row'] .word {
      display: none;
    }
  }
  /* What a slide has no room for. */
  .load,
  .ends {
    display: var(--lesser, revert);
  }
  @media (max-width: 66rem) {
    .load,
    .drop,
    .ends {
      display: none;
    }
    .plot-head {
      width: 12rem;
      min-width: 9rem;
    }
  }
  @media (max-width: 48rem) {
    .roller,
    .benchHeight {
      display: none;
    }
    th[scope='row'] {
      padding: var(--s-1) var(--s-2) var(--s-1) 0;
    }
    th[scope='row'] .word {
      margin-left: 0;
    }
    .plot-head {
      width: 36%;
      min-width: 6rem;
    }
  }
`
