import type { Values } from './speaking.ts'

export const failures = {
  bottomedOut: ({ where, load, lockingDepth }: Values<'where' | 'load' | 'lockingDepth'>) =>
    `The turf bottoms out under the ${where} roller: ${load} would press it to its locking depth of ${lockingDepth}. Raise the locking depth, or lower the mass or the softness.`,
  thatLoad: 'the load on it',
  notConverged: ({ where, iterations }: Values<'where' | 'iterations'>) =>
    `No answer was found for the ${where} in ${iterations} steps. Change a value a little; if this stays, the values contradict each other.`,
  worker: (message: string) => `The finer figure could not be worked out (${message}).`,
  fault: (message: string) =>
    `This could not be worked out: a fault of the program (${message}). The rest of the page is as it should be, and what you typed is kept.`,
  /** Reasons of the kinds of entry themselves; each brings its own. */
  reasons: {} as Readonly<Record<string, (values: Readonly<Record<string, string>>) => string>>,
  places: { roller: 'front', front: 'front', rear: 'rear', plate: 'plate', unit: 'unit' } as Readonly<
    Record<string, string>
  >,
}
