import { css } from 'lit'

/** Fields of what is being edited: a name over each, as wide as what goes in. */
export const editorStyles = css`
  .fields {
    display: grid;
    gap: var(--s-2) var(--gap);
    margin-top: var(--s-2);
  }
  label {
    display: block;
    font-size: var(--t-note);
    color: var(--ink-2);
  }
  label.tick {
    display: inline-flex;
    align-items: center;
    gap: var(--s-2);
    min-height: var(--target);
  }
  label.tick input {
    width: 16px;
    height: 16px;
    margin: 0;
    accent-color: var(--ink);
  }
  summary {
    min-height: var(--target);
    color: var(--ink-2);
    cursor: pointer;
  }
  input.field,
  textarea.field {
    display: block;
    width: 100%;
    max-width: var(--measure);
    text-align: left;
  }
  textarea.field {
    line-height: 1.45;
    padding: var(--s-2);
    resize: vertical;
    field-sizing: content;
    min-height: 4.5rem;
  }
  input.field::placeholder {
    color: var(--ink-3);
    opacity: 1;
  }
  @media print {
    :host {
      display: none;
    }
  }
`
