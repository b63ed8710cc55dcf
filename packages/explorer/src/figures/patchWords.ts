/** What the map of a contact says inside itself. */
export type PatchWords = {
  readonly title: string
  /** Over the names of the bands: "pressure, kPa". */
  readonly pressure: string
  /** At the foot: "along the ground from below the axis, mm". */
  readonly along: string
  readonly land: string
  readonly groove: string
  /** A part of a roller that is the same all along. */
  readonly smooth: string
  readonly pitch: (value: string) => string
  readonly landWidth: (value: string) => string
  readonly length: (value: string) => string
  /** At a land edge that carries a line force. */
  readonly edge: (value: string) => string
  /** Over the section below: "depth, mm", and how many times it is drawn. */
  readonly depth: (times: string) => string
  readonly underLand: string
  readonly inGroove: string
}
