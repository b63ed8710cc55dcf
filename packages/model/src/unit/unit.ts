import {
  describe,
  type Kilograms,
  type Metres,
  type Newtons,
  numberProblem,
  objectProblem,
  type Problem,
  type QuantityName,
  type Radians,
} from '../quantities/index.ts'
import { type Roller, rollerProblems } from '../roller/index.ts'

/** Something else that acts on the unit: box, clippings, accessories, the load of a lift arm. */
export type UnitLoad = {
  readonly name: string
  readonly mass?: Kilograms
  /** A force that presses the unit down; negative: it lifts. */
  readonly down?: Newtons
  /** A force that pushes it forward. */
  readonly forward?: Newtons
  /** Behind the front roller axis, along the bench line; negative ahead of it. */
  readonly at: Metres
  /** Above the bench line; the front axle's height unless given. */
  readonly height?: Metres
  /** To the right of the middle; 0 unless given. */
  readonly offset?: Metres
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
  /** Names in a rack of the rollers fitted, if they come from one: nothing that is worked out hangs on them. */
  readonly fitted?: { readonly front?: string; readonly rear?: string }
  /** The unit without its rollers; offset to the right of the middle. */
  readonly body: {
    readonly mass: Kilograms
    readonly at: Metres
    readonly height?: Metres
    readonly offset?: Metres
  }
  readonly loads?: readonly UnitLoad[]
  /** Positive with the front higher. */
  readonly slopeAlong?: Radians
  /** Positive with the right side lower. */
  readonly slopeAcross?: Radians
  /** Height of the pull above the bench line; absent: the pull is at the rollers' axes. */
  readonly hitchHeight?: Metres
  /** Blades of the cutting cylinder and how fast it turns. */
  readonly cylinder?: { readonly blades: number; readonly turnsPerSecond: number }
  /** Length of the cutting edge; the front roller's unless given. */
  readonly edgeLength?: Metres
}

/** Steeper ground than this is no place for a mower, and the small lean of the model no description of it. */
const STEEPEST: Radians = Math.PI / 4

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

type Range = Parameters<typeof numberProblem>[3]

const ifGiven = (value: unknown, path: string, quantity: QuantityName, range: Range = {}): Problem[] =>
  value === undefined ? [] : numberProblem(value, path, quantity, range)

const loadProblems = (load: UnitLoad, path: string): Problem[] => [
  ...ifGiven(load.mass, `${path}.mass`, 'mass', { atLeast: 0 }),
  ...ifGiven(load.down, `${path}.down`, 'load'),
  ...ifGiven(load.forward, `${path}.forward`, 'load'),
  ...numberProblem(load.at, `${path}.at`, 'place'),
  ...ifGiven(load.height, `${path}.height`, 'place'),
  ...ifGiven(load.offset, `${path}.offset`, 'place'),
]

const bladeProblems = (blades: number | undefined, path: string): Problem[] =>
  blades === undefined || (Number.isInteger(blades) && blades >= 1)
    ? []
    : [{ path, expected: 'a whole number, at least 1', received: describe(blades) }]

const soundPartProblems = (unit: Unit, path: string): Problem[] => [
  ...frameProblems(unit, path),
  ...numberProblem(unit.body.mass, `${path}.body.mass`, 'mass', { atLeast: 0 }),
  ...numberProblem(unit.body.at, `${path}.body.at`, 'place'),
  ...ifGiven(unit.body.height, `${path}.body.height`, 'place'),
  ...ifGiven(unit.body.offset, `${path}.body.offset`, 'place'),
  ...(unit.loads ?? []).flatMap((load, i) => loadProblems(load, `${path}.loads.${i}`)),
  ...ifGiven(unit.slopeAlong, `${path}.slopeAlong`, 'angle', { atLeast: -STEEPEST, atMost: STEEPEST }),
  ...ifGiven(unit.slopeAcross, `${path}.slopeAcross`, 'angle', { atLeast: -STEEPEST, atMost: STEEPEST }),
  ...ifGiven(unit.hitchHeight, `${path}.hitchHeight`, 'place', { atLeast: 0 }),
  ...bladeProblems(unit.cylinder?.blades, `${path}.cylinder.blades`),
  ...ifGiven(unit.cylinder?.turnsPerSecond, `${path}.cylinder.turnsPerSecond`, 'turning', { above: 0 }),
  ...ifGiven(unit.edgeLength, `${path}.edgeLength`, 'length', { above: 0 }),
]

/** What is wrong with the parts of a unit, one by one. */
export function partProblems(unit: Unit, path: string): Problem[] {
  const shapeless = objectProblem(unit, path)
  if (shapeless.length > 0) return shapeless
  const bodiless = objectProblem(unit.body, `${path}.body`)
  return bodiless.length > 0 ? bodiless : soundPartProblems(unit, path)
}
