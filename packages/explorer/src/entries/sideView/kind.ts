import { GRAVITY, pressureAt, type SettledUnit, softnessOf } from '@swardsink/model'
import { type Kind, scalesOf, settable } from '../../book/index.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'

export type Exaggeration = (typeof EXAGGERATIONS)[number]
export type SideViewSettings = {
  /** How many times heights at the turf are drawn. */
  readonly exaggeration: Exaggeration
  /** Names of the settings that stand beside the figure. */
  readonly settings: readonly string[]
}

export const EXAGGERATIONS = [1, 5, 10] as const
/** The cutting unit from the side, at rest on its turf. */
export const sideView: Kind<'sideView', SideViewSettings, SettledInput, SettledUnit> = {
  kind: 'sideView',
  read: fields => ({
    exaggeration: fields.oneOf('exaggeration', EXAGGERATIONS, 5),
    settings: fields.texts('settings', ['frontRoller.mass', 'turf.softness']),
  }),
  problems: ({ settings }) =>
    settings
      .filter(name => !settable(name))
      .map(name => ({ path: 'settings', expected: 'the name of a setting', received: name })),
  sets: ({ settings }) => settings,
  needs: () => [],
  input: ({ scenario }) => settledInput(scenario),
  compute: input =>
    answer(() => {
      const settled = settleOnce(input)
      return settled.outcome === 'settled' ? { result: settled, cautions: settled.cautions } : settled
    }),
  workedOut({ input, result, format }) {
    const { unit, turf } = input
    const { front, rear } = result
    const { total, front: onFront } = scalesOf(unit)
    const mm = (depth: number) => format(depth, 'sinkage', { unit: false })
    const level = front.sinkage + ((rear.sinkage - front.sinkage) * unit.edge) / unit.wheelbase
    const length = front.lengthAhead + front.lengthBehind
    return [
      {
        what: 'weight',
        equation: 'W_f = g Σ m (1 − x/B),  W_r = g Σ m − W_f',
        filled: `${GRAVITY.toFixed(3)} × ${onFront.toFixed(2)}\u202fkg = ${(onFront * GRAVITY).toFixed(0)}\u202fN; with the tilt ${format(front.load, 'load')}, and ${format(rear.load, 'load')} of ${format(total * GRAVITY, 'load')} on the rear`,
      },
      {
        what: 'lowestPressure',
        equation: 'p(z), p(s) = 10 kPa',
        filled: `p(${format(front.sinkage, 'sinkage')}) = ${format(pressureAt(turf.law, front.sinkage), 'pressure')}, s = ${format(softnessOf(turf.law), 'softness')}`,
      },
      {
        what: 'balance',
        equation: 'q = p̄ (a_ahead + a_behind)',
        filled: `${format(front.meanPressure, 'pressure')} × ${format(length, 'spread')} = ${format(front.lineLoad, 'lineLoad')}`,
      },
      {
        what: 'drop',
        equation: 'drop = z_f + (z_r − z_f) c/B + tilt',
        filled: `${mm(front.sinkage)} + (${mm(rear.sinkage)} − ${mm(front.sinkage)}) × ${(unit.edge / unit.wheelbase).toFixed(3)} = ${format(level, 'drop')}; with the tilt ${format(result.drop.middle, 'drop')}`,
      },
      {
        what: 'height',
        equation: 'h_e = h_b − drop + not yet recovered',
        filled: `${mm(unit.benchHeight)} − ${mm(result.drop.middle)} + ${mm(result.unrecovered)} = ${format(result.effectiveHeight.middle, 'height')}`,
      },
    ]
  },
  section: '§4',
  check: 'test/model/reference/twoRollers.test.ts',
}
