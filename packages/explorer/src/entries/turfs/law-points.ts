import {
  displayUnit,
  type PressureLaw,
  type Problem,
  type QuantityName,
  turfProblems,
} from '@swardsink/model'
import { css, html, LitElement, type PropertyValues } from 'lit'
import { readTyped } from '../../controls/readTyped.ts'
import type { EditorColumn, RowRemark, Rows, RowsChanged } from '../../controls/table-editor.ts'
import { sharedStyles } from '../../look/index.ts'
import type { Reader } from '../../words/index.ts'
import type { LawChanged } from './law-editor.ts'
import '../../controls/table-editor.ts'

type Table = {
  readonly name: string
  readonly columns: readonly { readonly name: string; readonly quantity: QuantityName }[]
}
type Points = readonly Readonly<Record<string, number>>[]

/** The points of a law that is told by measured ones, as rows to be typed or pasted. */
export class LawPoints extends LitElement {
  static override properties = {
    law: { attribute: false },
    table: { attribute: false },
    reader: { attribute: false },
    typed: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
        padding: var(--s-2) 0;
      }
      p {
        font-size: var(--t-note);
      }
    `,
  ]

  declare law: PressureLaw
  declare table: Table
  declare reader: Reader
  /** Rows as they stand in the fields; null while they are those of the law. */
  declare typed: Rows | null
  /** The law the rows were last made into: any other comes from elsewhere, and its points take their place. */
  private made: PressureLaw | null = null

  constructor() {
    super()
    this.typed = null
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const others = changed.has('law') && this.law !== this.made && changed.get('law') !== undefined
    if (others || changed.has('reader')) this.typed = null
  }

  override render() {
    const { reader, table } = this
    const said = reader.words.turfs
    const columns = table.columns.map(
      ({ name, quantity }): EditorColumn => ({
        name,
        head: said.tableColumns[name] ?? name,
        unit: displayUnit(quantity, reader.units),
        numeric: true,
        letters: 8,
      }),
    )
    const rows = this.typed ?? this.rows()
    return html`<p>${said.points}</p>
      <table-editor
        .label=${said.points}
        .columns=${columns}
        .rows=${rows}
        .remarks=${this.read(rows).remarks}
        .reader=${reader}
        @sward-rows=${this.changed}
      ></table-editor>`
  }

  private rows(): Rows {
    const { table, reader } = this
    const points = (this.law as unknown as Readonly<Record<string, Points>>)[table.name] ?? []
    return points.map(point =>
      table.columns.map(({ name, quantity }) => reader.format(point[name] ?? 0, quantity, { unit: false })),
    )
  }

  /** The law these rows make, or what is wrong with them; rows without a letter are passed over. */
  private read(rows: Rows): { readonly law: PressureLaw | null; readonly remarks: readonly RowRemark[] } {
    const { table, reader } = this
    const said = reader.words.turfs
    const remarks: RowRemark[] = []
    const places: number[] = []
    const points: Points = rows.flatMap((row, index) => {
      if (row.every(cell => cell.trim() === '')) return []
      const numbers = table.columns.map(({ name, quantity }, along): [string, number] => {
        const value = readTyped(row[along] ?? '', { quantity, units: reader.units })
        if (value === null)
          remarks.push({ row: index, column: name, sentence: said.noNumber, kind: 'problem' })
        return [name, value ?? 0]
      })
      places.push(index)
      return [Object.fromEntries(numbers)]
    })
    if (remarks.length > 0) return { law: null, remarks }
    const law = { ...this.law, [table.name]: points } as unknown as PressureLaw
    const problems = turfProblems({ law }, 'turf')
    return problems.length === 0
      ? { law, remarks: [] }
      : { law: null, remarks: problems.map(problem => this.remark(problem, places)) }
  }

  private remark({ path }: Problem, places: readonly number[]): RowRemark {
    const [, row = '0', column = null] = /\.(\d+)(?:\.(\w+))?$/.exec(path) ?? []
    const known = this.table.columns.find(({ name }) => name === column)?.name ?? null
    return {
      row: places[Number(row)] ?? 0,
      column: known ?? this.table.columns.at(-1)?.name ?? null,
      sentence: this.reader.words.turfs.pointsWrong,
      kind: 'problem',
    }
  }

  private changed({ detail: { rows, gesture } }: CustomEvent<RowsChanged>): void {
    this.typed = rows
    const { law } = this.read(rows)
    if (!law) return
    this.made = law
    const detail: LawChanged = { law, gesture: gesture ?? 'points' }
    this.dispatchEvent(new CustomEvent('sward-law', { detail }))
  }
}

customElements.define('law-points', LawPoints)
