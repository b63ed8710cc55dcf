import type { Reader } from '../../words/index.ts'
import type { Shown } from '../view.ts'
import type { RackRoller, RollersResult, RollersSettings } from './kind.ts'

/** Which rollers are on the unit in hand, and what most spoils its cut. */
export function rollersFinding({ result, reader, scenario }: Shown<RollersSettings, RollersResult>): string {
  const here = scenario.unitName ?? null
  const at = (position: 'front' | 'rear') =>
    result.rollers.find(({ places }) =>
      places.some(place => place.position === position && place.unit === here),
    )
  const [front, rear] = [at('front'), at('rear')]
  const said = reader.words.rollers
  const fitted =
    front && rear
      ? said.fitted({ front: front.name, rear: rear.name })
      : front
        ? said.frontOnly(front.name)
        : rear
          ? said.rearOnly(rear.name)
          : said.neither
  return [fitted, spoilt([front, rear], reader)].filter(Boolean).join(' ')
}

function spoilt(fitted: readonly (RackRoller | undefined)[], { words, format }: Reader): string | null {
  const rollers = fitted.filter(roller => roller !== undefined)
  const grown = rollers.toSorted((a, b) => b.raises - a.raises)[0]
  if (grown && grown.raises > 0)
    return words.rollers.buildUp({
      name: grown.name,
      buildUp: format(grown.roller.buildUp ?? 0, 'height'),
      raises: format(grown.raises, 'height'),
    })
  const uneven = rollers.toSorted((a, b) => b.wave.rise - a.wave.rise)[0]
  if (!uneven || uneven.wave.rise === 0) return null
  return words.rollers.runout({
    name: uneven.name,
    rise: format(uneven.wave.rise, 'height'),
    every: format(uneven.wave.every, 'length'),
  })
}
