import type { Shown } from '../view.ts'
import { belowLands, groovesOf, type SectionResult, type SectionSettings } from './kind.ts'

/** How much of the face touches first, and how much of the load turf straight below that carries. */
export function sectionFinding({ result, reader }: Shown<SectionSettings, SectionResult>): string {
  const { words, format } = reader
  const surface = groovesOf(result.roller)
  const below = belowLands(result)
  if (!surface || !result.grooves || below === null)
    return words.section.smooth({
      pressure: format(result.pressure, 'pressure'),
      sinkage: format(result.sinkage, 'sinkage'),
    })
  const said = { lands: words.percent(surface.land / surface.pitch), below: words.percent(below) }
  if (result.grooves.floor === 'touching') return words.section.touching(said)
  if (result.grooves.edgeForce === 0) return words.section.noMat(said)
  return words.section.carried({ ...said, mat: words.percent(1 - below) })
}
