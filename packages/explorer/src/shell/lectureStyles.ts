import { css, unsafeCSS } from 'lit'
import { teacherSheetStyles } from './teacherSheet.ts'

/** A slide fills the window; what does not fit scrolls inside it, and on a low or narrow window with the page. */
export const lectureStyles = css`
  :host {
    display: block;
    --measure: 46rem;
  }
  .slide {
    box-sizing: border-box;
    min-height: 100vh;
    min-height: 100dvh;
    padding: clamp(1rem, 4vw, 3.25rem) clamp(1rem, 5vw, 4rem) clamp(0.75rem, 2.5vw, 1.5rem);
    display: grid;
    grid-template-rows: auto minmax(0, 1fr) auto;
    gap: clamp(1rem, 2.5vw, 2rem);
  }
  @media (min-width: 48rem) and (min-height: 30rem) {
    .slide {
      height: 100vh;
      height: 100dvh;
    }
    .body {
      overflow-y: auto;
    }
  }
  h1 {
    font-size: clamp(1.75rem, 3.4vw, var(--t-lead));
    text-wrap: balance;
  }
  h1.long {
    font-size: clamp(1.625rem, 2.8vw, 2.25rem);
  }
  /* It has the focus after a turn so that reading begins there; a ring round it would only be in the room's way. */
  h1:focus-visible {
    outline: none;
    box-shadow: none;
  }
  .body {
    /* Room for the outline of what has the focus at its edge. */
    padding: 4px;
    margin: -4px;
    display: flex;
    flex-direction: column;
    gap: var(--s-4);
  }
  .drawn {
    min-width: 0;
    flex: none;
    /* The sentence of the slide says it already. */
    --finding: none;
    --setting-note: none;
    --lesser: none;
  }
  /* The question is the sentence of the slide. */
  .drawn.asked {
    --asked: none;
  }
  .drawn.narrow {
    margin-inline: auto;
  }
  .said {
    font-size: var(--t-note);
    line-height: 1.4;
    color: var(--ink-2);
    max-width: 62rem;
  }
  .cautions {
    list-style: none;
    display: grid;
    gap: var(--s-1);
  }
  .cautions li {
    max-width: none;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s-4);
    font-size: var(--t-note);
    color: var(--ink-2);
  }
  footer {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    justify-content: space-between;
    gap: var(--s-2) var(--s-6);
    font-size: var(--t-note);
    line-height: 1.4;
    color: var(--ink-2);
  }
  .turn {
    display: flex;
    align-items: end;
    gap: var(--s-4);
  }
  .words {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--s-4);
  }
  .walk {
    width: min(15rem, 40vw);
    height: auto;
    display: block;
    fill: none;
    stroke: none;
    overflow: visible;
    margin-bottom: 0.45rem;
  }
  .walk .line {
    stroke: var(--ink-2);
    stroke-width: 1.25px;
  }
  .walk .wedge {
    fill: var(--present);
    forced-color-adjust: none;
  }
  ${unsafeCSS(teacherSheetStyles)}
  aside {
    border-top: 1px solid var(--ink-3);
    padding: var(--s-6) clamp(1rem, 5vw, 4rem) var(--s-12);
  }
  /* On the wall nothing is small. */
  aside .sheet {
    font-size: var(--t-note);
  }
  aside .sheet .where,
  aside .sheet .none,
  aside .sheet .quiet,
  aside .sheet h2 {
    font-size: var(--t-note);
  }
  @media print {
    footer .turn,
    footer .words,
    aside {
      display: none;
    }
  }
`
