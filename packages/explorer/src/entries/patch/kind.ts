import {
  type Condition,
  type PatchSettled,
  type PressedSettled,
  patch as patchOf,
  press,
  type Roller,
  type Turf,
} from '@swardsink/model'
import type { Kind } from '../../book/index.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'

export const PLACES = ['front', 'rear'] as const
export type Place = (typeof PLACES)[number]

/** Cells of the quarter of the contact, each way. */
export const CELLS = [64, 128, 256] as const

export type PatchSettings = {
  /** Which roller is looked at. */
  readonly at: Place
  readonly cells: (typeof CELLS)[number]
}

export type PatchInput = SettledInput & PatchSettings

/** The full solution, its fields in buffers that are handed over and not copied. */
export type FullPatch = Pick<
  PatchSettled,
  | 'sinkage'
  | 'load'
  | 'lineLoad'
  | 'edgeForce'
  | 'edgePart'
  | 'grooveFloor'
  | 'cycles'
  | 'meshError'
  | 'fromPress'
  | 'edges'
  | 'outline'
> & {
  readonly along: Float64Array
  /** From the middle of a land to the middle of the groove; one line for a smooth roller. */
  readonly across: Float64Array
  /** values[i × across.length + j] */
  readonly pressures: Float64Array
  readonly depths: Float64Array
}

export type PatchResult = {
  readonly roller: Roller
  readonly turf: Turf
  readonly load: number
  /** What the quick model says of the same load. */
  readonly quick: PressedSettled
  /** null until the worker has it. */
  readonly full: FullPatch | null
}

const rollerOf = ({ unit, at }: PatchInput): Roller => (at === 'front' ? unit.frontRoller : unit.rearRoller)

const STANDING: Condition = { kind: 'standing' }

/** The load of the unit at rest, and the quick model under it. */
function begun(input: PatchInput) {
  const { unit, turf, condition, at, cells } = input
  const roller = rollerOf(input)
  const settled = settleOnce({ unit, turf, condition })
  if (settled.outcome !== 'settled') return settled
  const { load } = settled[at]
  // The full solution answers for a standing roller alone: the model says so.
  if (condition.kind !== 'standing') patchOf({ roller, turf, condition, cells, load })
  const quick = press({ roller, turf, load, condition: STANDING })
  return quick.outcome === 'settled' ? { roller, turf, load, quick } : quick
}

const handedOver = ({ pressure, ...found }: PatchSettled): FullPatch => ({
  sinkage: found.sinkage,
  load: found.load,
  lineLoad: found.lineLoad,
  edgeForce: found.edgeForce,
  edgePart: found.edgePart,
  grooveFloor: found.grooveFloor,
  cycles: found.cycles,
  meshError: found.meshError,
  fromPress: found.fromPress,
  edges: found.edges,
  outline: found.outline,
  along: Float64Array.from(pressure.along),
  across: Float64Array.from(pressure.across),
  pressures: Float64Array.from(pressure.values),
  depths: Float64Array.from(pressure.depths),
})

/** How much more load the full solution carries at the same sinkage, as a part of the quick model's. */
export const moreThanQuick = ({ fromPress }: Pick<FullPatch, 'fromPress'>): number =>
  -fromPress / (1 + fromPress)

/** Pressure under one roller by the full solution, which bends the mat along and across at once. */
export const patch: Kind<'patch', PatchSettings, PatchInput, PatchResult> = {
  kind: 'patch',
  read: fields => ({
    at: fields.oneOf('at', PLACES, 'front'),
    cells: fields.oneOf('cells', CELLS, 128),
  }),
  problems: () => [],
  needs: () => [],
  input: ({ settings, scenario }) => ({ ...settledInput(scenario), ...settings }),
  compute: input =>
    answer(() => {
      const found = begun(input)
      if ('outcome' in found) return found
      return { result: { ...found, full: null }, cautions: found.quick.cautions }
    }),
  refine: (input, onStep) =>
    answer(() => {
      const found = begun(input)
      if ('outcome' in found) return found
      const { roller, turf, load } = found
      const full = patchOf({ roller, turf, load, cells: input.cells, onStep })
      if (full.outcome !== 'settled') return full
      return { result: { ...found, full: handedOver(full) }, cautions: full.cautions }
    }),
  buffers: ({ full }) =>
    full
      ? [full.along, full.across, full.pressures, full.depths].flatMap(({ buffer }) =>
          buffer instanceof ArrayBuffer ? [buffer] : [],
        )
      : [],
  offers: ({ full }) => ({
    sinkage: { quantity: 'sinkage', value: full?.sinkage ?? null },
    peakPressure: { quantity: 'pressure', value: full && greatest(full.pressures) },
    edgeForce: { quantity: 'lineLoad', value: full?.edgeForce ?? null },
    moreThanQuick: { quantity: 'ratio', value: full && moreThanQuick(full) },
  }),
  workedOut({ input, result: { full, quick, load }, format }) {
    const given = {
      what: 'patchQuick',
      equation: 'W = q(z) b',
      filled: `${format(load, 'load')}: z = ${format(quick.sinkage, 'sinkage')}, p(z) = ${format(quick.peakPressure, 'pressure')}`,
    }
    if (!full) return [given]
    const number = (value: number) => format(value, 'lineLoad', { unit: false })
    return [
      given,
      {
        what: 'patchLeast',
        equation: 'min ∫∫ ½ G |∇u|² + Φ(u) dx dy,  u ≥ r(x, y)',
        filled: `${input.cells} × ${full.across.length > 1 ? input.cells : 1}; ${full.cycles}`,
      },
      {
        what: 'patchBalance',
        equation: 'W = ∫∫ p(u) dx dy',
        filled: `z = ${format(full.sinkage, 'sinkage')}: ${format(full.load, 'load')}, ${format(full.lineLoad, 'lineLoad')}`,
      },
      {
        what: 'patchEdges',
        equation: 'F_e = G [∂u/∂y]',
        filled: `${format(full.edgeForce, 'lineLoad')}; 2 ∫ F_e dx / (q s_p) = ${format(full.edgePart, 'ratio')}`,
      },
      {
        what: 'patchAgainstQuick',
        equation: 'q/q_quick − 1',
        filled: `${number(full.lineLoad)} / ${number(full.lineLoad * (1 + full.fromPress))} − 1 = ${(100 * moreThanQuick(full)).toFixed(2).replace('-', '−')}\u202f%`,
      },
    ]
  },
  section: '§3',
  check: 'test/model/contact/patchReference.test.ts',
}

export const greatest = (values: Float64Array): number =>
  values.reduce((most, value) => Math.max(most, value), 0)
