import finds from './keptFinds.json' with { type: 'json' }

/** A case that was once found, and what was wrong. The case, not its seed: seeds mean something else tomorrow. */
export type KeptFind = { readonly door: string; readonly what: string; readonly odd: unknown }

/** Past finds, tried before anything new. */
export const keptFinds: readonly KeptFind[] = finds
