type Values<Name extends string> = { readonly [Key in Name]: string }

/** What a section across the grooves says inside itself. */
export type SectionWords = {
  readonly title: string
  readonly smoothTitle: string
  readonly smooth: string
  readonly grooved: (values: Values<'land' | 'pitch' | 'depth'>) => string
  readonly turf: string
  readonly turfShort: string
  readonly depth: (depth: string) => string
  readonly relief: (relief: string) => string
  readonly floor: (by: string) => string
  readonly pressure: string
  readonly edges: (force: string) => string
  readonly share: string
  readonly bears: (share: string) => string
  readonly all: string
  readonly land: (land: string) => string
  readonly gap: (gap: string) => string
  readonly pitch: (pitch: string) => string
  /** At the upright scale: its length, and how many times depths are drawn. */
  readonly depthBar: (length: string, times: string) => string
}
