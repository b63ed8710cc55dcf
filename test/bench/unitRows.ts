import {
  compareRollers,
  settle,
  sinkageMap,
  type Unit,
  uncertainHeight,
  withSoftness,
} from '@swardsink/model'
import { balanceColumns } from '../../packages/model/src/study/uncertainty/balanceColumns.ts'
import { springRoller } from '../../packages/model/src/study/uncertainty/rollerColumns.ts'
import { settleColumns } from '../../packages/model/src/study/uncertainty/settleColumns.ts'
import { sideMaker } from '../../packages/model/src/study/uncertainty/sideMaker.ts'
import {
  column,
  discs,
  even,
  evenly,
  grooved,
  lockingDepth,
  logarithmically,
  mm,
  nativePressure,
  smooth,
  standing,
  stiffening,
  sum,
  unit,
  unitWith,
} from './cases.ts'
import { type Row, timed } from './measure.ts'
import { type Peers, peerSide } from './peers.ts'
import { settled } from './straightforward/settled.ts'

const softnessOf = (i: number): number => (0.4 + 0.4 * even(i, 1)) * mm
const massOf = (i: number): number => 4 + 2 * even(i, 0)
const turf = { law: stiffening(), spread: 2 * mm }

/** As many units as uncertain heights settle at a time. */
const AT_ONCE = 4096
const drawn: Record<string, Float64Array> = {
  softness: column(AT_ONCE, softnessOf),
  'frontRoller.mass': column(AT_ONCE, massOf),
}
const heights = new Float64Array(AT_ONCE)
const codes = new Uint8Array(AT_ONCE)

/** The kernel of uncertain heights: both rollers and the lean of many units, from columns; tables laid beforehand. */
const makeSide = sideMaker(stiffening(), { least: 0.02 * mm, most: 40 * mm })
const constants = new Map<string, Float64Array>()
function columnOf(name: string, value: number): Float64Array {
  const found = drawn[name] ?? constants.get(name)
  if (found) return found
  const constant = new Float64Array(AT_ONCE).fill(value)
  constants.set(name, constant)
  return constant
}
function settleKernel() {
  const one = unitWith(5)
  const sideFor = makeSide(columnOf)
  codes.fill(0)
  settleColumns(
    {
      balance: balanceColumns(one, columnOf, AT_ONCE),
      front: springRoller('frontRoller', one.frontRoller, columnOf, sideFor),
      rear: springRoller('rearRoller', one.rearRoller, columnOf, sideFor),
      edge: columnOf('edge', one.edge),
      benchHeight: columnOf('benchHeight', one.benchHeight),
      frontDiameter: columnOf('frontRoller.diameter', one.frontRoller.diameter),
      start: { front: Math.log(mm), rear: Math.log(mm) },
    },
    heights,
    codes,
  )
  return { pieces: AT_ONCE, value: sum(heights) }
}

const heightOf = (one: Unit, softness: number): number => {
  const found = settle({ unit: one, turf: { law: stiffening(softness) }, condition: standing })
  return found.outcome === 'settled' ? found.effectiveHeight.middle : Number.NaN
}

/** Greatest distance of a height of the kernel from settle's. */
function worstHeight(): number {
  settleKernel()
  let worst = 0
  for (let i = 0; i < AT_ONCE; i++)
    worst = Math.max(worst, Math.abs(heights[i]! - heightOf(unitWith(massOf(i)), softnessOf(i))))
  return worst / unit.benchHeight
}

const settling = timed(() => {
  const count = 600
  for (let i = 0; i < count; i++) heightOf(unitWith(massOf(i)), softnessOf(i))
  // Each contestant of this row settles another number of units: values are compared in the kernel's own row.
  return { pieces: count }
})

const { rearRoller, body } = unit
const plainOf = (mass: number) => ({
  wheelbase: unit.wheelbase,
  edge: unit.edge,
  benchHeight: unit.benchHeight,
  front: { radius: smooth.diameter / 2, length: smooth.length, mass },
  rear: { radius: rearRoller.diameter / 2, length: rearRoller.length, mass: rearRoller.mass },
  body: { mass: body.mass, at: body.at, height: body.height ?? 0 },
})

const settlingPlainly = timed(() => {
  const found = settled(plainOf(massOf(0)), nativePressure(softnessOf(0)), 0.99 * lockingDepth)
  return { pieces: 1, value: found.effectiveHeight }
})

const settlingGrooved = timed(() => {
  const count = 30
  for (let i = 0; i < count; i++) settle({ unit: unitWith(4 + i * 0.05, grooved), turf, condition: standing })
  return { pieces: count }
})

const pageMap = (side: number, of: Unit = unit) =>
  timed(() => ({
    pieces: sinkageMap({
      unit: of,
      turf,
      condition: standing,
      quantity: 'sinkage',
      masses: evenly(2, 10, side),
      softnesses: logarithmically(0.04 * mm, 2 * mm, side),
    }).values.length,
  }))

/** Cells of the page's map by settle, a sample spread over it. */
const cellByCell = timed(() => {
  const masses = evenly(2, 10, 5)
  const softnesses = logarithmically(0.04 * mm, 2 * mm, 5)
  for (const softness of softnesses)
    for (const mass of masses)
      settle({ unit: unitWith(mass, grooved), turf: withSoftness(turf, softness), condition: standing })
  return { pieces: masses.length * softnesses.length }
})

const scatter = {
  softness: { kind: 'log-normal', relative: 0.2 },
  lockingDepth: { kind: 'log-normal', relative: 0.1 },
  'frontRoller.mass': { kind: 'normal', standardDeviation: 0.05 },
  'frontRoller.diameter': { kind: 'normal', standardDeviation: 0.1 * mm },
  'rearRoller.mass': { kind: 'normal', standardDeviation: 0.05 },
  'rearRoller.diameter': { kind: 'normal', standardDeviation: 0.1 * mm },
  'body.at': { kind: 'normal', standardDeviation: 2 * mm },
  'body.height': { kind: 'normal', standardDeviation: 8 * mm },
  'scales.front': { kind: 'normal', standardDeviation: 0.1 },
  'scales.rear': { kind: 'normal', standardDeviation: 0.1 },
  edge: { kind: 'normal', standardDeviation: mm },
  wheelbase: { kind: 'normal', standardDeviation: mm },
  benchHeight: { kind: 'uniform', halfWidth: 0.05 * mm },
  'rearRoller.length': { kind: 'normal', standardDeviation: mm },
} as const
const DRAWS = 100_000

const uncertain = (method: 'quick' | 'one by one', draws: number) =>
  timed(() => {
    const told = uncertainHeight({
      unit: unitWith(5),
      turf: { law: stiffening() },
      condition: standing,
      scatter,
      draws,
      seed: 1,
      method,
    })
    return { pieces: told.draws.made }
  })

export const unitRows = ({ kernels, scipy }: Peers): readonly Row[] => [
  {
    name: 'kernel: settle, columns of units on the stiffening law',
    per: 'unit',
    by: { ours: timed(settleKernel), ...peerSide('C', kernels, `settle ${AT_ONCE}`) },
    bar: { most: 2.2, of: 'C' },
    worst: worstHeight,
  },
  {
    name: 'settle, smooth on the stiffening law',
    per: 'unit',
    by: {
      ours: settling,
      plain: settlingPlainly,
      ...peerSide('C', kernels, 'settle 100'),
      ...peerSide('scipy', scipy, 'settle 20'),
    },
  },
  { name: 'settle, grooved with spread', per: 'unit', by: { ours: settlingGrooved } },
  {
    name: 'compareRollers, three with spread',
    per: 'roller',
    by: {
      ours: timed(() => ({
        pieces: compareRollers({
          unit,
          rollers: { smooth, grooved, discs },
          turf,
          condition: standing,
        }).length,
      })),
    },
  },
  {
    name: 'map of a unit: the page, 200 × 200 grooved with spread',
    per: 'cell',
    by: { ours: pageMap(200), plain: cellByCell },
    bar: { most: 40, of: 'ms' },
  },
  {
    name: 'map of a unit: the page, 48 × 48 draft',
    per: 'cell',
    by: { ours: pageMap(48) },
    bar: { most: 16, of: 'ms' },
  },
  {
    name: 'map of a unit: 200 × 200 discs with spread',
    per: 'cell',
    by: { ours: pageMap(200, { ...unit, frontRoller: discs }) },
  },
  {
    name: '100,000 uncertain heights, 14 inputs',
    per: 'draw',
    by: { ours: uncertain('quick', DRAWS), plain: uncertain('one by one', 300) },
    bar: { most: 150, of: 'ms' },
  },
]
