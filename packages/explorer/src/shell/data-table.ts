import { css, html, LitElement } from 'lit'
import type { Table } from '../entries/view.ts'
import { sharedStyles } from '../look/index.ts'

/** The data of a figure as a table; it scrolls in itself where the page is narrow. */
export class DataTable extends LitElement {
  static override properties = { table: { attribute: false } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        max-width: 100%;
      }
      .scrolls {
        overflow-x: auto;
      }
      caption {
        text-align: left;
        color: var(--ink-2);
        padding-bottom: var(--s-1);
      }
      .unit {
        display: block;
        font-size: var(--t-axis);
      }
      tbody th {
        text-align: left;
        color: var(--ink);
        border-bottom: 1px solid var(--rule);
        height: calc(var(--row) - 8px);
        vertical-align: middle;
        padding: 0 var(--s-2) 0 0;
      }
      td {
        height: calc(var(--row) - 8px);
        white-space: nowrap;
      }
    `,
  ]

  declare table: Table

  override render() {
    const { caption, columns, rows } = this.table
    return html`<div class="scrolls" tabindex="0" role="group" aria-label=${caption}>
      <table>
        <caption>${caption}</caption>
        <thead><tr>${columns.map(
          ({ head, unit }) => html`<th scope="col">${head}<span class="unit">${unit}</span></th>`,
        )}</tr></thead>
        <tbody>${rows.map(
          ([name, ...cells]) =>
            html`<tr><th scope="row">${name}</th>${cells.map(cell => html`<td>${cell}</td>`)}</tr>`,
        )}</tbody>
      </table>
    </div>`
  }
}

customElements.define('data-table', DataTable)
