import { GRAVITY, press, pressureAt, sinkageAt, softnessOf } from '@swardsink/model'
import type { Kind } from '../../book/index.ts'
import { type ReadingRow, readingRows } from '../readingRows.ts'
import { answer, type SettledInput, settledInput, settleOnce } from '../settled.ts'
import { type CurveFound, type CurvePoint, loadCurve, pointAt, pressureCurve } from './oneCurve.ts'
import { type CurveName, type CurveQuestion, curveQuestions, OVERS, type Over } from './questions.ts'

export const SHOWS = ['load', 'pressure'] as const
export type Show = (typeof SHOWS)[number]

export type CurvesSettings = {
  readonly show: Show
  readonly over: Over
  /** Id of the entry whose readings are drawn on top; empty for none. */
  readonly readings: string
}
export type CurvesInput = SettledInput & {
  readonly show: Show
  readonly over: Over
  readonly questions: readonly CurveQuestion[]
  readonly readings: readonly ReadingRow[]
}
export type Curve = CurveFound & {
  readonly name: CurveName
  readonly present: boolean
  /** Where the roller of this curve stands under its own load; null without an answer. */
  readonly own: CurvePoint | null
  /** Sinkage at the present load or pressure; null without an answer. */
  readonly atPresent: number | null
}
export type CurvesResult = {
  readonly show: Show
  readonly over: Over
  /** The one in hand among them. One without points is a mark on the curve of the one in hand. */
  readonly curves: readonly Curve[]
  /** The case in hand. */
  readonly present: CurvePoint
  /** What defines softness: 10 kPa under a wide plate; on the curve of pressure only. */
  readonly softness: CurvePoint | null
  /** Of the turf in hand. */
  readonly softnessHere: number
  readonly readings: readonly (CurvePoint & { readonly set: string })[]
  readonly most: number
}

/** Points of a curve: what fits in a frame, and what a printed page deserves. */
const DRAFT = 8
const FINE = 41
/** The axis reaches so far beyond the case in hand, and at least as far as every mark. */
const BEYOND = 1.6
const ROOM = 1.08
/** The pressure of softness is on the axis with room to be read. */
const REFERENCE_PRESSURE = 10e3
const LEAST_PRESSURE = 1.25 * REFERENCE_PRESSURE

/** Under grooves these laws cost ten to a hundred times a plain one: a draft leaves them out. */
const DEAR = ['power', 'layered', 'measured', 'formula']
const isDear = ({ turf, unit, present }: CurveQuestion): boolean =>
  !present && unit.frontRoller.surface.kind === 'grooved' && DEAR.includes(turf.law.kind)

/** Where the roller of a curve stands under its own load, from the same sum as every other entry. */
function ownOf({ unit, turf, condition }: CurveQuestion, show: Show): CurvePoint | null {
  const settled = settleOnce({ unit, turf, condition })
  if (settled.outcome !== 'settled') return null
  const { load, peakPressure, sinkage } = settled.front
  return { x: show === 'load' ? load : peakPressure, sinkage }
}

const pressingOf = ({ unit, turf, condition }: CurveQuestion) => ({
  roller: unit.frontRoller,
  turf,
  condition,
})

function sinkageUnder(q: CurveQuestion, load: number): number | null {
  const found = press({ ...pressingOf(q), load })
  return found.outcome === 'settled' ? found.sinkage : null
}

/** Load on a roller in the place of the fitted one: what it weighs more falls on its own axle. */
const loadInPlace = (q: CurveQuestion, { unit }: CurvesInput, present: number): number =>
  present + GRAVITY * (q.unit.frontRoller.mass - unit.frontRoller.mass)

/** In a draft of pressures the others are pressed by the load they would have in the place of the fitted one. */
function draftedOwn(q: CurveQuestion, input: CurvesInput, load: number): CurvePoint | null {
  const found = press({ ...pressingOf(q), load: Math.max(loadInPlace(q, input, load), 1) })
  return found.outcome === 'settled' ? { x: found.peakPressure, sinkage: found.sinkage } : null
}

type Axis = { readonly present: CurvePoint; readonly most: number; readonly isDraft: boolean }

function loadCurveOf(q: CurveQuestion, input: CurvesInput, { present, most, isDraft }: Axis): Curve {
  const start = present.sinkage * (most / present.x)
  const found = loadCurve(pressingOf(q), { most, count: isDraft ? DRAFT : FINE, start })
  const { name, present: isPresent } = q
  const told = { name, present: isPresent, ...found }
  if (isPresent) return { ...told, own: present, atPresent: present.sinkage }
  if (isDraft) {
    const own = pointAt(found.points, loadInPlace(q, input, present.x))
    return { ...told, own, atPresent: pointAt(found.points, present.x)?.sinkage ?? null }
  }
  return { ...told, own: ownOf(q, 'load'), atPresent: sinkageUnder(q, present.x) }
}

/** Pressure hangs on the turf alone: where all stand on one turf the others are marks on the one curve. */
function pressureCurveOf(
  q: CurveQuestion,
  over: Over,
  { present, most, isDraft, own }: Axis & { readonly own: CurvePoint | null },
): Curve {
  const { name, present: isPresent } = q
  const isMark = !isPresent && (over === 'rollers' || over === 'conditions')
  const found: CurveFound = isMark
    ? { points: [], knownTo: null, bottomsOut: false }
    : pressureCurve(pressingOf(q), { most, count: isDraft ? DRAFT : FINE })
  const atPresent = isPresent ? present.sinkage : isMark ? null : sinkageAt(q.turf.law, present.x)
  return { name, present: isPresent, ...found, own, atPresent }
}

function readingsOn({ readings, show }: CurvesInput): CurvesResult['readings'] {
  return readings.flatMap(({ sinkage, set, load, pressure }) => {
    const x = show === 'load' ? load : pressure
    return x === null ? [] : [{ x, sinkage, set }]
  })
}

function curvesOf(input: CurvesInput, isDraft: boolean, onStep: (done: number) => void = () => {}) {
  return answer<CurvesResult>(() => {
    const { show, over, unit, turf, condition } = input
    const settled = settleOnce({ unit, turf, condition })
    if (settled.outcome !== 'settled') return settled
    const { load, peakPressure, sinkage } = settled.front
    const present = { x: show === 'load' ? load : peakPressure, sinkage }
    const readings = readingsOn(input)
    const asked = input.questions.filter(q => !isDraft || !isDear(q))
    const reach = (marks: readonly number[]) =>
      Math.max(BEYOND * present.x, ROOM * Math.max(0, ...marks, ...readings.map(({ x }) => x)))
    const curvesFound = (): { readonly curves: readonly Curve[]; readonly most: number } => {
      if (show === 'load') {
        const most = reach(asked.map(q => loadInPlace(q, input, load)))
        return {
          most,
          curves: asked.map((q, i) => {
            const curve = loadCurveOf(q, input, { present, most, isDraft })
            onStep((i + 1) / asked.length)
            return curve
          }),
        }
      }
      const own = asked.map(q =>
        q.present ? present : isDraft ? draftedOwn(q, input, load) : ownOf(q, show),
      )
      const most = reach([LEAST_PRESSURE / ROOM, ...own.map(mark => mark?.x ?? 0)])
      const curves = asked.map((q, i) =>
        pressureCurveOf(q, over, { present, most, isDraft, own: own[i] ?? null }),
      )
      return { most, curves }
    }
    const { curves, most } = curvesFound()
    const softnessHere = softnessOf(turf.law)
    const softness = show === 'pressure' ? { x: REFERENCE_PRESSURE, sinkage: softnessHere } : null
    const cautions = settled.cautions.filter(({ where }) => where !== 'rear roller')
    return { result: { show, over, curves, present, softness, softnessHere, readings, most }, cautions }
  })
}

/** Load or pressure against sinkage: several rollers, turfs or laws on one pair of axes. */
export const curves: Kind<'curves', CurvesSettings, CurvesInput, CurvesResult> = {
  kind: 'curves',
  read: fields => ({
    show: fields.oneOf('show', SHOWS, 'load'),
    over: fields.oneOf('over', OVERS, 'rollers'),
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
  input: ({ settings, scenario, answers }) => ({
    ...settledInput(scenario),
    show: settings.show,
    over: settings.over,
    questions: curveQuestions(settings.over, scenario),
    readings: settings.readings === '' ? [] : readingRows(answers[settings.readings]),
  }),
  compute: input => curvesOf(input, true),
  refine: (input, onStep) => curvesOf(input, false, onStep),
  offers: ({ show, present }) =>
    show === 'load'
      ? {
          load: { quantity: 'load', value: present.x },
          sinkage: { quantity: 'sinkage', value: present.sinkage },
        }
      : {
          pressure: { quantity: 'pressure', value: present.x },
          sinkage: { quantity: 'sinkage', value: present.sinkage },
        },
  workedOut({ input, result, format }) {
    const { turf } = input
    const softness = softnessOf(turf.law)
    const lines = [
      {
        what: 'curvesSoftness',
        equation: 'p(s) = 10 kPa',
        filled: `p(${format(softness, 'softness')}) = ${format(pressureAt(turf.law, softness), 'pressure')}`,
      },
    ]
    const { present, show } = result
    if (show === 'pressure')
      return [
        ...lines,
        {
          what: 'curvesPressure',
          equation: 'z = z(p)',
          filled: `z(${format(present.x, 'pressure')}) = ${format(sinkageAt(turf.law, present.x), 'sinkage')}`,
        },
      ]
    return [
      ...lines,
      {
        what: 'curvesLoad',
        equation: 'W(z) = q(z) L',
        filled: `W(${format(present.sinkage, 'sinkage')}) = ${format(present.x, 'load')}`,
      },
    ]
  },
  section: '§3',
  check: 'test/explorer/entries/curves.test.ts',
}
