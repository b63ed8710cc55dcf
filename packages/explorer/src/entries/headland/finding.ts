import type { Shown } from '../view.ts'
import type { HeadlandResult, HeadlandSettings } from './kind.ts'

/** Sections that a roller in one piece is compared with. */
const TRIED = 3

/** How far the ends slide, and what sections make of it. */
export function headlandFinding({
  result,
  settings,
  reader,
}: Shown<HeadlandSettings, HeadlandResult>): string {
  const { words, format } = reader
  const { sliding, whole, roller, axleSpacing } = result
  const slides = (value: number) => format(value, 'sliding')
  const found = words.headland.found({
    radius: format(settings.radius, 'turnRadius'),
    greatest: slides(sliding.greatest),
    mean: slides(sliding.mean),
  })
  if (whole)
    return `${found} ${words.headland.against({ sections: String(roller.sections ?? 1), greatest: slides(whole.greatest) })}`
  // Without a drag the still line lies in the middle of each section.
  if (settings.drag !== 0) return found
  const half = roller.length / TRIED / 2
  const greatest = Math.hypot(half, axleSpacing / 2) / settings.radius
  return `${found} ${words.headland.ifCut({ greatest: slides(greatest) })}`
}
