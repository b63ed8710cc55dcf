import {
  describe,
  type Kilograms,
  type Metres,
  numberProblem,
  type Problem,
  refuse,
} from '../quantities/index.ts'
import type { Roller } from '../roller/index.ts'
import { frameProblems, type Unit } from './unit.ts'

/** What the scales say, in kg. Two of total, front and rear are enough. The box is off while the unit is weighed. */
export type ScaleReadings = {
  readonly total?: Kilograms
  readonly front?: Kilograms
  readonly rear?: Kilograms
  /** With a scale under each end of the front roller's length; either is enough. */
  readonly left?: Kilograms
  readonly right?: Kilograms
  /** The grass box: its mass empty and full, and where it hangs. It is fitted empty. */
  readonly box?: { readonly empty: Kilograms; readonly full: Kilograms; readonly at: Metres }
}

export type ScalesQuestion = ScaleReadings & {
  readonly rollers: { readonly front: Roller; readonly rear: Roller }
  readonly wheelbase: Metres
  readonly edge: Metres
  readonly benchHeight: Metres
  /** Height of the body's centre of gravity above the bench line, if known. */
  readonly height?: Metres
}

/** Three readings may differ from their sum by this much: what workshop scales are good to. */
const DISAGREEMENT: Kilograms = 0.2

const readingProblems = (readings: ScaleReadings, path: string): Problem[] => [
  ...(['total', 'front', 'rear', 'left', 'right'] as const).flatMap(name =>
    readings[name] === undefined
      ? []
      : numberProblem(readings[name], `${path}.${name}`, 'mass', { above: 0 }),
  ),
  ...(readings.box
    ? [
        ...numberProblem(readings.box.empty, `${path}.box.empty`, 'mass', { atLeast: 0 }),
        ...numberProblem(readings.box.full, `${path}.box.full`, 'mass', { atLeast: readings.box.empty }),
        ...numberProblem(readings.box.at, `${path}.box.at`, 'place'),
      ]
    : []),
]

/** Front and rear reading, the third worked out where two are given. */
function shares({ total, front, rear }: ScaleReadings): { front: number; rear: number } | undefined {
  if (front !== undefined && rear !== undefined) return { front, rear }
  if (total !== undefined && front !== undefined) return { front, rear: total - front }
  if (total !== undefined && rear !== undefined) return { front: total - rear, rear }
  return undefined
}

/** Sums of decimals are told without their binary dust. */
const rounded = (mass: Kilograms): Kilograms => Number(mass.toPrecision(5))

/** A sum of readings that another contradicts, told with the difference. */
function contradiction(whole: number, parts: number, words: { path: string; parts: string }): Problem[] {
  const difference = Math.abs(parts - whole)
  if (difference <= DISAGREEMENT) return []
  return [
    {
      path: words.path,
      expected: `${words.parts} together to be the whole unit within ${describe(DISAGREEMENT, 'mass')}`,
      received: `${describe(rounded(parts), 'mass')} and ${describe(rounded(whole), 'mass')}, a difference of ${describe(rounded(difference), 'mass')}`,
    },
  ]
}

/** Left and right reading of the whole unit, one worked out from the other where need be. */
function sides(
  { left, right }: ScaleReadings,
  whole: Kilograms,
): { left: number; right: number } | undefined {
  if (left === undefined && right === undefined) return undefined
  return { left: left ?? whole - right!, right: right ?? whole - left! }
}

function sideProblems(readings: ScaleReadings, whole: Kilograms, path: string): Problem[] {
  const { left, right } = readings
  if (left !== undefined && right !== undefined)
    return contradiction(whole, left + right, { path: `${path}.left`, parts: 'left and right' })
  const name = left === undefined ? 'right' : 'left'
  const reading = left ?? right
  return reading === undefined || reading < whole
    ? []
    : [
        {
          path: `${path}.${name}`,
          expected: `less than the whole unit's ${describe(whole, 'mass')}`,
          received: describe(reading, 'mass'),
        },
      ]
}

/** What is wrong with scale readings, roller by roller. */
export function scaleProblems(
  readings: ScaleReadings,
  rollers: { readonly front: Roller; readonly rear: Roller },
  path: string,
): Problem[] {
  const problems = readingProblems(readings, path)
  if (problems.length > 0) return problems
  const share = shares(readings)
  if (!share)
    return [
      {
        path,
        expected: 'two of the readings total, front and rear',
        received: describe(Object.keys(readings)),
      },
    ]
  const { total, front, rear } = readings
  if (total !== undefined && front !== undefined && rear !== undefined) {
    const apart = contradiction(total, front + rear, { path: `${path}.total`, parts: 'front and rear' })
    if (apart.length > 0) return apart
  }
  const across = sideProblems(readings, share.front + share.rear, path)
  if (across.length > 0) return across
  return (['front', 'rear'] as const).flatMap(end => {
    const own = rollers[end].mass
    if (share[end] > own) return []
    const asked = readings[end] === undefined
    return [
      {
        path: `${path}.${asked ? 'total' : end}`,
        expected: `more than the ${end} roller's own ${describe(own, 'mass')}${asked ? ' left on it' : ''}`,
        received: describe(share[end], 'mass'),
      },
    ]
  })
}

/**
 * A unit that answers the scales.
 *
 *   m_body = m_f + m_r − rollers,  x_body = (m_r − rear roller) B/m_body
 *   y_body = (m_right − m_left) L/2 m_body, the rollers lying evenly about the middle
 *
 * Holds   for the unit weighed level with the named rollers fitted and without its box; a roller sits on its own
 *         axis, so swapping the front one changes the front reading alone
 * Units   readings [kg], lengths [m]
 * Throws  InputError when fewer than two readings are given, three disagree by more than 0.2 kg, a roller is
 *         heavier than its reading, or a length makes no sense
 * Source  balance of moments
 */
export function unitFromScales(question: ScalesQuestion): Unit {
  const { rollers, wheelbase, edge, benchHeight, height, box } = question
  const frame = { wheelbase, edge, benchHeight, frontRoller: rollers.front, rearRoller: rollers.rear }
  refuse([...frameProblems(frame, 'unit'), ...scaleProblems(question, rollers, 'scales')])
  const share = shares(question) as { front: number; rear: number }
  const front = share.front - rollers.front.mass
  const rear = share.rear - rollers.rear.mass
  const mass = front + rear
  const across = sides(question, share.front + share.rear)
  const offset = across && ((across.right - across.left) * rollers.front.length) / (2 * mass)
  return {
    ...frame,
    body: {
      mass,
      at: (rear * wheelbase) / mass,
      ...(height === undefined ? {} : { height }),
      ...(offset === undefined ? {} : { offset }),
    },
    ...(box ? { loads: [{ name: 'grass box', mass: box.empty, at: box.at }] } : {}),
  }
}
