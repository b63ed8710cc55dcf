import { type Roller, type Runout, runoutOf, type Unit, unitsOf } from '@swardsink/model'
import { type Kind, type Position, placesOf } from '../../book/index.ts'

export type RollersSettings = {
  /** Which roller lies open at first; '' for the one fitted in front. */
  readonly roller: string
}

export type FittedPlace = { readonly unit: string | null; readonly position: Position }
export type RollersInput = {
  readonly rollers: Readonly<Record<string, Roller>>
  readonly places: Readonly<Record<string, readonly FittedPlace[]>>
  readonly unit: Unit
  readonly several: boolean
}

export type RackRoller = {
  readonly name: string
  readonly roller: Roller
  readonly places: readonly FittedPlace[]
  /** What its build-up does to the cut of the unit in hand where it is fitted, or would be in front. */
  readonly raises: number
  readonly wave: Runout
}
export type RollersResult = {
  readonly rollers: readonly RackRoller[]
  /** Places are told by their unit, since there are several. */
  readonly several: boolean
}

/** The place of a roller on the unit in hand; one that is not fitted is measured as if it were in front. */
const positionOf = (places: readonly FittedPlace[]): Position => places[0]?.position ?? 'front'

function described(name: string, { rollers, places: all, unit }: RollersInput): RackRoller | null {
  const roller = rollers[name]
  if (!roller) return null
  const places = all[name] ?? []
  const position = positionOf(places)
  const share = unit.edge / unit.wheelbase
  const fitted: Unit =
    position === 'front' ? { ...unit, frontRoller: roller } : { ...unit, rearRoller: roller }
  return {
    name,
    roller,
    places,
    raises: (roller.buildUp ?? 0) * (position === 'front' ? 1 - share : share),
    wave: runoutOf(fitted)[position],
  }
}

/** The rack itself: what each roller measures, where it is fitted, and what sticks to it does to the cut. */
export const rollers: Kind<'rollers', RollersSettings, RollersInput, RollersResult> = {
  kind: 'rollers',
  read: fields => ({ roller: fields.text('roller', '') }),
  problems: ({ roller }, scenario) =>
    roller === '' || Object.hasOwn(scenario.rollers, roller)
      ? []
      : [{ path: 'roller', expected: 'the name of a roller of the rack', received: roller }],
  needs: () => [],
  sets: () => ['frontRoller', 'rearRoller'],
  input: ({ scenario }) => ({
    rollers: scenario.rollers,
    places: Object.fromEntries(Object.keys(scenario.rollers).map(name => [name, placesOf(scenario, name)])),
    unit: scenario.unit,
    several: Object.keys(unitsOf(scenario)).length > 1,
  }),
  compute: input => ({
    outcome: 'answered',
    result: {
      several: input.several,
      rollers: Object.keys(input.rollers).flatMap(name => described(name, input) ?? []),
    },
    cautions: [],
  }),
  workedOut({ input, result, format }) {
    const { edge, wheelbase } = input.unit
    const grown = result.rollers.find(({ raises }) => raises > 0)
    const uneven = result.rollers.find(({ wave }) => wave.rise > 0)
    const mm = (value: number) => format(value, 'height', { unit: false })
    const share = (position: Position) =>
      position === 'front' ? `(1 − ${(edge / wheelbase).toFixed(3)})` : (edge / wheelbase).toFixed(3)
    return [
      ...(grown
        ? [
            {
              what: 'rollerBuildUp',
              equation: 'front: build-up (1 − c/B); rear: build-up c/B',
              filled: `${grown.name}: ${mm(grown.roller.buildUp ?? 0)} × ${share(positionOf(grown.places))} = ${format(grown.raises, 'height')}`,
            },
          ]
        : []),
      ...(uneven
        ? [
            {
              what: 'rollerRunout',
              equation: 'front: runout (1 − c/B); rear: runout c/B; every π D',
              filled: `${uneven.name}: ${mm(uneven.roller.runout ?? 0)} × ${share(positionOf(uneven.places))} = ${format(uneven.wave.rise, 'height')}, every π × ${format(uneven.roller.diameter, 'diameter')} = ${format(uneven.wave.every, 'length')}`,
            },
          ]
        : []),
    ]
  },
  section: '§4',
  check: 'test/model/unit/buildUp.test.ts',
}
