/** Lightness 0 to 1, chroma, hue in degrees: OKLCH, inside sRGB. */
export type Oklch = readonly [lightness: number, chroma: number, hue: number]
export type Linear = readonly [red: number, green: number, blue: number]

/** A role says what a thing means, never which colour it has. */
export type Role =
  | 'paper'
  | 'ground'
  | 'field'
  | 'ink'
  | 'ink-2'
  | 'ink-3'
  | 'rule'
  | 'present'
  | 'present-wash'
  | 'measured'
  | 'measured-wash'
  | 'caution'
  | 'caution-wash'
  | 'on-pale'
  | 'on-deep'
export type ThemeName = 'light' | 'dark' | 'projector' | 'print'

export const themes: Record<ThemeName, Record<Role, Oklch>> = {
  light: {
    paper: [0.989, 0.0035, 140],
    ground: [0.952, 0.009, 135],
    field: [0.972, 0.006, 140],
    ink: [0.25, 0.018, 215],
    'ink-2': [0.43, 0.018, 215],
    'ink-3': [0.55, 0.014, 200],
    rule: [0.84, 0.01, 160],
    present: [0.525, 0.205, 11],
    'present-wash': [0.935, 0.03, 15],
    measured: [0.44, 0.115, 250],
    'measured-wash': [0.915, 0.03, 245],
    caution: [0.63, 0.128, 80],
    'caution-wash': [0.945, 0.055, 92],
    'on-pale': [0.25, 0.018, 215],
    'on-deep': [0.985, 0.004, 140],
  },
  dark: {
    paper: [0.215, 0.011, 205],
    ground: [0.262, 0.012, 190],
    field: [0.245, 0.012, 200],
    ink: [0.93, 0.008, 140],
    'ink-2': [0.8, 0.01, 160],
    'ink-3': [0.71, 0.012, 180],
    rule: [0.38, 0.012, 190],
    present: [0.69, 0.19, 13],
    'present-wash': [0.33, 0.06, 15],
    measured: [0.76, 0.1, 240],
    'measured-wash': [0.34, 0.045, 245],
    caution: [0.87, 0.13, 92],
    'caution-wash': [0.33, 0.04, 90],
    'on-pale': [0.2, 0.015, 205],
    'on-deep': [0.97, 0.006, 140],
  },
  projector: {
    paper: [1, 0, 0],
    ground: [0.93, 0.012, 135],
    field: [0.97, 0.004, 140],
    ink: [0.18, 0.012, 215],
    'ink-2': [0.33, 0.015, 215],
    'ink-3': [0.53, 0.012, 200],
    rule: [0.78, 0.01, 160],
    present: [0.49, 0.195, 11],
    'present-wash': [0.92, 0.04, 15],
    measured: [0.38, 0.115, 253],
    'measured-wash': [0.89, 0.045, 245],
    caution: [0.62, 0.127, 82],
    'caution-wash': [0.93, 0.09, 94],
    'on-pale': [0.18, 0.012, 215],
    'on-deep': [1, 0, 0],
  },
  print: {
    paper: [1, 0, 0],
    ground: [0.945, 0.004, 140],
    field: [1, 0, 0],
    ink: [0.16, 0.008, 215],
    'ink-2': [0.36, 0.008, 215],
    'ink-3': [0.5, 0.006, 200],
    rule: [0.78, 0.004, 160],
    present: [0.49, 0.195, 11],
    'present-wash': [0.94, 0.03, 15],
    measured: [0.4, 0.112, 251],
    'measured-wash': [0.92, 0.03, 245],
    caution: [0.62, 0.12, 80],
    'caution-wash': [0.95, 0.04, 94],
    'on-pale': [0.16, 0.008, 215],
    'on-deep': [1, 0, 0],
  },
}

type Ramp = {
  readonly lightness: readonly [number, number]
  readonly chroma: readonly [number, number]
  /** Chroma added half way: the ends of a wash are pale and dark, its middle has the colour. */
  readonly bulge: number
  readonly hue: readonly [number, number]
}

/** Sinkage: lightness falls in a straight line in every theme, so that deep is dark on paper and on a wall. */
export const ramps: Record<ThemeName, Ramp> = {
  light: { lightness: [0.96, 0.34], chroma: [0.026, 0.042], bulge: 0.026, hue: [104, 206] },
  dark: { lightness: [0.9, 0.335], chroma: [0.03, 0.04], bulge: 0.026, hue: [104, 206] },
  projector: { lightness: [0.94, 0.25], chroma: [0.04, 0.032], bulge: 0.036, hue: [104, 206] },
  print: { lightness: [0.965, 0.28], chroma: [0.012, 0.02], bulge: 0.015, hue: [104, 206] },
}

/** Bands of a map, and washes that the tokens name. */
export const RAMP_STEPS = 8
/** A contour below this step is drawn in `on-pale`, from it on in `on-deep`: step 5 is the first dark enough. */
export const FIRST_DEEP_CONTOUR = 5

/** The wash at t, 0 shallow to 1 deep. */
export function rampAt(theme: ThemeName, t: number): Oklch {
  const { lightness, chroma, bulge, hue } = ramps[theme]
  const between = ([from, to]: readonly [number, number]) => from + (to - from) * t
  return [between(lightness), between(chroma) + 4 * bulge * t * (1 - t), between(hue)]
}

export const rampSteps = (theme: ThemeName): readonly Oklch[] =>
  Array.from({ length: RAMP_STEPS }, (_, i) => rampAt(theme, i / (RAMP_STEPS - 1)))
