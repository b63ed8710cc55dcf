import { html, LitElement, nothing, type PropertyValues } from 'lit'
import { live } from 'lit/directives/live.js'
import { repeat } from 'lit/directives/repeat.js'
import { sharedStyles } from '../look/index.ts'
import type { Reader } from '../words/index.ts'
import type { EditorColumn, RowRemark, RowsChanged } from './editorColumn.ts'
import { listedProblems } from './listedProblems.ts'
import { filledRows, pastedCells, type Rows } from './pastedRows.ts'
import { ALL_DRAWN, type Heights, type Run, rowWindow, topOf } from './rowWindow.ts'
import { tableEditorStyles } from './tableEditorStyles.ts'
import { type Place, placeAfter } from './tableKeys.ts'
import { wordStyles } from './wordStyles.ts'

export type { EditorColumn, RowRemark, RowsChanged } from './editorColumn.ts'
export type { Rows } from './pastedRows.ts'

/** Typing that rests this long, in ms, counts before the cell is left, so that nothing typed is lost. */
const RESTS = 400
const FIRST_HEIGHTS: Heights = { row: 34, sentence: 44 }

/**
 * Rows of text under named columns: native fields, one row of them in the tab order. It judges nothing: whoever
 * listens to `sward-rows` reads the cells and gives back remarks.
 */
export class TableEditor extends LitElement {
  static override properties = {
    label: {},
    columns: { attribute: false },
    rows: { attribute: false },
    remarks: { attribute: false },
    reader: { attribute: false },
    at: { state: true },
    typed: { state: true },
    scrolled: { state: true },
    heights: { state: true },
    said: { state: true },
  }
  static override styles = [sharedStyles, wordStyles, tableEditorStyles]

  declare label: string
  declare columns: readonly EditorColumn[]
  declare rows: Rows
  declare remarks: readonly RowRemark[]
  declare reader: Reader
  /** The cell that has, or last had, the focus. */
  declare at: Place
  /** What stands in that cell while it differs from its row. */
  declare typed: string | null
  declare scrolled: number
  declare heights: Heights
  declare said: string
  private focused = false
  private drawing = false
  /** The focus went while rows were drawn. */
  private lost = false
  private startColumn = 0
  private room = 0
  private rest: ReturnType<typeof setTimeout> | undefined
  private wanted: 'select' | null = null

  constructor() {
    super()
    this.remarks = []
    this.at = { row: 0, column: 0 }
    this.typed = null
    this.scrolled = 0
    this.heights = FIRST_HEIGHTS
    this.said = ''
  }

  override connectedCallback(): void {
    super.connectedCallback()
    // Before the book hears of it: what is being typed is part of what it keeps.
    window.addEventListener('pagehide', this.takeTyped, true)
    document.addEventListener('visibilitychange', this.takeTyped, true)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.takeTyped()
    window.removeEventListener('pagehide', this.takeTyped, true)
    document.removeEventListener('visibilitychange', this.takeTyped, true)
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('rows')) return
    const row = Math.max(0, Math.min(this.at.row, this.rows.length - 1))
    if (row !== this.at.row) this.at = { ...this.at, row }
  }

  /** A list that is drawn anew may move the row being typed in, which costs it the focus: it is given back. */
  override update(changed: PropertyValues<this>): void {
    const field = this.focused ? this.fieldAt(this.at) : null
    const [start, end] = [field?.selectionStart ?? null, field?.selectionEnd ?? null]
    this.drawing = true
    this.lost = false
    super.update(changed)
    this.drawing = false
    if (!this.lost || !field?.isConnected) return
    field.focus({ preventScroll: true })
    field.setSelectionRange(start, end)
  }

  override updated(): void {
    this.measure()
    if (!this.wanted) return
    const field = this.fieldAt(this.at)
    if (!field) return
    this.wanted = null
    field.focus()
    field.select()
  }

  /** Puts the focus on a cell, wherever it has been scrolled to. */
  goTo(place: Place): void {
    const row = Math.max(0, Math.min(place.row, this.rows.length - 1))
    this.takeTyped()
    this.at = { row, column: Math.max(0, Math.min(place.column, this.columns.length - 1)) }
    this.wanted = 'select'
    this.bring(row)
    this.requestUpdate()
  }

  override render() {
    const { reader, rows, columns } = this
    const said = reader.words.tableEditor
    const long = rows.length > ALL_DRAWN
    const drawn = rowWindow({
      count: rows.length,
      tall: this.tall(),
      heights: this.heights,
      scrolled: this.scrolled,
      room: this.room,
      focused: this.focused ? this.at.row : null,
    })
    return html`
      <div class="scrolls ${long ? 'long' : ''}" tabindex="-1" @scroll=${this.scrolledTo}>
        <table aria-rowcount=${rows.length + 1}>
          <caption class="unseen">${this.label}</caption>
          <thead><tr aria-rowindex="1">
            <th scope="col"><span class="unseen">${said.row}</span></th>
            ${columns.map(
              ({ head, unit, numeric }) =>
                html`<th scope="col" class=${numeric ? '' : 'words'}>${head}<span class="unit">${unit}</span></th>`,
            )}
          </tr></thead>
          <tbody>
            ${this.lines(drawn)}
          </tbody>
        </table>
      </div>
      ${columns.map(({ name, options }) =>
        options
          ? html`<datalist id="of-${name}">${options.map(option => html`<option value=${option}></option>`)}</datalist>`
          : nothing,
      )}
      <div class="under">
        <button class="word" @click=${this.addRow}>${said.add}</button>
        ${rows.length > 0 ? html`<button class="word" @click=${this.takeOut}>${said.takeOut(this.at.row + 1)}</button>` : nothing}
        <p class="note">${said.how(rows.length)}</p>
      </div>
      <div role="status" class="small">${this.said}</div>
      ${long ? listedProblems(this, place => this.goTo(place)) : nothing}
    `
  }

  /** One list of rows and of room: a row keeps its field, and that its focus, whatever is drawn around it. */
  private lines({ runs, below }: { readonly runs: readonly Run[]; readonly below: number }) {
    const lines = [
      ...runs.flatMap(({ from, to, above }, i) => [
        { key: `room ${i}`, row: null, height: above },
        ...Array.from({ length: to - from }, (_, down) => ({
          key: from + down,
          row: from + down,
          height: 0,
        })),
      ]),
      { key: 'room below', row: null, height: below },
    ]
    return repeat(
      lines,
      ({ key }) => key,
      ({ row, height }) => (row === null ? this.space(height) : this.row(row)),
    )
  }

  /** A property, not an attribute: the page's policy refuses styles that are written into markup. */
  private space(height: number) {
    if (height <= 0) return nothing
    return html`<tr aria-hidden="true"><td class="room" colspan=${this.columns.length + 1} .style=${`height: ${height}px`}></td></tr>`
  }

  private row(index: number) {
    const remarks = this.remarks.filter(remark => remark.row === index)
    return html`
      <tr class="row" aria-rowindex=${index + 2}>
        <th scope="row">${index + 1}</th>
        ${this.columns.map((column, along) => this.cell({ row: index, column: along }, column, remarks))}
      </tr>
      ${
        remarks.length === 0
          ? nothing
          : html`<tr class="remarks"><td class="told" colspan=${this.columns.length + 1}>
        <p id="told-${index}" class=${remarks.some(({ kind }) => kind === 'problem') ? 'caution' : 'remark'}>${remarks.map(
          ({ sentence }, i) => (i === 0 ? sentence : ` ${sentence}`),
        )}</p></td></tr>`
      }
    `
  }

  private cell(place: Place, column: EditorColumn, remarks: readonly RowRemark[]) {
    const { row } = place
    const here = row === this.at.row && place.column === this.at.column
    const own = remarks.filter(remark => remark.column === column.name || remark.column === null)
    const wrong = own.some(({ kind, column: named }) => kind === 'problem' && named !== null)
    const text = here && this.typed !== null ? this.typed : (this.rows[row]?.[place.column] ?? '')
    return html`<td><input
      class="field ${column.numeric ? '' : 'words'}"
      data-cell="${row}-${place.column}"
      size=${column.letters}
      autocomplete="off"
      spellcheck="false"
      inputmode=${column.numeric ? 'decimal' : 'text'}
      list=${column.options ? `of-${column.name}` : nothing}
      tabindex=${row === this.at.row ? 0 : -1}
      aria-label=${this.reader.words.tableEditor.cell({
        head: column.unit ? `${column.head}, ${column.unit}` : column.head,
        row: String(row + 1),
      })}
      aria-invalid=${wrong ? 'true' : 'false'}
      aria-describedby=${own.length > 0 ? `told-${row}` : nothing}
      .value=${live(text)}
      @focus=${() => this.entered(place)}
      @blur=${this.blurred}
      @input=${this.typing}
      @change=${this.takeTyped}
      @keydown=${this.key}
      @paste=${this.paste}
    ></td>`
  }

  private tall(): readonly number[] {
    return [...new Set(this.remarks.map(({ row }) => row))].sort((a, b) => a - b)
  }

  private fieldAt({ row, column }: Place): HTMLInputElement | null {
    return this.renderRoot.querySelector<HTMLInputElement>(`[data-cell="${row}-${column}"]`)
  }

  private get scroller(): HTMLElement | null {
    return this.renderRoot.querySelector<HTMLElement>('.scrolls')
  }

  /** Heights come from what was drawn: they hang on the reader's type size. */
  private measure(): void {
    this.room = this.scroller?.clientHeight ?? 0
    if (this.rows.length <= ALL_DRAWN) return
    const height = (part: string) => this.renderRoot.querySelector(part)?.getBoundingClientRect().height
    const row = height('tr.row') || this.heights.row
    const sentence = height('tr.remarks') || this.heights.sentence
    if (row !== this.heights.row || sentence !== this.heights.sentence) this.heights = { row, sentence }
  }

  private scrolledTo(event: Event): void {
    this.scrolled = (event.currentTarget as HTMLElement).scrollTop
  }

  /** Scrolls a row of a long table into view: what is not drawn cannot be scrolled to by the browser. */
  private bring(row: number): void {
    const { scroller } = this
    if (!scroller || this.rows.length <= ALL_DRAWN) return
    const top = topOf(row, this.tall(), this.heights)
    const head = this.renderRoot.querySelector('thead')?.getBoundingClientRect().height ?? 0
    const room = scroller.clientHeight - head - this.heights.row
    if (top < scroller.scrollTop) scroller.scrollTop = top
    else if (top > scroller.scrollTop + room) scroller.scrollTop = top - room
    this.scrolled = scroller.scrollTop
  }

  private entered(place: Place): void {
    this.focused = true
    if (place.row === this.at.row && place.column === this.at.column) return
    this.takeTyped()
    // Tab moves along the row and keeps the column that Enter comes back to.
    if (place.row !== this.at.row || place.column < this.startColumn) this.startColumn = place.column
    this.at = place
  }

  private blurred(): void {
    if (this.drawing) {
      this.lost = true
      return
    }
    this.focused = false
    this.takeTyped()
  }

  private typing(event: Event): void {
    this.typed = (event.currentTarget as HTMLInputElement).value
    clearTimeout(this.rest)
    this.rest = setTimeout(() => this.takeTyped(), RESTS)
  }

  private readonly takeTyped = (): void => {
    const { typed, at } = this
    if (typed === null || this.drawing) return
    clearTimeout(this.rest)
    this.typed = null
    if (typed === (this.rows[at.row]?.[at.column] ?? '')) return
    const row = [...(this.rows[at.row] ?? [])]
    while (row.length < at.column) row.push('')
    row[at.column] = typed
    this.change(
      this.rows.map((one, i) => (i === at.row ? row : one)),
      `cell ${at.row} ${at.column}`,
    )
  }

  private change(rows: Rows, gesture: string | null = null): void {
    this.rows = rows
    this.dispatchEvent(new CustomEvent<RowsChanged>('sward-rows', { detail: { rows, gesture } }))
  }

  private readonly addRow = (): void => {
    this.takeTyped()
    this.change([...this.rows, this.columns.map(() => '')])
    this.startColumn = 0
    this.goTo({ row: this.rows.length - 1, column: 0 })
  }

  private readonly takeOut = (): void => {
    this.typed = null
    const { row } = this.at
    this.change(this.rows.filter((_, i) => i !== row))
    this.said = this.reader.words.tableEditor.takenOut(row + 1)
    if (this.rows.length > 0) this.goTo(this.at)
  }

  private key(event: KeyboardEvent): void {
    const field = event.currentTarget as HTMLInputElement
    if (event.isComposing || event.altKey || event.ctrlKey || event.metaKey) return
    if (event.key === 'Escape' && this.typed !== null) {
      clearTimeout(this.rest)
      this.typed = null
      return
    }
    // what is offered under a field is gone through with the same keys
    const offering = this.typed !== null && this.columns[this.at.column]?.options !== undefined
    if (offering && (event.key === 'ArrowDown' || event.key === 'ArrowUp')) return
    const next = placeAfter(event, {
      at: this.at,
      rows: this.rows.length,
      columns: this.columns.length,
      startColumn: this.startColumn,
      caret: { start: field.selectionStart ?? 0, end: field.selectionEnd ?? 0, length: field.value.length },
    })
    if (next === null) return
    event.preventDefault()
    if (next === 'add') {
      const column = this.startColumn
      this.takeTyped()
      this.change([...this.rows, this.columns.map(() => '')])
      this.goTo({ row: this.rows.length - 1, column })
      return
    }
    if (next.column !== this.at.column) this.startColumn = next.column
    this.goTo(next)
  }

  private paste(event: ClipboardEvent): void {
    const cells = pastedCells(event.clipboardData?.getData('text/plain') ?? '')
    if (!cells) return
    event.preventDefault()
    this.typed = null
    const columns = this.columns.map(({ name, head, unit }) => [name, head, `${head} ${unit}`])
    const { rows, filled, left } = filledRows(this.rows, { at: this.at, cells, columns })
    this.change(rows)
    const { pasted, leftOver } = this.reader.words.tableEditor
    this.said = [pasted(filled), left > 0 ? leftOver(left) : ''].join(' ').trim()
  }
}

customElements.define('table-editor', TableEditor)
