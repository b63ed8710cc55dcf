import { css } from 'lit'

/** One page of A4 or Letter: what is set stands large, boxes are there to be written in. */
export const setUpSheetStyles = css`
  :host {
    max-width: 44.5rem;
  }
  .settings {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0 var(--gap);
  }
  .safety {
    margin: var(--s-4) 0;
    max-width: none;
  }
  .numbers {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(9.5rem, 1fr));
    gap: var(--s-4) 0;
  }
  .number {
    padding: 0 var(--s-4);
    border-left: 1px solid var(--rule);
    font-size: var(--t-note);
    line-height: 1.35;
  }
  .number:first-child {
    padding-left: 0;
    border-left: 0;
  }
  .number p {
    max-width: none;
  }
  .size {
    font-size: 2.5rem;
    line-height: 1.1;
    white-space: nowrap;
  }
  .size.ends {
    font-size: 1.5rem;
    line-height: 1.35;
    white-space: normal;
  }
  .size small {
    font-size: var(--t-title);
    color: var(--ink-2);
  }
  .figure {
    margin: var(--s-4) 0 var(--s-2);
    min-width: 0;
  }
  .tables {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--s-4) var(--s-6);
    margin-top: var(--s-4);
  }
  table {
    width: 100%;
  }
  .tables td,
  .tables th {
    height: auto;
    padding: var(--s-1);
    text-align: left;
    vertical-align: top;
  }
  .boxes thead th {
    text-align: center;
  }
  .boxes tbody th {
    border-bottom: 1px solid var(--rule);
    color: var(--ink);
  }
  .boxes tbody td {
    border-left: 1px solid var(--ink-3);
    border-bottom: 1px solid var(--ink-3);
    height: 3.25rem;
    min-width: 3rem;
  }
  .code {
    flex: none;
    width: 22mm;
    height: 22mm;
    display: block;
  }
  @media (min-width: 40rem) {
    .settings {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .tables {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    }
  }
  @media print {
    .numbers {
      grid-auto-flow: column;
      grid-template-columns: none;
      grid-auto-columns: minmax(0, 1fr);
    }
    .tables {
      grid-template-columns: minmax(0, 1.5fr) minmax(0, 1fr);
      margin-top: 2.5mm;
    }
    .tables td,
    .tables th {
      padding: 0.6mm 1mm;
      font-size: var(--t-note);
      line-height: 1.3;
    }
    .boxes tbody td {
      height: 10.5mm;
    }
    .safety {
      margin: 3mm 0;
    }
    .size {
      font-size: var(--t-number);
    }
    .size.ends {
      font-size: 14pt;
    }
    .figure {
      margin: 3mm 0 1mm;
    }
    .last {
      margin-top: 3mm;
      padding-top: 2mm;
    }
  }
`
