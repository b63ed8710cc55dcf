import type { Values } from './speaking.ts'

export const presentCase = {
  title: 'Der gewählte Fall',
  parts: { unit: 'Einheit', frontRoller: 'Vorderwalze', turf: 'Grün', condition: 'die Einheit' },
  unlisted: 'eine, die nicht im Regal ist',
  bench: (height: string) => `eingestellt ${height}`,
  cuts: (height: string) => `schneidet ${height}`,
  toHold: ({ bench, wanted }: Values<'bench' | 'wanted'>) => `für ${wanted} Schnitt ${bench} einstellen`,
  none: 'nichts: Rasen am Anschlag',
}
