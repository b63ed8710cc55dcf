import { type FlatDirection, flatDirections } from './flatDirections.ts'
import { freeOf, type Judged } from './judged.ts'
import { type Reason, reasonFor } from './reasonFor.ts'

/** Something the readings leave open: as data, and as a sentence. */
export type Untold = FlatDirection & { readonly reason: Reason; readonly sentence: string }

const words: Readonly<Record<string, string>> = { lockingDepth: 'locking depth' }

function nameOf(name: string): string {
  const layers = name.split('.')
  const own = layers.pop() ?? name
  const said = words[own] ?? own
  return layers.length === 0 ? said : `${said} of the ${layers.join(' ')} layer`
}

/** "softness of set A", "softness of 12 sets": as short as it can be said. */
function namesOf({ moves }: FlatDirection, sets: number): readonly string[] {
  const names = [...new Set(moves.map(({ name }) => name))]
  return names.map(name => {
    const own = moves.flatMap(move => (move.name === name && move.set !== undefined ? [move.set] : []))
    if (own.length === 0) return nameOf(name)
    if (own.length === 1) return `${nameOf(name)} of set ${own[0]}`
    return own.length === sets ? `${nameOf(name)} of every set` : `${nameOf(name)} of ${own.length} sets`
  })
}

const joined = (names: readonly string[]) =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

const PER_CENT = 100
/** Relative errors beyond this are told as a factor no more. */
const HOPELESS = 2

function by({ relativeError, kind }: FlatDirection): string {
  if (kind === 'unmoved') return ''
  if (relativeError === null || relativeError > HOPELESS) return ''
  return ` (one standard error along it is ${(relativeError * PER_CENT).toPrecision(2)} %)`
}

function sentenceOf(direction: FlatDirection, reason: Reason, sets: number): string {
  const names = namesOf(direction, sets)
  const why = `${reason.sentence}${by(direction)}`
  if (names.length === 1) return `${capital(names[0]!)}: ${why}.`
  const spread = names.find(name => name.startsWith('spread'))
  if (spread !== undefined && direction.kind === 'flat') {
    const others = names.filter(name => name !== spread)
    return `${capital(spread)} cannot be told from ${joined(others)}: ${why}.`
  }
  return `${capital(joined(names))} move together: ${why}.`
}

/**
 * What the readings cannot tell, each with the reason looked up in the readings; empty where they tell everything.
 *
 * Source  docs/physics.md §7.3
 */
export function cannotTell(judged: Judged): readonly Untold[] {
  const sets = new Set(freeOf(judged.fit).flatMap(({ set }) => (set === undefined ? [] : [set]))).size
  return flatDirections(judged).map(direction => {
    const reason = reasonFor(direction, judged)
    return { ...direction, reason, sentence: sentenceOf(direction, reason, sets) }
  })
}
