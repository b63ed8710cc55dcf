/** What the side view says. */
export type SideViewWords = {
  /** For those who do not see the drawing; the values are in the entry's finding and table. */
  readonly title: string
  readonly frontRoller: string
  readonly rearRoller: string
  readonly cuttingCylinder: string
  readonly bottomBlade: string
  /** One line or two. */
  readonly edgeLine: readonly string[]
  readonly turf: string
  /** Under the bench height and under the effective height. */
  readonly bench: string
  readonly effective: string
  /** Before or after the drop's value: "0.38 mm drop". */
  readonly drop: (value: string) => string
  readonly body: (load: string) => string
  /** Of a weight that has a name of the reader's own: "box 98 N". */
  readonly load: (name: string, load: string) => string
  /** Height bar where heights are drawn larger: "2 mm, ×5". */
  readonly heightBar: (length: string, exaggeration: number) => string
  /** What is taken hold of: the edge, an axis, the body. */
  readonly handle: Readonly<Record<'edge' | 'front' | 'rear' | 'body', string>>
}
