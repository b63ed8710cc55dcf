import {
  type Caution,
  catalogue,
  compareRollers,
  displayUnit,
  formatQuantity,
  fromDisplay,
  mapToRows,
  type QuantityName,
  type Scenario,
  type SettledUnit,
  sentenceIn,
  settle,
  sinkageMap,
  softnessOf,
  type UnitSystem,
} from '../src/index.ts'
import { table } from './table.ts'
import type { Wanted } from './wanted.ts'

/** An answer for people, the same as data, and whether there was one. */
export type Answer = { readonly text: string; readonly data: unknown; readonly answered: boolean }

const numberIn =
  (units: UnitSystem) =>
  (value: number | null, quantity: QuantityName, signed = false) =>
    value === null ? 'not known' : formatQuantity(value, quantity, { units, unit: false, signed })

const cautionLines = (cautions: readonly Caution[], units: UnitSystem): string =>
  cautions.length === 0
    ? ''
    : `\n\nCautions\n${cautions.map(caution => `- ${sentenceIn(caution, units)}`).join('\n')}`

/** The usual cautions where an answer invites work on a unit. */
const SAFETY =
  'Before touching the unit: stop the engine or isolate the battery, wear cut-resistant gloves, lift with help and\n' +
  "never work under a unit held by a jack; the cylinder cuts even when turned by hand. Follow the machine's manual\n" +
  'and local rules; leave to a competent person what needs one. Check the height with a gauge on the turf.'

const turfOf = ({ turfs, turf }: Scenario) => turfs[turf]!

/** What lies between the two heights: they add up to what is said of them. */
function sumOf(
  { drop, lift, unrecovered }: SettledUnit,
  withUnit: (value: number, quantity: QuantityName) => string,
): string {
  const parts = [`drop ${withUnit(drop.middle, 'drop')}`]
  if (lift > 0) parts.push(`what sticks to the rollers counted`)
  if (unrecovered > 0)
    parts.push(`of which turf still pressed down takes ${withUnit(unrecovered, 'drop')} back`)
  return parts.join(', ')
}

/** The two ends of the edge, where they differ. */
const acrossLine = (
  { roll, effectiveHeight }: SettledUnit,
  withUnit: (value: number, quantity: QuantityName) => string,
): string =>
  roll === 0
    ? ''
    : ` Left end ${withUnit(effectiveHeight.left, 'height')}, right end ${withUnit(effectiveHeight.right, 'height')}.`

function answerSettle(scenario: Scenario, { units, arc, balance }: Wanted): Answer {
  const { unit, condition } = scenario
  const settled = settle({ unit, turf: turfOf(scenario), condition, arc, balance })
  if (settled.outcome !== 'settled')
    return { text: sentenceIn(settled, units), data: settled, answered: false }
  const number = numberIn(units)
  const withUnit = (value: number, quantity: QuantityName) => formatQuantity(value, quantity, { units })
  const { front, rear, effectiveHeight } = settled
  const line = (word: string, quantity: QuantityName, pick: (axle: typeof front) => number) => [
    word,
    displayUnit(quantity, units),
    number(pick(front), quantity),
    number(pick(rear), quantity),
  ]
  const heading = `Set ${withUnit(unit.benchHeight, 'height')} on the bench, cuts ${withUnit(effectiveHeight.middle, 'height')} on ${scenario.turf} (${sumOf(settled, withUnit)}).${acrossLine(settled, withUnit)}`
  const rows = [
    ['', '', 'front', 'rear'],
    line('load', 'load', axle => axle.load),
    line('sinkage', 'sinkage', axle => axle.sinkage),
    line('mean pressure', 'pressure', axle => axle.meanPressure),
    line('pressure under the lowest line', 'pressure', axle => axle.peakPressure),
    line('contact ahead of the axis', 'length', axle => axle.lengthAhead),
    line('contact behind the axis', 'length', axle => axle.lengthBehind),
    line('bearing fraction', 'ratio', axle => axle.bearingFraction),
    line('rolling resistance', 'resistance', axle => axle.resistance),
  ]
  return {
    text: `${heading}\n\n${table(rows)}${cautionLines(settled.cautions, units)}`,
    data: settled,
    answered: true,
  }
}

function answerCompare(scenario: Scenario, { units, arc, position }: Wanted): Answer {
  const { unit, rollers, condition, effectiveHeight } = scenario
  const compared = compareRollers({
    unit,
    rollers,
    turf: turfOf(scenario),
    condition,
    position,
    arc,
    ...(effectiveHeight === undefined ? {} : { effectiveHeight }),
  })
  const number = numberIn(units)
  const unitOf = (quantity: QuantityName) => displayUnit(quantity, units)
  const head = [
    ['roller', 'mass', 'load', 'sinks', 'pressure', 'cuts', 'change', 'set to hold', 'raise edge by'],
    [
      '',
      unitOf('mass'),
      unitOf('load'),
      unitOf('sinkage'),
      unitOf('pressure'),
      ...Array(4).fill(unitOf('height')),
    ],
  ]
  const rows = compared.map(row => {
    const name = row.fitted ? `${row.name} (fitted)` : row.name
    if (row.outcome !== 'settled') return [name, number(row.roller.mass, 'mass'), row.outcome]
    const load = position === 'front' ? row.frontLoad : row.rearLoad
    return [
      name,
      number(row.roller.mass, 'mass'),
      number(load, 'load'),
      number(row.sinkage, 'sinkage'),
      number(row.peakPressure, 'pressure'),
      number(row.effectiveHeight, 'height'),
      number(row.change, 'drop', true),
      number(row.benchHeight, 'height'),
      number(row.benchChange, 'drop', true),
    ]
  })
  const failed = compared.flatMap(row =>
    row.outcome === 'settled' ? [] : [`- ${row.name}: ${sentenceIn(row, units)}`],
  )
  const heading = `Rollers at the ${position}, on ${scenario.turf}. Pressure under the lowest line; the bench left alone in "cuts".${compared.some(({ fitted }) => fitted) ? '' : ' The fitted roller is none of them; "change" is from it.'}`
  const cautions = compared.flatMap(row =>
    row.outcome === 'settled'
      ? row.cautions.map(caution => `${row.name}: ${sentenceIn(caution, units)}`)
      : [],
  )
  const notes = [...failed, ...new Set(cautions.map(caution => `- ${caution}`))]
  const text = `${heading}\n\n${table([...head, ...rows])}${notes.length > 0 ? `\n\nCautions\n${notes.join('\n')}` : ''}\n\n${SAFETY}`
  return { text, data: compared, answered: compared.some(row => row.outcome === 'settled') }
}

/** Axis of the map unless given: from a part of the present value to as many times of it, evenly in the logarithm. */
const around = (value: number, times: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => value * times ** ((2 * i) / (count - 1) - 1))

const COUNT = 9
const SOFTER = 4

function answerMap(scenario: Scenario, { units, arc, quantity, masses, softnesses }: Wanted): Answer {
  const { unit, condition } = scenario
  const turf = turfOf(scenario)
  const map = sinkageMap({
    unit,
    turf,
    condition,
    arc,
    quantity,
    masses: masses?.map(mass => fromDisplay(mass, 'mass', units)) ?? around(unit.frontRoller.mass, 2, COUNT),
    softnesses:
      softnesses?.map(softness => fromDisplay(softness, 'softness', units)) ??
      around(softnessOf(turf.law), SOFTER, COUNT),
  })
  const rows = mapToRows(map)
  const number = numberIn(units)
  const shown: QuantityName =
    quantity === 'peakPressure' ? 'pressure' : quantity === 'effectiveHeight' ? 'height' : quantity
  const width = map.masses.length
  const body = Array.from(map.softnesses, (softness, row) => [
    number(softness, 'softness'),
    ...rows
      .slice(row * width, (row + 1) * width)
      .map(({ value, outcome }) => (value === null ? outcome : number(value, shown))),
  ])
  const heading = `${quantity}, ${catalogue[shown][units].unit}: softness of ${scenario.turf} down, ${displayUnit('softness', units)}; mass of the front roller across, ${displayUnit('mass', units)}.`
  const text = `${heading}\n\n${table([['', ...Array.from(map.masses, mass => number(mass, 'mass'))], ...body])}`
  return { text, data: rows, answered: rows.some(({ value }) => value !== null) }
}

export const answers: Record<Wanted['command'], (scenario: Scenario, wanted: Wanted) => Answer> = {
  settle: answerSettle,
  compare: answerCompare,
  map: answerMap,
}
