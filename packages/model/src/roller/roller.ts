import type { Kilograms, Metres } from '../quantities/units.ts'

/** What the face of a roller looks like along its axis. Spaced discs are a narrow land on a wide pitch. */
export type Surface =
  | { readonly kind: 'smooth' }
  | { readonly kind: 'grooved'; readonly pitch: Metres; readonly land: Metres; readonly depth: Metres }

export type Roller = {
  readonly mass: Kilograms
  /** Over the lands. */
  readonly diameter: Metres
  /** Of the face. */
  readonly length: Metres
  readonly surface: Surface
}
