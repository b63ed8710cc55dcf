import type { Entry, LiveValue, Offered } from '../book/index.ts'

/** Which entry gives the number a name calls for, and under which name it offers it. */
export type Giver = { readonly id: string; readonly offer: string }

/** An id as it is written in a formula, where a hyphen would take away. */
const written = (id: string): string => id.replaceAll('-', '_')

/** The name a formula entry gives its value; empty for every other kind. */
export function nameGivenBy({ kind, settings }: Entry): string {
  return kind === 'formula' && 'name' in settings && typeof settings.name === 'string' ? settings.name : ''
}

/** A formula of that name, or `id.name` of an entry that offers numbers; null when the book has neither. */
export function giverOf(name: string, entries: readonly Entry[]): Giver | null {
  if (name === '') return null
  const formula = entries.find(entry => nameGivenBy(entry) === name)
  if (formula) return { id: formula.id, offer: 'value' }
  const [first = '', ...rest] = name.split('.')
  const entry = rest.length === 0 ? undefined : entries.find(({ id }) => written(id) === first)
  return entry ? { id: entry.id, offer: rest.join('.') } : null
}

/** Ids of the entries that these names lean on. */
export function giversOf(names: readonly string[], entries: readonly Entry[]): readonly string[] {
  return [...new Set(names.flatMap(name => giverOf(name, entries)?.id ?? []))]
}

/** What is given under these names just now. */
export function givenTo(
  names: readonly string[],
  { entries, offered }: { readonly entries: readonly Entry[]; readonly offered: Offered },
): Readonly<Record<string, LiveValue>> {
  return Object.fromEntries(
    names.flatMap(name => {
      const giver = giverOf(name, entries)
      const from = giver ? (offered[giver.id] ?? {}) : {}
      const value = giver && Object.hasOwn(from, giver.offer) ? from[giver.offer] : undefined
      return value ? [[name, value]] : []
    }),
  )
}
