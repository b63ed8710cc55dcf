import {
  type MapQuantity,
  type QuantityName,
  type Scenario,
  type SinkageMap,
  settle,
  sinkageMap,
  softnessOf,
  withSoftness,
} from '@swardsink/model'
import { type Kind, presentTurf, settable } from '../../book/index.ts'
import { readingRows } from '../readingRows.ts'
import { answer, type SettledInput, settledOf } from '../settled.ts'
import { FITTED, type ReadingPlace, type ReadingQuestion, readingPlaces } from './readingPlaces.ts'

export type MapSettings = {
  readonly quantity: MapQuantity
  /** Id of the entry whose readings are drawn on the map; empty for none. */
  readonly readings: string
}
export type MapInput = SettledInput & {
  readonly quantity: MapQuantity
  readonly masses: readonly [number, number]
  readonly softnesses: readonly [number, number]
  readonly readings: ReadingQuestion
}
export type MapResult = SinkageMap & {
  /** Where readings stand; a draft has none. */
  readonly places: readonly ReadingPlace[]
}

export const MAP_QUANTITIES = ['sinkage', 'drop', 'effectiveHeight', 'peakPressure'] as const

/** What each is in the catalogue. */
export const SHOWN_AS: Readonly<Record<MapQuantity, QuantityName>> = {
  sinkage: 'sinkage',
  drop: 'drop',
  effectiveHeight: 'height',
  peakPressure: 'pressure',
}

/** What fits in a frame. A row under grooves costs ten times one under a smooth roller, a column next to nothing. */
const DRAFT_MASSES = 48
const DRAFT_SOFTNESSES = { smooth: 48, grooved: 12 }
const FINE_CELLS = 200
/** The fine map is worked out in so many slices of softness, to say how far it has come. */
const SLICES = 10

const lineOf = (name: string): readonly [number, number] => {
  const of = settable(name)
  if (of?.kind !== 'quantity') throw new Error(`no line for ${name}`)
  return [of.line.low, of.line.high]
}

/** A unit that leans sideways on grooves is integrated along its rollers for every cell: no draft fits in a frame. */
function isDear({ unit }: MapInput): boolean {
  const leans = unit.body.offset || unit.slopeAcross || unit.loads?.some(({ offset }) => offset)
  const grooved = [unit.frontRoller, unit.rearRoller].some(({ surface }) => surface.kind === 'grooved')
  return Boolean(leans) && grooved
}

function spaced([low, high]: readonly [number, number], count: number, logarithmic: boolean): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => {
    const t = i / (count - 1)
    return logarithmic ? low * (high / low) ** t : low + (high - low) * t
  })
}

function mapOf(input: MapInput, softnesses: Float64Array, masses: Float64Array): SinkageMap {
  const { unit, turf, condition, quantity } = input
  return sinkageMap({ unit, turf, condition, quantity, masses, softnesses })
}

/** Slices of one map, one under the other. */
function stacked(slices: readonly SinkageMap[], softnesses: Float64Array): SinkageMap {
  const [first] = slices
  if (!first) throw new Error('a map of no slices')
  const cells = softnesses.length * first.masses.length
  const values = new Float64Array(cells)
  const outcomes = new Uint8Array(cells)
  let at = 0
  for (const slice of slices) {
    values.set(slice.values, at)
    outcomes.set(slice.outcomes, at)
    at += slice.values.length
  }
  return { ...first, softnesses, values, outcomes }
}

/** The value the map has at the case in hand, from the same sum as every other entry; null where there is none. */
export function valueHere(scenario: Scenario, quantity: MapQuantity): number | null {
  const settled = settledOf(scenario)
  if (settled.outcome !== 'settled') return null
  const { front, drop, effectiveHeight } = settled
  if (quantity === 'sinkage') return front.sinkage
  if (quantity === 'drop') return drop.middle
  return quantity === 'effectiveHeight' ? effectiveHeight.middle : front.peakPressure
}

/** Mass of the front roller against softness of the turf. */
export const map: Kind<'map', MapSettings, MapInput, MapResult> = {
  kind: 'map',
  read: fields => ({
    quantity: fields.oneOf('quantity', MAP_QUANTITIES, 'sinkage'),
    readings: fields.text('readings', ''),
  }),
  problems: ({ readings }, _, entries) =>
    readings === '' || entries.some(({ id }) => id === readings)
      ? []
      : [{ path: 'readings', expected: 'the name of an entry with readings', received: readings }],
  whenAdded: ({ entries }) => {
    const found = entries.find(({ kind }) => kind === 'readings')
    return found ? { readings: found.id } : {}
  },
  needs: ({ readings }, entries) => (entries.some(({ id }) => id === readings) ? [readings] : []),
  // Mass and softness are the axes: the case in hand moves over the map without changing it.
  input({ settings, scenario, answers }) {
    const { unit, condition } = scenario
    const turf = presentTurf(scenario)
    const masses = lineOf('frontRoller.mass')
    const softnesses = lineOf('turf.softness')
    const lockingDepth = 'lockingDepth' in turf.law ? turf.law.lockingDepth : Number.POSITIVE_INFINITY
    const rows = settings.readings === '' ? [] : readingRows(answers[settings.readings])
    const known = rows.length === 0 ? {} : { ...scenario.rollers, [FITTED]: unit.frontRoller }
    return {
      readings: { rows, rollers: known },
      unit: { ...unit, frontRoller: { ...unit.frontRoller, mass: masses[0] } },
      turf: withSoftness(turf, Math.min(softnesses[0], lockingDepth / 2)),
      condition,
      quantity: settings.quantity,
      masses,
      softnesses,
    }
  },
  compute: input =>
    isDear(input)
      ? { outcome: 'later' }
      : answer(() => ({
          result: {
            ...mapOf(
              input,
              spaced(input.softnesses, DRAFT_SOFTNESSES[input.unit.frontRoller.surface.kind], true),
              spaced(input.masses, DRAFT_MASSES, false),
            ),
            places: [],
          },
          cautions: [],
        })),
  refine: (input, onStep) =>
    answer(() => {
      const softnesses = spaced(input.softnesses, FINE_CELLS, true)
      const masses = spaced(input.masses, FINE_CELLS, false)
      const rows = FINE_CELLS / SLICES
      const slices = Array.from({ length: SLICES }, (_, slice) => {
        const part = mapOf(input, softnesses.slice(slice * rows, (slice + 1) * rows), masses)
        onStep((slice + 1) / SLICES)
        return part
      })
      const places = readingPlaces(input.readings, { turf: input.turf, softnesses: input.softnesses })
      return { result: { ...stacked(slices, softnesses), places }, cautions: [] }
    }),
  buffers: ({ masses, softnesses, values, outcomes }) =>
    [masses, softnesses, values, outcomes].flatMap(({ buffer }) =>
      buffer instanceof ArrayBuffer ? [buffer] : [],
    ),
  workedOut({ input, format }) {
    const [low, high] = input.masses
    const one = settle(input)
    const said =
      one.outcome === 'settled'
        ? `m = ${format(low, 'mass')}, s = ${format(softnessOf(input.turf.law), 'softness')}: z_f = ${format(one.front.sinkage, 'sinkage')}`
        : ''
    return [
      {
        what: 'sweep',
        equation: 'z_f(m, s) from W_f(m) = q(z_f, s) L',
        filled: `${said}; ${FINE_CELLS} × ${FINE_CELLS} of them, to ${format(high, 'mass')} and ${format(input.softnesses[1], 'softness')}`,
      },
    ]
  },
  section: '§3',
  check: 'test/explorer/entries/kinds.test.ts',
}
