import type { Given, Values } from './cells.ts'
import type { NumberName } from './columns.ts'
import type { Column } from './header.ts'
import { type Foot, type Measured, placed, type Reading, type TableProblem } from './reading.ts'

type Row = {
  readonly readings: readonly Reading[]
  readonly problems: readonly TableProblem[]
  readonly notes: readonly TableProblem[]
  /** Why the row gives no reading, where nothing in it is wrong. */
  readonly why?: string
}

const nearly = (a: number, b: number, slack: number): boolean => Math.abs(a - b) <= slack * (1 + 1e-9)

/** The size of a plate, by its diameter where that is given. */
function plateOf(diameter: Given | undefined, area: Given | undefined): Foot | string | undefined {
  if (diameter === undefined) return area === undefined ? undefined : { kind: 'plate', area: area.value }
  if (area !== undefined) {
    const slack = area.half + (Math.PI / 2) * diameter.value * diameter.half
    if (!nearly((Math.PI / 4) * diameter.value ** 2, area.value, slack)) return area.header
  }
  return { kind: 'plate', diameter: diameter.value }
}

const areaOf = (foot: Foot): number | undefined =>
  foot.kind === 'roller' ? undefined : 'area' in foot ? foot.area : (Math.PI / 4) * foot.diameter ** 2

function measuredIn({ numbers }: Values): Measured[] {
  const { sinkage, drop, height, point } = numbers
  return [
    ...(sinkage ? [{ kind: 'sinkage' as const, sinkage: sinkage.value }] : []),
    ...(drop ? [{ kind: 'drop' as const, drop: drop.value, ...(point ? { point: point.value } : {}) }] : []),
    ...(height ? [{ kind: 'height' as const, height: height.value }] : []),
  ]
}

/** The readings of one row: one a thing measured. */
export function readRow(row: number, values: Values, found: readonly Column[]): Row {
  const { numbers, texts } = values
  const problems = [...values.problems]
  const notes = [...values.notes]
  const nothing = (why: string): Row => ({ readings: [], problems, notes, why })
  const headerOf = (name: Column['name']) => found.find(column => column.name === name)?.header
  const wrong = (column: string | undefined, expected: string, received: string) => {
    problems.push(placed(row, column, { expected, received }))
  }

  const plate = plateOf(numbers.plate_diameter, numbers.plate_area)
  const { roller } = texts
  if (typeof plate === 'string') wrong(plate, 'the area of the diameter given', 'another')
  if (roller !== undefined && plate !== undefined)
    wrong(headerOf('roller'), 'a roller or a plate', 'both in one row')
  const { load, pressure } = numbers
  const foot: Foot = typeof plate === 'object' ? plate : { kind: 'roller', name: roller ?? null }
  const area = areaOf(foot)
  if (pressure && area === undefined && plate === undefined)
    wrong(pressure.header, 'a load where there is no plate', 'a pressure')
  if (load && pressure && area !== undefined) {
    const slack = load.half + pressure.half * area
    if (!nearly(pressure.value * area, load.value, slack))
      wrong(pressure.header, `the pressure of ${load.header} on the plate`, 'another')
  }
  if (problems.length > 0) return { readings: [], problems, notes }

  const measured = measuredIn(values)
  if (measured.length === 0) return nothing('nothing measured')
  const has = (...names: NumberName[]) => names.some(name => headerOf(name) !== undefined)
  const footless = roller === undefined && plate === undefined
  const pressed = measured.some(({ kind }) => kind !== 'height')
  if (pressed && footless && (headerOf('roller') !== undefined || has('plate_diameter', 'plate_area')))
    return nothing('the roller or plate is missing')
  if (pressed && area !== undefined && !load && !pressure) return nothing('the load on the plate is missing')
  if (numbers.point && !numbers.drop)
    notes.push(
      placed(row, numbers.point.header, { expected: 'a drop beside it', received: 'none: it is not used' }),
    )
  return { readings: measured.map(one => readingOf({ row, values, foot, measured: one })), problems, notes }
}

type Parts = {
  readonly row: number
  readonly values: Values
  readonly foot: Foot
  readonly measured: Measured
}

type Unfinished = { -readonly [Part in keyof Reading]: Reading[Part] }

function readingOf({ row, values, foot, measured }: Parts): Reading {
  const { set = '', replicate, date, note } = values.texts
  const { load, pressure, sd, gauge_step, n, time, pass, moisture } = values.numbers
  // Filled in place: spreading a dozen optional parts takes longer than reading them.
  const reading: Unfinished = { row, set, foot, measured, count: n ? n.value : 1 }
  if (replicate !== undefined) reading.replicate = replicate
  if (load) reading.load = load.value
  if (pressure) reading.pressure = pressure.value
  if (sd) reading.standardDeviation = sd.value
  if (gauge_step) reading.gaugeStep = gauge_step.value
  if (time) reading.time = time.value
  if (pass) reading.pass = pass.value
  if (date !== undefined) reading.date = date
  if (moisture) reading.moisture = moisture.value
  if (note !== undefined) reading.note = note
  return reading
}
