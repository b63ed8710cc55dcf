import type { Rows } from './pastedRows.ts'

/** A column with a name, never a letter. */
export type EditorColumn = {
  /** What its owner calls it; a pasted head may call it that, too. */
  readonly name: string
  readonly head: string
  /** Stands under the head; empty where there is none. */
  readonly unit: string
  /** Set to the right, with digits on a phone's keyboard. */
  readonly numeric: boolean
  /** Room for so many letters. */
  readonly letters: number
  /** What may be meant, offered while typing. */
  readonly options?: readonly string[]
}

/** A sentence that stands under its row, about one cell or, without a column, about the row. */
export type RowRemark = {
  readonly row: number
  readonly column: string | null
  readonly sentence: string
  /** Wrong, or worth knowing. */
  readonly kind: 'problem' | 'note'
}

/** What `sward-rows` carries: every row as it now stands. Changes of one gesture undo together. */
export type RowsChanged = { readonly rows: Rows; readonly gesture: string | null }
