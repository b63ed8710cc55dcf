import { css } from 'lit'

/** Figure and settings at the left, what the fit says at the right; one under the other where it is narrow. */
export const fitEntryStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--s-6) var(--gap);
    align-items: start;
  }
  .main,
  .rest,
  .drawn {
    min-width: 0;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: var(--s-1) var(--s-4);
    font-size: var(--t-note);
    color: var(--ink-2);
    margin-bottom: var(--s-2);
  }
  .choices select.field {
    font-size: var(--t-note);
    text-align: left;
    max-width: 100%;
  }
  .sets h3 {
    font-size: var(--t-text);
  }
  fit-settings {
    margin-top: var(--s-6);
  }
  /* Most fits are there within a blink: only what takes longer is seen to fade. */
  .late svg,
  fit-told.late {
    animation: fade 1ms linear 150ms both;
  }
  @keyframes fade {
    to {
      opacity: 0.4;
    }
  }
  @media (min-width: 79rem) {
    :host {
      grid-template-columns: minmax(0, 792fr) minmax(0, 384fr);
    }
    fit-told {
      grid-column: 2;
      grid-row: 1 / span 2;
    }
  }
  @media print {
    fit-settings,
    .choices {
      display: none;
    }
  }
`
