import { css } from 'lit'

/** The list of greens with their curves, and the numbers of the one that lies open beside or under them. */
export const turfsStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--s-4) var(--gap);
  }
  .main {
    min-width: 0;
  }
  .scrolls {
    overflow-x: auto;
  }
  table {
    width: 100%;
    margin-bottom: var(--s-4);
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
  th .word + .word {
    color: var(--ink-2);
    margin-left: var(--s-3);
  }
  tr.present > * {
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
  h3 {
    font-size: var(--t-note);
  }
  @media (min-width: 44rem) and (max-width: 78.9rem) {
    setting-list {
      display: grid;
      grid-template-columns: repeat(2, minmax(0, 1fr));
      gap: 0 var(--gap);
    }
  }
  @media (min-width: 79rem) {
    :host {
      grid-template-columns: minmax(0, 792fr) minmax(0, 384fr);
    }
  }
  @media (max-width: 48rem) {
    .spread,
    .rebound,
    .law {
      display: none;
    }
  }
  @media print {
    .one {
      display: none;
    }
  }
`
