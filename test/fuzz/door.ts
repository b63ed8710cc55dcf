import type fc from 'fast-check'

/** A way in for what nobody here wrote: how to make something odd, and what has to hold of what comes of it. */
export type Door<Case = unknown> = {
  readonly name: string
  readonly arbitrary: fc.Arbitrary<Case>
  /** Throws when something does not hold. */
  check(odd: Case): void | Promise<void>
  /** CPU seconds one case may take; one unless given. */
  readonly within?: number
}

/** A door whose cases nobody else needs to know. */
export const door = <Case>(one: Door<Case>): Door => one as Door
