import type { Reader } from '../words/index.ts'

/** What a kind of entry is called; one that is not known, by the name its file gives it. */
export function kindName(kind: string, { words }: Reader): string {
  const said = Object.hasOwn(words.kinds, kind) ? words.kinds[kind] : undefined
  return said?.name ?? kind
}
