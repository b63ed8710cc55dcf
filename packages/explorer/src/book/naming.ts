/** Why a thing cannot be called so. */
export type NameRefusal =
  | { readonly reason: 'no name' }
  | { readonly reason: 'name taken'; readonly name: string }

type Named<Thing> = Readonly<Record<string, Thing>>

/** What is wrong with a name for one of these things; its own name is none of the others'. */
export function refuseName(name: string, taken: readonly string[]): NameRefusal | null {
  if (name.trim() === '') return { reason: 'no name' }
  return taken.includes(name) ? { reason: 'name taken', name } : null
}

/** A name that none of them has: the one wanted, or with the next number behind it. */
export function freshName(wanted: string, taken: readonly string[]): string {
  if (!taken.includes(wanted)) return wanted
  const [, stem = wanted, number] = /^(.*?)\s+(\d+)$/.exec(wanted) ?? []
  for (let next = Number(number ?? 1) + 1; ; next++) {
    const name = `${stem} ${next}`
    if (!taken.includes(name)) return name
  }
}

/** The same things in the same order, one of them under another name. */
export function renamed<Thing>(things: Named<Thing>, from: string, to: string): Named<Thing> {
  return Object.fromEntries(Object.entries(things).map(([name, thing]) => [name === from ? to : name, thing]))
}

/** One more, right behind the one it stands beside. */
export function added<Thing>(
  things: Named<Thing>,
  thing: Thing,
  at: { name: string; after: string | null },
): Named<Thing> {
  const entries = Object.entries(things)
  const behind = entries.findIndex(([name]) => name === at.after)
  const place = behind < 0 ? entries.length : behind + 1
  return Object.fromEntries(entries.toSpliced(place, 0, [at.name, thing]))
}

export function without<Thing>(things: Named<Thing>, name: string): Named<Thing> {
  return Object.fromEntries(Object.entries(things).filter(([one]) => one !== name))
}
