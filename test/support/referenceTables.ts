import { readFileSync } from 'node:fs'
import type { PressureLaw, Turf } from '@swardsink/model'

const MM = 1e-3
/** Softness of a law is told at this pressure. */
const REFERENCE_PRESSURE = 10e3

/** A row of a table, by column: numbers as they stand in print. */
export type Row = Readonly<Record<string, string>>

/** A table of test/reference/data; its README says what made it. */
export function referenceTable(name: string): readonly Row[] {
  const text = readFileSync(new URL(`../reference/data/${name}.csv`, import.meta.url), 'utf8')
  const [head = '', ...lines] = text.trim().split('\n')
  const columns = head.split(',')
  return lines.map(line => {
    const cells = line.split(',')
    return Object.fromEntries(columns.map((column, i) => [column, cells[i] ?? '']))
  })
}

export function numberOf(row: Row, column: string): number {
  const value = row[column] === '' ? Number.NaN : Number(row[column])
  if (!Number.isFinite(value)) throw new Error(`no number in column ${column}: ${row[column]}`)
  return value
}

export const metresOf = (row: Row, column: string): number => numberOf(row, column) * MM

/** A turf of the tables: lengths in mm, loads per unit k; `k` is what one unit of pressure stands for, in Pa. */
export type TableTurf = { readonly turf: Turf; readonly k: number; readonly law: PressureLaw }

/**
 * The law of a row at a softness of 1 mm, and its spread.
 *
 *   n=0.7      p = k w^0.7, w in mm: k is 10 kPa
 *   hyp Hs=15  p = k w/(1 − w/15): 10 kPa at 1 mm makes k = 10 kPa (1 − 1/15)
 *   G = k l² (1 mm)^(n−1) in the tables, G = l² 10 kPa/s in the model
 */
export function tableTurf(row: Row, spread: string): TableTurf {
  const name = row.law ?? ''
  const l = metresOf(row, spread)
  const [, exponent] = /^n=([\d.]+)$/.exec(name) ?? []
  if (exponent) {
    const law: PressureLaw = { kind: 'power', softness: MM, exponent: Number(exponent) }
    return { law, turf: { law, spread: l }, k: REFERENCE_PRESSURE }
  }
  const [, depth] = /^hyp Hs=([\d.]+)$/.exec(name) ?? []
  if (!depth) throw new Error(`no law is called ${name}`)
  const share = 1 - 1 / Number(depth)
  const law: PressureLaw = { kind: 'stiffening', softness: MM, lockingDepth: Number(depth) * MM }
  return { law, turf: { law, spread: l * Math.sqrt(share) }, k: REFERENCE_PRESSURE * share }
}
