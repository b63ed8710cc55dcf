import { css } from 'lit'

/** What sheets of paper share, on the screen and printed. Printed, only the paper itself is left. */
export const sheetStyles = css`
  :host {
    display: block;
    max-width: 46.5rem;
    margin: 0 auto;
    padding: 0 var(--s-4) var(--s-12);
  }
  .bar {
    border-bottom: 1px solid var(--ink-3);
    padding: var(--s-3) 0;
    margin-bottom: var(--s-8);
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--s-2);
  }
  .bar .words {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s-6);
  }
  .title {
    display: flex;
    flex-wrap: wrap;
    gap: var(--s-3) var(--s-8);
    align-items: end;
    border-bottom: 1px solid var(--ink);
    padding-bottom: var(--s-2);
  }
  .title .name {
    flex: 1 1 16rem;
  }
  .title p {
    font-size: var(--t-note);
    line-height: 1.3;
  }
  h1 {
    font-size: 1.5rem;
    font-weight: var(--weight-strong);
    line-height: 1.25;
  }
  h2 {
    font-size: var(--t-note);
  }
  .write {
    flex: 0 1 9rem;
    min-width: 6rem;
    font-size: var(--t-axis);
    line-height: 1.3;
    color: var(--ink-2);
    border-bottom: 1px solid var(--ink-3);
    padding-bottom: 1.5rem;
  }
  .other {
    color: var(--ink-2);
  }
  .last {
    border-top: 1px solid var(--ink-3);
    margin-top: var(--s-4);
    padding-top: var(--s-3);
    font-size: var(--t-axis);
    line-height: 1.4;
    color: var(--ink-2);
    display: flex;
    flex-wrap: wrap;
    gap: var(--s-2) var(--s-6);
    align-items: end;
  }
  .last p {
    flex: 1 1 16rem;
    max-width: none;
  }
  @media print {
    :host {
      max-width: none;
      padding: 0;
    }
    .bar {
      display: none;
    }
    h1 {
      font-size: 15pt;
    }
  }
`
