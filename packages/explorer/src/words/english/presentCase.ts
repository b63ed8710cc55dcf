import type { Values } from './speaking.ts'

export const presentCase = {
  title: 'The present case',
  parts: { unit: 'unit', frontRoller: 'front roller', turf: 'green', condition: 'the unit is' },
  unlisted: 'one not in the rack',
  bench: (height: string) => `${height} on the bench`,
  cuts: (height: string) => `cuts ${height}`,
  toHold: ({ bench, wanted }: Values<'bench' | 'wanted'>) => `set ${bench} to cut ${wanted}`,
  none: 'nothing: it bottoms out',
}
