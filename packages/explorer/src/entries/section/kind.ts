import {
  type AcrossGrooves,
  acrossGrooves,
  type Caution,
  type Roller,
  type Surface,
  sinkageAt,
} from '@swardsink/model'
import type { Kind } from '../../book/index.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'

export const PLACES = ['front', 'rear'] as const
export type Place = (typeof PLACES)[number]

export const PITCHES = [1, 2] as const

export type SectionSettings = {
  /** Which roller is cut along its axis. */
  readonly at: Place
  /** How many pitches are drawn; a narrow page has room for one. */
  readonly pitches: (typeof PITCHES)[number]
}
export type SectionInput = SettledInput & { readonly at: Place }
export type SectionResult = {
  readonly roller: Roller
  readonly load: number
  readonly lineLoad: number
  /** Of the lands, at the lowest line. */
  readonly sinkage: number
  /** Under the lands. */
  readonly pressure: number
  /** Of the whole roller, against a smooth one at the same sinkage. */
  readonly wholeBearing: number
  /** The mat over one pitch; null under a smooth face. */
  readonly grooves: AcrossGrooves | null
  /** Depth left by the front roller before this one: 0 on fresh turf. */
  readonly track: number
}

export type Grooves = Extract<Surface, { kind: 'grooved' }>

/** A groove without depth or gap is a smooth face. */
export function groovesOf({ surface }: Roller): Grooves | null {
  return surface.kind === 'grooved' && surface.depth > 0 && surface.land < surface.pitch ? surface : null
}

/** Part of a pitch's load that turf straight below the lands carries; the mat between them carries the rest. */
export function belowLands({ roller, pressure, grooves }: SectionResult): number | null {
  const surface = groovesOf(roller)
  return surface && grooves ? (pressure * surface.land) / (grooves.meanPressure * surface.pitch) : null
}

/** What moves the section, and stands beside it. */
export function setBeside({ at }: SectionSettings): readonly string[] {
  const roller = at === 'front' ? 'frontRoller' : 'rearRoller'
  return [...['surface', 'pitch', 'land', 'depth'].map(part => `${roller}.${part}`), 'turf.spread']
}

const ROLLER = { front: 'front roller', rear: 'rear roller' } as const

function cautionsOf(cautions: readonly Caution[], at: Place): readonly Caution[] {
  const other = ROLLER[at === 'front' ? 'rear' : 'front']
  return cautions.filter(({ where }) => where !== other)
}

/** One roller cut along its axis at its lowest line: what its lands and the mat between them carry. */
export const section: Kind<'section', SectionSettings, SectionInput, SectionResult> = {
  kind: 'section',
  read: fields => ({
    at: fields.oneOf('at', PLACES, 'front'),
    pitches: fields.oneOf('pitches', PITCHES, 2),
  }),
  problems: () => [],
  sets: setBeside,
  needs: () => [],
  input: ({ settings, scenario }) => ({ ...settledInput(scenario), at: settings.at }),
  compute: ({ unit, turf, condition, at }) =>
    answer(() => {
      const settled = settleOnce({ unit, turf, condition })
      if (settled.outcome !== 'settled') return settled
      const { load, lineLoad, sinkage, peakPressure: pressure, bearingFraction } = settled[at]
      const roller = unit[at === 'front' ? 'frontRoller' : 'rearRoller']
      // In a track turf answers as fresh turf does that is pressed as hard: a little less far down.
      const inTrack = at === 'rear' && condition.kind === 'mowing' && (turf.rebound ?? 1) < 1
      const pressed = inTrack ? Math.min(sinkage, sinkageAt(turf.law, pressure)) : sinkage
      const grooved = groovesOf(roller)
      const grooves = grooved && acrossGrooves({ surface: grooved, turf, sinkage: pressed })
      return {
        result: {
          roller,
          load,
          lineLoad,
          sinkage,
          pressure,
          wholeBearing: bearingFraction,
          grooves,
          track: sinkage - pressed,
        },
        cautions: cautionsOf(settled.cautions, at),
      }
    }),
  offers: result => ({
    pressure: { quantity: 'pressure', value: result.pressure },
    sinkage: { quantity: 'sinkage', value: result.sinkage },
    relief: { quantity: 'relief', value: result.grooves ? result.grooves.relief : null },
    edgeForce: { quantity: 'lineLoad', value: result.grooves ? result.grooves.edgeForce : null },
    bearingFraction: { quantity: 'ratio', value: result.grooves ? result.grooves.bearingFraction : 1 },
  }),
  workedOut({ result, format }) {
    const { roller, pressure, grooves, sinkage } = result
    const surface = groovesOf(roller)
    const under = {
      what: 'sectionPressure',
      equation: 'p(z)',
      filled: `p(${format(sinkage - result.track, 'sinkage')}) = ${format(pressure, 'pressure')}`,
    }
    if (!surface || !grooves) return [under]
    const perPitch = grooves.meanPressure * surface.pitch
    const below = pressure * surface.land
    const rest = perPitch - below - 2 * grooves.edgeForce
    const floor = grooves.floor === 'touching' ? ` + ${format(rest, 'lineLoad', { unit: false })}` : ''
    const number = (value: number) => format(value, 'lineLoad', { unit: false })
    return [
      under,
      {
        what: 'sectionPitch',
        equation:
          grooves.floor === 'touching'
            ? 'q_pitch = p(z) w_l + 2 √(2G (Φ(z) − Φ(u_d))) + p(u_d) (g − 2r)'
            : 'q_pitch = p(z) w_l + 2 √(2G (Φ(z) − Φ(u_m)))',
        filled: `${number(below)} + 2 × ${number(grooves.edgeForce)}${floor} = ${format(perPitch, 'lineLoad')}`,
      },
      {
        what: 'sectionBearing',
        equation: 'φ = q_pitch / (p(z) s_p)',
        filled: `${number(perPitch)} / (${format(pressure, 'pressure')} × ${format(surface.pitch, 'pitch')}) = ${format(grooves.bearingFraction, 'ratio')}`,
      },
      {
        what: 'sectionRelief',
        equation: 'z − u_m',
        filled: `${format(sinkage, 'sinkage', { unit: false })} − ${format(sinkage - grooves.relief, 'sinkage', { unit: false })} = ${format(grooves.relief, 'relief')}`,
      },
    ]
  },
  section: '§3',
  check: 'test/model/reference/acrossGrooves.test.ts',
}
