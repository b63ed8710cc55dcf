import type { QuantityName } from '../quantities/index.ts'
import { type LawKind, type LawName, laws, type PressureLaw } from '../turf/index.ts'

/** A number in a file: its name, what it is, and whether it may be left out. */
export type Field = { readonly name: string; readonly quantity: QuantityName; readonly optional?: true }

const needed = (name: string, quantity: QuantityName): Field => ({ name, quantity })
const maybe = (name: string, quantity: QuantityName): Field => ({ name, quantity, optional: true })

/** The numbers of each part of a scenario; reader and writer both follow these lists. */
export const fields = {
  roller: [
    needed('mass', 'mass'),
    needed('diameter', 'diameter'),
    needed('length', 'length'),
    maybe('sections', 'count'),
    maybe('buildUp', 'height'),
    maybe('runout', 'height'),
  ],
  grooved: [needed('pitch', 'pitch'), needed('land', 'land'), needed('depth', 'grooveDepth')],
  turf: [
    maybe('spread', 'spread'),
    maybe('rebound', 'ratio'),
    maybe('lasting', 'ratio'),
    maybe('recoveryTime', 'time'),
    maybe('thickness', 'thickness'),
    maybe('fittedFrom', 'pressure'),
    maybe('fittedTo', 'pressure'),
  ],
  unit: [
    needed('wheelbase', 'wheelbase'),
    needed('edge', 'place'),
    needed('benchHeight', 'height'),
    maybe('slopeAlong', 'angle'),
    maybe('slopeAcross', 'angle'),
    maybe('hitchHeight', 'place'),
    maybe('edgeLength', 'length'),
  ],
  cylinder: [needed('blades', 'count'), needed('turnsPerSecond', 'turning')],
  body: [needed('mass', 'mass'), needed('at', 'place'), maybe('height', 'place'), maybe('offset', 'place')],
  load: [
    maybe('mass', 'mass'),
    maybe('down', 'load'),
    maybe('forward', 'load'),
    needed('at', 'place'),
    maybe('height', 'place'),
    maybe('offset', 'place'),
  ],
  scales: [
    maybe('total', 'mass'),
    maybe('front', 'mass'),
    maybe('rear', 'mass'),
    maybe('left', 'mass'),
    maybe('right', 'mass'),
    maybe('height', 'place'),
  ],
  box: [needed('empty', 'mass'), needed('full', 'mass'), needed('at', 'place')],
  mowing: [needed('speed', 'speed')],
  scenario: [maybe('effectiveHeight', 'height')],
} as const satisfies Record<string, readonly Field[]>

/** What stands in a law: its numbers, the laws inside it, its table, whether it is written by its reader. */
export type LawFields = {
  readonly numbers: readonly Field[]
  readonly layers: readonly string[]
  readonly table: { readonly name: string; readonly columns: readonly Field[] } | undefined
  readonly written: boolean
}

type Listed = Pick<LawKind<PressureLaw>, 'parameters' | 'layers' | 'table' | 'written'>

export function lawFields(kind: LawName): LawFields {
  const { parameters, layers = [], table, written: isWritten }: Listed = laws[kind]
  const numbers = parameters.map(({ name, quantity }) => needed(name, quantity))
  const columns = (table?.columns ?? []).map(({ name, quantity }) => needed(name, quantity))
  return {
    numbers: isWritten ? [maybe('stretch', 'ratio'), maybe('deepest', 'sinkage')] : numbers,
    layers,
    table: table && { name: table.name, columns },
    written: isWritten === true,
  }
}
