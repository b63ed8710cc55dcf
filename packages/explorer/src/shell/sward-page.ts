import { css, html, LitElement, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import { bookOf, type Entry, type Kinds, type Page, type Session } from '../book/index.ts'
import type { View } from '../entries/view.ts'
import type { Flow } from '../flow/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import './entry-frame.ts'

/** An entry and those that stand beside it. */
type Row = readonly [Entry, ...Entry[]]

export function rowsOf(entries: readonly Entry[]): readonly Row[] {
  const rows: [Entry, ...Entry[]][] = []
  for (const entry of entries) {
    const last = rows.at(-1)
    if (entry.beside && last) last.push(entry)
    else rows.push([entry])
  }
  return rows
}

/** One page: its sentence, its entries in order, and the cautions where it invites work on a unit. */
export class SwardPage extends LitElement {
  static override properties = {
    page: { attribute: false },
    index: { type: Number },
    count: { type: Number },
    session: { attribute: false },
    flow: { attribute: false },
    kinds: { attribute: false },
    views: { attribute: false },
    reader: { attribute: false },
    turn: { type: Number },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      header {
        position: relative;
        margin: var(--s-6) 0 var(--s-4);
      }
      .folio {
        font-size: var(--t-note);
        color: var(--ink-2);
        line-height: 1.1;
        max-width: none;
      }
      .folio b {
        color: var(--ink);
        font-weight: var(--weight);
      }
      h1 {
        max-width: 50.5rem;
        text-wrap: balance;
      }
      .row {
        display: grid;
        gap: var(--s-6) var(--gap);
        margin-top: var(--s-8);
      }
      .row.lead {
        margin-top: 0;
      }
      .safety {
        margin-top: var(--s-4);
      }
      .safety h2 {
        font-size: var(--t-note);
      }
      .safety p {
        max-width: 62rem;
        text-wrap: pretty;
      }
      @media (min-width: 48rem) {
        .row.even {
          grid-template-columns: repeat(auto-fit, minmax(20rem, 1fr));
        }
      }
      @media (min-width: 79rem) {
        .row.figure {
          grid-template-columns: minmax(0, 792fr) minmax(0, 384fr);
        }
        .row.figure > .beside {
          align-self: center;
        }
        .row.even {
          grid-template-columns: repeat(3, minmax(0, 1fr));
        }
      }
      @media (min-width: 86rem) {
        .folio {
          position: absolute;
          right: calc(100% + var(--s-4));
          top: -0.2rem;
          text-align: right;
          white-space: nowrap;
        }
        .folio b {
          display: block;
          font-size: 2.25rem;
        }
      }
      @media print {
        .row {
          break-inside: avoid;
        }
      }
    `,
  ]

  declare page: Page
  declare index: number
  declare count: number
  declare session: Session
  declare flow: Flow
  declare kinds: Kinds
  declare views: Readonly<Record<string, View>>
  declare reader: Reader
  /** Counts answers: the flow tells of a new one by it. */
  declare turn: number

  override render() {
    const { page, index, count, reader } = this
    const rows = rowsOf(page.entries)
    const { page: said } = reader.words
    let number = 0
    const numbered = new Map(
      page.entries.map(entry => {
        if (!this.views[entry.kind]?.untitled) number++
        return [entry.id, `${index + 1}.${number}`] as const
      }),
    )
    return html`
      <header>
        ${count > 1 ? html`<p class="folio"><b>${index + 1}</b> ${said.of(count)}</p>` : nothing}
        <h1>${page.lead}</h1>
      </header>
      ${repeat(
        rows,
        ([entry]) => entry.id,
        (row, at) => this.row(row, at === 0, numbered),
      )}
    `
  }

  private row(row: Row, lead: boolean, numbered: ReadonlyMap<string, string>) {
    const [main, ...beside] = row
    const shape = beside.length === 0 ? 'whole' : main.kind === 'setting' ? 'even' : 'figure'
    const handsOn = row.some(entry => this.views[entry.kind]?.handsOn)
    return html`<div class="row ${shape} ${lead ? 'lead' : ''}">
        ${repeat(
          row,
          entry => entry.id,
          entry =>
            this.frame(entry, {
              lead: lead && entry === main,
              beside: entry !== main,
              number: numbered.get(entry.id) ?? '',
            }),
        )}
      </div>
      ${handsOn ? this.safety() : nothing}`
  }

  private safety() {
    const { page } = this.reader.words
    return html`<aside class="caution safety" aria-labelledby="safety">
      <h2 id="safety">${page.safety}</h2>
      <p>${page.safetyText}</p>
    </aside>`
  }

  private frame(
    entry: Entry,
    q: { readonly lead: boolean; readonly beside: boolean; readonly number: string },
  ) {
    const kind = this.kinds[entry.kind]
    const view = this.views[entry.kind]
    if (!kind || !view) return nothing
    return html`<entry-frame
      data-entry=${entry.id}
      class=${q.beside ? 'beside' : ''}
      .entry=${entry}
      .kind=${kind}
      .view=${view}
      .state=${this.flow.stateOf(entry.id)}
      .number=${q.number}
      .first=${q.lead}
      .now=${bookOf(this.session).scenario}
      .held=${this.session.held}
      .reader=${this.reader}
    ></entry-frame>`
  }
}

customElements.define('sward-page', SwardPage)
