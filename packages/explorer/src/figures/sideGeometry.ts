import type { Point } from './frame.ts'
import { depthBeside } from './turfSurface.ts'

export type Circle = Point & { readonly radius: number }
export type SideInput = {
  readonly wheelbase: number
  readonly edge: number
  readonly benchHeight: number
  readonly frontDiameter: number
  readonly rearDiameter: number
  readonly frontSinkage: number
  readonly rearSinkage: number
  readonly drop: number
  readonly unrecovered: number
  readonly spread: number
  readonly exaggeration: number
}
export type SideGeometry = {
  readonly front: Circle
  readonly rear: Circle
  readonly edge: Point
  /** Of the body about the edge, radians; positive leans the front down. */
  readonly tilt: number
  /** None where a roller leaves no room for one above the edge. */
  readonly cylinder: Circle | undefined
  readonly hub: Point
  readonly arm: { readonly hub: number; readonly axis: number }
  /** Size of the bottom blade against its drawn pattern. */
  readonly blade: number
  readonly surface: (x: number) => number
}

/** The cylinder stands over the edge, leaning forward a little. */
const LEAN = (12 * Math.PI) / 180
/** Clearance between cylinder and rollers, mm. */
export const CLEARANCE = 3
/** Largest cylinder, as a part of the wheelbase; smaller ones than the last are not drawn at all, mm. */
const LARGEST_PART = 0.33
const LEAST_RADIUS = 5
/** Height of the hub over the axes where no cylinder is drawn, as a part of the wheelbase. */
const BARE_HUB = 0.22
/** Length of the bottom blade's pattern behind the edge, and the wheelbase it was drawn for, mm. */
const BLADE_LENGTH = 45
const DRAWN_WHEELBASE = 190

/**
 * The unit from the side: x backwards from the front axis, y up from undisturbed turf. Sinkage and bench height alike
 * carry the exaggeration; sinkage alone would push the edge into the turf.
 *
 * Units  mm throughout
 */
export function sideGeometry(input: SideInput): SideGeometry {
  const { wheelbase, exaggeration: E } = input
  const circle = (x: number, diameter: number, sinkage: number): Circle => ({
    x,
    y: diameter / 2 - E * sinkage,
    radius: diameter / 2,
  })
  const front = circle(0, input.frontDiameter, input.frontSinkage)
  const rear = circle(wheelbase, input.rearDiameter, input.rearSinkage)
  const edge = { x: input.edge, y: E * (input.benchHeight - input.drop) }
  const tilt = (E * (input.frontSinkage - input.rearSinkage)) / wheelbase
  const cylinder = largestCylinder({
    edge,
    lean: LEAN + tilt,
    rollers: [front, rear],
    limit: LARGEST_PART * wheelbase,
  })
  const hub = cylinder ?? {
    x: wheelbase / 2,
    y: Math.max(front.y, rear.y, edge.y) + BARE_HUB * wheelbase,
  }
  const size = wheelbase / DRAWN_WHEELBASE
  return {
    front,
    rear,
    edge,
    tilt,
    cylinder,
    hub,
    arm: armRadii(size, Math.min(front.radius, rear.radius), cylinder?.radius),
    blade: Math.max(0.2, Math.min(size, (wheelbase - input.edge - rear.radius * 0.6) / BLADE_LENGTH)),
    surface: surfaceOf(input, front, rear),
  }
}

function armRadii(size: number, roller: number, cylinder: number | undefined): SideGeometry['arm'] {
  const axis = Math.min(7 * size, 0.3 * roller)
  return { axis, hub: Math.max(axis * 1.1, Math.min(13.5 * size, 0.3 * (cylinder ?? roller))) }
}

/**
 * Radius R of the cylinder through the edge P whose centre P + R·u clears a roller by k = r + clearance:
 * |P + R·u − o| = R + k gives R = (|P − o|² − k²) / 2(k − u·(P − o)), if the divisor is positive; else any R clears.
 */
function largestCylinder(q: {
  edge: Point
  lean: number
  rollers: readonly Circle[]
  limit: number
}): Circle | undefined {
  const u = { x: -Math.sin(q.lean), y: Math.cos(q.lean) }
  const radius = q.rollers.reduce((least, roller) => {
    const k = roller.radius + CLEARANCE
    const away = { x: q.edge.x - roller.x, y: q.edge.y - roller.y }
    const outside = away.x ** 2 + away.y ** 2 - k * k
    const divisor = k - (u.x * away.x + u.y * away.y)
    if (outside <= 0) return 0
    return divisor > 0 ? Math.min(least, outside / (2 * divisor)) : least
  }, q.limit)
  return radius < LEAST_RADIUS
    ? undefined
    : { x: q.edge.x + radius * u.x, y: q.edge.y + radius * u.y, radius }
}

function surfaceOf(input: SideInput, front: Circle, rear: Circle): (x: number) => number {
  const E = input.exaggeration
  const beside = (roller: Circle, sinkage: number) => {
    const depth = depthBeside({ radius: roller.radius, depth: E * sinkage, spread: input.spread })
    return (x: number) => depth(x - roller.x)
  }
  const underFront = beside(front, input.frontSinkage)
  const underRear = beside(rear, input.rearSinkage)
  // What has not come back when the edge passes stays as a level track behind the front roller.
  const track = (x: number) => (x > 0 ? Math.min(E * input.unrecovered, E * input.frontSinkage) : 0)
  return x => -Math.max(0, underFront(x), underRear(x), track(x))
}

const STEPS_OF_EXAGGERATION = [10, 5, 2, 1] as const

/**
 * The largest factor, not above the wanted one, at which the drawing still looks like a unit: the rollers sink by less
 * than two thirds of their radius, and the edge stays below three quarters of the smaller roller.
 */
export function fittingExaggeration(input: Omit<SideInput, 'exaggeration'>, wanted: number): number {
  const small = Math.min(input.frontDiameter, input.rearDiameter)
  const deep = Math.max(input.frontSinkage / input.frontDiameter, input.rearSinkage / input.rearDiameter)
  const fits = (factor: number) => factor * deep < 1 / 3 && factor * input.benchHeight < 0.75 * small
  return STEPS_OF_EXAGGERATION.find(factor => factor <= wanted && (factor === 1 || fits(factor))) ?? 1
}
