/** A sound scenario of the tests' own, as a file of Ellerby Hollow Turf School might hold it (invented). */
const scenarioFile = {
  unit: {
    wheelbase_mm: 188,
    edge_mm: 101,
    benchHeight_mm: 5.1,
    frontRoller: 'waisted',
    rearRoller: { mass_kg: 4.7, diameter_mm: 51, length_mm: 556, surface: { kind: 'smooth' } },
    body: { mass_kg: 17.9, at_mm: 93, height_mm: 84 },
  },
  rollers: {
    waisted: {
      mass_kg: 5.2,
      diameter_mm: 60,
      length_mm: 556,
      surface: { kind: 'grooved', pitch_mm: 13, land_mm: 5.5, depth_mm: 4.5 },
    },
    plain: { mass_kg: 6.8, diameter_mm: 60, length_mm: 556, surface: { kind: 'smooth' } },
  },
  turfs: {
    'beech lawn (invented)': {
      law: { kind: 'stiffening', softness_mm: 0.44, lockingDepth_mm: 5.2 },
      spread_mm: 1.6,
      rebound: 0.6,
      lasting: 0.1,
      recoveryTime_s: 0.3,
    },
  },
  turf: 'beech lawn (invented)',
  condition: { kind: 'standing' },
  effectiveHeight_mm: 4.4,
}

/** The file with some places changed, each told by its path; undefined takes a place out. */
export function fileWith(changes: Readonly<Record<string, unknown>> = {}): unknown {
  const file = structuredClone(scenarioFile)
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.')
    const last = keys.pop() ?? ''
    const part = keys.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], file)
    const place = part as Record<string, unknown>
    if (value === undefined) delete place[last]
    else place[last] = value
  }
  return file
}
