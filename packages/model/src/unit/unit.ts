import type { Kilograms, Metres } from '../quantities/units.ts'
import type { Roller } from '../roller/index.ts'

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
