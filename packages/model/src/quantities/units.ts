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
