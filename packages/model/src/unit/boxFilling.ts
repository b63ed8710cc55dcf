import {
  GRAVITY,
  type Kilograms,
  type Metres,
  type Newtons,
  numberProblem,
  type Problem,
  refuse,
} from '../quantities/index.ts'

export type FillingQuestion = {
  /** The grass box: its mass empty and full, and where its clippings lie behind the front roller axis. */
  readonly box: { readonly empty: Kilograms; readonly full: Kilograms; readonly at: Metres }
  /** What is cut off, kg/m²: the volume harvested per area times the density of fresh clippings. */
  readonly harvest: number
  readonly cuttingWidth: Metres
  readonly wheelbase: Metres
  /** Distances mown since the box was emptied. */
  readonly distances: readonly Metres[]
}

export type FillingStep = {
  readonly distance: Metres
  /** Box and clippings. */
  readonly mass: Kilograms
  /** What the clippings add to each roller on level ground; negative where they lift it. */
  readonly front: Newtons
  readonly rear: Newtons
}

export type Filling = {
  /** Mown until the box is full; null when nothing is harvested. */
  readonly fullAfter: Metres | null
  readonly steps: readonly FillingStep[]
}

const fillingProblems = ({
  box,
  harvest,
  cuttingWidth,
  wheelbase,
  distances,
}: FillingQuestion): Problem[] => [
  ...numberProblem(box.empty, 'box.empty', 'mass', { atLeast: 0 }),
  ...numberProblem(box.full, 'box.full', 'mass', { atLeast: box.empty }),
  ...numberProblem(box.at, 'box.at', 'place'),
  ...numberProblem(harvest, 'harvest', 'ratio', { atLeast: 0 }),
  ...numberProblem(cuttingWidth, 'cuttingWidth', 'length', { above: 0 }),
  ...numberProblem(wheelbase, 'wheelbase', 'wheelbase', { above: 0 }),
  ...distances.flatMap((distance, i) => numberProblem(distance, `distances.${i}`, 'place', { atLeast: 0 })),
]

/**
 * How a grass box fills, and what that does to the rollers.
 *
 *   m = min(full, empty + harvest · width · distance);  rear Δ = g Δm x/B, front Δ = g Δm (1 − x/B)
 *
 * Holds   an even harvest, level ground, clippings that lie where the box hangs; a box ahead of the front roller (x < 0)
 *         takes load off the rear one
 * Units   harvest [kg/m²], lengths [m] → masses [kg], loads [N]
 * Throws  InputError when a number is out of its range
 * Source  balance of moments (docs/physics.md §4)
 */
export function boxFilling(question: FillingQuestion): Filling {
  refuse(fillingProblems(question))
  const { box, harvest, cuttingWidth, wheelbase, distances } = question
  const room = box.full - box.empty
  const perMetre = harvest * cuttingWidth
  return {
    fullAfter: perMetre > 0 ? room / perMetre : null,
    steps: distances.map(distance => {
      const clippings = Math.min(room, perMetre * distance)
      const rear = (GRAVITY * clippings * box.at) / wheelbase
      return { distance, mass: box.empty + clippings, front: GRAVITY * clippings - rear, rear }
    }),
  }
}
