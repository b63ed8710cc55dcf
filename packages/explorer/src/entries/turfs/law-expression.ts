import { formulaLaw, type PressureLaw, type Problem, sentence } from '@swardsink/model'
import { css, html, LitElement, nothing, type PropertyValues } from 'lit'
import { live } from 'lit/directives/live.js'
import { readNumber } from '../../controls/readNumber.ts'
import type { EditorColumn, Rows, RowsChanged } from '../../controls/table-editor.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'
import type { LawChanged } from './law-editor.ts'
import '../../controls/table-editor.ts'

type Written = { readonly expression: string; readonly rows: Rows }

/** A law in its reader's own words: the expression, and the values it calls by name. The parser is fetched for it. */
export class LawExpression extends LitElement {
  static override properties = {
    law: { attribute: false },
    reader: { attribute: false },
    typed: { state: true },
    problems: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        padding: var(--s-2) 0;
      }
      label,
      p.name {
        display: block;
        font-size: var(--t-note);
      }
      textarea.field {
        width: 100%;
        text-align: left;
        font-size: var(--t-note);
        padding: var(--s-1) var(--s-2);
        resize: vertical;
        field-sizing: content;
      }
      p.name {
        margin-top: var(--s-2);
      }
      .caution {
        margin-top: var(--s-1);
      }
    `,
  ]

  declare law: PressureLaw
  declare reader: Reader
  /** What stands in the fields; null while it is the law’s own. */
  declare typed: Written | null
  declare problems: readonly Problem[]
  private made: PressureLaw | null = null
  /** Counts what was sent to be checked: an answer to an older text is dropped. */
  private asked = 0

  constructor() {
    super()
    this.typed = null
    this.problems = []
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('law') || this.law === this.made || changed.get('law') === undefined) return
    this.typed = null
    this.problems = []
    this.asked++
  }

  override render() {
    const { reader } = this
    const said = reader.words.turfs
    const { expression, rows } = this.typed ?? this.own()
    const wrong = this.problems.length > 0
    const columns: readonly EditorColumn[] = [
      { name: 'name', head: said.valueName, unit: '', numeric: false, letters: 8 },
      { name: 'value', head: said.value, unit: '', numeric: true, letters: 12 },
    ]
    return html`<label for="expression">${said.expression}</label>
      <textarea
        class="field"
        id="expression"
        rows="1"
        spellcheck="false"
        autocapitalize="off"
        aria-invalid=${wrong ? 'true' : 'false'}
        aria-describedby="how${wrong ? ' wrong' : ''}"
        .value=${live(expression)}
        @input=${(event: Event) => this.take({ rows, expression: (event.currentTarget as HTMLTextAreaElement).value })}
      ></textarea>
      <p class="note" id="how">${said.expressionNote}</p>
      <div role="status">${
        wrong
          ? html`<p class="caution" id="wrong">${this.problems.map(problem => html`${reader.words.modelSays(sentence(problem).replace(/^law\./, ''))}. `)}${said.kept}</p>`
          : nothing
      }</div>
      <p class="name">${said.values}</p>
      <table-editor
        .label=${said.values}
        .columns=${columns}
        .rows=${rows}
        .reader=${reader}
        @sward-rows=${({ detail }: CustomEvent<RowsChanged>) => this.take({ expression, rows: detail.rows })}
      ></table-editor>`
  }

  private own(): Written {
    if (this.law.kind !== 'formula') return { expression: '', rows: [] }
    const { expression, values } = this.law
    return { expression, rows: Object.entries(values).map(([name, value]) => [name, String(value)]) }
  }

  private async take(written: Written): Promise<void> {
    this.typed = written
    const asked = ++this.asked
    const named = written.rows.filter(row => row.some(cell => cell.trim() !== ''))
    const values = Object.fromEntries(
      named.map(([name = '', value = '']) => [name.trim(), numberIn(value)] as const),
    )
    const deepest = this.law.kind === 'formula' ? this.law.deepest : undefined
    const made = await formulaLaw({
      expression: written.expression,
      values,
      ...(deepest === undefined ? {} : { deepest }),
    })
    if (asked !== this.asked) return
    this.problems = made.ok ? [] : made.problems
    if (!made.ok) return
    this.made = made.law
    const detail: LawChanged = { law: made.law, gesture: 'expression' }
    this.dispatchEvent(new CustomEvent('sward-law', { detail }))
  }
}

/** A value as a person types it; powers of ten as a computer writes them, since these values are large. */
function numberIn(text: string): number {
  const plain = text.trim().replace(',', '.')
  if (/^[+-]?\d+(\.\d+)?e[+-]?\d+$/i.test(plain)) return Number(plain)
  return readNumber(text) ?? Number.NaN
}

customElements.define('law-expression', LawExpression)
