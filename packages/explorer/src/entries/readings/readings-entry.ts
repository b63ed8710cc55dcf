import { css, html, LitElement, nothing } from 'lit'
import { announce, fileName, handOver, wordStyles } from '../../controls/index.ts'
import { type RowsChanged, TableEditor } from '../../controls/table-editor.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Shown } from '../view.ts'
import { columnsFrom, type ReadingsSettings, rowsOf, settingsFrom, textOf } from './columns.ts'
import { type EditorTable, editorTable, rowRemarks, tableRemarks } from './editorTable.ts'
import type { ReadingsResult } from './kind.ts'
import type { HeadsChanged } from './readings-columns.ts'
import './readings-columns.ts'
import { ReadingsIntake } from './readings-intake.ts'

/** Columns of a table that is begun by hand. */
const BEGUN = ['set', 'plate_diameter_mm', 'load_N', 'sinkage_mm']
/** Spreadsheets of one system take a file without it for one of its own old alphabets. */
const BYTE_ORDER_MARK = '\uFEFF'

/** Frames in which a table that was just begun is there. */
const PATIENCE = 20

/** A table of readings: taken in, edited in place, given out again. */
export class ReadingsEntry extends LitElement {
  static override properties = {
    shown: { attribute: false },
    columns: { state: true },
    intake: { state: true },
    said: { state: true },
  }
  static override styles = [
    sharedStyles,
    wordStyles,
    css`
      :host {
        display: block;
        min-width: 0;
        max-width: max(var(--figure), 72%);
      }
      .words {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 var(--s-4);
        margin-top: var(--s-2);
      }
      ul.told {
        list-style: none;
        margin-bottom: var(--s-3);
      }
      ul.told li {
        margin-bottom: 2px;
        font-size: var(--t-note);
        line-height: 1.45;
      }
      @media print {
        .words {
          display: none;
        }
      }
    `,
  ]

  declare shown: Shown<ReadingsSettings, ReadingsResult>
  /** The names of the columns are folded out. */
  declare columns: boolean
  /** Another table may come in the place of this. */
  declare intake: boolean
  declare said: string
  private made: { readonly of: readonly unknown[]; readonly table: EditorTable } | null = null

  constructor() {
    super()
    this.columns = false
    this.intake = false
    this.said = ''
  }

  override render() {
    const { settings, reader } = this.shown
    const isEmpty = settings.columns.length === 0
    return html`
      ${isEmpty || this.intake ? this.intakeField(!isEmpty) : nothing}
      ${isEmpty ? nothing : this.table()}
      <div role="status" class="note">${this.said}</div>
      ${isEmpty ? nothing : html`<p class="note">${settings.remark === '' ? '' : reader.words.readings.note(settings.remark)}</p>`}
    `
  }

  private intakeField(replaces: boolean) {
    return html`<readings-intake
      .reader=${this.shown.reader}
      .replaces=${replaces}
      @sward-table=${({ detail }: CustomEvent<string>) => this.takeIn(detail)}
      @sward-begin=${this.begin}
      @sward-cancel=${() => {
        this.intake = false
      }}
    ></readings-intake>`
  }

  private table() {
    const { settings, result, reader, now } = this.shown
    const said = reader.words.readings
    const heads = this.heads
    const table = this.edited(settings, result, Object.keys(now.rollers))
    const { problems, notes } = tableRemarks(result, reader)
    return html`
      ${problems.length > 0 ? html`<ul class="told">${problems.map(text => html`<li class="caution">${text}</li>`)}</ul>` : nothing}
      <table-editor
        .label=${said.table}
        .columns=${table.columns}
        .rows=${table.rows}
        .remarks=${rowRemarks(result, heads, reader)}
        .reader=${reader}
        @sward-rows=${({ detail }: CustomEvent<RowsChanged>) => this.change(heads, table.taken(detail.rows), detail.gesture)}
      ></table-editor>
      ${notes.length > 0 ? html`<ul class="told">${notes.map(text => html`<li>${text}</li>`)}</ul>` : nothing}
      <div class="words">
        <button class="word" aria-expanded=${this.columns ? 'true' : 'false'} @click=${() => {
          this.columns = !this.columns
        }}>${said.columns}</button>
        <button class="word" aria-expanded=${this.intake ? 'true' : 'false'} @click=${this.open}>${said.another}</button>
        <button class="word" @click=${this.save}>${said.save}</button>
      </div>
      ${
        this.columns
          ? html`<readings-columns .heads=${heads} .reader=${reader} @sward-heads=${({ detail }: CustomEvent<HeadsChanged>) => this.rename(detail)}></readings-columns>`
          : nothing
      }
    `
  }

  private get heads(): readonly string[] {
    return this.shown.settings.columns.map(({ head }) => head)
  }

  /** Made again only when something it shows has changed: the editor knows a table by its rows. */
  private edited(
    settings: ReadingsSettings,
    result: ReadingsResult,
    rollers: readonly string[],
  ): EditorTable {
    const { reader } = this.shown
    const of = [settings.columns, result, reader, rollers.join('\n')]
    if (this.made && of.every((one, i) => one === this.made?.of[i])) return this.made.table
    const rows = rowsOf(settings.columns)
    const options = { roller: rollers, set: result.sets.filter(set => set !== '') }
    const table = editorTable({ heads: this.heads, rows, result, options, reader })
    this.made = { of, table }
    return table
  }

  private change(
    heads: readonly string[],
    rows: readonly (readonly string[])[],
    gesture: string | null,
  ): void {
    const { id } = this.shown
    const settings = { columns: columnsFrom(heads, rows) }
    announce(this, 'rearrange', {
      id,
      settings,
      ...(gesture === null ? {} : { gesture: `${id} ${gesture}` }),
    })
  }

  private rename({ heads, from }: HeadsChanged): void {
    const rows = rowsOf(this.shown.settings.columns)
    const isNamed = heads.length === this.heads.length
    const moved = isNamed ? rows : rows.map(row => from.map(at => (at === null ? '' : (row[at] ?? ''))))
    this.change(heads, moved, isNamed ? 'columns' : null)
  }

  private readonly begin = (): void => {
    this.change(BEGUN, [BEGUN.map(() => '')], null)
    void this.goToTable()
  }

  private takeIn(text: string): void {
    const { id, reader } = this.shown
    const settings = settingsFrom(text)
    announce(this, 'rearrange', { id, settings })
    this.intake = false
    this.said = reader.words.readings.taken(rowsOf(settings.columns).length)
    void this.goToTable()
  }

  private async goToTable(): Promise<void> {
    // The book hears of the new table first, and draws it a little later.
    for (let frame = 0; frame < PATIENCE; frame++) {
      const table = this.renderRoot.querySelector('table-editor')
      if (table instanceof TableEditor) {
        await table.updateComplete
        table.goTo({ row: 0, column: 0 })
        return
      }
      await new Promise(resolve => requestAnimationFrame(resolve))
    }
  }

  private readonly open = async (): Promise<void> => {
    this.intake = !this.intake
    await this.updateComplete
    const intake = this.renderRoot.querySelector('readings-intake')
    if (intake instanceof ReadingsIntake) {
      await intake.updateComplete
      intake.focus()
    }
  }

  private readonly save = (): void => {
    const { settings, reader } = this.shown
    const { columns, remark } = settings
    const text = BYTE_ORDER_MARK + textOf({ heads: this.heads, rows: rowsOf(columns), remark }, ',')
    handOver(
      new Blob([text], { type: 'text/csv;charset=utf-8' }),
      fileName(reader.words.readings.title, 'csv'),
    )
  }
}

customElements.define('readings-entry', ReadingsEntry)
