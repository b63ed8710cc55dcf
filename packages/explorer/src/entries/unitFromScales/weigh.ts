import { GRAVITY, InputError, levelLoads, type Problem, type Unit, unitFromScales } from '@swardsink/model'

/** What was read, kg and m; absent where nothing was. */
export type Readings = {
  readonly total?: number
  readonly front?: number
  readonly rear?: number
  readonly left?: number
  readonly right?: number
  readonly boxEmpty?: number
  readonly boxFull?: number
  readonly boxAt?: number
  readonly height?: number
}

export const READINGS = [
  'total',
  'front',
  'rear',
  'left',
  'right',
  'boxEmpty',
  'boxFull',
  'boxAt',
  'height',
] as const satisfies readonly (keyof Readings)[]

/** What the scales are told of the box. */
const BOX = 'grass box'

export type Contradiction =
  | { readonly reason: 'three disagree'; readonly whole: number; readonly parts: number }
  | { readonly reason: 'sides disagree'; readonly whole: number; readonly parts: number }
  | {
      readonly reason: 'roller heavier'
      readonly where: 'front' | 'rear'
      readonly reading: number
      readonly roller: number
    }
  | { readonly reason: 'model'; readonly problem: Problem }

export type Weighed =
  | { readonly state: 'too few' }
  | { readonly state: 'contradiction'; readonly why: Contradiction }
  | { readonly state: 'weighed'; readonly unit: Unit }

/** The unit as it stands on the scales: its box is off, whatever else it carries is on. */
function onScales(unit: Unit): Unit {
  const { loads = [], ...bare } = unit
  const rest = loads.filter(({ name }) => name !== BOX)
  return rest.length > 0 ? { ...bare, loads: rest } : bare
}

/** What the scales would read, kg. */
export function wouldRead(unit: Unit): {
  readonly total: number
  readonly front: number
  readonly rear: number
} {
  const { front, rear } = levelLoads(onScales(unit))
  return { total: (front + rear) / GRAVITY, front: front / GRAVITY, rear: rear / GRAVITY }
}

const shareOf = ({ total, front, rear }: Readings): { front: number; rear: number } | null => {
  if (front !== undefined && rear !== undefined) return { front, rear }
  if (total !== undefined && front !== undefined) return { front, rear: total - front }
  if (total !== undefined && rear !== undefined) return { front: total - rear, rear }
  return null
}

function contradictionOf(error: InputError, readings: Readings, unit: Unit): Contradiction {
  const problem = { path: error.quantity, expected: error.expected, received: error.received }
  const { total, front, rear, left, right } = readings
  const share = shareOf(readings)
  const three = total !== undefined && front !== undefined && rear !== undefined
  if (problem.path === 'scales.total' && three)
    return { reason: 'three disagree', whole: total, parts: front + rear }
  const whole = share ? share.front + share.rear : 0
  if (problem.path === 'scales.left' && left !== undefined && right !== undefined)
    return { reason: 'sides disagree', whole, parts: left + right }
  const heavier = (['front', 'rear'] as const).find(where => {
    const roller = where === 'front' ? unit.frontRoller : unit.rearRoller
    return share !== null && share[where] <= roller.mass
  })
  if (!heavier || !share) return { reason: 'model', problem }
  const roller = heavier === 'front' ? unit.frontRoller : unit.rearRoller
  return { reason: 'roller heavier', where: heavier, reading: share[heavier], roller: roller.mass }
}

/** The unit in hand with the body, and the box, that answer these readings. */
export function weigh(readings: Readings, unit: Unit): Weighed {
  const share = shareOf(readings)
  if (!share) return { state: 'too few' }
  const { frontRoller, rearRoller, wheelbase, edge, benchHeight } = unit
  const { loads: carried = [], ...bare } = onScales(unit)
  // what stays on the unit while it is weighed is no part of its body
  const [laden, unladen] = [wouldRead(unit), wouldRead(bare)]
  const less = { front: laden.front - unladen.front, rear: laden.rear - unladen.rear }
  const { total, front, rear, left, right, height, boxEmpty, boxFull, boxAt } = readings
  const hasBox = boxEmpty !== undefined && boxAt !== undefined
  try {
    const made = unitFromScales({
      ...(total === undefined ? {} : { total: total - less.front - less.rear }),
      ...(front === undefined ? {} : { front: front - less.front }),
      ...(rear === undefined ? {} : { rear: rear - less.rear }),
      ...(left === undefined ? {} : { left }),
      ...(right === undefined ? {} : { right }),
      ...(height === undefined ? {} : { height }),
      ...(hasBox ? { box: { empty: boxEmpty, full: boxFull ?? boxEmpty, at: boxAt } } : {}),
      rollers: { front: frontRoller, rear: rearRoller },
      wheelbase,
      edge,
      benchHeight,
    })
    const boxes = made.loads ?? (unit.loads ?? []).filter(({ name }) => name === BOX)
    const loads = [...carried, ...boxes]
    const { height: known, offset: aside } = unit.body
    const body = {
      ...made.body,
      ...(made.body.height === undefined && known !== undefined ? { height: known } : {}),
      ...(made.body.offset === undefined && aside !== undefined ? { offset: aside } : {}),
    }
    return { state: 'weighed', unit: { ...bare, body, ...(loads.length > 0 ? { loads } : {}) } }
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    return { state: 'contradiction', why: contradictionOf(error, readings, unit) }
  }
}

/** What a full box adds to the scales under each roller, kg; null where the box is not known full. */
export function fullBoxAdds(readings: Readings, { wheelbase }: Unit): { front: number; rear: number } | null {
  const { boxEmpty, boxFull, boxAt } = readings
  if (boxEmpty === undefined || boxFull === undefined || boxAt === undefined) return null
  const rear = ((boxFull - boxEmpty) * boxAt) / wheelbase
  return { front: boxFull - boxEmpty - rear, rear }
}

/** Half a gram, a hundredth of a millimetre: nearer than any scale or rule tells apart. */
const SAME = { mass: 5e-4, at: 1e-5 }

/** Whether two units would be weighed as one. */
export function weighAlike(a: Unit, b: Unit): boolean {
  const near = (one: number | undefined, other: number | undefined, by: number) =>
    one === undefined || other === undefined ? one === other : Math.abs(one - other) < by
  return (
    near(a.body.mass, b.body.mass, SAME.mass) &&
    near(a.body.at, b.body.at, SAME.at) &&
    near(a.body.height, b.body.height, SAME.at) &&
    near(a.body.offset ?? 0, b.body.offset ?? 0, SAME.at) &&
    JSON.stringify(a.loads ?? []) === JSON.stringify(b.loads ?? [])
  )
}
