import { laws } from '@swardsink/model'
import type { Words } from './language.ts'

export type SettableWords = { readonly name: string; readonly note: string }

/** A parameter of a law this table has no word for is called as the law's own file calls it. */
function partName(part: string, words: Words): string {
  const known = words.parts[part]
  if (known !== undefined) return known
  for (const { parameters } of Object.values(laws)) {
    const found = parameters.find(({ name }: { readonly name: string }) => name === part)
    if (found) return `${found.name} ${found.symbol}`
  }
  return part
}

/** Layers between the name of a turf and the number: `upper.lower.softness`. */
function layersOf(parts: readonly string[], words: Words): readonly string[] {
  const inner: string[] = []
  for (const part of parts.slice(0, -1).toReversed()) {
    const layer = words.layers[part]
    if (layer === undefined) break
    inner.push(layer)
  }
  return inner
}

/** What a setting is called: by its own words, or by what it is a number of. */
export function settableWords(name: string, words: Words): SettableWords {
  const own = words.settables[name]
  if (own) return own
  const [family, ...parts] = name.split('.')
  const part = partName(parts.at(-1) ?? name, words)
  if (family === 'rearRoller') return { name: part, note: words.belonging.rear }
  const layers = family === 'turfs' || family === 'turf' ? layersOf(parts, words) : []
  const of = parts
    .slice(0, parts.length - 1 - layers.length)
    .join('.')
    .replace(/\.law$/, '')
  const note = layers.reduceRight<string>((inside, layer) => words.belonging.layer({ layer, of: inside }), of)
  return { name: part, note }
}

/** The same where what it belongs to stands beside it already: named by the part, and explained as the one in hand is. */
export function briefly(name: string, words: Words): SettableWords {
  if (words.settables[name]) return settableWords(name, words)
  const part = name.split('.').at(-1) ?? name
  const family = name.startsWith('rollers.') ? 'frontRoller' : 'turf'
  return { name: partName(part, words), note: words.settables[`${family}.${part}`]?.note ?? '' }
}
