import { list, type Values } from './speaking.ts'

export const entry = {
  asTable: 'As a table',
  workedOut: 'How this is worked out',
  section: (section: string) => `Equations: docs/physics.md ${section}.`,
  check: (path: string) => `Checked by ${path}.`,
  working: (seconds: string) => `working, ${seconds} s`,
  stop: 'Stop',
  waiting: (names: readonly string[]) => `waits for ${list(names)}`,
  still: 'still for the values before',
  stillFor: ({ was, now }: Values<'was' | 'now'>) => `still for ${was}; now ${now}`,
  cautions: 'Cautions',
}
