import { svg } from 'lit'
import { type Frame, type Point, pathOf, px } from './frame.ts'
import type { Mark } from './marks.ts'
import type { PredictionLayout, PredictionSpec } from './predictionLayout.ts'
import type { PredictionWords } from './predictionWords.ts'

/** How far a roller is drawn over the ground, px. */
const OVER = 30
const STEPS = 40

/** The turf and the roller in it: as it stands, as it was said to be, and as the model has it. */
export function drawPredictedRoller(
  spec: PredictionSpec,
  layout: PredictionLayout,
  frame: Frame<PredictionWords>,
): Mark | undefined {
  const { roller, now, yours, model, settled } = spec
  if (!roller) return undefined
  const { left, right, foot, ground } = layout
  const revealed = model !== null
  // It comes to rest from where it was said to be.
  const rest = revealed ? (yours === null ? model : yours + (model - yours) * settled) : now
  const half = rest === null ? 0 : halfAt(rest, roller.diameter, layout)
  const middle = left + (right - left) * 0.55
  const surface = `M${px(left)} ${px(ground)}H${px(middle - half)}M${px(middle + half)} ${px(ground)}H${px(right)}`
  const dashed = half > 0 ? `M${px(middle - half)} ${px(ground)}H${px(middle + half)}` : ''
  const body = `M${px(left)} ${px(ground)}H${px(right)}V${px(foot)}H${px(left)}Z`
  const name = frame.words[roller.at]
  const path = (kind: string, d: string) => svg`<path class=${kind} d=${d} />`
  const { diameter } = roller
  return svg`${path('ground', body)}${rest !== null && rest > 0 ? path('solid', pathOf(inTurf(rest, diameter, layout), true)) : undefined}
    ${path('hidden', dashed)}${revealed && now !== null ? path('hair', arc(now, diameter, layout)) : undefined}
    ${yours === null ? undefined : path('outline carried-on', arc(yours, diameter, layout))}
    ${rest === null ? undefined : path('outline', arc(rest, diameter, layout))}${path('surface', surface)}
    <text class="on-paper" x=${px(middle)} y=${px(ground - 9)} text-anchor="middle">${name}</text>`
}

/** Half of the chord at the ground, px. */
function halfAt(depth: number, diameter: number, { along }: PredictionLayout): number {
  return depth > 0 ? along * Math.sqrt(diameter * depth) : 0
}

function pointsOf(
  depth: number,
  diameter: number,
  { left, right, y, along }: PredictionLayout,
  over: number,
): readonly Point[] {
  const middle = left + (right - left) * 0.55
  const half = Math.sqrt(diameter * Math.max(0, depth + over))
  return Array.from({ length: 2 * STEPS + 1 }, (_, i) => {
    const place = (half * (i - STEPS)) / STEPS
    return { x: middle + along * place, y: y(depth - place ** 2 / diameter) }
  })
}

/** The part of a roller that is in the turf, closed at the ground. */
const inTurf = (depth: number, diameter: number, layout: PredictionLayout): readonly Point[] =>
  pointsOf(depth, diameter, layout, 0)

/** Its round from a little over the ground down to its lowest point. */
function arc(depth: number, diameter: number, layout: PredictionLayout): string {
  const over = OVER / (layout.y(1) - layout.y(0))
  return depth + over > 0 ? pathOf(pointsOf(depth, diameter, layout, over)) : ''
}
