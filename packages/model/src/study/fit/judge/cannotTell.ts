import { type FlatDirection, flatDirections } from './flatDirections.ts'
import { freeOf, type Judged } from './judged.ts'
import { type Reason, reasonFor } from './reasonFor.ts'

/** Something the readings leave open: as data, and as a sentence. */
export type Untold = Omit<FlatDirection, 'kind'> & {
  readonly kind: FlatDirection['kind'] | 'at bound' | 'unknown'
  readonly reason: Reason
  readonly sentence: string
}

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
/** A locking depth this many times the greatest sinkage does not bend the curve at all. */
const NO_BEND = 0.02

function by({ relativeError, kind }: FlatDirection): string {
  if (kind === 'unmoved') return ''
  if (relativeError === null || relativeError > HOPELESS) return ''
  return ` (one standard error along it is ${Number((relativeError * PER_CENT).toPrecision(2))} %)`
}

function sentenceOf(direction: FlatDirection, reason: Reason, sets: number): string {
  const names = namesOf(direction, sets)
  const why = `${reason.sentence}${by(direction)}`
  if (names.length === 1) return `${capital(names[0]!)} cannot be told: ${why}.`
  const spread = names.find(name => name.startsWith('spread'))
  if (spread !== undefined && direction.kind === 'flat') {
    const others = names.filter(name => name !== spread)
    return `${capital(spread)} cannot be told from ${joined(others)}: ${why}.`
  }
  return `${capital(joined(names))} move together: ${why}.`
}

/** A search that ended at a bound would have gone on: the readings do not say where to. */
function boundsOf(judged: Judged): readonly Untold[] {
  const { fit, measured } = judged
  return fit.parameters.flatMap(({ name, set, value, state }): Untold[] => {
    if (state !== 'at bound') return []
    const moves = [{ name, ...(set === undefined ? {} : { set }), part: 1 }]
    const said = set === undefined ? nameOf(name) : `${nameOf(name)} of set ${set}`
    const share = name.endsWith('lockingDepth') ? Math.max(...measured) / value : null
    // A spread that runs off because one foot alone was pressed: that is told before where the search stopped.
    const looked = reasonFor({ kind: 'flat', moves, relativeError: null }, judged)
    const first = looked.kind === 'one foot' ? `${looked.sentence}; ` : ''
    const ended =
      share !== null && share < NO_BEND
        ? 'the readings show no bend towards locking, and the search went to the end of its range'
        : value === 0
          ? 'the search ended at none of it, and would have gone on if it could'
          : 'the search ended at its bound, and would have gone on if it could'
    const why = first + ended
    return [
      {
        kind: 'at bound',
        moves,
        relativeError: null,
        reason: { kind: 'at its bound', value: share, sentence: why },
        sentence: `${capital(said)} cannot be told: ${why}.`,
      },
    ]
  })
}

const noDerivatives: Untold = {
  kind: 'unknown',
  moves: [],
  relativeError: null,
  reason: { kind: 'no derivatives', value: null, sentence: 'the model has no slopes where the fit ended' },
  sentence: 'What these readings cannot tell is not known: the model has no slopes where the fit ended.',
}

/**
 * What the readings cannot tell, each with the reason looked up in the readings; empty where they tell everything.
 *
 * Source  docs/physics.md §7.3
 */
export function cannotTell(judged: Judged): readonly Untold[] {
  const free = freeOf(judged.fit)
  const sets = new Set(free.flatMap(({ set }) => (set === undefined ? [] : [set]))).size
  const bounds = boundsOf(judged)
  if (judged.derivatives === null) return [noDerivatives, ...bounds]
  const flat = flatDirections(judged).map(direction => {
    const reason = reasonFor(direction, judged)
    return { ...direction, reason, sentence: sentenceOf(direction, reason, sets) }
  })
  return [...flat, ...bounds]
}
