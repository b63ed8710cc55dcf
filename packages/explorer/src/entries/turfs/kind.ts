import {
  type Caution,
  type Condition,
  type LawName,
  pressureAt,
  softnessOf,
  type Turf,
  type Unit,
} from '@swardsink/model'
import type { Answer, Kind } from '../../book/index.ts'
import { type CurveFound, type CurvePoint, pressureCurve } from '../curves/oneCurve.ts'
import { settleOnce } from '../settled.ts'

export type TurfsSettings = {
  /** Which green lies open at first; '' for the one in hand. */
  readonly turf: string
}
export type TurfsInput = {
  readonly turfs: Readonly<Record<string, Turf>>
  readonly turf: string
  readonly unit: Unit
  readonly condition: Condition
}

export type TurfRow = {
  readonly name: string
  readonly present: boolean
  readonly law: LawName
  readonly softness: number
  readonly turf: Turf
  readonly curve: CurveFound
  /** What the unit in hand would cut at; 'bottoms out' where there is no height, null while it is worked out. */
  readonly height: number | 'bottoms out' | null
  /** Lowest line of the front roller there; null without a height. */
  readonly own: CurvePoint | null
}
export type TurfsResult = {
  readonly rows: readonly TurfRow[]
  readonly most: number
}

const COUNT = 25
const DRAFT = 8
/** The axis holds the pressure of softness with room to read it, and the present case. */
const LEAST = 12.5e3
const BEYOND = 1.6

/** A written, measured or layered law costs many times a plain one: a draft leaves its height out. */
const DEAR: readonly LawName[] = ['layered', 'measured', 'formula']

function rowOf(
  name: string,
  input: TurfsInput,
  q: { readonly most: number; readonly isDraft: boolean },
): TurfRow {
  const turf = input.turfs[name] as Turf
  const { unit, condition } = input
  const present = name === input.turf
  const waits = q.isDraft && !present && DEAR.includes(turf.law.kind)
  const settled = waits ? null : settleOnce({ unit, turf, condition })
  const isSettled = settled?.outcome === 'settled'
  return {
    name,
    present,
    law: turf.law.kind,
    softness: softnessOf(turf.law),
    turf,
    curve: pressureCurve(
      { roller: unit.frontRoller, turf, condition },
      { most: q.most, count: q.isDraft ? DRAFT : COUNT },
    ),
    height: isSettled ? settled.effectiveHeight.middle : settled ? 'bottoms out' : null,
    own: isSettled ? { x: settled.front.peakPressure, sinkage: settled.front.sinkage } : null,
  }
}

function turfsOf(input: TurfsInput, isDraft: boolean): Answer<TurfsResult> {
  const { unit, condition, turfs, turf } = input
  const here = turfs[turf]
  const settled = here && settleOnce({ unit, turf: here, condition })
  const pressed = settled?.outcome === 'settled' ? settled.front.peakPressure : 0
  const most = Math.max(LEAST, BEYOND * pressed)
  const rows = Object.keys(turfs).map(name => rowOf(name, input, { most, isDraft }))
  const cautions: readonly Caution[] = settled?.outcome === 'settled' ? settled.cautions : []
  return { outcome: 'answered', result: { rows, most }, cautions }
}

/** The greens: how each answers pressure, and at what height this unit would cut on it. */
export const turfs: Kind<'turfs', TurfsSettings, TurfsInput, TurfsResult> = {
  kind: 'turfs',
  read: fields => ({ turf: fields.text('turf', '') }),
  problems: ({ turf }, scenario) =>
    turf === '' || Object.hasOwn(scenario.turfs, turf)
      ? []
      : [{ path: 'turf', expected: 'the name of a green', received: turf }],
  needs: () => [],
  sets: () => ['turf', 'turf.softness'],
  input: ({ scenario: { turfs: all, turf, unit, condition } }) => ({ turfs: all, turf, unit, condition }),
  compute: input => turfsOf(input, true),
  refine(input, onStep) {
    const found = turfsOf(input, false)
    onStep(1)
    return found
  },
  offers: ({ rows }) => {
    const here = rows.find(({ present }) => present)
    return { softness: { quantity: 'softness', value: here?.softness ?? null } }
  },
  workedOut({ result, format }) {
    const here = result.rows.find(({ present }) => present)
    if (!here) return []
    return [
      {
        what: 'turfSoftness',
        equation: 'p(s) = 10 kPa',
        filled: `p(${format(here.softness, 'softness')}) = ${format(pressureAt(here.turf.law, here.softness), 'pressure')}`,
      },
    ]
  },
  section: '§2',
  check: 'test/model/turf/pressureLaws.test.ts',
}
