import { css } from 'lit'

/** The question over its scale, with what is said beside it where there is room. */
export const questionStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .asked:not(.drawn) {
    margin-top: var(--s-2);
    /* On a slide the question stands over it. */
    display: var(--asked, block);
  }
  .asked p {
    font-size: var(--t-title);
    font-weight: var(--weight-strong);
    line-height: 1.45;
    max-width: 46rem;
    text-wrap: pretty;
  }
  .asked p + p {
    font-size: var(--t-text);
    font-weight: var(--weight);
    margin-top: var(--s-2);
  }
  .because {
    margin-top: var(--s-2);
    font-size: var(--t-note);
    color: var(--ink-2);
  }
  .because p + p {
    margin-top: var(--s-2);
  }
  .sides {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--s-4) var(--gap);
    margin-top: var(--s-4);
  }
  .drawn {
    min-width: 0;
    max-width: 35rem;
  }
  .drawn.asked {
    touch-action: pan-x pinch-zoom;
    cursor: row-resize;
  }
  @media (min-width: 58rem) {
    .sides {
      grid-template-columns: minmax(0, 35rem) minmax(0, 24rem);
    }
  }
  .saying {
    display: grid;
    align-content: start;
    justify-items: start;
    gap: var(--s-3);
  }
  .saying > * {
    max-width: 100%;
  }
  amount-field,
  room-guesses,
  .why {
    width: 100%;
  }
  .why {
    display: grid;
    font-size: var(--t-note);
  }
  .why input {
    text-align: left;
    width: 100%;
    box-sizing: border-box;
  }
  .stands {
    font-weight: var(--weight-strong);
  }
  .told:empty {
    display: none;
  }
  .told {
    order: -1;
  }
  .finding {
    line-height: 1.45;
  }
  .finding:focus {
    outline: none;
  }
  button.act {
    font: inherit;
    font-size: var(--t-note);
    color: var(--paper);
    background: var(--ink);
    border: 1px solid var(--ink);
    border-radius: var(--corner);
    padding: var(--s-2) var(--s-4);
    min-height: max(36px, var(--target));
    cursor: pointer;
  }
  button.act:disabled {
    color: var(--ink-3);
    background: none;
    border-color: var(--rule);
    cursor: default;
  }
  button.settable {
    font: inherit;
    color: inherit;
    background: none;
    border-width: 0 0 2px;
    border-radius: 0;
    padding: 0;
    min-height: 0;
    cursor: pointer;
  }
  fieldset.options {
    border: 0;
    margin: 0;
    padding: 0;
  }
  .option {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 0 var(--s-4);
    border-top: 1px solid var(--rule);
    padding: var(--s-1) 0;
  }
  .option:last-of-type {
    border-bottom: 1px solid var(--rule);
  }
  .option label {
    display: flex;
    align-items: center;
    gap: var(--s-2);
    min-height: max(32px, var(--target));
    cursor: pointer;
  }
  .option input {
    accent-color: var(--ink);
    width: 16px;
    height: 16px;
    margin: 0;
    flex: none;
  }
  @media print {
    button.act,
    button.word {
      display: none;
    }
  }
`
