import { css } from 'lit'

/** The sheet the book lies on. */
export const swardBookStyles = css`
  :host {
    display: block;
  }
  .paper {
    max-width: var(--page);
    margin: 0 auto;
    padding: 0 var(--s-4);
  }
  @media (min-width: 40rem) {
    .paper {
      padding: 0 var(--s-8);
      max-width: calc(var(--page) + 2 * var(--s-8));
    }
  }
  /* On a wall text is larger: the page is as much wider. */
  .paper.projector {
    max-width: 108rem;
    --measure: 60rem;
  }
  @media print {
    .paper {
      padding: 0;
    }
  }
`
