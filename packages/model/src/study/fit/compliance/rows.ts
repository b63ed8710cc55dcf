import { describe, InputError, type Metres, type Newtons, numberProblem } from '../../../quantities/index.ts'
import type { Reading } from '../../../readings/index.ts'
import type { Roller } from '../../../roller/index.ts'
import type { Scenario } from '../../../scenario/index.ts'
import { levelLoads } from '../../../unit/index.ts'
import { swapRoller } from '../../swapRoller.ts'
import type { Foot } from './foot.ts'
import { type UnitDrop, unitDrop } from './unitDrop.ts'

/** What was done to the turf: a foot pressed by a load, or the whole unit set down. */
export type Pressing =
  | {
      readonly kind: 'foot'
      readonly foot: Foot
      readonly load: Newtons
      readonly footKey: string
      readonly key: string
    }
  | { readonly kind: 'unit'; readonly drop: UnitDrop; readonly key: string }

/** A reading that is fitted. */
export type Row = {
  readonly reading: Reading
  readonly kind: 'sinkage' | 'drop'
  readonly measured: Metres
  readonly pressing: Pressing
}

export type LeftOut = { readonly row: number; readonly why: string }

export type Rows = { readonly rows: readonly Row[]; readonly leftOut: readonly LeftOut[] }

type Part = Pick<Scenario, 'unit' | 'rollers'>

const wrong = (row: number, column: string, expected: string, received: string): InputError =>
  new InputError({ path: `row ${row}, ${column}`, expected, received })

function positive(value: number | undefined, row: number, column: 'load' | 'pressure'): number | undefined {
  if (value === undefined) return undefined
  const [problem] = numberProblem(value, `row ${row}, ${column}`, column, { above: 0 })
  if (problem) throw new InputError(problem)
  return value
}

/** A plate told by its area alone is taken to be round. */
const diameterOf = (foot: { readonly diameter: Metres } | { readonly area: number }): Metres =>
  'diameter' in foot ? foot.diameter : Math.sqrt((4 * foot.area) / Math.PI)

function plateRow(
  reading: Reading,
  foot: { readonly diameter: Metres } | { readonly area: number },
): Pressing {
  const { row } = reading
  const diameter = diameterOf(foot)
  const [problem] = numberProblem(diameter, `row ${row}, plate`, 'length', { above: 0 })
  if (problem) throw new InputError(problem)
  const pressure = positive(reading.pressure, row, 'pressure')
  const load =
    positive(reading.load, row, 'load') ??
    (pressure === undefined ? undefined : (pressure * Math.PI * diameter ** 2) / 4)
  if (load === undefined) throw wrong(row, 'load', 'a load or a pressure on the plate', 'nothing')
  const footKey = `plate ${diameter}`
  return {
    kind: 'foot',
    foot: { kind: 'plate', plate: { diameter } },
    load,
    footKey,
    key: `${footKey} ${load}`,
  }
}

/** The roller a row names; null for the one on the unit. */
function rollerNamed(name: string | null, row: number, scenario: Part | undefined): Roller | null {
  if (name === null) {
    if (!scenario?.unit)
      throw wrong(row, 'roller', 'a roller by name, or a scenario with the unit it is on', 'none')
    return null
  }
  if (!scenario) throw new InputError({ path: 'scenario', expected: 'the rollers by name', received: 'none' })
  const roller = Object.hasOwn(scenario.rollers, name) ? scenario.rollers[name] : undefined
  if (!roller) {
    const known = Object.keys(scenario.rollers).map(one => JSON.stringify(one))
    throw wrong(row, 'roller', `one of ${known.join(', ')}`, describe(name))
  }
  return roller
}

function rollerRow(reading: Reading, name: string | null, scenario: Part | undefined): Pressing {
  const { row, measured } = reading
  const roller = rollerNamed(name, row, scenario)
  const load = positive(reading.load, row, 'load')
  const footKey = `roller ${name ?? ''}`
  const point = measured.kind === 'drop' ? measured.point : undefined
  if (load !== undefined && point === undefined) {
    const foot: Foot = { kind: 'roller', roller: roller ?? scenario!.unit.frontRoller }
    return { kind: 'foot', foot, load, footKey, key: `${footKey} ${load}` }
  }
  const unit = scenario?.unit
  if (!unit) throw wrong(row, 'load', 'a load, or a scenario with the unit that loads the roller', 'nothing')
  if (measured.kind === 'drop') {
    const at = point ?? unit.edge / unit.wheelbase
    const [problem] = numberProblem(at, `row ${row}, point`, 'ratio', { atLeast: 0, atMost: 1 })
    if (problem) throw new InputError(problem)
    return { kind: 'unit', drop: unitDrop(unit, roller, at), key: `unit ${footKey} ${at}` }
  }
  const fitted = roller ? swapRoller(unit, 'front', roller) : unit
  const foot: Foot = { kind: 'roller', roller: fitted.frontRoller }
  return { kind: 'foot', foot, load: levelLoads(fitted).front, footKey, key: `${footKey} of the unit` }
}

/** A reading as the model sees it, or why it is not fitted. */
export function rowOf(reading: Reading, scenario: Part | undefined): Row | string {
  const { measured, foot, row, pass = 1 } = reading
  if (measured.kind === 'height') return 'a height after mowing is compared with the fit, never fitted'
  if (pass > 1) return 'pressed before: the fit is of fresh turf'
  const value = measured.kind === 'sinkage' ? measured.sinkage : measured.drop
  const [problem] = numberProblem(value, `row ${row}, ${measured.kind}`, measured.kind)
  if (problem) throw new InputError(problem)
  if (reading.load === 0 || reading.pressure === 0)
    return 'under no load: it tells the zero of the gauge, not the turf; with a datum for each set that zero is fitted'
  const pressing = foot.kind === 'plate' ? plateRow(reading, foot) : rollerRow(reading, foot.name, scenario)
  return { reading, kind: measured.kind, measured: value, pressing }
}

/** Whether the zero of a reading is unknown. */
export const hasDatum = ({ kind }: Pick<Row, 'kind'>, datum: 'per set' | undefined): boolean =>
  kind === 'drop' || datum === 'per set'

/** Readings that share an unknown zero tell something only beside readings under another load, foot or point. */
function withoutCompany(rows: readonly Row[], datum: 'per set' | undefined): Rows {
  const companyOf = ({ reading, kind }: Row) => `${kind} ${reading.set}`
  /** The first pressing of a company, and whether there is another. */
  const seen = new Map<string, { readonly first: string; several: boolean }>()
  for (const row of rows) {
    if (!hasDatum(row, datum)) continue
    const company = seen.get(companyOf(row))
    if (!company) seen.set(companyOf(row), { first: row.pressing.key, several: false })
    else if (!company.several) company.several = row.pressing.key !== company.first
  }
  const alone = (row: Row) => hasDatum(row, datum) && !seen.get(companyOf(row))!.several
  return {
    rows: rows.filter(row => !alone(row)),
    leftOut: rows.filter(alone).map(({ reading: { row } }) => ({
      row,
      why: 'from an unknown zero, and nothing in its set under another roller, load or point to compare it with',
    })),
  }
}

/** What is fitted and what is not, each with its reason. Throws InputError for a row that cannot be understood. */
export function fittedRows(
  readings: readonly Reading[],
  scenario: Part | undefined,
  datum: 'per set' | undefined,
): Rows {
  const rows: Row[] = []
  const leftOut: LeftOut[] = []
  for (const reading of readings) {
    const made = rowOf(reading, scenario)
    if (typeof made === 'string') leftOut.push({ row: reading.row, why: made })
    else rows.push(made)
  }
  const kept = withoutCompany(rows, datum)
  return { rows: kept.rows, leftOut: [...leftOut, ...kept.leftOut].sort((a, b) => a.row - b.row) }
}
