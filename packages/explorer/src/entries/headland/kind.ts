import { GRAVITY, type Headland, headland as headlandOf, type Roller } from '@swardsink/model'
import { fittedName, type Kind } from '../../book/index.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'

export const PLACES = ['front', 'rear'] as const
export type Place = (typeof PLACES)[number]

export const AXLES = ['one', 'both'] as const

export type HeadlandSettings = {
  /** Which roller is looked at. */
  readonly at: Place
  /** Of the turn, to the middle of the roller, m. */
  readonly radius: number
  /** Of the face on turf, over the load. */
  readonly friction: number
  /** What holds the roller back from rolling, N. */
  readonly drag: number
  /** Whether the roller turns about its own axis, or both of the unit about a place between them. */
  readonly axles: (typeof AXLES)[number]
}
export type HeadlandInput = SettledInput & {
  readonly settings: HeadlandSettings
  readonly rollers: Readonly<Record<string, Roller>>
  /** Name in the rack of the roller looked at; null when it is none of them. */
  readonly name: string | null
}
export type HeadlandRow = {
  readonly name: string
  readonly fitted: boolean
  readonly roller: Roller
  readonly load: number
  /** null where drag takes all that friction holds: it slides without turning. */
  readonly sliding: Headland | null
}
export type HeadlandResult = {
  readonly name: string | null
  readonly roller: Roller
  readonly load: number
  readonly sliding: Headland
  /** The same roller in one piece; null where it is. */
  readonly whole: Headland | null
  readonly axleSpacing: number
  readonly rows: readonly HeadlandRow[]
}

/** Usual values: a walking machine turning on a headland; grass under steel, assumed and not measured. */
const USUAL = { radius: 3, friction: 0.4 }

const rollerOf = ({ unit, settings }: HeadlandInput): Roller =>
  settings.at === 'front' ? unit.frontRoller : unit.rearRoller

/** Every roller of the rack in the place of the one looked at: what it weighs more falls on its own axle. */
function rowsOf(input: HeadlandInput, load: number, axleSpacing: number): readonly HeadlandRow[] {
  const { settings, rollers, name } = input
  const { radius, friction, drag } = settings
  const { mass } = rollerOf(input)
  return Object.entries(rollers).map(([other, roller]) => {
    const here = load + GRAVITY * (roller.mass - mass)
    const holds = here > 0 && Math.abs(drag) < friction * here
    const sliding =
      here > 0 && (drag === 0 || holds)
        ? headlandOf({ roller, load: here, radius, friction, drag, axleSpacing })
        : null
    return { name: other, fitted: other === name, roller, load: here, sliding }
  })
}

/** A roller turning on the headland: how far its face slides over the turf while it rolls. */
export const headland: Kind<'headland', HeadlandSettings, HeadlandInput, HeadlandResult> = {
  kind: 'headland',
  read: fields => ({
    at: fields.oneOf('at', PLACES, 'front'),
    radius: fields.number('radius', USUAL.radius),
    friction: fields.number('friction', USUAL.friction),
    drag: fields.number('drag', 0),
    axles: fields.oneOf('axles', AXLES, 'one'),
  }),
  problems: ({ radius, friction }) => [
    ...(radius > 0 ? [] : [{ path: 'radius', expected: 'more than 0 m', received: String(radius) }]),
    ...(friction >= 0 ? [] : [{ path: 'friction', expected: 'at least 0', received: String(friction) }]),
  ],
  sets: ({ at }) => [`${at === 'front' ? 'frontRoller' : 'rearRoller'}.sections`],
  needs: () => [],
  input: ({ settings, scenario }) => ({
    ...settledInput(scenario),
    settings,
    rollers: scenario.rollers,
    name: fittedName(scenario, settings.at),
  }),
  compute: input =>
    answer(() => {
      const { unit, turf, condition, settings } = input
      const { at, radius, friction, drag, axles } = settings
      const settled = settleOnce({ unit, turf, condition })
      if (settled.outcome !== 'settled') return settled
      const { load } = settled[at]
      const roller = rollerOf(input)
      const axleSpacing = axles === 'both' ? unit.wheelbase : 0
      const shared = { load, radius, friction, drag, axleSpacing }
      const sliding = headlandOf({ roller, ...shared })
      const isWhole = (roller.sections ?? 1) === 1
      return {
        result: {
          name: input.name,
          roller,
          load,
          sliding,
          whole: isWhole ? null : headlandOf({ roller: { ...roller, sections: 1 }, ...shared }),
          axleSpacing,
          rows: rowsOf(input, load, axleSpacing),
        },
        cautions: sliding.cautions,
      }
    }),
  offers: ({ sliding }) => ({
    greatest: { quantity: 'sliding', value: sliding.greatest },
    mean: { quantity: 'sliding', value: sliding.mean },
    frictionWork: { quantity: 'resistance', value: sliding.frictionWork },
  }),
  workedOut({ input, result, format }) {
    const { radius, friction, drag } = input.settings
    const { roller, sliding, load, axleSpacing } = result
    const { length, sections = 1 } = roller
    const places = `${format(length, 'length')} / (2 × ${sections} × ${format(radius, 'turnRadius')})`
    const e = axleSpacing / 2
    return [
      e === 0 && drag === 0
        ? {
            what: 'headlandGreatest',
            equation: 'σ_max = b/(2 N r)',
            filled: `${places} = ${format(sliding.greatest, 'sliding')}`,
          }
        : {
            what: 'headlandGreatest',
            equation: 'σ_max = √((b/2N + |shift|)² + e²)/r',
            filled: `b/2N = ${format(length / sections / 2, 'length')}, shift = ${format(sliding.shift, 'place')}, e = ${format(e, 'place')}: ${format(sliding.greatest, 'sliding')}`,
          },
      {
        what: 'headlandMean',
        equation: 'σ̄ = (1/b) ∫ √((y − y_0)² + e²)/r dy',
        filled: `${format(sliding.mean, 'sliding')}; root mean square ${format(sliding.rootMeanSquare, 'sliding')}`,
      },
      {
        what: 'headlandWork',
        equation: 'work = μ_f W σ̄',
        filled: `${format(friction, 'ratio')} × ${format(load, 'load')} × ${format(sliding.mean, 'sliding')} = ${format(sliding.frictionWork ?? 0, 'resistance')}`,
      },
    ]
  },
  section: '§3',
  check: 'test/model/contact/headland.test.ts',
}
