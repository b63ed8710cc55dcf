import { css } from 'lit'

/** Number and title, finding, figure, note and cautions of an entry, one under the other. */
export const entryFrameStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 var(--s-4);
    border-top: 1px solid var(--rule);
    padding-top: var(--s-3);
    position: relative;
  }
  .head.plain {
    border: 0;
    padding: 0;
  }
  .head.failed {
    border-top: 3px solid var(--caution);
  }
  .done {
    position: absolute;
    top: -1px;
    left: 0;
    width: 100%;
    height: 3px;
    appearance: none;
    border: 0;
    background: none;
  }
  .done::-webkit-progress-bar {
    background: none;
  }
  .done::-webkit-progress-value {
    background: var(--ink);
  }
  .done::-moz-progress-bar {
    background: var(--ink);
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 var(--s-3);
    font-size: var(--t-note);
    color: var(--ink-2);
    margin-bottom: var(--s-2);
  }
  .words .choices {
    margin-bottom: 0;
  }
  @media (min-width: 79rem) {
    .first .cautions,
    .first .foot {
      max-width: calc((100% - var(--gap)) * 0.6735);
    }
  }
  .words {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s-4);
    margin-left: auto;
    align-items: baseline;
  }
  .state {
    font-size: var(--t-note);
    color: var(--ink-2);
  }
  .finding {
    margin: var(--s-1) 0 var(--s-4);
    line-height: 1.45;
  }
  .foot {
    margin-top: var(--s-2);
    display: flex;
    flex-wrap: wrap;
    gap: var(--s-1) var(--s-6);
    justify-content: space-between;
    align-items: baseline;
  }
  .cautions {
    list-style: none;
    margin-top: var(--s-3);
    display: grid;
    gap: var(--s-1);
  }
  .cautions li {
    max-width: none;
  }
  .note {
    flex: 1 1 18rem;
  }
  .folded {
    margin-top: var(--s-4);
  }
  /* About as high as what will stand there, so that what lies below keeps its place. */
  .empty {
    color: var(--ink-2);
    padding: var(--s-6) 0;
  }
  .empty.short {
    min-height: 8rem;
  }
  .empty.tall {
    min-height: 24rem;
  }
  .exports {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s-4);
    align-items: baseline;
    margin-top: var(--s-2);
  }
  .lost {
    color: var(--ink-2);
    font-size: var(--t-note);
    padding: var(--s-3) 0;
  }
  section {
    position: relative;
  }
  section:has(entry-editor):focus-within::before {
    content: '';
    position: absolute;
    inset: 0 auto 0 calc(-1 * var(--s-3));
    width: 3px;
    background: var(--ink);
  }
  @media print {
    .words,
    .exports,
    .choices {
      display: none;
    }
  }
`
