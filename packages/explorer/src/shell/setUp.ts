import {
  type BottomedOut,
  benchHeightFor,
  type NotConverged,
  type Scenario,
  type SettledUnit,
  settle,
  type Unit,
} from '@swardsink/model'
import { fittedName, presentTurf } from '../book/index.ts'

type Ends = { readonly left: number; readonly right: number }

/** How a unit is set so that it cuts at the height that is wanted. SI; turns are whole turns of the adjuster. */
export type SetUp =
  | {
      readonly outcome: 'settled'
      readonly wanted: number
      /** Nobody has said what is wanted: it is what is cut now. */
      readonly asNow: boolean
      readonly bench: number
      readonly change: Ends
      /** Of the front roller, down. */
      readonly travel: Ends
      /** null while nobody has said how far a turn moves it. */
      readonly turns: Ends | null
      /** The unit as it will be set, and how it then rests on the turf. */
      readonly unit: Unit
      readonly settled: SettledUnit
    }
  | { readonly outcome: 'no such setting'; readonly wanted: number }
  | BottomedOut
  | NotConverged

/** Works a set-up out; a turn of the adjuster moves the front roller by `adjuster`, m. */
export function setUp(scenario: Scenario, adjuster: number | undefined): SetUp {
  const { unit, condition, effectiveHeight } = scenario
  const turf = presentTurf(scenario)
  const now = settle({ unit, turf, condition })
  if (now.outcome !== 'settled') return now
  const wanted = effectiveHeight ?? now.effectiveHeight.middle
  if (wanted <= 0) return { outcome: 'no such setting', wanted }
  const setting = benchHeightFor({ unit, turf, condition, effectiveHeight: wanted })
  if (setting.outcome !== 'settled') return setting
  const { benchHeight: bench, change, rollerTravel: travel } = setting
  if (bench <= 0) return { outcome: 'no such setting', wanted }
  const next = { ...unit, benchHeight: bench }
  const settled = settle({ unit: next, turf, condition })
  if (settled.outcome !== 'settled') return settled
  const turns =
    adjuster === undefined ? null : { left: travel.left / adjuster, right: travel.right / adjuster }
  return {
    outcome: 'settled',
    wanted,
    asNow: effectiveHeight === undefined,
    bench,
    change,
    travel,
    turns,
    unit: next,
    settled,
  }
}

const only = <Item>(list: Readonly<Record<string, Item>>, names: readonly (string | null | undefined)[]) =>
  Object.fromEntries(Object.entries(list).filter(([name]) => names.includes(name)))

/** The case in hand by itself, without the other rollers, greens and units: as little as a code can hold. */
export function caseInHand(scenario: Scenario): Scenario {
  const { unit, units, unitName, rollers, turfs, turf } = scenario
  const fitted = only(rollers, [
    fittedName(scenario, 'front'),
    fittedName(scenario, 'rear'),
    unit.fitted?.front,
    unit.fitted?.rear,
  ])
  const [first] = Object.keys(rollers)
  return {
    ...scenario,
    ...(units && unitName !== undefined ? { units: only({ ...units, [unitName]: unit }, [unitName]) } : {}),
    // A scenario has one roller at least.
    rollers: Object.keys(fitted).length > 0 ? fitted : only(rollers, [first]),
    turfs: only(turfs, [turf]),
  }
}
