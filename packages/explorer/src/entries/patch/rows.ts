import { displayUnit, type QuantityName } from '@swardsink/model'
import type { Shown, Table } from '../view.ts'
import { specOf } from './drawing.ts'
import type { PatchResult, PatchSettings } from './kind.ts'

const STEPS = 12

/** The contact read off along the ground, at even steps up to its end and a little beyond. */
export function patchTable({ result, reader }: Shown<PatchSettings, PatchResult>): Table {
  const { words, format, units } = reader
  const said = words.patch.table
  const { quarter, grooves } = specOf(result)
  const { along, across, pressures, depths, edges, outline } = quarter
  const width = across.length
  const half = grooves ? grooves.land / 2 : 0
  let edge = 0
  for (let j = 0; j < width; j++) if ((across[j] ?? 0) <= half + 1e-12) edge = j
  const end = Math.max(...outline.land.map(place => place.along))
  const beyond = 1.2
  const number = (value: number, quantity: QuantityName) => format(value, quantity, { unit: false })
  const pressure = (i: number, j: number) => {
    const value = pressures[i * width + j] ?? 0
    return value > 0 ? number(value, 'pressure') : said.free
  }
  const rows = Array.from({ length: STEPS + 1 }, (_, step) => {
    const place = (beyond * end * step) / STEPS
    let i = 0
    while (i < along.length - 1 && (along[i + 1] ?? 0) <= place + 1e-12) i++
    return i
  })
  const unit = displayUnit('pressure', units)
  const deep = displayUnit('sinkage', units)
  const grooved = grooves
    ? [
        { head: `${said.pressure}, ${said.edge}`, unit },
        { head: `${said.pressure}, ${said.groove}`, unit },
        { head: said.force, unit: displayUnit('lineLoad', units) },
      ]
    : []
  return {
    caption: said.caption,
    columns: [
      { head: said.along, unit: displayUnit('sinkage', units) },
      { head: grooves ? `${said.pressure}, ${said.land}` : said.pressure, unit },
      ...grooved,
      { head: said.depth, unit: deep },
      ...(grooves ? [{ head: said.depthInGroove, unit: deep }] : []),
    ],
    rows: [...new Set(rows)].map(i => [
      number(along[i] ?? 0, 'sinkage'),
      pressure(i, 0),
      ...(grooves
        ? [pressure(i, edge), pressure(i, width - 1), number(edges.force[i] ?? 0, 'lineLoad')]
        : []),
      number(depths[i * width] ?? 0, 'sinkage'),
      ...(grooves ? [number(depths[i * width + width - 1] ?? 0, 'sinkage')] : []),
    ]),
  }
}
