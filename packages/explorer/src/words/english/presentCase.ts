export const presentCase = {
  title: 'The present case',
  parts: { unit: 'unit', frontRoller: 'front roller', turf: 'green', condition: 'the unit is' },
  unlisted: 'one not in the rack',
  bench: (height: string) => `${height} on the bench`,
  cuts: (height: string) => `cuts ${height}`,
  none: 'nothing: it bottoms out',
}
