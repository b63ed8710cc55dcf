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
  ...(['total', 'front', 'rear'] as const).flatMap(name =>
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
    const difference = front + rear - total
    if (Math.abs(difference) > DISAGREEMENT)
      return [
        {
          path: `${path}.total`,
          expected: `the sum of front and rear, ${describe(front + rear, 'mass')}, within ${describe(DISAGREEMENT, 'mass')}`,
          received: `${describe(total, 'mass')}, a difference of ${describe(Math.abs(difference), 'mass')}`,
        },
      ]
  }
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
  return {
    ...frame,
    body: { mass, at: (rear * wheelbase) / mass, ...(height === undefined ? {} : { height }) },
    ...(box ? { loads: [{ name: 'grass box', mass: box.empty, at: box.at }] } : {}),
  }
}
