/** Where a text could be cut off: after a whole value, with what then closes it. */
type Cut = { readonly at: number; readonly closing: string }

const CLOSES: Readonly<Record<string, string>> = { '{': '}', '[': ']' }

/** Every place of a text where what stands before it is whole. Strings are stepped over, escapes in them too. */
function cutsOf(text: string): readonly Cut[] {
  const cuts: Cut[] = []
  const open: string[] = []
  let inString = false
  for (let at = 0; at < text.length; at++) {
    const character = text[at] ?? ''
    if (inString) {
      if (character === '\\') at++
      else if (character === '"') inString = false
      continue
    }
    if (character === '"') inString = true
    else if (character === ',') cuts.push({ at, closing: open.toReversed().join('') })
    else if (CLOSES[character]) {
      open.push(CLOSES[character])
      // An object that has just begun says nothing yet: it is left out rather than left empty.
      if (character === '[') cuts.push({ at: at + 1, closing: open.toReversed().join('') })
    } else if (character === '}' || character === ']') {
      open.pop()
      cuts.push({ at: at + 1, closing: open.toReversed().join('') })
    }
  }
  return cuts
}

function parsed(text: string): { readonly value: unknown } | null {
  try {
    return { value: JSON.parse(text) }
  } catch {
    return null
  }
}

export type Mended = {
  readonly value: unknown
  /** The line, from 1, up to which the text could be read. */
  readonly line: number
}

/**
 * As much of a damaged JSON text as is whole before its first fault, or null when nothing is. What can be read up to
 * one place can be read up to every earlier one, so the place is found by halving.
 */
export function mendJson(text: string): Mended | null {
  const cuts = cutsOf(text)
  const closed = ({ at, closing }: Cut) => parsed(text.slice(0, at) + closing)
  let whole = -1
  let broken = cuts.length
  while (broken - whole > 1) {
    const middle = (whole + broken) >> 1
    const cut = cuts[middle]
    if (cut && closed(cut)) whole = middle
    else broken = middle
  }
  const last = cuts[whole]
  const found = last && closed(last)
  return found && last ? { value: found.value, line: text.slice(0, last.at).split('\n').length } : null
}
