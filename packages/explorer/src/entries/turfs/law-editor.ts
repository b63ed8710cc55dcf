import {
  formulaLaw,
  type LawName,
  laws,
  type PressureLaw,
  type QuantityName,
  type Scenario,
} from '@swardsink/model'
import { css, html, LitElement, nothing, type TemplateResult } from 'lit'
import { firstExpression, type Held, lawOfKind } from '../../book/index.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'
import { lawName } from './rows.ts'
import './law-expression.ts'
import './law-points.ts'

/** What `sward-law` carries: a sound law in place of the one before. */
export type LawChanged = { readonly law: PressureLaw; readonly gesture: string }

type Listed = {
  readonly equation: string
  readonly source: string
  readonly parameters: readonly { readonly name: string; readonly quantity: QuantityName }[]
  readonly layers?: readonly string[]
  readonly table?: {
    readonly name: string
    readonly columns: readonly { readonly name: string; readonly quantity: QuantityName }[]
  }
  readonly written?: true
}

/** A law chosen from the list with whatever numbers, points, words or layers the list says it has. */
export class LawEditor extends LitElement {
  static override properties = {
    law: { attribute: false },
    path: {},
    layer: {},
    scenario: { attribute: false },
    held: { attribute: false },
    reader: { attribute: false },
    refused: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      .head {
        display: flex;
        justify-content: space-between;
        align-items: baseline;
        gap: var(--s-3);
        font-size: var(--t-note);
        padding: var(--s-2) 0 0;
        border-top: 1px solid var(--rule);
      }
      select.field {
        text-align: left;
        font-size: var(--t-note);
        max-width: 60%;
      }
      .note {
        padding-bottom: var(--s-2);
      }
      .layer {
        padding-left: var(--s-4);
        border-left: 1px solid var(--rule);
        margin: var(--s-2) 0;
      }
      @media (min-width: 44rem) and (max-width: 78.9rem) {
        setting-list {
          display: grid;
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: 0 var(--gap);
        }
      }
    `,
  ]

  declare law: PressureLaw
  /** Name of the settings of what this is the law of: `turfs.chapel green`, `turfs.chapel green.upper`. */
  declare path: string
  /** Which layer this is, if it is one. */
  declare layer: string
  declare scenario: Scenario
  declare held: Readonly<Record<string, Held>>
  declare reader: Reader
  /** A kind that was chosen and cannot be as soft. */
  declare refused: string | null

  constructor() {
    super()
    this.layer = ''
    this.refused = null
  }

  override render() {
    const { law, reader } = this
    const { words } = reader
    const said = words.turfs
    const { equation, source }: Listed = laws[law.kind]
    const label = this.layer === '' ? said.law : said.lawOf(words.layers[this.layer] ?? this.layer)
    return html`<div class="head">
        <label for="law">${label}</label>
        <select class="field" id="law" aria-describedby="equation" @change=${this.chosen}>${Object.keys(
          laws,
        ).map(
          kind =>
            html`<option value=${kind} ?selected=${kind === law.kind}>${lawName(kind, reader)}</option>`,
        )}</select>
      </div>
      <p class="note" id="equation">${equation}, ${said.from(this.reader.words.modelSays(source))}</p>
      <div role="status">${this.refused ? html`<p class="caution">${said.refused(lawName(this.refused, reader))}</p>` : nothing}</div>
      ${this.numbers()}${this.points()}${this.expression()}${this.layers()}`
  }

  private get listed(): Listed {
    return laws[this.law.kind]
  }

  private numbers() {
    const { parameters, layers = [] } = this.listed
    const own = parameters.map(({ name }) => name)
    // softness is told of every law; one with layers or points is stretched to it
    const names = own.includes('softness') ? own : layers.length > 0 ? own : ['softness', ...own]
    if (names.length === 0) return nothing
    return html`<setting-list
      brief
      .names=${names.map(name => `${this.path}.${name}`)}
      .scenario=${this.scenario}
      .held=${this.held}
      .reader=${this.reader}
    ></setting-list>`
  }

  private points() {
    const { table } = this.listed
    if (!table) return nothing
    return html`<law-points
      .law=${this.law}
      .table=${table}
      .reader=${this.reader}
      @sward-law=${this.passOn}
    ></law-points>`
  }

  private expression() {
    if (!this.listed.written) return nothing
    return html`<law-expression .law=${this.law} .reader=${this.reader} @sward-law=${this.passOn}></law-expression>`
  }

  private layers(): TemplateResult[] {
    const { layers = [] } = this.listed
    const within = this.law as unknown as Readonly<Record<string, PressureLaw>>
    return layers.flatMap(layer => {
      const law = within[layer]
      if (!law) return []
      const put = ({ detail }: CustomEvent<LawChanged>) =>
        this.become({ ...this.law, [layer]: detail.law } as PressureLaw, detail.gesture)
      return html`<div class="layer"><law-editor
        .law=${law}
        .path=${`${this.path}.${layer}`}
        .layer=${layer}
        .scenario=${this.scenario}
        .held=${this.held}
        .reader=${this.reader}
        @sward-law=${put}
      ></law-editor></div>`
    })
  }

  private readonly passOn = ({ detail }: CustomEvent<LawChanged>): void => {
    this.become(detail.law, detail.gesture)
  }

  private become(law: PressureLaw, gesture: string): void {
    this.dispatchEvent(
      new CustomEvent<LawChanged>('sward-law', { detail: { law, gesture: `${this.path} ${gesture}` } }),
    )
  }

  private async chosen(event: Event): Promise<void> {
    const select = event.currentTarget as HTMLSelectElement
    const kind = Object.keys(laws).find((name): name is LawName => name === select.value)
    if (!kind) return
    const { law: before } = this
    const written: Listed['written'] = (laws[kind] as Listed).written
    const made = written ? await formulaLaw(firstExpression(before)) : null
    // the reader may have gone on to another green meanwhile
    if (before !== this.law) return
    const next = made ? (made.ok ? made.law : null) : lawOfKind(kind, before)
    this.refused = next ? null : kind
    if (next) this.become(next, 'law')
    else select.value = before.kind
  }
}

customElements.define('law-editor', LawEditor)
