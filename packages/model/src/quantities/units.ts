/** Aliases for reading: inside the model every number is SI and its name carries no unit. */
export type Metres = number
export type Kilograms = number
export type Newtons = number
export type Pascals = number
export type Seconds = number
export type Radians = number
export type MetresPerSecond = number
/** Load per length of roller, N/m. */
export type NewtonsPerMetre = number

/** Standard acceleration of free fall, m/s²: 3rd General Conference on Weights and Measures (1901). */
export const GRAVITY = 9.80665

export type Dimension =
  | 'length'
  | 'mass'
  | 'force'
  | 'pressure'
  | 'time'
  | 'speed'
  | 'angle'
  | 'force per length'
  | 'length per length'
  | 'turning'
  | 'none'

/**
 * Units that a number at the doors may carry: one of them is this many of the SI unit of its dimension.
 * Inch, foot, pound: International Yard and Pound Agreement (1959), exact; pound-force and psi follow with GRAVITY.
 */
const INCH = 0.0254
const FOOT = 12 * INCH
const POUND = 0.45359237
const POUND_FORCE = POUND * GRAVITY
const MILE = 1609.344
const HOUR = 3600

export const units = {
  m: { dimension: 'length', factor: 1, word: 'm' },
  cm: { dimension: 'length', factor: 1e-2, word: 'cm' },
  mm: { dimension: 'length', factor: 1e-3, word: 'mm' },
  in: { dimension: 'length', factor: INCH, word: 'in' },
  ft: { dimension: 'length', factor: FOOT, word: 'ft' },
  kg: { dimension: 'mass', factor: 1, word: 'kg' },
  g: { dimension: 'mass', factor: 1e-3, word: 'g' },
  lb: { dimension: 'mass', factor: POUND, word: 'lb' },
  N: { dimension: 'force', factor: 1, word: 'N' },
  lbf: { dimension: 'force', factor: POUND_FORCE, word: 'lbf' },
  Pa: { dimension: 'pressure', factor: 1, word: 'Pa' },
  kPa: { dimension: 'pressure', factor: 1e3, word: 'kPa' },
  psi: { dimension: 'pressure', factor: POUND_FORCE / INCH ** 2, word: 'psi' },
  s: { dimension: 'time', factor: 1, word: 's' },
  ms: { dimension: 'time', factor: 1e-3, word: 'ms' },
  mps: { dimension: 'speed', factor: 1, word: 'm/s' },
  kmh: { dimension: 'speed', factor: 1000 / HOUR, word: 'km/h' },
  mph: { dimension: 'speed', factor: MILE / HOUR, word: 'mph' },
  rad: { dimension: 'angle', factor: 1, word: 'rad' },
  deg: { dimension: 'angle', factor: Math.PI / 180, word: '°' },
  N_per_mm: { dimension: 'force per length', factor: 1e3, word: 'N/mm' },
  lbf_per_in: { dimension: 'force per length', factor: POUND_FORCE / INCH, word: 'lbf/in' },
  mm_per_m: { dimension: 'length per length', factor: 1e-3, word: 'mm/m' },
  in_per_ft: { dimension: 'length per length', factor: INCH / FOOT, word: 'in/ft' },
  rps: { dimension: 'turning', factor: 1, word: 'turns/s' },
  rpm: { dimension: 'turning', factor: 1 / 60, word: 'rpm' },
  number: { dimension: 'none', factor: 1, word: '' },
} as const satisfies Record<string, { dimension: Dimension; factor: number; word: string }>

export type UnitName = keyof typeof units
