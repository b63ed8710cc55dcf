import {
  describe,
  type Kilograms,
  type Metres,
  numberProblem,
  objectProblem,
  type Problem,
} from '../quantities/index.ts'

/** What the face of a roller looks like along its axis. Spaced discs are a narrow land on a wide pitch. */
export type Surface =
  | { readonly kind: 'smooth' }
  | { readonly kind: 'grooved'; readonly pitch: Metres; readonly land: Metres; readonly depth: Metres }

export type GroovedSurface = Extract<Surface, { kind: 'grooved' }>

export type Roller = {
  readonly mass: Kilograms
  /** Over the lands. */
  readonly diameter: Metres
  /** Of the face. */
  readonly length: Metres
  readonly surface: Surface
  /** Equal parts that turn on their own on one axis; 1 unless given. They never change the sinkage. */
  readonly sections?: number
  /** What sticks to the face, radial; 0 unless given. */
  readonly buildUp?: Metres
  /** How far the face runs out of true, radial, to either side; 0 unless given. */
  readonly runout?: Metres
}

export function surfaceProblems(surface: Surface, path: string): Problem[] {
  const kind: unknown = surface?.kind
  if (kind === 'smooth') return []
  if (kind !== 'grooved')
    return [{ path: `${path}.kind`, expected: 'one of smooth, grooved', received: describe(kind) }]
  const { pitch, land, depth } = surface as GroovedSurface
  const pitchProblems = numberProblem(pitch, `${path}.pitch`, 'pitch', { above: 0 })
  const tooWide =
    pitchProblems.length === 0 && Number.isFinite(land) && land > pitch
      ? [
          {
            path: `${path}.land`,
            expected: `at most the pitch, ${describe(pitch, 'pitch')}`,
            received: describe(land, 'land'),
          },
        ]
      : numberProblem(land, `${path}.land`, 'land', { above: 0 })
  return [
    ...pitchProblems,
    ...tooWide,
    ...numberProblem(depth, `${path}.depth`, 'grooveDepth', { atLeast: 0 }),
  ]
}

/** More would be thinner than a blade of grass; answers list every section, so their number has an end. */
const MOST_SECTIONS = 1000

const sectionProblems = (sections: number, path: string): Problem[] =>
  Number.isInteger(sections) && sections >= 1 && sections <= MOST_SECTIONS
    ? []
    : [
        {
          path,
          expected: `a whole number, at least 1 and at most ${MOST_SECTIONS}`,
          received: describe(sections),
        },
      ]

export function rollerProblems(roller: Roller, path: string): Problem[] {
  const shapeless = objectProblem(roller, path)
  if (shapeless.length > 0) return shapeless
  const { mass, diameter, length, surface, sections, buildUp, runout } = roller
  const sizes = [
    ...numberProblem(mass, `${path}.mass`, 'mass', { atLeast: 0 }),
    ...numberProblem(diameter, `${path}.diameter`, 'diameter', { above: 0 }),
    ...numberProblem(length, `${path}.length`, 'length', { above: 0 }),
    ...surfaceProblems(surface, `${path}.surface`),
    ...(sections === undefined ? [] : sectionProblems(sections, `${path}.sections`)),
    ...(buildUp === undefined ? [] : numberProblem(buildUp, `${path}.buildUp`, 'height', { atLeast: 0 })),
    ...(runout === undefined ? [] : numberProblem(runout, `${path}.runout`, 'height', { atLeast: 0 })),
  ]
  if (sizes.length > 0 || surface.kind !== 'grooved') return sizes
  return [
    ...numberProblem(surface.depth, `${path}.surface.depth`, 'grooveDepth', { below: diameter / 2 }),
    ...numberProblem(surface.land, `${path}.surface.land`, 'land', { atMost: length }),
  ]
}

/** A groove without depth or without a gap is no groove. */
export const isGrooved = (surface: Surface): surface is GroovedSurface =>
  surface.kind === 'grooved' && surface.depth > 0 && surface.land < surface.pitch
