import {
  GRAVITY,
  type Metres,
  type Newtons,
  numberProblem,
  type Problem,
  refuse,
} from '../quantities/index.ts'

/** One roller as it stands: what it carries, and dW/dz, N/m. */
export type BounceSupport = { readonly load: Newtons; readonly stiffness: number }

export type BounceQuestion = {
  readonly front: BounceSupport
  readonly rear: BounceSupport
  readonly wheelbase: Metres
  /** Moment of inertia of the whole unit about the axis across it through its centre of gravity, kg m². */
  readonly inertia?: number
}

/** A way of swinging: how often a second, and where along the unit it stays still, behind the front axle. */
export type BounceMode = {
  readonly frequency: number
  /** null: the unit moves up and down as a whole. */
  readonly node: Metres | null
}

export type Bounce =
  | { readonly kind: 'modes'; readonly heave: BounceMode; readonly pitch: BounceMode }
  /** Without a moment of inertia: each end as if it moved alone, cycles per second. */
  | { readonly kind: 'each end alone'; readonly front: number; readonly rear: number }

const supportProblems = ({ load, stiffness }: BounceSupport, path: string): Problem[] => [
  ...numberProblem(load, `${path}.load`, 'load', { above: 0 }),
  ...numberProblem(stiffness, `${path}.stiffness`, 'stiffness', { above: 0 }),
]

const bounceProblems = ({ front, rear, wheelbase, inertia }: BounceQuestion): Problem[] => [
  ...supportProblems(front, 'front'),
  ...supportProblems(rear, 'rear'),
  ...numberProblem(wheelbase, 'wheelbase', 'wheelbase', { above: 0 }),
  ...(inertia === undefined ? [] : numberProblem(inertia, 'inertia', 'ratio', { above: 0 })),
]

const perSecond = (squaredRate: number): number => Math.sqrt(squaredRate) / (2 * Math.PI)

/**
 * How a unit bounces on the turf.
 *
 *   m ÿ = −(k_f + k_r) y − C θ,  I θ̈ = −C y − (k_f a² + k_r b²) θ,  C = k_r b − k_f a
 *   ω² = ½ [A + D ± √((A − D)² + 4 C²/(m I))],  A = (k_f + k_r)/m,  D = (k_f a² + k_r b²)/I
 *   each end alone: f = √(g k/W)/2π
 *
 * Holds   small swings about rest on weights alone; no damping. The node further from the centre of gravity than
 *         √(I/m) is the heave's, the nearer one the pitch's. With I = m a b each end does move alone
 * Units   loads [N], stiffnesses [N/m], inertia [kg m²] → frequencies [1/s], nodes [m]
 * Throws  InputError when a number is not positive
 * Source  two degrees of freedom on two springs, in closed form (docs/physics.md §4)
 */
export function bounce(question: BounceQuestion): Bounce {
  refuse(bounceProblems(question))
  const { front, rear, wheelbase, inertia } = question
  if (inertia === undefined) {
    const alone = ({ load, stiffness }: BounceSupport) => perSecond((GRAVITY * stiffness) / load)
    return { kind: 'each end alone', front: alone(front), rear: alone(rear) }
  }
  const mass = (front.load + rear.load) / GRAVITY
  const a = (rear.load * wheelbase) / (front.load + rear.load)
  const b = wheelbase - a
  const A = (front.stiffness + rear.stiffness) / mass
  const D = (front.stiffness * a * a + rear.stiffness * b * b) / inertia
  const C = rear.stiffness * b - front.stiffness * a
  const coupling = C / Math.sqrt(mass * inertia)
  const apart = Math.hypot(A - D, 2 * coupling)
  const fast = (A + D + apart) / 2
  // the product of both is k_f k_r B²/(m I): the slow one from it keeps its digits
  const slow = (front.stiffness * rear.stiffness * wheelbase ** 2) / (mass * inertia * fast)
  // tan of the angle by which heave leans towards pitch, both measured in √m y and √I θ
  const apartness = Math.abs(A - D) + apart
  const lean = apartness === 0 ? 0 : (2 * coupling * (A >= D ? 1 : -1)) / apartness
  const reach = Math.sqrt(inertia / mass)
  const [heaves, pitches] = A >= D ? [fast, slow] : [slow, fast]
  return {
    kind: 'modes',
    heave: { frequency: perSecond(heaves), node: lean === 0 ? null : a - reach / lean },
    pitch: { frequency: perSecond(pitches), node: a + reach * lean },
  }
}
