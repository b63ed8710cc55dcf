import { isGrooved } from '../../roller/index.ts'
import { shearOf } from '../../turf/index.ts'
import { balanceOf, type SettledUnit } from '../../unit/index.ts'
import { balanceColumns, type ColumnOf } from './balanceColumns.ts'
import type { HeightSample, Varied } from './heightSample.ts'
import type { Posed } from './posed.ts'
import { spreadingRoller, springRoller } from './rollerColumns.ts'
import { settleColumns } from './settleColumns.ts'
import { type LnReader, sideMaker, similarParameters } from './sideMaker.ts'

/** Draws may sink this many times deeper or shallower than the nominal unit before they are solved by themselves. */
const DEEPER = 40

/** Whether the unit may stand, or roll, on springs that give everything back, without leaning sideways. */
function standsFreely({ unit, turf, condition }: Varied['parts'], isVaried: (name: string) => boolean) {
  const still = condition.kind === 'standing' || ((turf.rebound ?? 1) === 1 && !isVaried('rebound'))
  const offsets = [unit.body, ...(unit.loads ?? [])].some(({ offset = 0 }) => offset !== 0)
  const leans =
    offsets || balanceOf(unit).sideways !== 0 || isVaried('body.offset') || isVaried('slopeAcross')
  const grown = (unit.frontRoller.buildUp ?? 0) !== 0 || (unit.rearRoller.buildUp ?? 0) !== 0
  return still && !leans && !grown
}

/** Whether the load of both rollers is explicit in their sinkage, draw by draw. */
export function isClosed({ varied, arc, balance }: Posed): boolean {
  const { parts, inputs } = varied
  const { unit, turf } = parts
  const names = new Set(inputs.map(({ input }) => input.name))
  const isVaried = (name: string) => names.has(name)
  if (arc === 'circle' || balance === 'level' || !standsFreely(parts, isVaried)) return false
  const ofLaw = inputs.filter(({ input }) => input.put === 'law').map(({ input }) => input.name)
  const similar = similarParameters(turf.law)
  if (!ofLaw.every(name => similar.includes(name))) return false
  const spreads = shearOf(turf) > 0 || isVaried('spread')
  const smooth = !isGrooved(unit.frontRoller.surface) && !isGrooved(unit.rearRoller.surface)
  return !spreads || (turf.law.kind === 'linear' && smooth)
}

/** Draws are settled so many at a time: their columns then stay near the processor. */
const AT_ONCE = 4096

/** Reads columns of a stretch of draws: drawn values, or one value throughout, kept for the next stretch. */
function columnReader(drawn: ReadonlyMap<string, Float64Array>) {
  const constant = new Map<string, Float64Array>()
  return (from: number, to: number): ColumnOf =>
    (name, value) => {
      const column = drawn.get(name)
      if (column) return column.subarray(from, to)
      let kept = constant.get(name)
      if (!kept) {
        kept = new Float64Array(AT_ONCE).fill(value)
        constant.set(name, kept)
      }
      return kept.subarray(0, to - from)
    }
}

/** Heights of all draws from explicit loads, in columns; `each` is called with how many are done. */
export function closedHeights(
  { varied }: Posed,
  sample: HeightSample,
  nominal: SettledUnit,
  heights: Float64Array,
  codes: Uint8Array,
  each: (done: number) => void,
): void {
  const { unit, turf } = varied.parts
  const { law } = turf
  const drawn = new Map(varied.inputs.map(({ input }, k) => [input.name, sample.values[k]!]))
  const softness = varied.inputs.find(({ input }) => input.name === 'softness')?.input.nominal ?? 1
  const stretch = drawn.get('softness')?.map(value => value / softness)
  if (stretch) drawn.set('stretch', stretch)
  const sinkages = [nominal.front.sinkage, nominal.rear.sinkage]
  const depths = { least: Math.min(...sinkages) / DEEPER, most: Math.max(...sinkages) * DEEPER }
  const spreads = (turf.spread ?? 0) > 0 || drawn.has('spread')
  const makeSide = sideMaker(law, depths)
  const start = { front: Math.log(nominal.front.sinkage), rear: Math.log(nominal.rear.sinkage) }
  const columnsOf = columnReader(drawn)
  for (let from = 0; from < heights.length; from += AT_ONCE) {
    const to = Math.min(from + AT_ONCE, heights.length)
    const columnOf = columnsOf(from, to)
    const sideFor = makeSide(columnOf)
    const readerOf = (end: 'frontRoller' | 'rearRoller'): LnReader =>
      spreads && law.kind === 'linear'
        ? spreadingRoller(end, unit[end], law.softness, turf.spread ?? 0, columnOf)
        : springRoller(end, unit[end], columnOf, sideFor)
    settleColumns(
      {
        balance: balanceColumns(unit, columnOf, to - from),
        front: readerOf('frontRoller'),
        rear: readerOf('rearRoller'),
        edge: columnOf('edge', unit.edge),
        benchHeight: columnOf('benchHeight', unit.benchHeight),
        frontDiameter: columnOf('frontRoller.diameter', unit.frontRoller.diameter),
        start,
      },
      heights.subarray(from, to),
      codes.subarray(from, to),
    )
    each(to)
  }
}
