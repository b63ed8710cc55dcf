import { css, html, LitElement, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import {
  bookOf,
  canMoveEntry,
  type Entry,
  heldBackBy,
  type Kinds,
  type Page,
  type Row,
  rowsOf,
  type Session,
} from '../book/index.ts'
import type { NamedEntry, View } from '../entries/view.ts'
import type { Flow } from '../flow/index.ts'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import type { EntryFrame } from './entry-frame.ts'
import './entry-frame.ts'
import type { FocusOn } from './readerEvents.ts'
import { watchNear } from './watchNear.ts'

/** Until then the first figures, and those of the worker, have come. */
const COMES_UP = 1000

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
    known: { attribute: false },
    reader: { attribute: false },
    turn: { type: Number },
    near: { attribute: false },
    named: { attribute: false },
    missing: { attribute: false },
    editing: { type: Boolean, reflect: true },
    resting: { type: Boolean, reflect: true },
    onNear: { attribute: false },
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
      h1:focus-visible {
        outline-offset: 6px;
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
      /*
       * What is out of sight is not laid out again, at the height it had; what stands over an edge, such as the focus,
       * is not cut off. While a page comes up or is edited heights change: then all of it is laid out.
       */
      entry-frame {
        contain-intrinsic-size: auto none auto 24rem;
        overflow-clip-margin: 2rem;
      }
      :host([resting]:not([editing])) entry-frame {
        content-visibility: auto;
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
        :host([resting]:not([editing])) entry-frame {
          content-visibility: visible;
        }
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
  /** Every kind there is, fetched or not. */
  declare known: readonly string[]
  declare reader: Reader
  /** Counts answers: the flow tells of a new one by it. */
  declare turn: number
  /** Entries in view or near it: only these are drawn anew. */
  declare near: ReadonlySet<string>
  /** All entries of the book, as a reader knows them. */
  declare named: readonly NamedEntry[]
  /** Kinds that could not be fetched. */
  declare missing: readonly string[]
  declare editing: boolean
  /** It has come up: its entries have their heights. */
  declare resting: boolean
  declare onNear: (near: ReadonlySet<string>) => void

  private comingUp: ReturnType<typeof setTimeout> | undefined

  constructor() {
    super()
    this.resting = false
    watchNear(this, {
      selector: 'entry-frame',
      nameOf: element => element.getAttribute('data-entry') ?? '',
      onChange: near => this.onNear(near),
    })
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.comingUp = setTimeout(() => {
      this.resting = true
    }, COMES_UP)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    clearTimeout(this.comingUp)
    this.resting = false
  }

  frame(id: string): EntryFrame | null {
    return this.renderRoot.querySelector<EntryFrame>(`entry-frame[data-entry="${CSS.escape(id)}"]`)
  }

  /** Puts the focus where the reader goes on who has just done this to an entry. */
  async focusEntry(id: string, on?: FocusOn): Promise<void> {
    await this.updateComplete
    await this.frame(id)?.focusEditor(on)
  }

  /** The page's own heading: where reading begins after a turn. */
  focusHeading(): void {
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true })
  }

  override render() {
    const { page, index, count, reader } = this
    const rows = rowsOf(page.entries)
    const { page: said } = reader.words
    // said once a page, with the first entry that invites work on a unit
    const workedOn = rows.find(row => row.some(entry => this.views[entry.kind]?.handsOn))
    let number = 0
    const numbered = new Map(
      page.entries.map(entry => {
        if (entry.title || !this.views[entry.kind]?.untitled) number++
        return [entry.id, `${index + 1}.${number}`] as const
      }),
    )
    return html`
      <header>
        ${count > 1 ? html`<p class="folio"><b>${index + 1}</b> ${said.of(count)}</p>` : nothing}
        <h1 tabindex="-1">${page.lead || page.title || reader.words.page.untitledPage(index + 1)}</h1>
      </header>
      ${rows.length === 0 ? html`<p class="small">${reader.words.editing.empty}</p>` : nothing}
      ${repeat(
        rows,
        ([entry]) => entry.id,
        (row, at) => html`${this.row(row, at === 0, numbered)}${row === workedOn ? this.safety() : nothing}`,
      )}
    `
  }

  private row(row: Row, lead: boolean, numbered: ReadonlyMap<string, string>) {
    const [main, ...beside] = row
    const shape = beside.length === 0 ? 'whole' : main.kind === 'setting' ? 'even' : 'figure'
    return html`<div class="row ${shape} ${lead ? 'lead' : ''}">
        ${repeat(
          row,
          entry => entry.id,
          entry =>
            this.framed(entry, {
              lead: lead && entry === main,
              beside: entry !== main,
              number: numbered.get(entry.id) ?? '',
            }),
        )}
      </div>`
  }

  private safety() {
    const { page } = this.reader.words
    return html`<aside class="caution safety" aria-labelledby="safety">
      <h2 id="safety">${page.safety}</h2>
      <p>${page.safetyText}</p>
    </aside>`
  }

  private framed(
    entry: Entry,
    q: { readonly lead: boolean; readonly beside: boolean; readonly number: string },
  ) {
    const { session, reader, page } = this
    const book = bookOf(session)
    const can = (way: 'earlier' | 'later') => canMoveEntry(book, { id: entry.id, way })
    return html`<entry-frame
      data-entry=${entry.id}
      class=${q.beside ? 'beside' : ''}
      .entry=${entry}
      .kind=${this.kinds[entry.kind]}
      .view=${this.views[entry.kind]}
      .lost=${this.lost(entry)}
      .state=${this.flow.stateOf(entry.id)}
      .near=${this.near.has(entry.id)}
      .number=${q.number}
      .first=${q.lead}
      .now=${book.scenario}
      .held=${session.held}
      .named=${this.named}
      .heldBackBy=${heldBackBy(book, entry, this.kinds)?.id ?? null}
      .can=${this.editing ? { earlier: can('earlier'), later: can('later'), copy: true, 'take out': true } : null}
      .canStandBeside=${page.entries[0]?.id !== entry.id}
      .reader=${reader}
    ></entry-frame>`
  }

  /** Why an entry cannot be drawn, if it never will be. */
  private lost(entry: Entry): 'unknown' | 'unfetched' | null {
    if (this.missing.includes(entry.kind)) return 'unfetched'
    return this.known.includes(entry.kind) ? null : 'unknown'
  }
}

customElements.define('sward-page', SwardPage)
