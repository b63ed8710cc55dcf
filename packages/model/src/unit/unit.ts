import { GRAVITY, type Kilograms, type Metres, numberProblem, type Problem } from '../quantities/index.ts'
import { type Roller, rollerProblems } from '../roller/index.ts'

/** A weight carried by the unit beside its body: box, clippings, accessories. */
export type UnitLoad = {
  readonly name: string
  readonly mass: Kilograms
  /** Behind the front roller axis, along the bench line; negative ahead of it. */
  readonly at: Metres
  /** Above the bench line; the front axle's height unless given. */
  readonly height?: Metres
}

/**
 * A cutting unit on two rollers. Distances run backwards from the front roller axis along the bench line,
 * the line that touches the underside of both rollers on a hard flat; heights stand on that line.
 */
export type Unit = {
  /** Rear roller axis behind the front roller axis. */
  readonly wheelbase: Metres
  /** Cutting edge behind the front roller axis. */
  readonly edge: Metres
  /** Height of the cutting edge above the bench line. */
  readonly benchHeight: Metres
  readonly frontRoller: Roller
  readonly rearRoller: Roller
  /** The unit without its rollers. */
  readonly body: { readonly mass: Kilograms; readonly at: Metres; readonly height?: Metres }
  readonly loads?: readonly UnitLoad[]
}

/** A weight at a place in the unit's own frame. */
export type Weight = {
  readonly name: string
  readonly mass: Kilograms
  readonly at: Metres
  readonly height: Metres
}

/** Every weight of the unit; heights not given are the front axle's. */
export function weightsOf(unit: Unit): Weight[] {
  const { body, frontRoller, rearRoller, wheelbase, loads = [] } = unit
  const axle = frontRoller.diameter / 2
  return [
    { name: 'body', mass: body.mass, at: body.at, height: body.height ?? axle },
    { name: 'front roller', mass: frontRoller.mass, at: 0, height: axle },
    { name: 'rear roller', mass: rearRoller.mass, at: wheelbase, height: rearRoller.diameter / 2 },
    ...loads.map(({ name, mass, at, height = axle }) => ({ name, mass, at, height })),
  ]
}

/** Place of the edge: between the axes. */
const edgeProblems = (edge: number, wheelbase: number, path: string): Problem[] =>
  numberProblem(edge, path, 'place', {
    above: 0,
    ...(Number.isFinite(wheelbase) && wheelbase > 0 ? { below: wheelbase } : {}),
  }).map(problem => ({ ...problem, expected: `${problem.expected}, the wheelbase` }))

/** Lengths of the unit's frame, which stand whatever is fitted to it. */
export const lengthProblems = (
  unit: Pick<Unit, 'wheelbase' | 'edge' | 'benchHeight'>,
  path: string,
): Problem[] => [
  ...numberProblem(unit.wheelbase, `${path}.wheelbase`, 'wheelbase', { above: 0 }),
  ...edgeProblems(unit.edge, unit.wheelbase, `${path}.edge`),
  ...numberProblem(unit.benchHeight, `${path}.benchHeight`, 'height', { above: 0 }),
]

/** Sizes of the unit's frame and rollers, with or without a body. */
export const frameProblems = (unit: Omit<Unit, 'body' | 'loads'>, path: string): Problem[] => [
  ...lengthProblems(unit, path),
  ...rollerProblems(unit.frontRoller, `${path}.frontRoller`),
  ...rollerProblems(unit.rearRoller, `${path}.rearRoller`),
]

function weightProblems(weight: { mass: number; at: number; height?: number }, path: string): Problem[] {
  return [
    ...numberProblem(weight.mass, `${path}.mass`, 'mass', { atLeast: 0 }),
    ...numberProblem(weight.at, `${path}.at`, 'place'),
    ...(weight.height === undefined ? [] : numberProblem(weight.height, `${path}.height`, 'place')),
  ]
}

/** Both rollers must press the turf when the unit stands level. */
function balanceProblems(unit: Unit, path: string): Problem[] {
  const { front, rear } = levelLoads(unit)
  const tips = (roller: string, load: number): Problem[] =>
    load > 0
      ? []
      : [
          {
            path: `${path}.body.at`,
            expected: 'a centre of gravity that leaves load on both rollers',
            received: `${Number((load / GRAVITY).toPrecision(3))} kg on the ${roller} roller: the unit would tip`,
          },
        ]
  return [...tips('front', front), ...tips('rear', rear)]
}

export function unitProblems(unit: Unit, path: string): Problem[] {
  const problems = [
    ...frameProblems(unit, path),
    ...weightProblems(unit.body, `${path}.body`),
    ...(unit.loads ?? []).flatMap((load, i) => weightProblems(load, `${path}.loads.${i}`)),
  ]
  return problems.length > 0 ? problems : balanceProblems(unit, path)
}

/**
 * Load on each roller when the unit stands level.
 *
 *   W_r B = Σ m g x,  W_f = Σ m g − W_r
 *
 * Sign    load positive down
 * Units   [N]
 */
export function levelLoads(unit: Unit): { readonly front: number; readonly rear: number } {
  let total = 0
  let moment = 0
  for (const { mass, at } of weightsOf(unit)) {
    total += mass * GRAVITY
    moment += mass * GRAVITY * at
  }
  const rear = moment / unit.wheelbase
  return { front: total - rear, rear }
}
